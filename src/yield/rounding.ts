import { bad, finding, good } from '../problem';
import type { Outcome, Problem } from '../problem';
import { shareOfA } from './foam';
import type { MassRatio } from './foam';
import { RULES } from './rules';

export interface RoundedParts {
  partAG: number;
  partBG: number;
  totalG: number;
  /** The same in whole steps of the scale, where A + B = total holds without any rounding. */
  steps: { a: number; b: number; total: number };
  /** (A/B as weighed) / (A/B wanted) - 1; positive is too much A. */
  ratioErrorShare: number;
}

/**
 * Splits a mass into A and B in whole steps of the scale. The total is rounded once, A is rounded within it and B is
 * the rest, so the shown parts add up; A is off by at most half a step.
 */
export function roundParts({
  mixedG,
  ratio,
  stepG,
}: {
  mixedG: number;
  ratio: MassRatio;
  stepG: number;
}): Outcome<RoundedParts> {
  const total = Math.round(mixedG / stepG);
  const a = Math.round(total * shareOfA(ratio));
  const b = total - a;
  if (a < 1 || b < 1) {
    const smallerG = mixedG * Math.min(shareOfA(ratio), 1 - shareOfA(ratio));
    return bad('PART_BELOW_SCALE', { part: a < 1 ? 'A' : 'B', partG: smallerG, stepG });
  }
  return good({
    partAG: inGrams(a, stepG),
    partBG: inGrams(b, stepG),
    totalG: inGrams(total, stepG),
    steps: { a, b, total },
    ratioErrorShare: (a / b) * (ratio.b / ratio.a) - 1,
  });
}

export function roundingFindings(parts: RoundedParts, stepG: number): Problem[] {
  const off = Math.abs(parts.ratioErrorShare);
  const lookShare = RULES.ratioLook.value;
  const stopShare = RULES.ratioStop.value;
  if (off <= lookShare) return [];
  return [
    finding('RATIO_ROUNDED', off > stopShare ? 'stop' : 'look', {
      ratioErrorShare: parts.ratioErrorShare,
      lookShare,
      stopShare,
      stepG,
      partAG: parts.partAG,
      partBG: parts.partBG,
    }),
  ];
}

/** 379 steps of 0.1 g are 37.9 g, not 37.900000000000006. */
const inGrams = (steps: number, stepG: number): number => Number((steps * stepG).toPrecision(12));
