import type { PreparedPour } from '../plan';
import { rangeText, type RangeText } from './rangeText';

/** What goes into all cups, with the range that the pack could ask for, g: to the step of the scale. Every cup more keeps one residue more. */
export function mixedRange({ batch, cups }: Pick<PreparedPour, 'batch' | 'cups'>): RangeText {
  const [low, high] = batch.mixedRangeG;
  const moreG = (cups.cups.length - 1) * batch.inputs.residueG;
  return rangeText({ value: cups.totalG, low: low + moreG, high: high + moreG }, { step: batch.stepG });
}
