import { bad, good, type Outcome } from '../../problem';
import { canShareMemory } from '../parallel/crew';
import { newControl } from '../parallel/team';
import type { Field } from './buildField';
import { sharedFloats } from './fieldSurface';
import type { SamplesTask } from './fieldTask';
import { cellCount, type Grid } from './grid';
import { newTimings, runTogether } from './runTogether';

/** Signed distances at the points of a grid, mm, negative inside; exact near the levels they were made for. */
export interface Samples {
  grid: Grid;
  values: Float32Array;
  /** Points as far as this are that far or farther. */
  topMm: number;
}

/**
 * Distances are kept to this many steps beyond the outermost levels: seeds reach farther in some directions than in others, and a jump from what is known
 * to what is not would ring in the interpolation of `molds/sheared.ts` down to the levels.
 */
const KEPT_STEPS = 4.2;

/** A level, or a stretch of levels, mm. */
export type SampleLevel = number | readonly [fromMm: number, toMm: number];

/**
 * The distances of a standing field at its grid points: exact within two steps of each level, elsewhere right to a step, and never
 * closer to a level than that. Levels beyond the field's reach are a slip of ours. Errors: STOPPED.
 * @param keptMm distances are kept to here at least, though only to a step
 */
export function sampleField(
  field: Field,
  levels: readonly SampleLevel[],
  keptMm: readonly number[] = [],
): Outcome<Samples> {
  const { grid, task, options, reachMm } = field;
  const fromMm = Float64Array.from(levels, (level) => (typeof level === 'number' ? level : level[0]));
  const toMm = Float64Array.from(levels, (level) => (typeof level === 'number' ? level : level[1]));
  for (const level of [...fromMm, ...toMm])
    if (Math.abs(level) > reachMm)
      throw new Error(`sampleField: expected levels within ${reachMm} mm, got ${level}`);
  const beyondMm = KEPT_STEPS * grid.spacingMm;
  const topMm = Math.min(reachMm, Math.max(...toMm, ...keptMm) + beyondMm);
  const bottomMm = Math.max(-reachMm, Math.min(...fromMm) - beyondMm);
  const isShared = canShareMemory() && task.size > 1;
  const values = sharedFloats(cellCount(grid), isShared);
  const samples: SamplesTask = {
    kind: 'samples',
    control: newControl(isShared),
    size: task.size,
    fromMm,
    toMm,
    topMm,
    bottomMm,
    field: {
      grid,
      positions: task.positions,
      triangles: task.triangles,
      heads: task.heads,
      next: task.next,
      nearest: task.nearests[0]!,
      winding: task.windings[0]!,
      site: task.site,
      samples: values,
    },
    timings: newTimings(options, task.size, isShared),
  };
  if (!runTogether(samples, options, [0.8, 1])) return bad('STOPPED');
  return good({ grid, values, topMm });
}
