import { bad, good, type Outcome } from '../problem';
import {
  boundsOf,
  cutMesh,
  extentsOf,
  measureSolid,
  type Bounds,
  type CutPlane,
  type TriangleMesh,
} from '../geometry';
import { FILE_UNITS, type TapedExtent } from '../plan';
import type { CutWish, SizeWish } from './protocol';

const AXIS_OF = { wide: 0, deep: 1, tall: 2 } as const;
const ROUNDS = 40;

export interface SettledCut {
  plane: CutPlane;
  /** The extent that was taped, in file units, of what the cut leaves. */
  tapedUnits?: number;
}

/**
 * Where a wished cut lies in mm on the placed mesh's own zero, as `sizeScan` wants it. With a named unit that is plain; with
 * a tape the scale follows from what the cut leaves and the cut from the scale, so both are sought together. `turned` is
 * the scan with Z up, in file units. Errors: SCALE_UNREACHED, CUT_EMPTY.
 */
export function settleCut(
  turned: TriangleMesh,
  { taped, fileUnit, cut }: SizeWish & { cut: CutWish },
): Outcome<SettledCut> {
  const bounds = boundsOf(turned);
  const unitsAt = (mmPerUnit: number): number => cutUnits(cut, bounds.min[2], mmPerUnit);
  const planeAt = (mmPerUnit: number): CutPlane => ({
    axis: 2,
    atMm: unitsAt(mmPerUnit) * mmPerUnit,
    keep: cut.keep,
  });
  if (taped === undefined) return good({ plane: planeAt(fileUnit === undefined ? 1 : FILE_UNITS[fileUnit]) });
  let mmPerUnit = firstGuess(bounds, taped, cut);
  for (let round = 0; round < ROUNDS; round++) {
    const left = cutMesh(turned, [{ axis: 2, atMm: unitsAt(mmPerUnit), keep: cut.keep }]).mesh;
    if (left.triangles.length === 0)
      return round === 0 ? bad('CUT_EMPTY') : bad('SCALE_UNREACHED', { by: taped.along });
    const tapedUnits = bodyExtent(left, AXIS_OF[taped.along]);
    const next = taped.lengthMm / tapedUnits;
    if (!Number.isFinite(next) || !(next > 0)) break;
    const settled = Math.abs(next / mmPerUnit - 1) < 1e-9;
    mmPerUnit = next;
    if (settled) return good({ plane: planeAt(mmPerUnit), tapedUnits });
  }
  return bad('SCALE_UNREACHED', { by: taped.along });
}

/** Height of the cut in file units on the file's own zero. */
function cutUnits(cut: CutWish, lowestUnits: number, mmPerUnit: number): number {
  return cut.by === 'floor' ? cut.atUnits : lowestUnits + cut.heightMm / mmPerUnit;
}

/** Above a typed height h a piece taped as T stands T + h over the lowest point: exact, unless a speck is the highest. */
function firstGuess(bounds: Bounds, taped: TapedExtent, cut: CutWish): number {
  const extentUnits = extentsOf(bounds)[AXIS_OF[taped.along]];
  const belowMm = cut.by === 'height' && cut.keep === 'above' && taped.along === 'tall' ? cut.heightMm : 0;
  return (taped.lengthMm + belowMm) / extentUnits;
}

/** The same extent that `sizeScan` measures: of the pieces that count. */
function bodyExtent(mesh: TriangleMesh, axis: 0 | 1 | 2): number {
  const solid = measureSolid(mesh, { coordinateStepMm: 0 });
  return solid.ok ? solid.value.extentsMm[axis] : extentsOf(boundsOf(mesh))[axis];
}
