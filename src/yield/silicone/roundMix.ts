import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import type { SiliconeRatio } from './checkSilicone';
import { smallestMixG } from './smallestMix';
import { SILICONE_RULES } from './rules';

/** One cup: what to weigh, g. Base and catalyst add up to the total. */
export interface Mix {
  totalG: number;
  baseG: number;
  catalystG: number;
}

export interface RoundedMix extends Mix {
  /** (base/catalyst as weighed) / (base/catalyst wanted) - 1; positive is too little catalyst. */
  ratioErrorShare: number;
}

/**
 * Splits a mix into base and catalyst in whole steps of the scale, never less than `neededG` in all. The total is rounded
 * up once, the catalyst within it, and base is the rest. Up to two steps more are taken where only they keep the ratio
 * fine, but not over 5 % nor over `mostG`. Error: MIX_BELOW_SCALE when the scale cannot show one of the parts.
 */
export function roundMix({
  neededG,
  ratio,
  stepG,
  mostG = Infinity,
}: {
  neededG: number;
  ratio: SiliconeRatio;
  stepG: number;
  mostG?: number;
}): Outcome<RoundedMix> {
  const least = Math.ceil((neededG / stepG) * (1 - REPRESENTATION));
  const ceilingG = Math.min(mostG, (1 + SILICONE_RULES.roundUpMost.value) * neededG);
  const more = [least + 1, least + 2].filter((total) => total * stepG <= ceilingG);
  const choices = [least, ...more].map((total) => split(total, ratio)).filter(hasBoth);
  const [first] = choices;
  if (first === undefined) {
    const errorShare = SILICONE_RULES.scaleErrorShare.value;
    const smallestG = smallestMixG({ ratio, stepG, errorShare });
    return bad('MIX_BELOW_SCALE', { mixG: neededG, smallestMixG: smallestG, stepG, errorShare });
  }
  const fine = choices.find((choice) => off(choice) <= SILICONE_RULES.ratioFine.value);
  const best = fine ?? choices.reduce((one, other) => (off(other) < off(one) ? other : one), first);
  return good({
    totalG: inGrams(best.total, stepG),
    baseG: inGrams(best.base, stepG),
    catalystG: inGrams(best.catalyst, stepG),
    ratioErrorShare: best.errorShare,
  });
}

/** 379 steps of 0.1 g are 37.9 g, not 37.900000000000006. */
export const inGrams = (steps: number, stepG: number): number => Number((steps * stepG).toPrecision(12));

/** 1.1 x 1000 is a hair above 1100: that is no reason for one more step. */
const REPRESENTATION = 1e-12;

interface Steps {
  base: number;
  catalyst: number;
  total: number;
  errorShare: number;
}

function split(total: number, ratio: SiliconeRatio): Steps {
  const catalyst = Math.round((total * ratio.catalyst) / (ratio.base + ratio.catalyst));
  const base = total - catalyst;
  return { base, catalyst, total, errorShare: (base / catalyst) * (ratio.catalyst / ratio.base) - 1 };
}

const hasBoth = ({ base, catalyst }: Steps): boolean => base >= 1 && catalyst >= 1;

const off = ({ errorShare }: Steps): number => Math.abs(errorShare);
