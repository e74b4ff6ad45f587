import { bad, good, type Outcome } from '../../problem';
import { newControl } from '../parallel/team';
import { canShareMemory } from '../parallel/crew';
import type { Field } from './buildField';
import { SLOT_RUN, type LevelsTask } from './fieldTask';
import { sharedBytes, sharedFloats, sharedInts } from './fieldSurface';
import { cellCount, octantGrid } from './grid';
import { HALF_DIAGONAL, marginMm, SUM, SUMS } from './levels';
import { fromOctants, fromSample, isGoodEnough, sampledVolume, type LevelVolume } from './levelVolume';
import { newTimings, runTogether } from './runTogether';

/** Volumes of the levels, in the order asked. Levels beyond the field's reach are a slip of ours. Errors: STOPPED. */
export function measureLevels(field: Field, levelsMm: readonly number[]): Outcome<LevelVolume[]> {
  const measured = measureAndCheck(field, levelsMm, []);
  return measured.ok ? good(measured.value.volumes) : measured;
}

/**
 * The same, and beside them the volumes of `checksMm` by the voxels alone, mm3: quick, without a doubt of their own, right to some 1e-5 on
 * bodies of many voxels.
 */
export function measureAndCheck(
  field: Field,
  levelsMm: readonly number[],
  checksMm: readonly number[],
): Outcome<{ volumes: LevelVolume[]; checksMm3: number[] }> {
  const { grid, options, reachMm } = field;
  const stepMm = grid.spacingMm;
  const all = [...levelsMm, ...checksMm];
  for (const level of all)
    if (Math.abs(level) + marginMm(stepMm) > reachMm + 1e-9 * stepMm)
      throw new Error(`measureLevels: expected levels within ${reachMm} mm, got ${level}`);
  const task = newLevelsTask(field, all, levelsMm.length);
  if (!runTogether(task, options, [0.4, 0.8])) return bad('STOPPED');
  const sums = all.map((_, l) => totals(task, l));
  const sampled = sums.map((one) => sampledVolume(one, stepMm));
  const checksMm3 = sampled.slice(levelsMm.length).map(({ coarseMm3 }) => coarseMm3);
  const poor = levelsMm.filter((_, l) => !isGoodEnough(sampled[l]!, stepMm / 2));
  if (poor.length === 0) {
    options.onProgress?.(1);
    return good({ volumes: levelsMm.map((_, l) => fromSample(sampled[l]!)), checksMm3 });
  }
  const isShared = canShareMemory() && task.size > 1;
  const rest: LevelsTask = {
    ...task,
    kind: 'rest',
    control: newControl(isShared),
    levelsMm: poor,
    withOctants: poor.length,
    planeSums: newPlaneSums(field, poor.length),
    timings: newTimings(options, task.size, isShared),
  };
  if (!runTogether(rest, options, [0.8, 1])) return bad('STOPPED');
  options.onProgress?.(1);
  const volumes = levelsMm.map((level, l) => {
    if (!poor.includes(level)) return fromSample(sampled[l]!);
    sums[l]![SUM.rest] = totals(rest, poor.indexOf(level))[SUM.rest]!;
    return fromOctants(sums[l]!, stepMm);
  });
  return good({ volumes, checksMm3 });
}

function newLevelsTask(field: Field, levelsMm: readonly number[], withOctants: number): LevelsTask {
  const { grid, task, options } = field;
  const isShared = task.size > 1 && canShareMemory();
  const cells = cellCount(grid);
  const slots = cells + SLOT_RUN * task.size;
  // Then some octants near a level may lie on the other side of the surface than their voxel's center.
  const closeMm = marginMm(grid.spacingMm) + (HALF_DIAGONAL * grid.spacingMm) / 2;
  const isClose = levelsMm.slice(0, withOctants).some((level) => Math.abs(level) <= closeMm);
  const octants = cellCount(octantGrid(grid));
  return {
    kind: 'levels',
    control: newControl(isShared),
    size: task.size,
    levelsMm: [...levelsMm],
    withOctants,
    field: {
      grid,
      positions: task.positions,
      triangles: task.triangles,
      heads: task.heads,
      next: task.next,
      nearest: task.nearests[0]!,
      winding: task.windings[0]!,
      site: task.site,
      slotOf: sharedInts(cells, isShared),
      feet: sharedFloats(4 * slots, isShared),
      owner: sharedInts(slots, isShared),
    },
    octants: isClose
      ? {
          chain: task.chain,
          windings: task.windings.map(() => new Int16Array(sharedBytes(2 * octants, isShared), 0, octants)),
        }
      : undefined,
    planeSums: newPlaneSums(field, levelsMm.length),
    timings: newTimings(options, task.size, isShared),
  };
}

function newPlaneSums({ grid, task }: Field, levels: number): Float64Array {
  const length = SUMS * levels * grid.nz;
  return new Float64Array(sharedBytes(8 * length, canShareMemory() && task.size > 1), 0, length);
}

/** Sums of one level over the planes, in their order. */
function totals({ planeSums, levelsMm, field }: LevelsTask, level: number): Float64Array {
  const sums = new Float64Array(SUMS);
  for (let k = 0; k < field.grid.nz; k++)
    for (let place = 0; place < SUMS; place++)
      sums[place]! += planeSums[(k * levelsMm.length + level) * SUMS + place]!;
  return sums;
}
