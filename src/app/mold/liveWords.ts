import type { SiliconeNeed } from '../../plan';
import { gramsText } from '../../units';
import { buyKg } from '../../words/buyKg';
import { amount } from '../../words/sentence';
import { buyShort, kgWords, needOf } from '../words/moldFigures';
import type { SiliconeThere } from './liveSilicone';

/** Behind the figure: "(1.40 to 1.44 kg): 1.29 kg of base, 0.13 kg of catalyst". */
export function siliconeWords({ totalG, rangeG, baseG }: SiliconeNeed): string {
  const all = needKg({ totalG, rangeG });
  const step = totalG >= 1000 ? 0.01 : 0.001;
  const steps = (massG: number): number => Math.round(massG / 1000 / step);
  // The catalyst is what is left, so that the parts add up to the whole that is shown.
  const base = steps(baseG);
  const kg = (count: number): string => gramsText(count * step, step);
  return `(${all.low} to ${all.high} kg): ${kg(base)} kg of base, ${kg(steps(totalG) - base)} kg of catalyst`;
}

export const needKg = ({
  totalG,
  rangeG,
}: Pick<SiliconeNeed, 'totalG' | 'rangeG'>): ReturnType<typeof kgWords> =>
  kgWords({ value: totalG, low: Math.min(totalG, rangeG[0]), high: rangeG[1] });

/** "To buy: 1 × 5.5 kg for 130"; without kits what is missing. */
export function toBuyWords({ purchase, stock, totalG }: SiliconeNeed): string {
  const missingKg = needOf(stock, totalG);
  if (missingKg === 0) return 'Nothing to buy: the stock is enough';
  if (purchase === undefined)
    return `To buy: ${buyKg(missingKg)}${stock === undefined ? '' : ' beyond the stock'}`;
  const paid = purchase.price === undefined ? '' : ` for ${amount(purchase.price, 9)}`;
  return `To buy: ${buyShort(purchase)}${paid}, ${amount(purchase.surplusKg, 3)} kg left over`;
}

/** "0.38 kg more than at 6 mm". A difference below the last place that is shown is none. */
export function againstWords(massG: number, other: { massG: number; mm: number }): string {
  const more = massG - other.massG;
  const size = differenceKg(more);
  return size === '0'
    ? `As much as at ${mmWords(other.mm)}`
    : `${size} kg ${more > 0 ? 'more' : 'less'} than at ${mmWords(other.mm)}`;
}

/** So much thinner and thicker is compared, mm: as far as a hand brushes unevenly. Chosen here. */
const NEXT_MM = 2;

/** "8 mm saves 0.5 kg, 12 mm adds 0.5 kg." */
export function nextWords(mm: number, massG: number, at: SiliconeThere): string {
  const told = [mm - NEXT_MM, mm + NEXT_MM].flatMap((other) => {
    const there = other > 0 ? at(other) : undefined;
    if (there === undefined) return [];
    return [`${mmWords(other)} ${there < massG ? 'saves' : 'adds'} ${differenceKg(there - massG)} kg`];
  });
  return told.length === 0 ? '' : `About: ${told.join(', ')}.`;
}

/** To the tenth: a thickness typed in inches has more places than a hand has. */
const mmWords = (mm: number): string => `${amount(Number(mm.toFixed(1)))} mm`;

/** To the hundredth of a kilogram, below a tenth to the gram. */
const differenceKg = (massG: number): string => {
  const kg = Math.abs(massG) / 1000;
  return kg < 0.1 ? amount(Number(kg.toFixed(3))) : amount(Number(kg.toFixed(2)));
};
