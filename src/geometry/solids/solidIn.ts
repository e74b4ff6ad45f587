import { bad, good, type Outcome } from '../../problem';
import { divergenceVolume } from '../measure/pieces';
import { pairEdges } from '../repair/edges';
import { boundsOf, centerOf, triangleCount, type TriangleMesh } from '../triangleMesh';
import type { ManifoldScope } from './manifold';
import type { Solid } from './solid';

/** `makeSolid` inside a scope that is open already: the one place where a solid comes from. */
export function solidIn(scope: ManifoldScope, mesh: TriangleMesh): Outcome<Solid> {
  if (triangleCount(mesh) === 0) return bad('ZERO_VOLUME', { pieces: 0 });
  if (!isManifold(scope, mesh)) return whyNotManifold(mesh);
  // Manifold accepts a surface turned inside out, and calls its volume negative; the sign is our own check.
  const volumeMm3 = divergenceVolume(mesh);
  if (volumeMm3 < 0) return bad('INSIDE_OUT', { count: 1, volumeMm3 });
  if (!(volumeMm3 > 0)) return bad('ZERO_VOLUME', { pieces: 1 });
  return good({ mesh, volumeMm3 } as Solid);
}

/** The library keeps coordinates as float32: the mesh goes in about its middle, where they are finest. */
function isManifold({ library, own }: ManifoldScope, mesh: TriangleMesh): boolean {
  const middle = centerOf(boundsOf(mesh));
  const vertProperties = Float32Array.from(mesh.positions, (x, i) => x - middle[i % 3]!);
  const triVerts = Uint32Array.from(mesh.triangles);
  try {
    own(new library.Manifold(new library.Mesh({ numProp: 3, vertProperties, triVerts })));
    return true;
  } catch (thrown) {
    // Anything else (a vertex that is not finite, a vertex number out of range) is a mistake of ours.
    if ((thrown as { code?: unknown }).code === 'NotManifold') return false;
    throw thrown;
  }
}

function whyNotManifold(mesh: TriangleMesh): Outcome<never> {
  const { openCount, conflictCount, shared } = pairEdges(mesh);
  if (openCount > 0) return bad('NOT_CLOSED', { openEdges: openCount });
  if (conflictCount > 0) return bad('NOT_ORIENTED', { count: conflictCount });
  // A leaf: facets face to face, of which the library keeps nothing.
  if (shared.length === 0) return bad('ZERO_VOLUME', { pieces: 1 });
  let count = 0;
  for (let i = 0; i < shared.length; i += shared[i]! + 1) count++;
  return bad('NON_MANIFOLD', { count });
}
