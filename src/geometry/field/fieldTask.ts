import { joinTeam, type Member } from '../parallel/team';
import { markBand, mergeBands } from './band';
import { findNearLevels, type LevelsField } from './coarsePass';
import { samplePlane, type SampleField } from './samplePass';
import { seedsAlongX, seedsAlongY, seedsAlongZ } from './featureTransform';
import { sumNearLevels, sumOtherOctants } from './finePass';
import { octantGrid, type Grid } from './grid';
import { markSuspects } from './suspects';
import { addFarVoxels, newLevels, SUMS } from './levels';
import { linkCorners, LINK_PARTS } from './linkCorners';
import { leaveCrossings, sumRows } from './winding';

/** Everything the members of a team share while they build a field. */
export interface BuildTask {
  kind: 'build';
  control: Int32Array;
  size: number;
  grid: Grid;
  bandMm: number;
  /** Grid steps up to which seeds are carried. */
  reachSteps: number;
  positions: Float32Array;
  /** Surface that distances are measured from, and the closed chain that gives the signs (the same where nothing overlaps). */
  triangles: Int32Array;
  chain: Int32Array;
  heads: Int32Array[];
  next: Int32Array;
  windings: Int16Array[];
  distances: Float32Array[];
  nearests: Int32Array[];
  site: Int32Array;
  /** 1 where the surface may run through the inside. */
  suspect: Uint8Array;
  /** Two numbers a member: suspect spots, leaking rows. */
  rows: Int32Array;
  timings: Float64Array | undefined;
}

/** The same for one set of levels. */
export interface LevelsTask {
  /** `rest` counts the octants that `levels` left out, on the same arrays. */
  kind: 'levels' | 'rest';
  control: Int32Array;
  size: number;
  levelsMm: number[];
  /** So many of them, from the first, are counted by octants too. */
  withOctants: number;
  field: Omit<LevelsField, 'around' | 'octantWinding'>;
  /** Closed chain for the octants' winding, where a level passes close to the surface; one array a member. */
  octants: { chain: Int32Array; windings: Int16Array[] } | undefined;
  /** Sums of every plane: planes * levels * SUMS. Added up in the order of the planes, whoever took them. */
  planeSums: Float64Array;
  timings: Float64Array | undefined;
}

/** The same for the distances at the grid points. */
export interface SamplesTask {
  kind: 'samples';
  control: Int32Array;
  size: number;
  fromMm: Float64Array;
  toMm: Float64Array;
  topMm: number;
  bottomMm: number;
  field: SampleField;
  timings: Float64Array | undefined;
}

export type FieldTask = BuildTask | LevelsTask | SamplesTask;

/** Counters of the team. */
const [PLANES_NEAR, PLANES_SUM, PLANES_REST, SLOTS, PLANES_SAMPLES] = [0, 1, 2, 3, 4] as const;
/** Slots that a thread takes at a time. */
export const SLOT_RUN = 512;

/** One member's part of a task; every member runs this. Throws TeamStopped. */
export function runFieldTask(task: FieldTask, id: number, onTake?: () => void): void {
  const member = joinTeam(task.control, id, task.size, onTake);
  try {
    if (task.kind === 'build') build(task, member);
    else if (task.kind === 'samples') sampleAll(task, member);
    else if (task.kind === 'levels') sumLevels(task, member);
    else sumRest(task, member);
  } catch (fault) {
    member.stop();
    throw fault;
  }
}

/** Names of the timed stages, in order. */
export const BUILD_STAGES = ['link', 'winding', 'band', 'merge', 'seeds'] as const;
export const LEVEL_STAGES = ['octant winding', 'near levels', 'sums'] as const;
export const TIMED = 8;

/** Writes the time since the last call into the member's row. */
function stopwatch(timings: Float64Array | undefined, id: number): () => void {
  if (timings === undefined) return () => undefined;
  let place = TIMED * id;
  let last = performance.now();
  return () => {
    const now = performance.now();
    timings[place++] = now - last;
    last = now;
  };
}

function build(task: BuildTask, member: Member): void {
  const { grid, positions, triangles, chain, windings, distances, nearests, site } = task;
  const { id } = member;
  const lap = stopwatch(task.timings, id);
  for (let part = id; part < LINK_PARTS; part += member.size)
    linkCorners(triangles, task.heads[part]!, task.next, part);
  lap();
  inRuns(member, chain.length / 3, (run) => leaveCrossings(grid, positions, chain, windings[id]!, run));
  lap();
  distances[id]!.fill(task.bandMm);
  inRuns(member, triangles.length / 3, (run) =>
    markBand(grid, positions, triangles, distances[id]!, nearests[id]!, task.bandMm, run),
  );
  lap();
  member.meet();
  const [k0, k1] = member.share(grid.nz);
  const plane = grid.nx * grid.ny;
  const leaks = sumRows(grid, windings, [k0 * grid.ny, k1 * grid.ny]);
  task.rows[2 * id + 1] = leaks;
  mergeBands(distances, nearests, [k0 * plane, k1 * plane]);
  lap();
  member.meet();
  const surface = { ...task, nearest: nearests[0]! };
  task.rows[2 * id] = markSuspects(surface, windings[0]!, task.suspect, [k0, k1]);
  seedsAlongX(grid, nearests[0]!, site, task.reachSteps, [k0, k1]);
  seedsAlongY(grid, site, task.reachSteps, [k0, k1]);
  member.meet();
  seedsAlongZ(grid, site, member.share(grid.ny));
  lap();
  member.meet();
}

function sumLevels(task: LevelsTask, member: Member): void {
  const lap = stopwatch(task.timings, member.id);
  if (task.octants !== undefined) windOctants(task, task.octants, member);
  lap();
  const { grid } = task.field;
  const field = levelField(task);
  const levels = newLevels(task.levelsMm, task.withOctants, grid.spacingMm);
  const slots = slotTaker(member);
  forEachPlane(task, member, PLANES_NEAR, (k, sums) => {
    levels.sums = sums;
    levels.farInside.fill(0);
    levels.farOutside.fill(0);
    findNearLevels(field, levels, slots, k);
    addFarVoxels(levels, grid.spacingMm);
  });
  member.meet();
  lap();
  forEachPlane(task, member, PLANES_SUM, (k, sums) => {
    levels.sums = sums;
    sumNearLevels(field, levels, k);
  });
  lap();
  member.meet();
}

function sumRest(task: LevelsTask, member: Member): void {
  const lap = stopwatch(task.timings, member.id);
  const field = levelField(task);
  const levels = newLevels(task.levelsMm, task.withOctants, task.field.grid.spacingMm);
  forEachPlane(task, member, PLANES_REST, (k, sums) => {
    levels.sums = sums;
    sumOtherOctants(field, levels, k);
  });
  lap();
  member.meet();
}

function sampleAll(task: SamplesTask, member: Member): void {
  const lap = stopwatch(task.timings, member.id);
  const { grid } = task.field;
  const { nx, ny } = grid;
  const ranges = { ...task, around: Int32Array.of(1, -1, nx, -nx, nx * ny, -nx * ny) };
  for (let k = member.take(PLANES_SAMPLES); k < grid.nz; k = member.take(PLANES_SAMPLES))
    samplePlane(task.field, ranges, k);
  lap();
  member.meet();
}

/** Hands out the planes, each with its own row of sums. */
function forEachPlane(
  task: LevelsTask,
  member: Member,
  counter: number,
  work: (k: number, sums: Float64Array) => void,
): void {
  const { grid } = task.field;
  const first = Math.max(1, grid.firstPlane);
  const width = SUMS * task.levelsMm.length;
  for (let k = first + member.take(counter); k < grid.nz - 1; k = first + member.take(counter))
    work(k, task.planeSums.subarray(width * k, width * (k + 1)));
}

function windOctants(
  task: LevelsTask,
  { chain, windings }: NonNullable<LevelsTask['octants']>,
  member: Member,
): void {
  const fine = octantGrid(task.field.grid);
  leaveCrossings(fine, task.field.positions, chain, windings[member.id]!, member.share(chain.length / 3));
  member.meet();
  const [k0, k1] = member.share(fine.nz);
  sumRows(fine, windings, [k0 * fine.ny, k1 * fine.ny]);
  member.meet();
}

const levelField = (task: LevelsTask): LevelsField => ({
  ...task.field,
  around: neighbors(task.field.grid),
  octantWinding: task.octants?.windings[0],
});

/** Triangles between two looks at whether to stop: a few milliseconds of work. */
export const RUN = 1 << 15;

/** This member's share of `total`, in runs. */
function inRuns(member: Member, total: number, work: (run: readonly [number, number]) => void): void {
  const [from, to] = member.share(total);
  for (let at = from; at < to; at += RUN) {
    member.look();
    work([at, Math.min(to, at + RUN)]);
  }
}

/** Where the 26 neighbors of a grid point stand. */
function neighbors({ nx, ny }: Grid): Int32Array {
  const places: number[] = [];
  for (let k = -1; k <= 1; k++)
    for (let j = -1; j <= 1; j++)
      for (let i = -1; i <= 1; i++) if (i !== 0 || j !== 0 || k !== 0) places.push((k * ny + j) * nx + i);
  return Int32Array.from(places);
}

/** Slots in runs, so that threads seldom meet at the counter. */
function slotTaker(member: Member): { take(): number } {
  let next = 0;
  let end = 0;
  return {
    take() {
      if (next === end) {
        next = member.take(SLOTS, SLOT_RUN);
        end = next + SLOT_RUN;
      }
      return next++;
    },
  };
}
