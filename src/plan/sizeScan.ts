import type { Assumption, Estimate, Source } from '../estimate';
import { bad, good, type Outcome, type Problem } from '../problem';
import {
  cutMesh,
  findFloor,
  measureSolid,
  placedBounds,
  placeMesh,
  type CutPlane,
  type Floor,
  type Rim,
  type ScanFile,
  type SolidMeasure,
  type TriangleMesh,
  type UpAxis,
} from '../geometry';
import { settleScale, type FileUnit, type Scale, type Span, type TapedExtent } from './scale';
import { planeInMm, type Cut } from './cuts';
import { doubtsOf, MM3_PER_CM3, type SizeDoubts } from './sizeDoubts';
import { sizeFindings } from './sizeFindings';

export interface SizeOptions {
  fileUnit?: FileUnit;
  taped?: readonly TapedExtent[];
  span?: Span;
  /** Which axis of the file is up as poured; +z is assumed, and said, when it is not given. */
  up?: UpAxis;
  cuts?: readonly Cut[];
  onProgress?: (share: number) => void;
}

/** The size of a scan: what it holds, how sure that is, and what had to be done to find out. */
export interface Size {
  volumeCm3: Estimate;
  areaCm2: number;
  /** x, y, z of the placed piece: wide, deep, tall. */
  extentsMm: [number, number, number];
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
  /** The cuts as they were made, mm on the placed piece's own zero. */
  cuts: CutPlane[];
  assumptions: Assumption[];
  findings: Problem[];
}

/**
 * The volume of a scan with its range, in cm3. Errors: those of `settleScale` and `measureSolid`, and CUT_EMPTY.
 *
 * @example
 * const scan = readScan({ bytes, name: 'troll.stl' });
 * const size = scan.ok ? sizeScan(scan.value, { up: '+y', taped: [{ along: 'tall', lengthMm: 290 }] }) : scan;
 */
export function sizeScan(scan: ScanFile, options: SizeOptions = {}): Outcome<Size> {
  const up = options.up ?? '+z';
  const cuts = options.cuts ?? [];
  const scale = settleScale(scan.mesh, { ...options, up, cuts });
  if (!scale.ok) return scale;
  options.onProgress?.(0.2);
  const placed = placeMesh(scan.mesh, { up, mmPerUnit: scale.value.mmPerUnit });
  const coordinateStepMm = scan.coordinateStep * scale.value.mmPerUnit;
  const planes = planesOf(scan.mesh, up, cuts, scale.value.mmPerUnit);
  const cut = measureCut(placed, planes, coordinateStepMm, (share) =>
    options.onProgress?.(0.2 + 0.8 * share),
  );
  if (!cut.ok) return withFloor(cut, placed, cuts, scale.value.mmPerUnit);
  const { solid, removedCm3 } = cut.value;
  const doubts = doubtsOf(solid, scale.value);
  const floor =
    cuts.length === 0
      ? findFloor(placed, { bounds: solid.scanBounds, isInsideOut: solid.isMainTurned })
      : undefined;
  const size: Size = {
    volumeCm3: volumeEstimate(solid, doubts, scale.value.from),
    areaCm2: solid.areaMm2 / 100,
    extentsMm: solid.extentsMm,
    triangles: scan.trianglesRead,
    pieces: solid.pieces,
    holes: solid.rims.filter((rim) => rim.kind === 'hole').length,
    rims: solid.rims,
    closed: solid.closed,
    method: solid.method,
    scale: scale.value,
    up,
    doubts,
    assumptions: options.up === undefined ? [UP_ASSUMED] : [],
    cuts: planes,
    findings: [],
    ...(floor === undefined ? {} : { floor }),
  };
  const findings = sizeFindings({ scan, solid, scale: scale.value, doubts, cuts, floor, removedCm3 });
  return good({ ...size, findings });
}

/** A scan that is too open for a volume may be a piece on its table: then the cut that would help stands in the refusal. */
function withFloor(
  refused: { ok: false; problem: Problem },
  placed: TriangleMesh,
  cuts: readonly Cut[],
  mmPerUnit: number,
): Outcome<never> {
  const floor = cuts.length === 0 && refused.problem.code === 'NOT_CLOSED' ? findFloor(placed) : undefined;
  if (floor === undefined) return refused;
  const values = { ...refused.problem.values, floorUnits: floor.topMm / mmPerUnit };
  return { ok: false, problem: { ...refused.problem, values } };
}

const UP_ASSUMED: Assumption = { name: 'up', value: '+z', unit: '', from: 'assumed' };

function planesOf(mesh: TriangleMesh, up: UpAxis, cuts: readonly Cut[], mmPerUnit: number): CutPlane[] {
  if (cuts.length === 0) return [];
  const bounds = placedBounds(mesh, { up, mmPerUnit: 1 });
  return cuts.map((cut) => planeInMm(cut, bounds, mmPerUnit));
}

interface CutSolid {
  solid: SolidMeasure;
  removedCm3: number | undefined;
}

/** Measures what the cuts leave, and what they took, where the whole could be measured at all. */
function measureCut(
  placed: TriangleMesh,
  cuts: readonly CutPlane[],
  coordinateStepMm: number,
  onProgress: (share: number) => void,
): Outcome<CutSolid> {
  const whole = measureSolid(placed, { coordinateStepMm, onProgress });
  if (cuts.length === 0) return whole.ok ? good({ solid: whole.value, removedCm3: undefined }) : whole;
  const { mesh, onCut } = cutMesh(placed, cuts);
  if (mesh.triangles.length === 0) return bad('CUT_EMPTY');
  const solid = measureSolid(mesh, { coordinateStepMm, onProgress, isCutVertex: (v) => onCut[v] === 1 });
  if (!solid.ok) return solid;
  const removedMm3 = whole.ok ? whole.value.volumeMm3 - solid.value.volumeMm3 : undefined;
  return good({
    solid: solid.value,
    removedCm3: removedMm3 === undefined ? undefined : removedMm3 / MM3_PER_CM3,
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
  );
  const from: Source = scaleFrom === 'taped' ? 'taped' : 'scanned';
  return { value, low: Math.max(0, value - half), high: value + half, from };
}
