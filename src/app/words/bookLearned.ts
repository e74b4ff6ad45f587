import type { Drift, KeptByOpening, ResidueLine, ScanFactor } from '../../yield';
import { LEARN_RULES } from '../../yield';
import { amount, counted, percent } from '../../words/sentence';

/** "cannot tell yet: 2 of 3 pours". */
export const cannotTell = (have: number, need: number, one: string): string =>
  `cannot tell yet: ${have} of ${counted(need, one)}`;

/** What the pours taught, in short. Under three of them the residue is the common one: nothing was learned of it. */
export function taughtWords({ way, pours }: Pick<ResidueLine, 'way' | 'pours'>): string {
  if (pours === 0) return 'Nothing yet';
  return way === 'default'
    ? cannotTell(pours, LEARN_RULES.leastPours.value, 'pour')
    : `Learned from ${counted(pours, 'pour')}`;
}

/** How much of the overpack an opening keeps. */
export function keepsWords({ opening, keptShare, pours }: KeptByOpening): string {
  const who = opening === 'plug' ? 'A plug' : 'An open neck';
  return `${who} kept ${percent(keptShare.value)} of what was poured beyond the free rise, ${percent(keptShare.low)} to ${percent(keptShare.high)} by single pours, from ${counted(pours, 'full pour')} with a weighed trim.`;
}

export const isKeptKnown = ({ pours }: KeptByOpening): boolean => pours >= LEARN_RULES.leastPours.value;

/** "+ 1.0 %" of a factor. */
export const againstWords = (factor: number): string =>
  Math.abs(factor - 1) < 5e-5
    ? '0 %'
    : `${factor < 1 ? '−' : '+'} ${amount(100 * Math.abs(factor - 1), 2)} %`;

/** What holds for the next piece, of which no mold was filled yet. */
export const scanFactorWords = ({ factor, pieces }: ScanFactor): string =>
  `The next piece without a water fill: ${againstWords(factor.value)}, 9 times in 10 between ${againstWords(factor.low)} and ${againstWords(factor.high)}, ${pieces === 0 ? 'assumed' : `learned from ${counted(pieces, 'piece')} and what is common`}.`;

/** Whether what is found of the mix moves along a mold's life by more than it scatters. */
export function driftWords({ verdict, castings, slope, scatter }: Drift): string {
  const least = LEARN_RULES.driftLeast.value;
  if (verdict === 'cannot-tell' || slope === undefined || scatter === undefined)
    return `${cannotTell(castings, least, 'casting')} weighed back in full. No line is drawn through fewer.`;
  const by = `${signed(slope.value)} of the mix a casting (${signed(slope.low)} to ${signed(slope.high)})`;
  return verdict === 'moves'
    ? `It moves by ${by}, more than its scatter of ${percent(scatter)}: look at seams, vents and plug, and fill the mold with water again.`
    : `It moves by no more than its scatter of ${percent(scatter)}: ${by}.`;
}

const signed = (share: number): string => `${share < 0 ? '−' : '+'}${amount(100 * Math.abs(share), 2)} %`;

/** What the residue chart shows, for who cannot see it. */
export const residueAlt = (count: number, sentence: string): string =>
  `Grams left in the cup against grams mixed, ${counted(count, 'pour')}, one ring each. ${sentence}`;

export const driftAlt = (name: string, rows: readonly { place: number; foundShare: number }[]): string =>
  `${name}: found of what was mixed. ${rows.map(({ place, foundShare }) => `Casting ${place}: ${amount(100 * foundShare, 4)} %`).join('; ')}.`;
