import type { Estimate } from '../../estimate';
import type { MoldShape, Sculpt } from '../../geometry';
import { fieldDoubtMm3 } from '../offsets';
import { doubtsOf, MM3_PER_CM3 } from '../sizeDoubts';
import type { SettledSolid } from '../settleSolid';

/**
 * Where a hole was closed, what it might have bulged changes a skin far less than the sculpt: the skin bulges with it, and only its bend takes more or
 * less. So much of the doubt is kept; a box loses all that the sculpt gains. Chosen here.
 */
const SKIN_SHARE = 0.25;

/**
 * Rubber of a mold, cm3, with the range that the scan leaves: what closing, scale, cut and grid leave open. How evenly a hand brushes is not in it.
 * By a share s of the scale a box of walls in mm changes by 3 s at most; a grown body by s (3 V - L A); what lies on the board, of a thickness, by 2 s.
 */
export function rubberEstimate(
  shape: MoldShape,
  { solid, scale }: SettledSolid,
  sculpt: Sculpt,
  voxelMm: number | undefined,
): Estimate {
  const value = shape.rubberMm3 / MM3_PER_CM3;
  const doubts = doubtsOf(solid, scale);
  const missed = Math.hypot(
    doubts.caps,
    doubts.cut,
    doubts.islands,
    doubts.overlaps,
    doubts.coordinates,
    doubts.weld,
  );
  const { grown } = shape;
  const half =
    grown === undefined || voxelMm === undefined
      ? Math.hypot(missed, 3 * scale.doubtShare * value)
      : Math.hypot(
          SKIN_SHARE * missed,
          fieldDoubtMm3(grown, voxelMm) / MM3_PER_CM3,
          shape.latticeDoubtMm3 / MM3_PER_CM3,
          (scale.doubtShare * skinScaleMm3(shape, sculpt, grown)) / MM3_PER_CM3,
        );
  const from = scale.from === 'taped' ? 'taped' : 'scanned';
  return { value, low: Math.max(0, value - half), high: value + half, from };
}

function skinScaleMm3(shape: MoldShape, sculpt: Sculpt, grown: NonNullable<MoldShape['grown']>): number {
  const skinMm3 = grown.volumeMm3 - sculpt.volumeMm3;
  return Math.abs(3 * skinMm3 - grown.skinMm * grown.areaMm2) + 2 * Math.max(0, shape.rubberMm3 - skinMm3);
}
