import type { Estimate } from '../../estimate';
import {
  buildField,
  distanceFunction,
  measureSolid,
  placeMesh,
  type ScanFile,
  type TriangleMesh,
} from '../../geometry';
import { bad, finding, good, type Outcome, type Problem } from '../../problem';
import { hollowCavityCm3 } from '../../yield';
import { chooseVoxel } from '../chooseVoxel';
import { measureOffsets } from '../offsets';
import { FILE_UNITS, type FileUnit } from '../scale';
import type { SettledSolid } from '../settleSolid';
import type { SizeOptions } from '../sizeOptions';
import { settleForSize, sizeSettled, type Size } from '../sizeScan';
import { MM3_PER_CM3 } from '../sizeDoubts';

/** What stands in the cavity. */
export interface HollowWish {
  /** A core as a scan of its own, in the units and axes of the outer one. */
  core?: ScanFile;
  /** Or a core as far inside the outer surface, mm. */
  coreOffsetMm?: number;
  armatureCm3?: number;
}

/** What the foam fills of a cavity with a core. */
export interface HollowCavity {
  size: Size;
  cavityCm3: Estimate;
  coreCm3?: Estimate;
  /** Thinnest wall between core and outer surface, where it is, and whether the core stays inside. */
  wall?: { thinnestMm: number; atMm: readonly [number, number, number]; isInside: boolean };
  findings: Problem[];
}

/** A wall thinner than this tears on the way out; thinner than the second look twice: common practice, no source. */
const [STOP_WALL_MM, LOOK_WALL_MM] = [6, 10];

/** Distances of the core's points are known up to here; a wall thicker than this is thick enough. Chosen here. */
const REACH_MM = 60;

/** Errors: those of `sizeScan`, of `measureSolid` for the core, INPUT_CONFLICT, and CORE_FILLS_MOLD. */
export function hollowCavity(outer: ScanFile, options: SizeOptions, wish: HollowWish): Outcome<HollowCavity> {
  if (wish.core !== undefined && wish.coreOffsetMm !== undefined)
    return bad('INPUT_CONFLICT', { first: 'core', second: 'coreOffset' });
  const settled = settleForSize(outer, options);
  if (!settled.ok) return settled;
  const size = sizeSettled(outer, settled.value, options);
  if (!size.ok) return size;
  const core = coreOf(settled.value, options, wish);
  if (!core.ok) return core;
  const { coreCm3, wall, findings } = core.value;
  const cavity = hollowCavityCm3({
    outerCm3: size.value.volumeCm3,
    ...(coreCm3 === undefined ? {} : { coreCm3 }),
    ...(wish.armatureCm3 === undefined ? {} : { armatureCm3: { value: wish.armatureCm3 } }),
  });
  if (!cavity.ok) return cavity;
  return good({
    size: size.value,
    cavityCm3: { ...cavity.value, from: size.value.volumeCm3.from },
    ...(coreCm3 === undefined ? {} : { coreCm3 }),
    ...(wall === undefined ? {} : { wall }),
    findings,
  });
}

/** A core, the wall around it, and what is to be said of its file and of that wall. */
export interface Core {
  coreCm3?: Estimate;
  /** The unit that its own file states, where it does: that of the outer scan is not asked then. */
  ownUnit?: FileUnit;
  wall?: HollowCavity['wall'];
  findings: Problem[];
}

function coreOf(settled: SettledSolid, options: SizeOptions, wish: HollowWish): Outcome<Core> {
  if (wish.core !== undefined) return scannedCore(settled, options, wish.core);
  if (wish.coreOffsetMm === undefined) return good({ findings: [] });
  const { coreOffsetMm } = wish;
  if (!(coreOffsetMm > 0 && coreOffsetMm < Infinity))
    return bad('INPUT_OUT_OF_BOUNDS', {
      input: 'coreOffset',
      value: coreOffsetMm,
      low: 0,
      high: 1000,
      unit: 'mm',
    });
  const offsets = measureOffsets(settled.solid, settled.scale, {
    offsetsMm: [-coreOffsetMm],
    ...fieldOf(options),
  });
  if (!offsets.ok) return offsets;
  return good({
    coreCm3: offsets.value.volumes[0]!.volumeCm3,
    findings: wallFindings({ thinnestMm: coreOffsetMm, isInside: true }),
  });
}

const fieldOf = ({ accuracy, voxelMm, crew, shouldStop }: SizeOptions) => ({
  ...(accuracy === undefined ? {} : { accuracy }),
  ...(voxelMm === undefined ? {} : { voxelMm }),
  ...(crew === undefined ? {} : { crew }),
  ...(shouldStop === undefined ? {} : { shouldStop }),
});

/**
 * The volume of a core from its own scan, on the axes of the outer one and in its units where the file states none, and the thinnest wall
 * around it. Errors: those of `measureSolid`, and of the field.
 */
export function scannedCore(settled: SettledSolid, options: SizeOptions, scan: ScanFile): Outcome<Core> {
  const mmPerUnit = scan.unit === undefined ? settled.scale.mmPerUnit : FILE_UNITS[scan.unit];
  const placed = placeMesh(scan.mesh, { up: settled.up, mmPerUnit });
  const solid = measureSolid(placed, { coordinateStepMm: scan.coordinateStep * mmPerUnit });
  if (!solid.ok) return solid;
  const { volumeMm3, doubt } = solid.value;
  const half = Math.hypot(
    doubt.capsMm3,
    doubt.islandsMm3,
    doubt.overlapMm3,
    doubt.coordinatesMm3,
    doubt.weldMm3,
    scan.unit === undefined ? 3 * settled.scale.doubtShare * volumeMm3 : 0,
  );
  const wall = wallAround(settled, options, solid.value.chain);
  if (!wall.ok) return wall;
  return good({
    coreCm3: {
      value: volumeMm3 / MM3_PER_CM3,
      low: Math.max(0, volumeMm3 - half) / MM3_PER_CM3,
      high: (volumeMm3 + half) / MM3_PER_CM3,
      from: scan.unit === undefined && settled.scale.from === 'taped' ? 'taped' : 'scanned',
    },
    ...(scan.unit === undefined ? {} : { ownUnit: scan.unit }),
    wall: wall.value,
    findings: [...scan.findings, ...wallFindings(wall.value)],
  });
}

/** The least distance from the core's surface out to the outer one; points on the board do not count, as the foam stands on it. */
function wallAround(
  { solid }: SettledSolid,
  options: SizeOptions,
  core: TriangleMesh,
): Outcome<NonNullable<HollowCavity['wall']>> {
  const voxel = chooseVoxel({
    bounds: solid.bounds,
    offsetsMm: [-REACH_MM],
    thinnestMm: undefined,
    accuracy: options.accuracy ?? 'normal',
    ...(options.voxelMm === undefined ? {} : { voxelMm: options.voxelMm }),
  });
  if (!voxel.ok) return voxel;
  const field = buildField(solid.chain, solid.bounds, {
    voxelMm: voxel.value.voxelMm,
    levelsMm: [-REACH_MM],
    ...(options.crew === undefined ? {} : { crew: options.crew }),
    ...(options.shouldStop === undefined ? {} : { shouldStop: options.shouldStop }),
  });
  if (!field.ok) return field;
  const distanceAt = distanceFunction(field.value);
  const boardMm = solid.bounds.min[2];
  const clearMm = 0.01 * (solid.bounds.max[2] - boardMm);
  let thinnestMm = Infinity;
  let outmostMm = -Infinity;
  let atMm: readonly [number, number, number] = [0, 0, 0];
  forEachPoint(core, (x, y, z) => {
    const signed = distanceAt(x, y, z);
    // Where a core stands in the opening it meets the board, and the board is no wall.
    if (z - boardMm <= clearMm) return;
    // Nearer to the board than to any wall, a point says nothing of the wall.
    if (-signed >= z - boardMm - clearMm) return;
    outmostMm = Math.max(outmostMm, signed);
    if (-signed >= thinnestMm) return;
    thinnestMm = -signed;
    atMm = [x, y, z];
  });
  return good({ thinnestMm: Math.min(thinnestMm, REACH_MM), atMm, isInside: !(outmostMm > 0) });
}

/** Corners and middles of the core's facets; a facet longer than this is looked at in its quarters, mm. */
const LONG_MM = 4;

function forEachPoint(
  { positions: p, triangles }: TriangleMesh,
  each: (x: number, y: number, z: number) => void,
): void {
  const visit = (a: Point, b: Point, c: Point, depth: number): void => {
    each((a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3, (a[2] + b[2] + c[2]) / 3);
    if (depth === 0 || Math.max(apart(a, b), apart(b, c), apart(c, a)) <= LONG_MM) return;
    const [ab, bc, ca] = [middle(a, b), middle(b, c), middle(c, a)];
    for (const corner of [ab, bc, ca]) each(...corner);
    for (const [d, e, f] of [
      [a, ab, ca],
      [ab, b, bc],
      [ca, bc, c],
      [ab, bc, ca],
    ] as const)
      visit(d, e, f, depth - 1);
  };
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [0, 1, 2].map((e): Point => {
      const v = 3 * triangles[t + e]!;
      return [p[v]!, p[v + 1]!, p[v + 2]!];
    });
    for (const corner of corners) each(...corner);
    visit(corners[0]!, corners[1]!, corners[2]!, 6);
  }
}

type Point = readonly [number, number, number];
const middle = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

function wallFindings({ thinnestMm, isInside }: { thinnestMm: number; isInside: boolean }): Problem[] {
  if (!isInside) return [finding('CORE_OUTSIDE', 'stop', { outsideMm: -thinnestMm })];
  const status = thinnestMm < STOP_WALL_MM ? 'stop' : thinnestMm < LOOK_WALL_MM ? 'look' : 'fine';
  return [finding('CORE_WALL', status, { thinnestMm, stopMm: STOP_WALL_MM, lookMm: LOOK_WALL_MM })];
}
