import type { Assumption, Estimate, Source } from '../estimate';
import { good, type Outcome, type Problem } from '../problem';
import {
  findFloor,
  silhouetteOf,
  type Bounds,
  type CutPlane,
  type Floor,
  type Rim,
  type ScanFile,
  type SolidMeasure,
  type TriangleMesh,
  type UpAxis,
  type Vector,
} from '../geometry';
import { settleSolid, type SettledSolid } from './settleSolid';
import type { Scale } from './scale';
import { shellsInFile, type ScanShell } from './scanPieces';
import type { SizeOptions } from './sizeOptions';
import { measureOffsets, type Offsets } from './offsets';
import { doubtsOf, MM3_PER_CM3, type SizeDoubts } from './sizeDoubts';
import { sizeFindings } from './sizeFindings';

/** The size of a scan: what it holds, how sure that is, and what had to be done to find out. */
export interface Size {
  volumeCm3: Estimate;
  areaCm2: number;
  /** x, y, z of the placed piece: wide, deep, tall. */
  extentsMm: [number, number, number];
  /** Of the pieces that count, on the file's own zero, Z up. */
  boundsMm: Bounds;
  /** Solids that stand by themselves, where there is more than one. */
  shells: ScanShell[];
  triangles: number;
  pieces: number;
  holes: number;
  rims: Rim[];
  closed: boolean;
  method: 'exact' | 'field';
  scale: Scale;
  up: UpAxis;
  doubts: SizeDoubts;
  floor?: Floor;
  /** Only where offsets were asked for and the scan has a surface to measure them from. */
  offsets?: Offsets;
  /** Only where it was asked for. */
  shadowCm2?: number;
  /** The cuts as they were made, mm on the placed piece's own zero. */
  cuts: CutPlane[];
  assumptions: Assumption[];
  findings: Problem[];
}

/** How much of the progress is told when the solid is settled and offsets are still to come. Chosen here. */
const SOLID_PROGRESS = 0.4;

/**
 * The volume of a scan with its range, in cm3. Errors: those of `settleSolid`, and of `measureOffsets` where offsets are asked
 * for.
 *
 * @example
 * const scan = readScan({ bytes, name: 'troll.stl' });
 * const size = scan.ok ? sizeScan(scan.value, { up: '+y', taped: [{ along: 'tall', lengthMm: 290 }] }) : scan;
 */
export function sizeScan(scan: ScanFile, options: SizeOptions = {}): Outcome<Size> {
  const settled = settleForSize(scan, options);
  return settled.ok ? sizeSettled(scan, settled.value, options) : settled;
}

/** A scan settled as the first part of its size: its progress leaves room for the offsets. Errors: those of `settleSolid`. */
export function settleForSize(scan: ScanFile, options: SizeOptions): Outcome<SettledSolid> {
  const share = wantsOffsets(options) ? SOLID_PROGRESS : 1;
  return settleSolid(scan, { ...options, onProgress: (done) => options.onProgress?.(share * done) });
}

/** The same for a scan that is settled already. Errors: those of `measureOffsets`. */
export function sizeSettled(
  scan: ScanFile,
  { solid, scale, up, placed, planes, removedCm3, pieceEffects }: SettledSolid,
  options: SizeOptions,
): Outcome<Size> {
  const cuts = options.cuts ?? [];
  const offsets = offsetsOf(solid, scale, options);
  if (!offsets.ok) return offsets;
  const doubts = doubtsOf(solid, scale);
  const floor = cuts.length === 0 ? floorUnder(solid, placed) : undefined;
  const shells = shellsInFile(solid, scan);
  const size: Size = {
    volumeCm3: volumeEstimate(solid, doubts, scale.from),
    areaCm2: solid.areaMm2 / 100,
    extentsMm: solid.extentsMm,
    boundsMm: solid.bounds,
    shells,
    triangles: scan.trianglesRead,
    pieces: solid.pieces,
    holes: solid.rims.filter((rim) => rim.kind === 'hole').length,
    rims: solid.rims,
    closed: solid.closed,
    method: solid.method,
    scale,
    up,
    doubts,
    assumptions: [
      ...(options.up === undefined ? [UP_ASSUMED] : []),
      ...(wantsOffsets(options) && options.accuracy === undefined && options.voxelMm === undefined
        ? [ACCURACY_ASSUMED]
        : []),
    ],
    cuts: planes,
    findings: [],
    ...(offsets.value === undefined ? {} : { offsets: offsets.value }),
    ...(floor === undefined ? {} : { floor }),
    ...(options.shadowAlong === undefined ? {} : { shadowCm2: shadowOf(solid, options.shadowAlong) }),
  };
  const findings = sizeFindings({
    scan,
    solid,
    scale,
    doubts,
    cuts,
    floor,
    removedCm3,
    shells,
    pieceEffects,
    offsets: offsets.value,
    offsetsWanted: wantsOffsets(options),
  });
  return good({ ...size, findings });
}

/** A table that is left out as a piece of its own is none any more. */
const floorUnder = (
  { byRole, chain, scanBounds, isMainTurned }: SolidMeasure,
  placed: TriangleMesh,
): Floor | undefined =>
  byRole['left out'].count > 0
    ? findFloor(chain)
    : findFloor(placed, { bounds: scanBounds, isInsideOut: isMainTurned });

function shadowOf({ chain }: SolidMeasure, along: 'x' | 'y' | 'z'): number {
  const direction = [0, 0, 0].map((_, axis) => Number('xyz'[axis] === along)) as unknown as Vector;
  return silhouetteOf(chain, { direction }).areaMm2 / 100;
}

const ACCURACY_ASSUMED: Assumption = { name: 'accuracy', value: 'normal', unit: '', from: 'assumed' };
const UP_ASSUMED: Assumption = { name: 'up', value: '+z', unit: '', from: 'assumed' };

const wantsOffsets = ({ offsetsMm = [] }: SizeOptions): boolean => offsetsMm.length > 0;

/** A soup has no surface that offsets could be measured from: then there are none, and a finding says so. */
function offsetsOf(solid: SolidMeasure, scale: Scale, options: SizeOptions): Outcome<Offsets | undefined> {
  const { offsetsMm = [], accuracy, voxelMm, crew, shouldStop, onProgress } = options;
  if (!wantsOffsets(options) || solid.soup !== undefined) return good(undefined);
  return measureOffsets(solid, scale, {
    offsetsMm,
    ...(accuracy === undefined ? {} : { accuracy }),
    ...(voxelMm === undefined ? {} : { voxelMm }),
    ...(crew === undefined ? {} : { crew }),
    ...(shouldStop === undefined ? {} : { shouldStop }),
    onProgress: (share) => onProgress?.(SOLID_PROGRESS + (1 - SOLID_PROGRESS) * share),
  });
}

function volumeEstimate(solid: SolidMeasure, doubts: SizeDoubts, scaleFrom: Scale['from']): Estimate {
  const value = solid.volumeMm3 / MM3_PER_CM3;
  const half = Math.hypot(
    doubts.caps,
    doubts.scale,
    doubts.cut,
    doubts.islands,
    doubts.overlaps,
    doubts.coordinates,
    doubts.weld,
  );
  const from: Source = scaleFrom === 'taped' ? 'taped' : 'scanned';
  return { value, low: Math.max(0, value - half), high: value + half, from };
}
