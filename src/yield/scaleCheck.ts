import { finding } from '../problem';
import type { Problem } from '../problem';
import { shareOfA } from './foam';
import type { MassRatio } from './foam';
import { RULES } from './rules';

/** Standard uncertainty of one weighing, tare and reading, each rounded to the step: step / sqrt(12) x sqrt(2). */
export const scaleReadingUG = (stepG: number): number => stepG / Math.sqrt(6);

/** Relative standard uncertainty of the ratio of two weighed parts (JCGM 100, 5.1.6). */
export function ratioUncertaintyShare({
  partAG,
  partBG,
  stepG,
}: {
  partAG: number;
  partBG: number;
  stepG: number;
}): number {
  return scaleReadingUG(stepG) * Math.hypot(1 / partAG, 1 / partBG);
}

/** The smallest batch, in g, whose ratio a scale of this step can still weigh. */
export function smallestTotalG(ratio: MassRatio, stepG: number): number {
  return (2 * scaleReadingUG(stepG) * spread(ratio)) / RULES.scaleRatioU2.value;
}

/** The coarsest usual step (1, 2 or 5 times a power of ten), in g, that can weigh the ratio of this batch. */
export function coarsestStepG(ratio: MassRatio, totalG: number): number {
  const exactG = (RULES.scaleRatioU2.value * totalG * Math.sqrt(6)) / (2 * spread(ratio));
  const exponent = Math.floor(Math.log10(exactG));
  const leading = exactG / 10 ** exponent;
  const step = leading >= 5 ? 5 : leading >= 2 ? 2 : 1;
  return Number(`${step}e${exponent}`);
}

export interface WeighedParts {
  ratio: MassRatio;
  partAG: number;
  partBG: number;
  stepG: number;
  ratioErrorShare: number;
}

/** Is the scale fine enough for the ratio? Twice its uncertainty may be 1 %. */
export function scaleFindings({ ratio, partAG, partBG, stepG, ratioErrorShare }: WeighedParts): Problem[] {
  const twoUShare = 2 * ratioUncertaintyShare({ partAG, partBG, stepG });
  const allowedShare = RULES.scaleRatioU2.value;
  if (twoUShare <= allowedShare) return [];
  const totalG = partAG + partBG;
  return [
    finding('SCALE_COARSE', 'look', {
      stepG,
      twoUShare,
      allowedShare,
      totalG,
      smallestTotalG: smallestTotalG(ratio, stepG),
      neededStepG: coarsestStepG(ratio, totalG),
      roundingShare: ratioErrorShare,
    }),
  ];
}

/** Does the scale take A and B together? The cup comes on top of that and is not known here. */
export function overloadFindings(totalG: number, maxG: number | undefined): Problem[] {
  if (maxG === undefined || totalG <= maxG) return [];
  return [finding('SCALE_OVERLOADED', 'look', { totalG, maxG })];
}

/** sqrt(1/a2 + 1/b2) of the two mass shares: relative spread of the ratio for an absolute error of the total. */
function spread(ratio: MassRatio): number {
  const a = shareOfA(ratio);
  return Math.hypot(1 / a, 1 / (1 - a));
}
