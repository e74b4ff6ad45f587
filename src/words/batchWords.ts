import type { Pour, PreparedPour } from '../plan';
import { formatDensity, formatGrams, formatVolume, type Show } from '../units';
import { ratioSentenceParts } from '../yield';
import { amount, percent } from './sentence';
import { ratioSentence } from './yieldWords';

/** Where the grams come from, one line each. */
export function batchBecause(
  { cavityCm3, batch, cups }: Pour & Partial<Pick<PreparedPour, 'cups'>>,
  show: Show = 'both',
): string[] {
  const { inputs, residueWords } = { inputs: batch.inputs, residueWords: amount(batch.inputs.residueG) };
  const volumeCm3 = cavityCm3.value + inputs.riserCm3;
  return [
    ratioLine(batch, cups),
    `${formatVolume(volumeCm3, show)} to fill, at a free rise of ${formatDensity(inputs.freeRiseKgM3, show)} packed ${amount(batch.packFactor)} times, ` +
      `plus ${amount(inputs.ventsG)} g out of the vents, ${percent(inputs.gasLossShare)} of gas and ${residueWords} g that stay in ${(cups?.cups.length ?? 1) > 1 ? 'each cup' : 'the cup'}.`,
    `Just filling could take more or less: one standard deviation is ${percent(batch.sigmaShare)}, most of it from ${mostDoubt(batch.uncertainty)}.`,
  ];
}

/** The read-back; of several cups that of one, as it is weighed. */
function ratioLine(batch: Pour['batch'], cups: PreparedPour['cups'] | undefined): string {
  const [one, ...more] = cups?.cups ?? [];
  if (one === undefined || more.length === 0) return ratioSentence(ratioSentenceParts(batch));
  return `${amount(more.length + 1)} cups, each of them: ${ratioSentence(ratioSentenceParts({ ...batch, ...one }))}`;
}

function mostDoubt(rows: Pour['batch']['uncertainty']): string {
  const top = [...rows].sort((a, b) => b.share - a.share)[0];
  return top === undefined
    ? 'nothing'
    : `the ${top.input.replace(/_/g, ' ')} (${percent(top.share)} of the doubt)`;
}

/** "A 379 g, B 209 g, together 588 g"; of several cups "2 cups, each A 204 g, B 112 g; in all A 408 g, B 224 g, together 632 g". */
export function gramsLine({ batch, cups }: Pick<PreparedPour, 'batch' | 'cups'>): string {
  const pair = ({ partAG, partBG }: { partAG: number; partBG: number }): string =>
    `A ${formatGrams(partAG, batch.stepG)}, B ${formatGrams(partBG, batch.stepG)}`;
  const [one, ...more] = cups.cups;
  if (one === undefined || more.length === 0)
    return `${pair(batch)}, together ${formatGrams(batch.totalG, batch.stepG)}`;
  return `${amount(cups.cups.length)} cups, each ${pair(one)}; in all ${pair(cups)}, together ${formatGrams(cups.totalG, batch.stepG)}`;
}
