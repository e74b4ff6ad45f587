import type { Mold, SiliconePour } from '../plan';
import { formatGrams } from '../units';
import { SILICONE_RULES } from '../yield';
import { amount, counted } from './sentence';

/**
 * The silicone to weigh, read back as it is done: base first into the container, catalyst on top. For what is mixed more than once the first
 * mix and the sums are said. `degassed`: the container needs room for the froth.
 */
export function weighSentence({ silicone }: Mold, degassed: boolean): string {
  const [first, ...more] = silicone.pours as [SiliconePour, ...SiliconePour[]];
  const { mixes, stepG } = first.order;
  const grams = (massG: number): string => formatGrams(massG, stepG);
  const one = mixes[0]!;
  const mix = `${grams(one.baseG)} of base into ${containerWords(one.totalG, silicone.densityKgM3, degassed)}, ${grams(one.catalystG)} of catalyst on top of it`;
  const all = `${grams(silicone.baseG)} of base and ${grams(silicone.catalystG)} of catalyst, ${grams(silicone.totalG)} together`;
  if (more.length === 0 && mixes.length === 1) return `${mix}: ${grams(one.totalG)} of silicone.`;
  const what = more.length === 0 ? `each of ${counted(mixes.length, 'mix', 'mixes')}` : firstOf(first);
  return `${capital(what)}: ${mix}. In all ${all}.`;
}

const firstOf = ({ name, order }: SiliconePour): string =>
  order.mixes.length === 1 ? name : `${name}, each of ${counted(order.mixes.length, 'mix', 'mixes')}`;

/** A cup up to a liter, a pail beyond it: large enough for what it swells to, or not to spill when it is stirred. */
function containerWords(massG: number, densityKgM3: number, degassed: boolean): string {
  const times = degassed ? SILICONE_RULES.frothRatio.value : SILICONE_RULES.stirRatio.value;
  const liters = (massG / densityKgM3) * times;
  const least = Math.ceil(liters * 10) / 10;
  return `a ${least <= 1 ? 'cup' : 'pail'} of ${amount(least)} L or more`;
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
