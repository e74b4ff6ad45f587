import {
  cutMesh,
  findFloor,
  measureSolid,
  placedBounds,
  placeMesh,
  type CutPlane,
  type ScanFile,
  type SolidMeasure,
  type TriangleMesh,
  type UpAxis,
} from '../geometry';
import { bad, good, type Outcome, type Problem } from '../problem';
import { planeInMm, type Cut } from './cuts';
import { settleScale, type Scale } from './scale';
import { MM3_PER_CM3 } from './sizeDoubts';
import type { SizeOptions } from './sizeOptions';

/** A scan in mm, turned up, cut and measured. */
export interface SettledSolid {
  solid: SolidMeasure;
  scale: Scale;
  up: UpAxis;
  /** The whole scan as placed, before any cut. */
  placed: TriangleMesh;
  planes: CutPlane[];
  /** What the cuts took, where the whole could be measured at all. */
  removedCm3: number | undefined;
}

/** Errors: those of `settleScale` and `measureSolid`, and CUT_EMPTY. Progress from 0 to 1. */
export function settleSolid(scan: ScanFile, options: SizeOptions): Outcome<SettledSolid> {
  const up = options.up ?? '+z';
  const cuts = options.cuts ?? [];
  const scale = settleScale(scan.mesh, { ...options, up, cuts });
  if (!scale.ok) return scale;
  const { mmPerUnit } = scale.value;
  options.onProgress?.(0.2);
  const placed = placeMesh(scan.mesh, { up, mmPerUnit });
  const planes = planesOf(scan.mesh, up, cuts, mmPerUnit);
  const cut = measureCut(placed, planes, scan.coordinateStep * mmPerUnit, (share) =>
    options.onProgress?.(0.2 + 0.8 * share),
  );
  if (!cut.ok) return withFloor(cut, placed, cuts, mmPerUnit);
  return good({ ...cut.value, scale: scale.value, up, placed, planes });
}

function planesOf(mesh: TriangleMesh, up: UpAxis, cuts: readonly Cut[], mmPerUnit: number): CutPlane[] {
  if (cuts.length === 0) return [];
  const bounds = placedBounds(mesh, { up, mmPerUnit: 1 });
  return cuts.map((cut) => planeInMm(cut, bounds, mmPerUnit));
}

/** Measures what the cuts leave, and what they took. */
function measureCut(
  placed: TriangleMesh,
  cuts: readonly CutPlane[],
  coordinateStepMm: number,
  onProgress: (share: number) => void,
): Outcome<Pick<SettledSolid, 'solid' | 'removedCm3'>> {
  const half = cuts.length > 0 ? 0.5 : 1;
  const whole = measureSolid(placed, { coordinateStepMm, onProgress: (share) => onProgress(half * share) });
  if (cuts.length === 0) return whole.ok ? good({ solid: whole.value, removedCm3: undefined }) : whole;
  const { mesh, onCut } = cutMesh(placed, cuts);
  if (mesh.triangles.length === 0) return bad('CUT_EMPTY');
  const solid = measureSolid(mesh, {
    coordinateStepMm,
    onProgress: (share) => onProgress(half + half * share),
    isCutVertex: (v) => onCut[v] === 1,
  });
  if (!solid.ok) return solid;
  const removedMm3 = whole.ok ? whole.value.volumeMm3 - solid.value.volumeMm3 : undefined;
  return good({
    solid: solid.value,
    removedCm3: removedMm3 === undefined ? undefined : removedMm3 / MM3_PER_CM3,
  });
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
