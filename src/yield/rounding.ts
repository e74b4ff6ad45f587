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
 * the rest, so the shown parts add up; A is off by at most half a step. The total is the nearest if its ratio is fine,
 * else the first of the two above that is, else the one of the three with the best ratio; but not over 5 % more than
 * wanted. Each step of that rule keeps the order: more to mix is never less on the scale.
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
  const nearest = Math.round(mixedG / stepG);
  const first = splitSteps(nearest, ratio);
  const { a, b } = first;
  if (a < 1 || b < 1) {
    const smallerG = mixedG * Math.min(shareOfA(ratio), 1 - shareOfA(ratio));
    return bad('PART_BELOW_SCALE', { part: a < 1 ? 'A' : 'B', partG: smallerG, stepG });
  }
  const mostSteps = ((1 + RULES.roundUpMost.value) * mixedG) / stepG;
  const above = [nearest + 1, nearest + 2].filter((total) => total <= mostSteps);
  const { steps, errorShare } = bestOf(first, above, ratio);
  return good({
    partAG: inGrams(steps.a, stepG),
    partBG: inGrams(steps.b, stepG),
    totalG: inGrams(steps.total, stepG),
    steps,
    ratioErrorShare: errorShare,
  });
}

type Steps = RoundedParts['steps'];

function bestOf(first: Steps, above: number[], ratio: MassRatio): { steps: Steps; errorShare: number } {
  const choices = [first, ...above.map((total) => splitSteps(total, ratio))].map((steps) => ({
    steps,
    errorShare: (steps.a / steps.b) * (ratio.b / ratio.a) - 1,
  }));
  const off = ({ errorShare }: { errorShare: number }): number => Math.abs(errorShare);
  const fine = choices.find((choice) => off(choice) <= RULES.ratioFine.value);
  return fine ?? choices.reduce((best, choice) => (off(choice) < off(best) ? choice : best));
}

function splitSteps(total: number, ratio: MassRatio): Steps {
  const a = Math.round(total * shareOfA(ratio));
  return { a, b: total - a, total };
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
