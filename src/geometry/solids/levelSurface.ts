import type { Manifold } from 'manifold-3d';
import { bad, type Outcome } from '../../problem';
import { centerOf, type TriangleMesh } from '../triangleMesh';
import type { LevelField, LevelOptions, Point } from './levelField';
import { levelIn } from './levelIn';
import { withManifold, type ManifoldScope } from './manifold';
import type { Solid } from './solid';
import { solidIn } from './solidIn';
import type { WasmSource } from './wasmSource';

/**
 * The surface of everything nearer than `levelMm` (below 0: deeper inside): closed, outward, in mm, by marching tetrahedra on
 * a body-centered grid (Manifold, `levelSet`). Corners lie on the level to a thousandth of the edge, so a ball comes out too
 * small: with facets no longer than L on curvatures up to k the volume is off by at most area x (k L2 / 8 + edge / 1000)
 * (derived in the tests; L is up to 1.3 edges). Sharp edges lose what lies within a cell of them.
 * Errors: ZERO_VOLUME where nothing is that deep. Throws on a NaN distance, an edge too fine, and a level beyond its bounds.
 */
export function levelSurface(
  input: LevelField & LevelOptions & { levelMm: number },
  source?: WasmSource,
): Promise<Outcome<Solid>> {
  return withManifold((scope) => {
    const origin = originOf(input);
    const level = levelIn(scope, input, input.levelMm, origin);
    if (level === undefined) return bad('ZERO_VOLUME', { pieces: 0 });
    return solidIn(scope, meshOf(clipped(scope, level, input.baseMm), origin));
  }, source);
}

/**
 * The shell between two levels, closed: what is nearer than `outerMm` without what is nearer than `innerMm`. Where nothing is
 * as deep as the inner level, the shell is solid. Errors and method as for `levelSurface`.
 */
export function levelShell(
  input: LevelField & LevelOptions & { innerMm: number; outerMm: number },
  source?: WasmSource,
): Promise<Outcome<Solid>> {
  if (!(input.outerMm > input.innerMm))
    throw new Error(`levelShell: expected outerMm above innerMm, got ${input.outerMm} and ${input.innerMm}`);
  return withManifold((scope) => {
    const origin = originOf(input);
    const outer = levelIn(scope, input, input.outerMm, origin);
    if (outer === undefined) return bad('ZERO_VOLUME', { pieces: 0 });
    const inner = levelIn(scope, input, input.innerMm, origin);
    const shell = inner === undefined ? outer : scope.own(outer.subtract(inner));
    return solidIn(scope, meshOf(clipped(scope, shell, input.baseMm), origin));
  }, source);
}

/** Manifold hands vertices back as float32, so it works about the middle; about the base in z, so that the cut is at 0. */
function originOf({ bounds, baseMm }: LevelField & LevelOptions): Point {
  const [x, y, z] = centerOf(bounds);
  return [x, y, baseMm ?? z];
}

function clipped(scope: ManifoldScope, solid: Manifold, baseMm: number | undefined): Manifold {
  return baseMm === undefined ? solid : scope.own(solid.trimByPlane([0, 0, 1], 0));
}

function meshOf(solid: Manifold, origin: Point): TriangleMesh {
  if (solid.status() !== 'NoError')
    throw new Error(`meshOf: expected a sound solid, got ${String(solid.status())}`);
  const { vertProperties, triVerts } = solid.getMesh();
  return {
    positions: Float64Array.from(vertProperties, (x, i) => x + origin[i % 3]!),
    triangles: Int32Array.from(triVerts),
  };
}
