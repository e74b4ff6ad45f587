import { gramsText } from '../../units';
import { amount, counted } from '../../words/sentence';
import type { PackChartData, PastDot } from '../pour/packChart';

/** "filled", "short, n = 2". */
export const castingsWords = ({ filled, count }: Pick<PastDot, 'filled' | 'count'>): string =>
  `${filled ? 'filled' : 'short'}${count > 1 ? `, n = ${count}` : ''}`;

/** The chart of the packs for who cannot see it: written from its data. */
export function packChartAlt({ fills, packs, past, here }: PackChartData, stepG: number): string {
  const grams = (massG: number): string => `${gramsText(massG, stepG)} g`;
  const before = past.map(
    ({ packFactor, massG, filled, count }) =>
      `${counted(count, 'casting')} ${filled ? 'filled' : 'short'} at ${packFactor.toFixed(2)}, ${amount(massG)} g`,
  );
  return [
    fills === undefined
      ? 'What just fills is not known well enough to draw.'
      : `Just filling takes ${fills.text.low} to ${fills.text.high} g, 9 times in 10.`,
    `Packs: ${packs.map(({ packFactor, massG }) => `${packFactor.toFixed(2)} is ${grams(massG)}`).join(', ')}.`,
    ...(before.length === 0 ? [] : [`Before: ${before.join('; ')}.`]),
    `This pour, pack ${here.packFactor.toFixed(2)}, is ${grams(here.massG)}.`,
  ].join(' ');
}
