import { bad, finding, good } from '../problem';
import type { Outcome, Problem } from '../problem';
import { normalCdf, normalQuantile } from './normal';
import { RULES } from './rules';

export interface ShortFill {
  packFactor: number;
  /** The least pack that fills: minimum-fill over free-rise density, 1 when the minimum fill is not known. */
  leastPack: number;
  /** Relative standard uncertainty of the pack that is really reached. */
  sigmaShare: number;
}

/**
 * Chance, 0..1, that the batch does not fill the mold: the log of what is needed over what is poured taken as normal.
 * With no uncertainty at all it is 0 or 1, and 0.5 at the edge.
 */
export function shortFillChance({ packFactor, leastPack, sigmaShare }: ShortFill): number {
  const margin = Math.log(packFactor / leastPack);
  if (sigmaShare === 0) return margin > 0 ? 0 : margin < 0 ? 1 : 0.5;
  // The smallest double stands for a tail too small for any: what is in doubt is never said to be impossible.
  return Math.max(Number.MIN_VALUE, normalCdf(-margin / sigmaShare));
}

export interface WantedChance {
  chance: number;
  leastPack: number;
  /** The uncertainty at a given pack: it depends on the batch, and the batch on the pack. */
  sigmaShareAt: (packFactor: number) => number;
}

/**
 * The pack factor that leaves just the wanted chance (0 to 0.5) of a short fill: the pack whose margin ln(k/least)
 * equals z times the uncertainty at that pack. The margin grows with the pack and the relative uncertainty does not, so
 * there is one solution and halving finds it. Beyond the largest allowed pack: SHORT_FILL_OUT_OF_REACH.
 */
export function packForChance({ chance, leastPack, sigmaShareAt }: WantedChance): Outcome<number> {
  const z = -normalQuantile(chance);
  const largest: number = RULES.packFactor.high;
  const excess = (packFactor: number): number =>
    Math.log(packFactor / leastPack) - z * sigmaShareAt(packFactor);
  if (!(excess(largest) >= 0))
    return bad('SHORT_FILL_OUT_OF_REACH', { chance, largest, sigmaShare: sigmaShareAt(largest) });
  let low = leastPack;
  let high = largest;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (excess(middle) < 0) low = middle;
    else high = middle;
  }
  return good(high);
}

/** 1.5 / 2^55 is below the spacing of doubles near 1. */
const HALVINGS = 55;

/** A pack made for just that chance gives it back within the last digits of a double. */
const isOver = (chance: number, limit: number): boolean => chance > limit * (1 + 1e-9);

export function shortFillFindings({
  chance,
  sigmaShare,
  packFactor,
}: {
  chance: number;
  sigmaShare: number;
  packFactor: number;
}): Problem[] {
  const lookChance = RULES.shortFillLook.value;
  const stopChance = RULES.shortFillStop.value;
  if (!isOver(chance, lookChance)) return [];
  return [
    finding('SHORT_FILL_LIKELY', isOver(chance, stopChance) ? 'stop' : 'look', {
      chance,
      lookChance,
      stopChance,
      sigmaShare,
      packFactor,
    }),
  ];
}
