import {
  cutMesh,
  findFloor,
  measureSolid,
  placedBounds,
  placeMesh,
  type CutPlane,
  type PieceWish,
  type ScanFile,
  type SolidMeasure,
  type TriangleMesh,
  type UpAxis,
} from '../geometry';
import { bad, good, type Outcome, type Problem } from '../problem';
import { planeInMm, type Cut } from './cuts';
import { settleScale, type Scale } from './scale';
import { measureDecisions, piecesOnMesh, type PieceEffects } from './scanPieces';
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
  /** What was changed by what is decided of the pieces. */
  pieceEffects: PieceEffects;
}

/** Errors: those of `settleScale` and `measureSolid`, CUT_EMPTY and NOTHING_LEFT. Progress from 0 to 1. */
export function settleSolid(scan: ScanFile, options: SizeOptions): Outcome<SettledSolid> {
  const up = options.up ?? '+z';
  const cuts = options.cuts ?? [];
  const pieces = piecesOnMesh(scan.mesh, options.pieces ?? {});
  const ownUnit = scan.unit === undefined ? {} : { ownUnit: scan.unit };
  const scale = settleScale(scan.mesh, { ...options, ...ownUnit, up, cuts, pieces });
  if (!scale.ok) return scale;
  const { mmPerUnit } = scale.value;
  options.onProgress?.(0.2);
  const placed = placeMesh(scan.mesh, { up, mmPerUnit });
  const planes = planesOf(scan.mesh, up, cuts, mmPerUnit);
  const cut = measureCut(
    { placed, planes, pieces, coordinateStepMm: scan.coordinateStep * mmPerUnit },
    (share) => options.onProgress?.(0.2 + 0.8 * share),
  );
  if (!cut.ok) return nothingLeft(cut) ?? withFloor(cut, placed, cuts, mmPerUnit);
  return good({ ...cut.value, scale: scale.value, up, placed, planes });
}

function planesOf(mesh: TriangleMesh, up: UpAxis, cuts: readonly Cut[], mmPerUnit: number): CutPlane[] {
  if (cuts.length === 0) return [];
  const bounds = placedBounds(mesh, { up, mmPerUnit: 1 });
  return cuts.map((cut) => planeInMm(cut, bounds, mmPerUnit));
}

interface CutWork {
  placed: TriangleMesh;
  planes: readonly CutPlane[];
  pieces: PieceWish;
  coordinateStepMm: number;
}

/** Measures what the cuts leave, and what they took. */
function measureCut(
  { placed, planes, pieces, coordinateStepMm }: CutWork,
  onProgress: (share: number) => void,
): Outcome<Pick<SettledSolid, 'solid' | 'removedCm3' | 'pieceEffects'>> {
  const isCut = planes.length > 0;
  const half = isCut ? 0.5 : 1;
  const { mesh, onCut } = isCut ? cutMesh(placed, planes) : { mesh: placed, onCut: undefined };
  if (isCut && mesh.triangles.length === 0) return bad('CUT_EMPTY');
  const whole = isCut
    ? measureSolid(placed, {
        coordinateStepMm,
        pieces: { ...pieces, leaveOut: [] },
        onProgress: (share) => onProgress(half * share),
      })
    : undefined;
  const { solid, effects, withoutLeaveOut } = measureDecisions(pieces, (wish, from, to) =>
    measureSolid(mesh, {
      coordinateStepMm,
      pieces: wish,
      onProgress: (share) => onProgress(1 - half + half * (from + (to - from) * share)),
      ...(onCut === undefined ? {} : { isCutVertex: (v: number) => onCut[v] === 1 }),
    }),
  );
  if (!solid.ok) return solid;
  const removedMm3 =
    whole?.ok === true && withoutLeaveOut.ok
      ? whole.value.volumeMm3 - withoutLeaveOut.value.volumeMm3
      : undefined;
  return good({
    solid: solid.value,
    removedCm3: removedMm3 === undefined ? undefined : removedMm3 / MM3_PER_CM3,
    pieceEffects: effects,
  });
}

/** A refusal of what stays once pieces are left out is no fault of the scan. */
const nothingLeft = ({ problem }: { problem: Problem }): Outcome<never> | undefined =>
  problem.values.leftOut === undefined ? undefined : bad('NOTHING_LEFT', { count: problem.values.leftOut });

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
