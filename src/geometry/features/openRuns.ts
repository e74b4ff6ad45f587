import { dot, type Vector } from '../vector';
import { columnsAround, pointOf, type ColumnAxes, type Columns } from './columns';
import { lipHeights, type Mouth } from './mouth';
import type { OpenRuns } from './sweepDown';

/** A hole that lets air out: a point on the surface. */
export interface VentHole {
  atMm: Vector;
}

/** The runs that the opening and the vents lead into, and the heights up to which they do. */
export function openRuns(
  columns: Columns,
  axes: ColumnAxes,
  { mouth, vents }: { mouth: Mouth | undefined; vents: readonly VentHole[] },
): OpenRuns {
  const open: OpenRuns = { run: [], levelMm: [] };
  if (mouth !== undefined) {
    const { highMm, highest } = lipHeights(mouth, axes.up);
    for (const run of [...runsInMouth(columns, axes, mouth), ...runsBeside(columns, axes, highest)]) {
      const topMm = columns.highMm[run]!;
      open.run.push(run);
      open.levelMm.push(isCutAway(columns, axes, mouth, run, topMm) ? topMm : Math.min(topMm, highMm));
    }
  }
  for (const { atMm } of vents) {
    const hit = runAt(columns, axes, atMm);
    if (hit === undefined) continue;
    open.run.push(hit.run);
    open.levelMm.push(hit.levelMm);
  }
  return open;
}

/** Runs that pass through the hole: within its radius of its axis, and as near to its plane as its rim is. */
export function runsInMouth(columns: Columns, axes: ColumnAxes, mouth: Mouth): number[] {
  const { grid, start, lowMm, highMm } = columns;
  const radiusMm = mouth.diameterMm / 2;
  const reachMm = grid.stepMm + deepest(mouth);
  const found: number[] = [];
  const halfU = radiusMm + reachMm;
  for (const column of columnsAround(axes, grid, mouth.atMm, halfU)) {
    const from = pointOf(axes, grid, column, 0);
    const aside: Vector = [from[0] - mouth.atMm[0], from[1] - mouth.atMm[1], from[2] - mouth.atMm[2]];
    const stretch = stretchWithin(aside, axes.up, mouth.normal, radiusMm, reachMm);
    if (stretch === undefined) continue;
    for (let run = start[column]!; run < start[column + 1]!; run++)
      if (lowMm[run]! <= stretch.high && highMm[run]! >= stretch.low) found.push(run);
  }
  return found;
}

/** The surface within the hole is gone: a run that ends there is open up to its end. */
export function isCutAway(
  { grid, column }: Columns,
  axes: ColumnAxes,
  mouth: Mouth,
  run: number,
  endMm: number,
): boolean {
  const end = pointOf(axes, grid, column[run]!, endMm);
  const aside: Vector = [end[0] - mouth.atMm[0], end[1] - mouth.atMm[1], end[2] - mouth.atMm[2]];
  const along = dot(aside, mouth.normal);
  if (Math.abs(along) > grid.stepMm + deepest(mouth)) return false;
  return dot(aside, aside) - along * along <= (mouth.diameterMm / 2) ** 2;
}

/** Runs around the highest point of the rim: the columns just above it open at its height, and no column within the hole reaches up to it. */
function runsBeside({ grid, start, lowMm, highMm }: Columns, axes: ColumnAxes, atMm: Vector): number[] {
  const height = dot(atMm, axes.up);
  const found: number[] = [];
  for (const column of columnsAround(axes, grid, atMm, grid.stepMm))
    for (let run = start[column]!; run < start[column + 1]!; run++)
      if (lowMm[run]! < height && highMm[run]! > height) found.push(run);
  return found;
}

/** How far its rim lies off its plane at the most, mm. */
const deepest = ({ lip, atMm, normal }: Mouth): number =>
  Math.max(0, ...lip.map((p) => Math.abs(dot([p[0] - atMm[0], p[1] - atMm[1], p[2] - atMm[2]], normal))));

/** Heights on a line (from `aside`, relative to the middle of the hole, along up) at which it runs within the hole. */
function stretchWithin(
  aside: Vector,
  up: Vector,
  normal: Vector,
  radiusMm: number,
  reachMm: number,
): { low: number; high: number } | undefined {
  // |aside + s up|^2 less the part along the normal, squared, is at most the radius squared.
  const along = dot(aside, normal);
  const rise = dot(up, normal);
  const a = 1 - rise * rise;
  const b = dot(aside, up) - along * rise;
  const c = dot(aside, aside) - along * along - radiusMm * radiusMm;
  let low = -Infinity;
  let high = Infinity;
  if (a > 1e-9) {
    const inside = b * b - a * c;
    if (inside < 0) return undefined;
    low = (-b - Math.sqrt(inside)) / a;
    high = (-b + Math.sqrt(inside)) / a;
  } else if (c > 0) return undefined;
  if (Math.abs(rise) > 1e-9) {
    const ends = [(-reachMm - along) / rise, (reachMm - along) / rise];
    low = Math.max(low, Math.min(...ends));
    high = Math.min(high, Math.max(...ends));
  } else if (Math.abs(along) > reachMm) return undefined;
  return low <= high ? { low, high } : undefined;
}

/** The run that a point on the surface belongs to, or lies just above: the nearest of the columns around it. */
function runAt(
  { grid, start, lowMm, highMm }: Columns,
  axes: ColumnAxes,
  atMm: Vector,
): { run: number; levelMm: number } | undefined {
  const height = dot(atMm, axes.up);
  let best: { run: number; levelMm: number } | undefined;
  let nearest = Infinity;
  for (const column of columnsAround(axes, grid, atMm, 1.5 * grid.stepMm)) {
    const foot = pointOf(axes, grid, column, height);
    const asideMm = Math.hypot(foot[0] - atMm[0], foot[1] - atMm[1], foot[2] - atMm[2]);
    for (let run = start[column]!; run < start[column + 1]!; run++) {
      const awayMm = Math.max(0, lowMm[run]! - height, height - highMm[run]!);
      if (awayMm > 2 * grid.stepMm || asideMm + awayMm >= nearest) continue;
      nearest = asideMm + awayMm;
      best = { run, levelMm: Math.min(highMm[run]!, height + VENT_RISE_MM) };
    }
  }
  return best;
}

/** A vent at a summit opens all of it: its point is that of a column or a facet, a hair below. Chosen here: a twentieth of a millimeter. */
const VENT_RISE_MM = 0.05;
