import type { TriangleMesh } from '../triangleMesh';
import { dot, type Vector } from '../vector';
import { ROUGHNESS_MM3 } from './airTraps';
import { pointOf } from './columns';
import { lipHeights, type Mouth } from './mouth';
import { isCutAway, runsInMouth } from './openRuns';
import { pourColumns, type PourColumns } from './pourColumns';
import { highestFirst } from './runLinks';
import type { Pockets } from './pocket';
import { sweepDown } from './sweepDown';

/** Columns along one axis of the mesh, ready to be looked at from any direction near it. */
export interface AxisRuns {
  pour: PourColumns;
  /** Foot of every run's column: its point at height 0. */
  footX: Float64Array;
  footY: Float64Array;
  footZ: Float64Array;
  inMouth: number[];
  /** Of those: which end within the hole above, which below, along the column. */
  isCutHigh: boolean[];
  isCutLow: boolean[];
}

export function axisRuns(chain: TriangleMesh, axis: 0 | 1 | 2, stepMm: number, mouth: Mouth): AxisRuns {
  const up = [0, 0, 0].map((_, k) => Number(k === axis)) as unknown as Vector;
  const pour = pourColumns(chain, up, stepMm);
  const { columns, body } = pour;
  const feet = Array.from({ length: columns.count }, (_, run) =>
    pointOf(body.axes, columns.grid, columns.column[run]!, 0),
  );
  const inMouth = runsInMouth(columns, body.axes, mouth);
  return {
    pour,
    footX: Float64Array.from(feet, ([x]) => x),
    footY: Float64Array.from(feet, ([, y]) => y),
    footZ: Float64Array.from(feet, ([, , z]) => z),
    inMouth,
    isCutHigh: inMouth.map((run) => isCutAway(columns, body.axes, mouth, run, columns.highMm[run]!)),
    isCutLow: inMouth.map((run) => isCutAway(columns, body.axes, mouth, run, columns.lowMm[run]!)),
  };
}

/** Tops of two neighbors farther apart than this many steps along the column are a cliff: they join where they overlap. */
const CLIFF_STEPS = 2;

/** The pockets for a direction, by the columns of the axis nearest to it. */
export function pocketsAlong(all: readonly AxisRuns[], up: Vector, mouth: Mouth): Pockets {
  const along = ({ pour }: AxisRuns): number => dot(pour.body.axes.up, up);
  const runs = all.reduce((best, one) => (Math.abs(along(one)) > Math.abs(along(best)) + 1e-12 ? one : best));
  const rise = along(runs);
  const { columns, links } = runs.pour;
  const { count, grid } = columns;
  // The end of a run that is up, along the column.
  const [ends, starts] = rise > 0 ? [columns.highMm, columns.lowMm] : [columns.lowMm, columns.highMm];
  const foot = new Float64Array(count);
  const topMm = new Float64Array(count);
  const bottomMm = new Float64Array(count);
  for (let run = 0; run < count; run++) {
    foot[run] = up[0] * runs.footX[run]! + up[1] * runs.footY[run]! + up[2] * runs.footZ[run]!;
    topMm[run] = foot[run]! + rise * ends[run]!;
    bottomMm[run] = foot[run]! + rise * starts[run]!;
  }
  const joined = { a: links.a, b: links.b, levelMm: new Float64Array(links.count), count: links.count };
  const cliffMm = CLIFF_STEPS * grid.stepMm;
  for (let i = 0; i < links.count; i++) {
    const [a, b] = [links.a[i]!, links.b[i]!];
    const isCliff = Math.abs(ends[a]! - ends[b]!) > cliffMm;
    const end = rise > 0 === ends[a]! < ends[b]! ? ends[a]! : ends[b]!;
    joined.levelMm[i] = isCliff ? Math.min(foot[a]!, foot[b]!) + rise * end : Math.min(topMm[a]!, topMm[b]!);
  }
  const { highMm: lipMm } = lipHeights(mouth, up);
  const isCut = rise > 0 ? runs.isCutHigh : runs.isCutLow;
  const openTo = (run: number, i: number): number => (isCut[i]! ? topMm[run]! : Math.min(topMm[run]!, lipMm));
  const open = { run: runs.inMouth, levelMm: runs.inMouth.map(openTo) };
  const heights = { count, topMm, bottomMm, crossMm2: grid.stepMm ** 2 / Math.abs(rise) };
  return sweepDown(heights, joined, open, {
    leastMm3: ROUGHNESS_MM3,
    order: highestFirst(joined, true),
    isRough: true,
  });
}
