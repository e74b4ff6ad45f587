import { bad, good, type Outcome } from '../../problem';
import { canShareMemory, type Crew } from '../parallel/crew';
import { newControl, TeamStopped } from '../parallel/team';
import type { Bounds, TriangleMesh } from '../triangleMesh';
import { runFieldTask, TIMED, type BuildTask, type FieldTask, type LevelsTask } from './fieldTask';
import {
  fieldSurface,
  sharedBytes,
  sharedFloats,
  shared,
  sharedInts,
  type FieldSurface,
} from './fieldSurface';
import { exposedSurface } from './exposed';
import { cellCount, gridAround, octantGrid, type Grid } from './grid';
import { HALF_DIAGONAL, marginMm, SUMS } from './levels';
import { fromOctants, fromSample, isGoodEnough, sampledVolume, type LevelVolume } from './levelVolume';
import { LINK_PARTS } from './linkCorners';

export interface FieldOptions {
  /** Edge of the fine voxels, mm. */
  voxelMm: number;
  /** Levels that will be asked for: the grid and the seeds reach that far. Negative inside. */
  levelsMm: readonly number[];
  /** Everything below this height is left out; the grid is laid so that it costs no accuracy. */
  baseMm?: number;
  /** Helping threads; without them the caller's thread does all of it. */
  crew?: Crew;
  onProgress?: (share: number) => void;
  /** Looked at about every 10 ms; true stops the work with the code STOPPED. */
  shouldStop?: () => boolean;
  /** Called with the milliseconds of every stage, one row a thread. */
  onTimings?: (kind: FieldTask['kind'], timings: Float64Array) => void;
}

/** A standing field: signs, nearest triangles and seeds on a grid of twice the voxel. */
export interface Field {
  surface: FieldSurface;
  grid: Grid;
  voxelMm: number;
  reachMm: number;
  task: BuildTask;
  options: FieldOptions;
}

/**
 * Builds the field of a closed chain (mm). The chain may overlap itself; `inside` is where it winds once or more.
 * Errors: STOPPED.
 */
export function buildField(chain: TriangleMesh, bounds: Bounds, options: FieldOptions): Outcome<Field> {
  const size = 1 + (options.crew?.helpers ?? 0);
  const isShared = size > 1 && canShareMemory();
  const surface = fieldSurface(chain, bounds, isShared);
  const stepMm = 2 * options.voxelMm;
  const outwardMm = Math.max(0, ...options.levelsMm);
  const reachMm = Math.max(0, ...options.levelsMm.map(Math.abs)) + marginMm(stepMm);
  const grid = gridAround(surface.bounds, {
    spacingMm: stepMm,
    marginMm: outwardMm + 2 * stepMm,
    ...(options.baseMm === undefined ? {} : { baseMm: options.baseMm - surface.originMm[2] }),
  });
  let task = newBuildTask(surface, surface.triangles, grid, reachMm, options);
  if (!runTogether(task, options, [0, 0.4])) return bad('STOPPED');
  if (task.rows.some((count, place) => place % 2 === 0 && count > 0)) {
    const exposed = exposedSurface(grid, surface, task.windings[0]!, task.suspect);
    if (exposed.changed > 0) {
      const outer = {
        ...surface,
        positions: shared(exposed.positions, isShared),
        triangles: shared(exposed.triangles, isShared),
      };
      task = newBuildTask(outer, task.chain, grid, reachMm, options);
      if (!runTogether(task, options, [0.4, 0.5])) return bad('STOPPED');
    }
  }
  return good({ surface, grid, voxelMm: options.voxelMm, reachMm, task, options });
}

function newBuildTask(
  surface: FieldSurface,
  chain: Int32Array,
  grid: Grid,
  reachMm: number,
  options: FieldOptions,
): BuildTask {
  const size = 1 + (options.crew?.helpers ?? 0);
  const isShared = size > 1 && canShareMemory();
  const cells = cellCount(grid);
  const each = <T>(make: () => T): T[] => Array.from({ length: size }, make);
  return {
    kind: 'build',
    control: newControl(isShared),
    size,
    grid,
    bandMm: grid.spacingMm,
    reachSteps: Math.ceil(reachMm / grid.spacingMm + 1),
    positions: surface.positions,
    triangles: surface.triangles,
    chain,
    heads: Array.from({ length: LINK_PARTS }, () => sharedInts(surface.positions.length / 3, isShared)),
    next: sharedInts(surface.triangles.length, isShared),
    windings: each(() => new Int16Array(sharedBytes(2 * cells, isShared), 0, cells)),
    distances: each(() => sharedFloats(cells, isShared)),
    nearests: each(() => sharedInts(cells, isShared)),
    site: sharedInts(cells, isShared),
    suspect: new Uint8Array(sharedBytes(cells, isShared), 0, cells),
    rows: sharedInts(2 * size, isShared),
    timings: timings(options, size, isShared),
  };
}

function timings(options: FieldOptions, size: number, isShared: boolean): Float64Array | undefined {
  return options.onTimings === undefined
    ? undefined
    : new Float64Array(sharedBytes(8 * TIMED * size, isShared), 0, TIMED * size);
}

/** Runs a task with the crew; false when it was stopped from outside. Faults of ours are thrown on. */
function runTogether(task: FieldTask, options: FieldOptions, [from, to]: readonly [number, number]): boolean {
  if (task.size > 1) options.crew!.begin(task);
  let taken = 0;
  let asked = 0;
  let isStopped = false;
  const expected = task.kind === 'build' ? 4 : task.field.grid.nz;
  try {
    runFieldTask(task, 0, () => {
      taken++;
      const now = Date.now();
      if (now - asked < 10) return;
      asked = now;
      options.onProgress?.(from + (to - from) * Math.min(1, taken / expected));
      if (options.shouldStop?.() === true) {
        isStopped = true;
        throw new TeamStopped();
      }
    });
  } catch (fault) {
    if (isStopped) return false;
    throw fault;
  }
  if (task.timings !== undefined) options.onTimings?.(task.kind, task.timings);
  return true;
}

/** Volumes of the levels, in the order asked. Levels beyond the field's reach are a slip of ours. */
export function measureLevels(field: Field, levelsMm: readonly number[]): Outcome<LevelVolume[]> {
  const { grid, task, options } = field;
  const stepMm = grid.spacingMm;
  for (const level of levelsMm)
    if (Math.abs(level) + marginMm(stepMm) > field.reachMm + 1e-9 * stepMm)
      throw new Error(`measureLevels: expected levels within ${field.reachMm} mm, got ${level}`);
  const isShared = task.size > 1 && canShareMemory();
  const cells = cellCount(grid);
  // Then some octants near a level may lie on the other side of the surface than their voxel's center.
  const closeMm = marginMm(stepMm) + (HALF_DIAGONAL * stepMm) / 2;
  const isClose = levelsMm.some((level) => Math.abs(level) <= closeMm);
  const fineCells = cellCount(octantGrid(grid));
  const levelsTask: LevelsTask = {
    kind: 'levels',
    control: newControl(isShared),
    size: task.size,
    levelsMm: [...levelsMm],
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
      feet: sharedFloats(4 * cells, isShared),
      owner: sharedInts(cells, isShared),
    },
    octants: isClose
      ? {
          chain: task.chain,
          windings: task.windings.map(
            () => new Int16Array(sharedBytes(2 * fineCells, isShared), 0, fineCells),
          ),
        }
      : undefined,
    planeSums: new Float64Array(
      sharedBytes(8 * SUMS * levelsMm.length * grid.nz, isShared),
      0,
      SUMS * levelsMm.length * grid.nz,
    ),
    timings: timings(options, task.size, isShared),
  };
  if (!runTogether(levelsTask, options, [0.4, 0.8])) return bad('STOPPED');
  const sampled = levelsMm.map((_, l) => sampledVolume(totals(levelsTask, l), stepMm));
  if (sampled.every(isGoodEnough)) return good(sampled.map(fromSample));
  const rest: LevelsTask = { ...levelsTask, kind: 'rest', control: newControl(isShared) };
  if (!runTogether(rest, options, [0.8, 1])) return bad('STOPPED');
  return good(levelsMm.map((_, l) => fromOctants(totals(rest, l), stepMm)));
}

/** Sums of one level over the planes, in their order. */
function totals({ planeSums, levelsMm, field }: LevelsTask, level: number): Float64Array {
  const sums = new Float64Array(SUMS);
  for (let k = 0; k < field.grid.nz; k++)
    for (let place = 0; place < SUMS; place++)
      sums[place]! += planeSums[(k * levelsMm.length + level) * SUMS + place]!;
  return sums;
}
