import { formatGrams } from '../../units';
import { LEARN_RULES, type MassBalance, type WeighedPart } from '../../yield';
import { scaleReadingUG } from '../../yield/scaleCheck';

/** What was found of what was mixed; and within what it is fine, or what is still missing to say so. */
export interface BalanceWords {
  sum: string;
  range: string;
}

const PARTS: Readonly<Record<WeighedPart, string>> = {
  mixedG: 'the mix',
  residueG: 'what is left in the cup',
  castingG: 'the casting',
  trimG: 'the trim',
};

/** Undefined while there is too little to compare. */
export function balanceWords(balance: MassBalance, stepG: number): BalanceWords | undefined {
  const { mixedG, foundG, missingG = 0, off, notWeighed, wouldBeG } = balance;
  const grams = (massG: number): string => formatGrams(massG, stepG);
  if (off === 'over')
    return {
      sum: `${grams(mixedG ?? 0)} mixed, ${grams(foundG)} found: ${grams(-missingG)} more than went in.`,
      range: 'A weight was misread, or the cup and the stick are still in one of them.',
    };
  if (wouldBeG !== undefined) {
    const { part, low, high } = wouldBeG;
    const between = grams(low) === grams(high) ? grams(high) : `${grams(low)} to ${grams(high)}`;
    const known = mixedG === undefined ? '' : `${grams(mixedG)} mixed, `;
    return {
      sum: `${known}${grams(foundG)} found; ${PARTS[part]} is not weighed.`,
      range: `The others leave ${between} for it.`,
    };
  }
  if (notWeighed.length > 0 || mixedG === undefined) return undefined;
  const mostG = LEARN_RULES.balanceMost.value * mixedG + 2 * scaleReadingUG(stepG) * Math.sqrt(4);
  const allowed = `gas and crumbs take up to 3 % of the mix (common practice, no source), and the scale its steps`;
  return off === 'short'
    ? {
        sum: `${grams(mixedG)} mixed, ${grams(foundG)} found, ${grams(missingG)} missing.`,
        range: `Up to ${grams(mostG)} may be missing: ${allowed}. Look for what was spilled or not weighed.`,
      }
    : {
        sum: `${grams(mixedG)} mixed, ${grams(foundG)} found, ${missingWords(missingG, grams)}.`,
        range: `Up to ${grams(mostG)} may be missing: ${allowed}.`,
      };
}

/** Within the steps of the scale there can be a little more than went in. */
const missingWords = (missingG: number, grams: (massG: number) => string): string =>
  missingG < 0 && grams(-missingG) !== grams(0)
    ? `${grams(-missingG)} more than went in`
    : `${grams(Math.max(0, missingG))} missing`;
