import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkBounds } from './checkBounds';
import { MOLDMAKING_RULES } from './rules';

/** A half-ball key, mm3: 2/3 pi r^3. Nothing in sum on a split block, where each fills the other half's hollow. */
export const keyVolumeMm3 = (radiusMm: number): number => (2 / 3) * Math.PI * radiusMm ** 3;

/**
 * Keys along a closed seam: the fewest that are nowhere farther apart than the spacing, in each row. Blocks usually
 * carry two rows, the second shifted by half a spacing.
 */
export function keyCount({
  seamMm,
  keySpacingMm = MOLDMAKING_RULES.keySpacing.value,
  keyRows = 1,
}: {
  seamMm: number;
  keySpacingMm?: number;
  keyRows?: number;
}): Outcome<number> {
  const checked = checkBounds({ seamMm, keySpacingMm, keyRows });
  return checked.ok ? good(Math.round(keyRows) * Math.ceil(seamMm / keySpacingMm - 1e-9)) : checked;
}

/**
 * A flat flange round a convex outline, mm3: t (P w + pi w^2) (Steiner). Larger than the truth round a hollow outline;
 * geometry measures the real one.
 */
export const flangeVolumeMm3 = ({
  outlineMm,
  widthMm,
  thicknessMm,
}: {
  outlineMm: number;
  widthMm: number;
  thicknessMm: number;
}): number => thicknessMm * (outlineMm * widthMm + Math.PI * widthMm ** 2);
