import type { Field } from './buildField';
import { localWinding, sortIntoCells } from './localWinding';
import { AT, FOUND, QUERY, searchNearest, testTriangle, type SearchSurface } from './nearest';
import { HALF_DIAGONAL } from './levels';

/** Rounds of the search from the best of the eight starts around a point. */
const ROUNDS = 3;

/**
 * The signed distance of any point, mm, negative inside: exact as the level passes have it, within the field's reach; beyond it the reach
 * itself, with its sign. The function belongs to the thread that made it.
 */
export function distanceFunction(field: Field): (xMm: number, yMm: number, zMm: number) => number {
  const { grid, task, surface, reachMm } = field;
  const [originX, originY, originZ] = surface.originMm;
  const { nx, ny, nz, spacingMm, ox, oy, oz } = grid;
  const winding = task.windings[0]!;
  const search: SearchSurface = { ...task, nearest: task.nearests[0]! };
  // Signs close to the surface come from the chain itself, as a grid point's may be that of the other side.
  const everywhere = new Uint8Array(nx * ny * nz).fill(1);
  const cells = sortIntoCells(
    grid,
    { positions: task.positions, triangles: task.chain },
    winding,
    everywhere,
  );
  return (xMm, yMm, zMm) => {
    const [x, y, z] = [xMm - originX, yMm - originY, zMm - originZ];
    const i = Math.floor((x - ox) / spacingMm);
    const j = Math.floor((y - oy) / spacingMm);
    const k = Math.floor((z - oz) / spacingMm);
    if (i < 1 || j < 1 || k < 1 || i + 2 >= nx || j + 2 >= ny || k + 2 >= nz) return reachMm;
    QUERY[0] = x;
    QUERY[1] = y;
    QUERY[2] = z;
    const corner = (k * ny + j) * nx + i;
    const start = bestStart(search, task.site, corner, nx, nx * ny);
    if (start < 0) return winding[corner]! > 0 ? -reachMm : reachMm;
    searchNearest(search, start, ROUNDS);
    const away = Math.sqrt(FOUND[AT.squared]!);
    const isNear = away <= 2 * HALF_DIAGONAL * spacingMm;
    const isInside = (isNear ? localWinding(cells, x, y, z) : winding[corner]!) > 0;
    return isInside ? -away : away;
  };
}

/** The nearest of the triangles that the eight grid points around QUERY know of; -1 when they know none. */
function bestStart(
  { positions, triangles, nearest }: SearchSurface,
  site: Int32Array,
  corner: number,
  row: number,
  plane: number,
): number {
  let best = -1;
  let least = Infinity;
  for (let q = 0; q < 8; q++) {
    const s = site[corner + (q & 1) + (q & 2 ? row : 0) + (q & 4 ? plane : 0)]!;
    if (s < 0) continue;
    testTriangle(positions, triangles, nearest[s]! - 1);
    if (FOUND[AT.squared]! >= least) continue;
    least = FOUND[AT.squared]!;
    best = nearest[s]! - 1;
  }
  return best;
}
