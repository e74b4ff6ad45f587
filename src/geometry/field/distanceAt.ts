import type { Field } from './buildField';
import { localWinding, sortIntoCells } from './localWinding';
import { AT, FOUND, QUERY, searchNearest, testTriangle, type SearchSurface } from './nearest';
import { HALF_DIAGONAL } from './levels';

/** Rounds of the search from the best of the starts around a point. Chosen here. */
const ROUNDS = 3;

/**
 * The signed distance of any point, mm, negative inside: exact as the level passes have it, within the field's reach; beyond it the reach
 * itself, with its sign. The function belongs to the thread that made it.
 */
export function distanceFunction(field: Field): (xMm: number, yMm: number, zMm: number) => number {
  const { grid, task, surface, reachMm } = field;
  const { originMm, rows } = surface.frame;
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
    const [dx, dy, dz] = [xMm - originMm[0], yMm - originMm[1], zMm - originMm[2]];
    const x = rows[0] * dx + rows[1] * dy + rows[2] * dz;
    const y = rows[3] * dx + rows[4] * dy + rows[5] * dz;
    const z = rows[6] * dx + rows[7] * dy + rows[8] * dz;
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

/** The nearest of the triangles that the 64 grid points around QUERY know of; -1 when they know none. */
function bestStart(
  { positions, triangles, nearest }: SearchSurface,
  site: Int32Array,
  corner: number,
  row: number,
  plane: number,
): number {
  let best = -1;
  let least = Infinity;
  let tried = -1;
  for (let q = 0; q < 64; q++) {
    const s = site[corner + ((q & 3) - 1) + (((q >> 2) & 3) - 1) * row + ((q >> 4) - 1) * plane]!;
    if (s < 0 || s === tried) continue;
    tried = s;
    testTriangle(positions, triangles, nearest[s]! - 1);
    if (FOUND[AT.squared]! >= least) continue;
    least = FOUND[AT.squared]!;
    best = nearest[s]! - 1;
  }
  return best;
}
