import { formatGrams } from '../units';
import type { FoamPart, PartCover, RunPlan } from '../yield';
import { amount, counted } from './sentence';

interface Casting {
  partAG: number;
  partBG: number;
  stepG: number;
}

/** Where the material, the days and the end of the stock come from, one line each. */
export function runBecause(plan: RunPlan, casting: Casting): string[] {
  const { castings, spares, cycles, cyclesADay, days, cups, stock } = plan;
  const { partAG, partBG, stepG } = casting;
  const grams = (massG: number): string => formatGrams(massG, stepG);
  const spareWords = spares === 0 ? '' : ` and ${counted(spares, 'spare')}, as some have to be done again`;
  return [
    `${counted(castings, 'casting')}${spareWords}: each takes A ${grams(partAG)} and B ${grams(partBG)}, and ${counted(cups, 'cup test')} ${cups === 1 ? 'comes' : 'come'} on top, one a day.`,
    cyclesADay === undefined || days === undefined
      ? `Every mold is poured once a round: ${counted(cycles, 'round')}. How many fit into a day hangs on the time to opening, which nobody told.`
      : `Every mold is poured once a round: ${counted(cycles, 'round')}, ${amount(cyclesADay)} a day at most, so ${counted(days, 'day')}.`,
    ...(stock.uncounted.length === 0
      ? [
          'A and B are counted apart: A without its B makes no foam, and the part that ends first ends the run.',
        ]
      : []),
    ...lifeWords(plan),
  ];
}

function lifeWords({ moldLife }: RunPlan): string[] {
  if (moldLife === undefined) return [];
  const { castingsEach, leftEach, lasts, moldsNeeded } = moldLife;
  return [
    lasts
      ? `Each mold does ${counted(castingsEach, 'casting')} and has ${amount(leftEach)} left in it.`
      : `Each mold would do ${counted(castingsEach, 'casting')} and has only ${amount(leftEach)} left in it: it takes ${counted(moldsNeeded, 'mold')} in all.`,
  ];
}

const NAMES: Readonly<Record<FoamPart, string>> = { a: 'A', b: 'B' };

/** "A 4.21 kg of 2 kg in stock, B 2.32 kg of 1.1 kg in stock". */
export const needWords = ({ stock: { a, b } }: RunPlan): string => [a, b].map(partWords).join(', ');

function partWords({ part, needKg, haveKg }: PartCover): string {
  const have = haveKg === undefined ? 'not counted' : `${amount(haveKg, 3)} kg in stock`;
  return `${NAMES[part]} ${amount(needKg, 3)} kg (${have})`;
}

/** "lasts for 5 of 11 castings: B runs out after casting 5, A after casting 5"; or that it lasts, or that nobody counted it. */
export function stockWords({ castings, spares, stock }: RunPlan): string {
  const { runsOut, uncounted } = stock;
  const all = castings + spares;
  const ends = runsOut
    .map(
      ({ part, afterCasting }, n) =>
        `${NAMES[part]}${n === 0 ? ' runs out' : ''} ${afterCasting === 0 ? 'before the first casting' : `after casting ${amount(afterCasting, 9)}`}`,
    )
    .join(', ');
  if (uncounted.length > 0) {
    const open = `not checked, as nobody counted ${uncounted.map((part) => NAMES[part]).join(' or ')}`;
    return ends === '' ? open : `${ends}; the rest ${open}`;
  }
  return ends === ''
    ? `lasts for all ${counted(all, 'casting')}`
    : `lasts for ${amount(stock.castings, 9)} of ${counted(all, 'casting')}: ${ends}`;
}

/** What to buy so that the run ends: kits where their sizes are known, else kilograms. */
export function buyWords({ buyKg, buy }: RunPlan): string {
  if (buyKg === undefined) return 'not known before A and B are counted';
  if (buyKg === 0) return 'nothing';
  const least = `${amount(buyKg, 3)} kg of A and B together`;
  if (buy === undefined) return `${least}; what kits it comes in was not said`;
  const kits = buy.kits
    .map(({ count, massKg }) => `${counted(count, 'kit')} of ${amount(massKg)} kg`)
    .join(' and ');
  const price = buy.price === undefined ? '' : `, for ${buy.price.toFixed(2)} of your own money`;
  return `${kits}${price}: ${least} are missing, and ${amount(buy.surplusKg, 2)} kg will be left over`;
}
