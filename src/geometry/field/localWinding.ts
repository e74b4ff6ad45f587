import type { Grid } from './grid';

/**
 * Triangles by the cell (from one grid point to the next along every axis) that their bounds touch, for the cells marked `wanted`; with the
 * winding numbers of the grid points this gives that of any point in those cells.
 */
export interface CellLists {
  grid: Grid;
  positions: Float32Array;
  triangles: Int32Array;
  winding: Int16Array;
  start: Int32Array;
  members: Int32Array;
}

export function sortIntoCells(
  grid: Grid,
  surface: { positions: Float32Array; triangles: Int32Array },
  winding: Int16Array,
  wanted: Uint8Array,
): CellLists {
  const { positions, triangles } = surface;
  const start = new Int32Array(wanted.length + 1);
  for (let t = 0; t < triangles.length; t += 3)
    forEachCell(grid, positions, triangles, t, (cell) => {
      if (wanted[cell] === 1) start[cell + 1]!++;
    });
  for (let c = 0; c < start.length - 1; c++) start[c + 1]! += start[c]!;
  const members = new Int32Array(start[start.length - 1]!);
  const fill = start.slice();
  for (let t = 0; t < triangles.length; t += 3)
    forEachCell(grid, positions, triangles, t, (cell) => {
      if (wanted[cell] === 1) members[fill[cell]!++] = t;
    });
  return { grid, positions, triangles, winding, start, members };
}

/** Calls `act` with every cell that the bounds of a triangle touch. */
export function forEachCell(
  grid: Grid,
  positions: Float32Array,
  triangles: Int32Array,
  t: number,
  act: (cell: number) => void,
): void {
  const { nx, ny, spacingMm: step } = grid;
  const a = 3 * triangles[t]!;
  const b = 3 * triangles[t + 1]!;
  const c = 3 * triangles[t + 2]!;
  const first = (axis: number, origin: number): number =>
    Math.floor((Math.min(positions[a + axis]!, positions[b + axis]!, positions[c + axis]!) - origin) / step);
  const last = (axis: number, origin: number): number =>
    Math.floor((Math.max(positions[a + axis]!, positions[b + axis]!, positions[c + axis]!) - origin) / step);
  const [i0, i1] = [first(0, grid.ox), last(0, grid.ox)];
  const [j0, j1] = [first(1, grid.oy), last(1, grid.oy)];
  const [k0, k1] = [first(2, grid.oz), last(2, grid.oz)];
  for (let k = k0; k <= k1; k++)
    for (let j = j0; j <= j1; j++) for (let i = i0; i <= i1; i++) act((k * ny + j) * nx + i);
}

/**
 * Whole winding number of a point off the surface: that of the lowest corner of its cell, less what the way from there crosses, along x,
 * then y, then z. All of it lies in one cell, so only that cell's triangles are asked.
 */
export function localWinding(cells: CellLists, x: number, y: number, z: number): number {
  const { grid, positions: p, triangles, start, members } = cells;
  const { spacingMm: step, ox, oy, oz } = grid;
  const i = Math.floor((x - ox) / step);
  const j = Math.floor((y - oy) / step);
  const k = Math.floor((z - oz) / step);
  const cell = (k * grid.ny + j) * grid.nx + i;
  const x0 = ox + i * step;
  const y0 = oy + j * step;
  const z0 = oz + k * step;
  let winding = cells.winding[cell]!;
  for (let m = start[cell]!; m < start[cell + 1]!; m++) {
    const t = members[m]!;
    const a = triangles[t]!;
    const b = triangles[t + 1]!;
    const c = triangles[t + 2]!;
    winding -= crossing(p, a, b, c, 0, x0, x, y0, z0);
    winding -= crossing(p, a, b, c, 1, y0, y, z0, x);
    winding -= crossing(p, a, b, c, 2, z0, z, x, y);
  }
  return winding;
}

/**
 * Signed crossing of a triangle by the stretch from `from` to `to` along `axis`, at `u` and `v` on the two axes that follow it in cyclic
 * order; `from` <= `to`.
 */
function crossing(
  p: Float32Array,
  a: number,
  b: number,
  c: number,
  axis: 0 | 1 | 2,
  from: number,
  to: number,
  u: number,
  v: number,
): number {
  const ku = axis === 2 ? 0 : axis + 1;
  const kv = axis === 0 ? 2 : axis - 1;
  // Most triangles lie to one side of the line: no edge of theirs can cross.
  const isUnder = p[3 * a + kv]! <= v;
  if (isUnder === p[3 * b + kv]! <= v && isUnder === p[3 * c + kv]! <= v) return 0;
  const isShort = p[3 * a + ku]! <= u;
  if (isShort && p[3 * b + ku]! <= u && p[3 * c + ku]! <= u) return 0;
  if (!isShort && p[3 * b + ku]! > u && p[3 * c + ku]! > u) return 0;
  const sum =
    edgeSide(p, a, b, ku, kv, u, v) + edgeSide(p, b, c, ku, kv, u, v) + edgeSide(p, c, a, ku, kv, u, v);
  if (sum === 0) return 0;
  const [ax, au, av] = [p[3 * a + axis]!, p[3 * a + ku]!, p[3 * a + kv]!];
  const bu = p[3 * b + ku]! - au;
  const bv = p[3 * b + kv]! - av;
  const cu = p[3 * c + ku]! - au;
  const cv = p[3 * c + kv]! - av;
  const det = bu * cv - bv * cu;
  const s = det === 0 ? 0 : ((u - au) * cv - (v - av) * cu) / det;
  const r = det === 0 ? 0 : (bu * (v - av) - bv * (u - au)) / det;
  const at = ax + s * (p[3 * b + axis]! - ax) + r * (p[3 * c + axis]! - ax);
  return at > from && at <= to ? sum : 0;
}

/**
 * +1 or -1 when the edge crosses the level v beyond u, else 0; over the edges of a triangle these sum to the signed count of the line's crossing.
 * Computed from the lower-numbered vertex, so two triangles never both claim a line nor both leave it.
 */
function edgeSide(
  p: Float32Array,
  from: number,
  to: number,
  ku: number,
  kv: number,
  u: number,
  v: number,
): number {
  const isUnder = p[3 * from + kv]! <= v;
  if (isUnder === p[3 * to + kv]! <= v) return 0;
  const low = 3 * (from < to ? from : to);
  const high = 3 * (from < to ? to : from);
  const share = (v - p[low + kv]!) / (p[high + kv]! - p[low + kv]!);
  const at = p[low + ku]! + share * (p[high + ku]! - p[low + ku]!);
  if (at <= u) return 0;
  return isUnder ? 1 : -1;
}
