import { bad, finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import type { MassRatio } from '../foam';
import { roundingFindings, roundParts } from '../rounding';
import type { RoundedParts } from '../rounding';
import { scaleFindings } from '../scaleCheck';
import type { BatchAssumption, Note } from '../settleBatch';
import { noteIn } from '../settleBatch';
import { checkPour } from './checkPour';
import { pourWindow } from './kinetics';
import type { PourWindow, PourWindowInputs } from './kinetics';
import { POUR_RULES as R } from './rules';

/** What must go into the mold, and how it is weighed. `residueG` stays in every cup. */
export interface CupBatch {
  inMoldG: number;
  residueG: number;
  ratio: MassRatio;
  stepG: number;
  liquidKgM3: number;
}

export interface CupLimits {
  /** Full to the rim. */
  cupCm3?: number;
  /** How far the liquid may fill it; a third when left out, half at most. */
  cupFillShare?: number;
  /** Hands that mix and pour at the same time, one cup each. */
  mixers?: number;
  window?: PourWindowInputs;
  pourGPerS?: number;
}

export interface CupPlan {
  /** All alike. */
  cups: { partAG: number; partBG: number; totalG: number }[];
  /** Of all cups: A + B = total, and each the sum of what the cups say. */
  partAG: number;
  partBG: number;
  totalG: number;
  ratioErrorShare: number;
  /** Left out when neither cup nor cream time is known. */
  largestMixG?: number;
  limitedBy: 'container' | 'pour window' | 'nothing known';
  window?: PourWindow;
  /** How often each pair of hands mixes; above 1 the first cup creams before the last is poured. */
  rounds: number;
  findings: Problem[];
  assumptions: BatchAssumption[];
}

/**
 * A batch in as few equal cups as one person each can mix and pour: the largest mix is what fills the cup to a third, or what can be
 * poured before it creams. Each cup keeps its own residue, so more cups mix more; each is rounded to the scale, so the sums
 * hold. Errors: POUR_WINDOW_NONE, CUPS_TOO_MANY, PART_BELOW_SCALE, INPUT_OUT_OF_BOUNDS.
 */
export function planCups(batch: CupBatch, limits: CupLimits = {}): Outcome<CupPlan> {
  const { inMoldG, residueG, ratio, stepG, liquidKgM3 } = batch;
  const { cupCm3, cupFillShare, pourGPerS } = limits;
  const sound = checkPour(
    { mixedG: inMoldG, residueG, scaleStepG: stepG, liquidKgM3 },
    { cupCm3, cupFillShare, mixers: limits.mixers, pourGPerS },
  );
  if (!sound.ok) return sound;
  const assumptions: BatchAssumption[] = [];
  const note = noteIn(assumptions);
  const limit = largestMix(batch, limits, note);
  if (!limit.ok) return limit;
  const { largestMixG, limitedBy, window } = limit.value;
  const most = R.mostCups.value;
  for (let count = 1; count <= most; count += 1) {
    const mixedG = inMoldG / count + residueG;
    if (mixedG > largestMixG * (1 + 1e-12)) continue;
    const parts = roundParts({ mixedG, ratio, stepG });
    if (!parts.ok) return parts;
    // Rounding up may lift a cup over the limit; then one more is needed.
    if (parts.value.totalG > largestMixG * (1 + 1e-12)) continue;
    const mixers = limits.mixers ?? note('mixers', ONE_PERSON);
    const findings = cupFindings({ batch, parts: parts.value, count, mixers, limitedBy });
    return good({
      ...summed(parts.value, count, stepG),
      ratioErrorShare: parts.value.ratioErrorShare,
      limitedBy,
      ...(Number.isFinite(largestMixG) ? { largestMixG } : {}),
      ...(window === undefined ? {} : { window }),
      rounds: Math.ceil(count / mixers),
      findings,
      assumptions: [...assumptions, ...(window?.assumptions ?? [])],
    });
  }
  return bad('CUPS_TOO_MANY', { inMoldG, residueG, largestMixG, most, limitedBy });
}

const ONE_PERSON = { value: 1, unit: '', from: 'one person' };

interface Limit {
  largestMixG: number;
  limitedBy: CupPlan['limitedBy'];
  window?: PourWindow;
}

function largestMix({ liquidKgM3 }: CupBatch, limits: CupLimits, note: Note): Outcome<Limit> {
  const { cupCm3, cupFillShare, window, pourGPerS } = limits;
  const inCupG =
    cupCm3 === undefined
      ? Infinity
      : (liquidKgM3 / 1000) * cupCm3 * (cupFillShare ?? note('cup_fill', R.cupFill));
  if (window === undefined) {
    const limitedBy = cupCm3 === undefined ? 'nothing known' : 'container';
    return good({ largestMixG: inCupG, limitedBy });
  }
  const left = pourWindow(window);
  if (!left.ok) return left;
  const rate = pourGPerS ?? note('pour_rate', R.pourRate);
  const inTimeG = rate * left.value.pourWindowS.value;
  const limitedBy = inCupG < inTimeG ? 'container' : 'pour window';
  return good({ largestMixG: Math.min(inCupG, inTimeG), limitedBy, window: left.value });
}

type Sums = Pick<CupPlan, 'cups' | 'partAG' | 'partBG' | 'totalG'>;

function summed({ partAG, partBG, totalG, steps }: RoundedParts, count: number, stepG: number): Sums {
  const all = (each: number): number => Number((count * each * stepG).toPrecision(12));
  return {
    cups: Array.from({ length: count }, () => ({ partAG, partBG, totalG })),
    partAG: all(steps.a),
    partBG: all(steps.b),
    totalG: all(steps.total),
  };
}

function cupFindings({
  batch: { ratio, stepG },
  parts,
  count,
  mixers,
  limitedBy,
}: {
  batch: CupBatch;
  parts: RoundedParts;
  count: number;
  mixers: number;
  limitedBy: CupPlan['limitedBy'];
}): Problem[] {
  const { totalG } = parts;
  const several = finding(count > mixers ? 'CUPS_OVER_HANDS' : 'CUPS_TOGETHER', 'look', {
    count,
    mixers,
    totalG,
    limitedBy,
  });
  return [
    ...(limitedBy === 'nothing known' ? [finding('CUPS_NOT_CHECKED', 'unknown', { totalG })] : []),
    ...(count > 1 ? [several] : []),
    ...scaleFindings({ ...parts, ratio, stepG }),
    ...roundingFindings(parts, stepG),
  ];
}
