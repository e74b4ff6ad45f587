import type { ColumnGrid, Columns, UprightBody } from './columns';
import type { RunLinks } from './runLinks';

/*
 * Two columns side by side may stand on both sides of a wall thinner than the step between them (the rubber between two fingers), or of a crease. They
 * overlap in height, and without a look between them air would be told to pass. So a link is looked at before it is used: it holds up to the highest of
 * the heights both share at which nothing but body lies between them. Only links that would join two parts are asked, once each.
 */

export interface Ways {
  /** Up to which height a link holds, mm; -Infinity where it holds nowhere. */
  topMm: (link: number) => number;
  /** Whether it holds anywhere below a height. */
  isOpenBelow: (link: number, heightMm: number) => boolean;
}

/** Heights both share are looked at a step apart, but no more than so many; the ends this share of a step inside. Chosen here. */
const [MOST_LOOKS, INSIDE_STEPS] = [64, 0.01];

/** Halvings between a height at which the way is shut and one at which it is clear: to a thousandth of a step. */
const HALVINGS = 10;

export function waysBetween(body: UprightBody, columns: Columns, links: RunLinks): Ways {
  const { grid, column, lowMm, highMm } = columns;
  const known = new Float64Array(links.count).fill(NaN);
  let cells: FacetCells | undefined;
  const clearAt = (link: number): ((heightMm: number) => boolean) => {
    const made = (cells ??= facetCells(body, grid));
    const way = wayBetween(grid, column[links.a[link]!]!, column[links.b[link]!]!);
    return (heightMm) => isClear(body, made, way, heightMm);
  };
  const shared = (link: number): { low: number; high: number } => ({
    low: Math.max(lowMm[links.a[link]!]!, lowMm[links.b[link]!]!),
    high: Math.min(highMm[links.a[link]!]!, highMm[links.b[link]!]!),
  });
  return {
    topMm: (link) => {
      if (Number.isNaN(known[link]!)) known[link] = highestClear(shared(link), grid.stepMm, clearAt(link));
      return known[link]!;
    },
    isOpenBelow: (link, heightMm) => {
      const { low, high } = shared(link);
      if (low >= heightMm) return false;
      return highestClear({ low, high: Math.min(high, heightMm) }, grid.stepMm, clearAt(link)) > -Infinity;
    },
  };
}

function highestClear(
  { low, high }: { low: number; high: number },
  stepMm: number,
  isClearAt: (heightMm: number) => boolean,
): number {
  const insideMm = Math.min(INSIDE_STEPS * stepMm, (high - low) / 4);
  const top = high - insideMm;
  if (isClearAt(top)) return high;
  const looks = Math.min(MOST_LOOKS, Math.max(3, Math.ceil((high - low) / stepMm)));
  let shut = top;
  for (let look = 1; look <= looks; look++) {
    const height = top - (look / looks) * (high - low - 2 * insideMm);
    if (!isClearAt(height)) {
      shut = height;
      continue;
    }
    let clear = height;
    for (let halving = 0; halving < HALVINGS; halving++) {
      const middle = (clear + shut) / 2;
      if (isClearAt(middle)) clear = middle;
      else shut = middle;
    }
    return clear;
  }
  return -Infinity;
}

/** From the foot of one column to that of the next, seen from above. */
interface Way {
  u0: number;
  v0: number;
  u1: number;
  v1: number;
}

function wayBetween(grid: ColumnGrid, one: number, other: number): Way {
  const u = (column: number): number => grid.u0 + (column % grid.columns) * grid.stepMm;
  const v = (column: number): number => grid.v0 + Math.floor(column / grid.columns) * grid.stepMm;
  return { u0: u(one), v0: v(one), u1: u(other), v1: v(other) };
}

/** Facets (3 * number) by square cells, seen from above. */
interface FacetCells {
  sizeMm: number;
  u0: number;
  v0: number;
  across: number;
  rows: number;
  start: Int32Array;
  facet: Int32Array;
}

/** Steps a cell of facets is wide. Chosen here. */
const CELL_STEPS = 2;

function facetCells({ mesh }: UprightBody, grid: ColumnGrid): FacetCells {
  const sizeMm = CELL_STEPS * grid.stepMm;
  const across = Math.ceil((grid.columns * grid.stepMm) / sizeMm) + 2;
  const rows = Math.ceil((grid.rows * grid.stepMm) / sizeMm) + 2;
  const u0 = grid.u0 - sizeMm;
  const v0 = grid.v0 - sizeMm;
  const { positions: p, triangles } = mesh;
  const start = new Int32Array(across * rows + 1);
  const each = (visit: (cell: number, t: number) => void): void => {
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
      const [ua, ub, uc] = [p[a + 1]!, p[b + 1]!, p[c + 1]!];
      const [va, vb, vc] = [p[a + 2]!, p[b + 2]!, p[c + 2]!];
      const i0 = Math.max(0, Math.floor((Math.min(ua, ub, uc) - u0) / sizeMm));
      const i1 = Math.min(across - 1, Math.floor((Math.max(ua, ub, uc) - u0) / sizeMm));
      const j0 = Math.max(0, Math.floor((Math.min(va, vb, vc) - v0) / sizeMm));
      const j1 = Math.min(rows - 1, Math.floor((Math.max(va, vb, vc) - v0) / sizeMm));
      for (let j = j0; j <= j1; j++) for (let i = i0; i <= i1; i++) visit(j * across + i, t);
    }
  };
  each((cell) => start[cell + 1]!++);
  for (let cell = 0; cell < across * rows; cell++) start[cell + 1]! += start[cell]!;
  const facet = new Int32Array(start[across * rows]!);
  const fill = start.slice();
  each((cell, t) => {
    facet[fill[cell]!++] = t;
  });
  return { sizeMm, u0, v0, across, rows, start, facet };
}

/** Where facets cross a way at a height: its share from the start, and what that adds to the winding. */
const CROSSED: { share: number; turn: number }[] = [];

/** Whether the way stays in the body (or around it, where that is meant) from end to end. Both ends do. */
function isClear(body: UprightBody, cells: FacetCells, way: Way, heightMm: number): boolean {
  CROSSED.length = 0;
  const from = cellOf(cells, way.u0, way.v0);
  const to = cellOf(cells, way.u1, way.v1);
  for (let j = Math.min(from.j, to.j); j <= Math.max(from.j, to.j); j++)
    for (let i = Math.min(from.i, to.i); i <= Math.max(from.i, to.i); i++)
      collect(body, cells, j * cells.across + i, way, heightMm);
  if (CROSSED.length === 0) return true;
  CROSSED.sort((a, b) => a.share - b.share);
  let winding = windingAt(body, cells, from, way, heightMm);
  const isAround = body.aroundFromMm !== undefined;
  for (let i = 0; i < CROSSED.length; i++) {
    winding += CROSSED[i]!.turn;
    // A wall of no thickness, crossed in and out at one place, is none.
    if (i + 1 < CROSSED.length && CROSSED[i + 1]!.share - CROSSED[i]!.share < SAME_SHARE) continue;
    if (winding >= 1 === isAround) return false;
  }
  return true;
}

const SAME_SHARE = 1e-7;

function cellOf({ u0, v0, sizeMm }: FacetCells, u: number, v: number): { i: number; j: number } {
  return { i: Math.floor((u - u0) / sizeMm), j: Math.floor((v - v0) / sizeMm) };
}

/** A facet that lies in several cells counts in the one where it is crossed. */
function collect(body: UprightBody, cells: FacetCells, cell: number, way: Way, heightMm: number): void {
  const { positions: p, triangles } = body.mesh;
  const { u0, v0, u1, v1 } = way;
  const [du, dv] = [u1 - u0, v1 - v0];
  for (let n = cells.start[cell]!; n < cells.start[cell + 1]!; n++) {
    const t = cells.facet[n]!;
    let [up, upAcross, down, downAcross] = [0, 0, 0, 0];
    let cuts = 0;
    for (let e = 0; e < 3; e++) {
      const a = triangles[t + e]!;
      const b = triangles[t + (e === 2 ? 0 : e + 1)]!;
      const isBelow = p[3 * a]! < heightMm;
      if (isBelow === p[3 * b]! < heightMm) continue;
      const low = 3 * (a < b ? a : b);
      const high = 3 * (a < b ? b : a);
      const share = (heightMm - p[low]!) / (p[high]! - p[low]!);
      const u = p[low + 1]! + share * (p[high + 1]! - p[low + 1]!) - u0;
      const v = p[low + 2]! + share * (p[high + 2]! - p[low + 2]!) - v0;
      const along = (u * du + v * dv) / (du * du + dv * dv);
      const across = du * v - dv * u;
      cuts++;
      if (isBelow) [up, upAcross] = [along, across];
      else [down, downAcross] = [along, across];
    }
    if (cuts !== 2 || upAcross < 0 === downAcross < 0) continue;
    const share = up + (upAcross / (upAcross - downAcross)) * (down - up);
    if (share < 0 || share > 1) continue;
    const at = cellOf(cells, u0 + share * du, v0 + share * dv);
    if (at.j * cells.across + at.i !== cell) continue;
    CROSSED.push({ share, turn: upAcross < 0 ? 1 : -1 });
  }
}

/** How often the body winds about a point: by the facets over it. */
function windingAt(
  { mesh: { positions: p, triangles } }: UprightBody,
  cells: FacetCells,
  { i, j }: { i: number; j: number },
  { u0, v0 }: Way,
  heightMm: number,
): number {
  const cell = j * cells.across + i;
  let winding = 0;
  for (let n = cells.start[cell]!; n < cells.start[cell + 1]!; n++) {
    const t = cells.facet[n]!;
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const [ua, va] = [p[a + 1]! - u0, p[a + 2]! - v0];
    const [ub, vb] = [p[b + 1]! - u0, p[b + 2]! - v0];
    const [uc, vc] = [p[c + 1]! - u0, p[c + 2]! - v0];
    const [toA, toB, toC] = [ub * vc - uc * vb, uc * va - ua * vc, ua * vb - ub * va];
    const isLeft = toA >= 0 && toB >= 0 && toC >= 0;
    if (!isLeft && !(toA <= 0 && toB <= 0 && toC <= 0)) continue;
    const twice = toA + toB + toC;
    if (twice === 0) continue;
    const height = (toA * p[a]! + toB * p[b]! + toC * p[c]!) / twice;
    // A facet over the point that faces up is left on the way up.
    if (height > heightMm) winding += isLeft ? 1 : -1;
  }
  return winding;
}
