import { good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { RULES } from '../rules';
import type { Rule } from '../rules';
import { noteIn } from '../settleBatch';
import type { BatchAssumption, Note } from '../settleBatch';
import { checkRatioParts, checkSilicone } from './checkSilicone';
import type { SiliconeRatio } from './checkSilicone';
import { inGrams, roundMix } from './roundMix';
import type { Mix } from './roundMix';
import { SILICONE_RULES } from './rules';
import { smallMixFindings } from './smallestMix';

export type Method = 'pour' | 'brush';

export interface VolumeRange {
  value: number;
  low: number;
  high: number;
}

export interface OrderInputs {
  /** Rubber of the mold, from its shape. */
  volumeCm3: VolumeRange;
  densityKgM3: number;
  ratio: SiliconeRatio;
  method: Method;
  /** Cups mixed one after the other, each of which keeps a film; 1 when left out. */
  cups?: number;
  wasteShare?: number;
  cupLossG?: number;
  scaleStepG?: number;
}

/** What is mixed in all, g. Base and catalyst add up to the total, which is a whole number of equal mixes. */
export interface SiliconeOrder extends Mix {
  /** Before rounding; the range is that of the volume, with waste and cup loss as stated. */
  neededG: VolumeRange;
  /** The part of it that the mold takes, without cup losses. */
  inMoldG: number;
  cups: number;
  /** One of the equal mixes. */
  mix: Mix;
  ratioErrorShare: number;
  wasteShare: number;
  cupLossG: number;
  stepG: number;
  assumptions: BatchAssumption[];
  findings: Problem[];
}

/**
 * Silicone to mix for a volume: density x volume x (1 + waste) + cups x cup loss, rounded up to the scale's step and
 * split by mass, base first. Errors: INPUT_OUT_OF_BOUNDS, MIX_BELOW_SCALE.
 */
export function orderSilicone(inputs: OrderInputs): Outcome<SiliconeOrder> {
  const sound = checkOrder(inputs);
  if (!sound.ok) return sound;
  const { volumeCm3, densityKgM3, ratio, cups = 1 } = inputs;
  const assumptions: BatchAssumption[] = [];
  const { wasteShare, cupLossG, stepG } = settleLosses(inputs, noteIn(assumptions));
  const inMold = (cm3: number): number => (densityKgM3 / 1000) * cm3 * (1 + wasteShare);
  const needed = (cm3: number): number => inMold(cm3) + cups * cupLossG;
  const neededG = {
    value: needed(volumeCm3.value),
    low: needed(volumeCm3.low),
    high: needed(volumeCm3.high),
  };
  const rounded = roundMix({ neededG: neededG.value / cups, ratio, stepG });
  if (!rounded.ok) return rounded;
  const { ratioErrorShare, ...mix } = rounded.value;
  return good({
    ...timesMix(mix, cups),
    neededG,
    inMoldG: inMold(volumeCm3.value),
    cups,
    mix,
    ratioErrorShare,
    wasteShare,
    cupLossG,
    stepG,
    assumptions,
    findings: smallMixFindings({ mixG: mix.totalG, ratio, stepG }),
  });
}

/** So many equal mixes, free of binary tails. */
export const timesMix = (mix: Mix, count: number): Mix => ({
  totalG: inGrams(count, mix.totalG),
  baseG: inGrams(count, mix.baseG),
  catalystG: inGrams(count, mix.catalystG),
});

export const wasteRule = (method: Method): Rule =>
  method === 'pour' ? SILICONE_RULES.wastePour : SILICONE_RULES.wasteBrush;

function settleLosses(
  inputs: OrderInputs,
  note: Note,
): { wasteShare: number; cupLossG: number; stepG: number } {
  return {
    wasteShare: inputs.wasteShare ?? note('silicone_waste', wasteRule(inputs.method)),
    cupLossG: inputs.cupLossG ?? note('silicone_cup_loss_g', SILICONE_RULES.cupLoss),
    stepG: inputs.scaleStepG ?? note('scale_step_g', RULES.scaleStep),
  };
}

function checkOrder({ volumeCm3, densityKgM3, ratio, cups, ...losses }: OrderInputs): Outcome<true> {
  for (const volume of [volumeCm3.low, volumeCm3.value, volumeCm3.high]) {
    const within = checkSilicone({ volumeCm3: volume });
    if (!within.ok) return within;
  }
  if (volumeCm3.low > volumeCm3.value || volumeCm3.high < volumeCm3.value)
    throw new Error(`orderSilicone: expected low <= value <= high, got ${JSON.stringify(volumeCm3)}`);
  if (cups !== undefined && !Number.isInteger(cups))
    throw new Error(`orderSilicone: expected a whole number of cups, got ${cups}`);
  const parts = checkRatioParts(ratio);
  if (!parts.ok) return parts;
  const { wasteShare, cupLossG, scaleStepG } = losses;
  return checkSilicone({ densityKgM3 }, { cups, wasteShare, cupLossG, scaleStepG });
}
