import { bad, good, type Outcome } from '../../problem';
import { canShareMemory } from '../parallel/crew';
import { newControl } from '../parallel/team';
import type { Bounds, TriangleMesh } from '../triangleMesh';
import type { BuildTask } from './fieldTask';
import {
  fieldSurface,
  frameOf,
  sharedBytes,
  sharedFloats,
  shared,
  sharedInts,
  type FieldSurface,
} from './fieldSurface';
import type { FieldOptions } from './fieldOptions';
import { exposedSurface } from './exposed';
import { cellCount, gridAround, type Grid } from './grid';
import { marginMm } from './levels';
import { newTimings, runTogether, watched } from './runTogether';
import { LINK_PARTS } from './linkCorners';

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
 * Errors: STOPPED; SELF_INTERSECT for a chain that is not closed, or lies on itself in more layers than can be counted (32 767).
 */
export function buildField(chain: TriangleMesh, bounds: Bounds, options: FieldOptions): Outcome<Field> {
  const size = 1 + (options.crew?.helpers ?? 0);
  const isShared = size > 1 && canShareMemory();
  const surface = fieldSurface(chain, frameOf(bounds, options.baseMm !== undefined), isShared);
  const stepMm = 2 * options.voxelMm;
  const outwardMm = Math.max(0, ...options.levelsMm);
  const reachMm = Math.max(0, ...options.levelsMm.map(Math.abs)) + marginMm(stepMm);
  const grid = gridAround(surface.bounds, {
    spacingMm: stepMm,
    marginMm: outwardMm + 2 * stepMm,
    ...(options.baseMm === undefined ? {} : { baseMm: options.baseMm - surface.frame.originMm[2] }),
  });
  const seen = (facets: FieldSurface): FieldSurface => withoutBase(facets, options, isShared);
  let task = newBuildTask(seen(surface), surface.triangles, grid, reachMm, options);
  if (!runTogether(task, options, [0, 0.3])) return bad('STOPPED');
  const leaks = task.rows.some((count, place) => place % 2 === 1 && count > 0);
  if (leaks) return bad('SELF_INTERSECT', { part: 'layers' });
  if (task.rows.some((count, place) => place % 2 === 0 && count > 0)) {
    const { windings, suspect } = task;
    const exposed = watched(options, [0.3, 0.35], surface.triangles.length / 3, (onStep) =>
      exposedSurface(grid, surface, windings[0]!, suspect, onStep),
    );
    if (exposed === undefined) return bad('STOPPED');
    if (exposed.changed > 0) {
      const outer = {
        ...surface,
        positions: shared(exposed.positions, isShared),
        triangles: shared(exposed.triangles, isShared),
      };
      task = newBuildTask(seen(outer), task.chain, grid, reachMm, options);
      if (!runTogether(task, options, [0.35, 0.4])) return bad('STOPPED');
    }
  }
  return good({ surface, grid, voxelMm: options.voxelMm, reachMm, task, options });
}

/** Facets with all corners this close to the base lie on it, mm: single precision is ten times as close. */
const ON_BASE_MM = 1e-4;

/**
 * Outside of a body and over its base no point is nearest to the inside of the face on the base (the way there would have to come from below), so for
 * levels around the body that face is not looked at. It must not be where a ring stands on the base: its face is closed by two discs, one turned over,
 * and over the hole of the ring they bound nothing, yet things would be near to them.
 */
function withoutBase(
  surface: FieldSurface,
  { baseMm, levelsMm }: FieldOptions,
  isShared: boolean,
): FieldSurface {
  if (baseMm === undefined || levelsMm.some((level) => level < 0)) return surface;
  const { positions: p, triangles, frame } = surface;
  const baseZ = baseMm - frame.originMm[2] + ON_BASE_MM;
  const isOn = (corner: number): boolean => p[3 * triangles[corner]! + 2]! <= baseZ;
  const kept: number[] = [];
  for (let t = 0; t < triangles.length; t += 3)
    if (!(isOn(t) && isOn(t + 1) && isOn(t + 2)))
      kept.push(triangles[t]!, triangles[t + 1]!, triangles[t + 2]!);
  return kept.length === 0 ? surface : { ...surface, triangles: shared(Int32Array.from(kept), isShared) };
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
    timings: newTimings(options, size, isShared),
  };
}
