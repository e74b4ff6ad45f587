import type { TriangleMesh } from '../triangleMesh';
import { cellSizeFor, clusterVertices, type Clusters } from './vertexClusters';
import { placeClusters } from './clusterPlaces';

/** Cells are sized anew at most so often. Chosen here. */
const MOST_TRIES = 4;

/** A result with this share of the triangles wanted, up to the second, will do. Chosen here. */
const [ENOUGH, TOO_MANY] = [0.75, 1.1];

/**
 * A mesh for show: vertices in one cell of a lattice become one, placed where the planes of the triangles around it meet best (Lindstrom 2000,
 * "Out-of-core simplification of large polygonal models", Proc. SIGGRAPH, 259-262), and triangles that lose a corner go. Every vertex stays in a cell with one of
 * the original's. Linear in the triangles; nothing is measured on it. A mesh with no more triangles than wanted is given back as it is.
 */
export function simplifyMesh(mesh: TriangleMesh, wantedTriangles: number): TriangleMesh {
  if (mesh.triangles.length <= 3 * wantedTriangles) return mesh;
  let cell = cellSizeFor(mesh, wantedTriangles);
  let clusters: Clusters | undefined;
  let kept = 0;
  for (let n = 0; n < MOST_TRIES; n++) {
    clusters = clusterVertices(mesh, cell);
    kept = countKept(mesh, clusters);
    if (kept >= ENOUGH * wantedTriangles && kept <= TOO_MANY * wantedTriangles) break;
    // Triangles go as the area by that of a cell; what is smaller than a cell altogether leaves none at all.
    if (n + 1 < MOST_TRIES) cell *= Math.min(4, Math.max(0.25, Math.sqrt(kept / wantedTriangles)));
  }
  return { positions: placeClusters(mesh, clusters!), triangles: keptTriangles(mesh, clusters!, kept) };
}

function countKept({ triangles }: TriangleMesh, { of }: Clusters): number {
  let kept = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = of[triangles[t]!]!;
    const b = of[triangles[t + 1]!]!;
    const c = of[triangles[t + 2]!]!;
    if (a !== b && b !== c && c !== a) kept++;
  }
  return kept;
}

function keptTriangles({ triangles }: TriangleMesh, { of }: Clusters, count: number): Int32Array {
  const kept = new Int32Array(3 * count);
  let n = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = of[triangles[t]!]!;
    const b = of[triangles[t + 1]!]!;
    const c = of[triangles[t + 2]!]!;
    if (a === b || b === c || c === a) continue;
    kept[n++] = a;
    kept[n++] = b;
    kept[n++] = c;
  }
  return kept;
}
