import type { Manifold } from 'manifold-3d';
import type { Bounds } from '../triangleMesh';
import type { LevelField, LevelOptions, Point } from './levelField';
import { gridAround, type LevelGrid } from './levelGrid';
import type { ManifoldScope } from './manifold';

/** Vertices are sought until they lie this close to the level, as a share of the edge. Chosen here. */
const VERTEX_TOLERANCE = 1e-3;

/** Everything nearer than the level, about the origin; undefined where there is nothing. */
export function levelIn(
  scope: ManifoldScope,
  input: LevelField & LevelOptions,
  levelMm: number,
  origin: Point,
): Manifold | undefined {
  const grid = gridAround({ ...input, levelMm });
  if (grid === undefined) return undefined;
  const local: Bounds = { min: minus(grid.box.min, origin), max: minus(grid.box.max, origin) };
  const { inside, rethrow } = insideOf(input, levelMm, origin);
  // A hair less than the edge: the library truncates size / edge, and must not lose a cell to rounding.
  const edgeMm = grid.edgeMm * (1 - 1e-9);
  const level = scope.own(
    scope.library.Manifold.levelSet(inside, local, edgeMm, 0, VERTEX_TOLERANCE * edgeMm),
  );
  rethrow();
  if (level.isEmpty()) return undefined;
  mustLieInside(level.boundingBox(), { box: local, edgeMm: grid.edgeMm }, input.baseMm !== undefined);
  return input.simplifyMm === undefined ? level : scope.own(level.simplify(input.simplifyMm));
}

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

/**
 * The library counts positive as inside: the sign is turned, and the level taken in, here. What the field throws is kept until
 * the library has returned, which could not free its memory otherwise; the points that are left are then not asked for.
 */
function insideOf(
  { distanceAtMm }: LevelField,
  levelMm: number,
  [x0, y0, z0]: Point,
): { inside: (point: Point) => number; rethrow: () => void } {
  const failures: unknown[] = [];
  const ask = (x: number, y: number, z: number): number => {
    const distanceMm = distanceAtMm(x, y, z);
    // NaN would silently count as outside.
    if (Number.isNaN(distanceMm))
      throw new Error(`levelSurface: expected a distance, got NaN at ${x}, ${y}, ${z} mm`);
    return levelMm - distanceMm;
  };
  const inside = ([x, y, z]: Point): number => {
    if (failures.length > 0) return -1;
    try {
      return ask(x0 + x, y0 + y, z0 + z);
    } catch (failure) {
      failures.push(failure);
      return -1;
    }
  };
  return {
    inside,
    rethrow: () => {
      if (failures.length > 0) throw failures[0];
    },
  };
}

/** The grid closes whatever reaches its outermost cell: an invented wall. Below a base that is cut away. */
function mustLieInside(found: Bounds, { box, edgeMm }: LevelGrid, hasBase: boolean): void {
  for (const k of [0, 1, 2] as const) {
    const isLow = found.min[k] < box.min[k] + edgeMm && !(k === 2 && hasBase);
    if (isLow || found.max[k] > box.max[k] - edgeMm)
      throw new Error(
        `levelSurface: expected the level inside its bounds, got one that leaves them along ${'xyz'[k]}`,
      );
  }
}
