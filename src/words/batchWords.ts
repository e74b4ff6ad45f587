import type { Pour } from '../plan';
import { formatDensity, formatGrams, formatVolume, type Show } from '../units';
import { ratioSentenceParts } from '../yield';
import { amount, percent } from './sentence';
import { ratioSentence } from './yieldWords';

/** Where the grams come from, one line each. */
export function batchBecause({ cavityCm3, batch }: Pour, show: Show = 'both'): string[] {
  const { inputs, residueWords } = { inputs: batch.inputs, residueWords: amount(batch.inputs.residueG) };
  const volumeCm3 = cavityCm3.value + inputs.riserCm3;
  return [
    ratioSentence(ratioSentenceParts(batch)),
    `${formatVolume(volumeCm3, show)} to fill, at a free rise of ${formatDensity(inputs.freeRiseKgM3, show)} packed ${amount(batch.packFactor)} times, ` +
      `plus ${amount(inputs.ventsG)} g out of the vents, ${percent(inputs.gasLossShare)} of gas and ${residueWords} g that stay in the cup.`,
    `Just filling could take more or less: one standard deviation is ${percent(batch.sigmaShare)}, most of it from ${mostDoubt(batch.uncertainty)}.`,
  ];
}

function mostDoubt(rows: Pour['batch']['uncertainty']): string {
  const top = [...rows].sort((a, b) => b.share - a.share)[0];
  return top === undefined
    ? 'nothing'
    : `the ${top.input.replace(/_/g, ' ')} (${percent(top.share)} of the doubt)`;
}

/** "A 379 g, B 209 g, together 588 g". */
export const gramsLine = ({ batch }: Pour): string =>
  `A ${formatGrams(batch.partAG, batch.stepG)}, B ${formatGrams(batch.partBG, batch.stepG)}, together ${formatGrams(batch.totalG, batch.stepG)}`;
