import { dot, type Vector } from '../vector';
import { columnsAround, pointOf, type ColumnAxes, type Columns } from './columns';
import { lipHeights, type Mouth } from './mouth';
import type { OpenRuns } from './pocket';

/** A hole that lets air out: a point on the surface. */
export interface VentHole {
  atMm: Vector;
}

/** The runs that the opening and the vents lead into, and the heights up to which they do. `missed`: vents that lead into none. */
export function openRuns(
  columns: Columns,
  axes: ColumnAxes,
  { mouth, vents }: { mouth: Mouth | undefined; vents: readonly VentHole[] },
): OpenRuns & { missed: number } {
  const open: OpenRuns & { missed: number } = { run: [], levelMm: [], missed: 0 };
  if (mouth !== undefined) {
    const { highMm, highest } = lipHeights(mouth, axes.up);
    const inMouth = [...runsInMouth(columns, axes, mouth), ...runsBeside(columns, axes, highest)];
    // A hole narrower than the step of the columns lies between them.
    const beside = inMouth.length > 0 ? undefined : runAt(columns, axes, mouth.atMm);
    for (const run of beside === undefined ? inMouth : [beside.run]) {
      const topMm = columns.highMm[run]!;
      open.run.push(run);
      open.levelMm.push(isCutAway(columns, axes, mouth, run, topMm) ? topMm : Math.min(topMm, highMm));
    }
  }
  for (const { atMm } of vents) {
    const hit = runAt(columns, axes, atMm);
    if (hit === undefined) {
      open.missed += 1;
      continue;
    }
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

/** Runs around a point that reach past its height: columns just above the rim of a hole open there, and no column within it reaches up to it. */
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

/**
 * The run that a point on the surface belongs to, or lies above: of the columns around it the nearest that has one. The columns beside the tip of a horn
 * end well below it. Columns farther off are asked where none is near.
 */
function runAt(
  columns: Columns,
  axes: ColumnAxes,
  atMm: Vector,
): { run: number; levelMm: number } | undefined {
  for (const steps of VENT_STEPS) {
    const found = runWithin(columns, axes, atMm, steps * columns.grid.stepMm);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** How far off a vent's column may stand, in steps; how far below a tip its run may end, and how far else. Chosen here. */
const VENT_STEPS = [1.5, 4] as const;
const [BELOW_TIP_STEPS, AWAY_STEPS] = [20, 2];

function runWithin(
  { grid, start, lowMm, highMm }: Columns,
  axes: ColumnAxes,
  atMm: Vector,
  withinMm: number,
): { run: number; levelMm: number } | undefined {
  const height = dot(atMm, axes.up);
  let best: { run: number; levelMm: number } | undefined;
  let nearest = Infinity;
  let holds = false;
  for (const column of columnsAround(axes, grid, atMm, withinMm)) {
    const foot = pointOf(axes, grid, column, height);
    const asideMm = Math.hypot(foot[0] - atMm[0], foot[1] - atMm[1], foot[2] - atMm[2]);
    for (let run = start[column]!; run < start[column + 1]!; run++) {
      const belowMm = Math.max(0, height - highMm[run]!);
      const awayMm = Math.max(belowMm, lowMm[run]! - height);
      if (awayMm > (belowMm > 0 ? BELOW_TIP_STEPS : AWAY_STEPS) * grid.stepMm) continue;
      // In a slope one of them reaches up to it: that one. At a summit none does: of one column the nearest run, of columns the nearest one.
      const reaches = awayMm <= ROUNDING_MM;
      const far = asideMm + 1e-3 * awayMm;
      if ((holds && !reaches) || (holds === reaches && far >= nearest)) continue;
      holds = reaches;
      nearest = far;
      best = { run, levelMm: reaches ? Math.min(highMm[run]!, height) : highMm[run]! };
    }
  }
  return best;
}

const ROUNDING_MM = 1e-6;
