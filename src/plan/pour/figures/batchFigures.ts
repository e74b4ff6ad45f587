import type { Batch } from '../../../yield';
import { RULES } from '../../../yield';
import { ENDS_Z } from '../justFills';
import type { PourAsk } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { HERE, input, saidOr, type OpenedFigure, type OpenedInput } from './openedFigure';

export type PreparedBatch = Pick<PreparedPour, 'batch' | 'cavityCm3' | 'air'>;

/** What the mixed mass is reckoned from, with where each comes from. */
export function massInputs(
  ready: PreparedBatch,
  ask: PourAsk,
  pack: readonly OpenedInput[] = packInput(ready.batch),
): OpenedInput[] {
  const { batch, cavityCm3 } = ready;
  const { inputs, assumptions } = batch;
  const { pour } = ask;
  return [
    ...riseInput(ready, ask),
    ...pack,
    ...input('cavity', cavityCm3.value, 'cm3', cavityCm3.from),
    ...input('riser', inputs.riserCm3, 'cm3', saidOr(pour.riserCm3, assumptions, 'riser_cm3')),
    ...input('out of the vents', inputs.ventsG, 'g', saidOr(pour.ventsG, assumptions, 'vents_g')),
    ...input(
      'gas that leaves',
      inputs.gasLossShare,
      '',
      saidOr(pour.gasLossShare, assumptions, 'gas_loss'),
      'share',
    ),
    ...input('residue in the cup', inputs.residueG, 'g', saidOr(pour.residueG, assumptions, 'residue_g')),
  ];
}

/** In the air of the day it is no longer the card's. */
export const riseInput = ({ batch, air }: PreparedBatch, { pour }: PourAsk): OpenedInput[] =>
  input(
    'free rise',
    batch.inputs.freeRiseKgM3,
    'kg/m3',
    (air?.correction.applied.length ?? 0) > 0 ? HERE : pour.freeRiseKgM3.from,
  );

export const packInput = ({ packFactor, packFrom }: Batch): OpenedInput[] =>
  input('pack factor', packFactor, '', packOrigin(packFrom));

const packOrigin = (from: Batch['packFrom']): string | Pick<OpenedInput, 'from' | 'isAssumed'> =>
  from === 'assumed' ? { from: RULES.packFactor.from, isAssumed: true } : from;

export const MIXED = '(free rise x pack x (cavity + riser) + vents) / (1 - gas) + residue';

/** From the volume to the grams of A and B. */
export function batchFigures(ready: PreparedPour, ask: PourAsk): OpenedFigure[] {
  const { batch } = ready;
  return [
    ...liquidFigures(batch, ask),
    ...gasFigures(ready, ask),
    {
      key: 'mixed_g',
      title: 'Mixed in all, before rounding',
      value: batch.mixedG,
      unit: 'g',
      formula: MIXED,
      inputs: massInputs(ready, ask),
      source: 'mass balance, derived',
    },
    {
      key: 'mixed_range_g',
      title: 'Range of the mix, 9 times in 10, either way',
      value: ENDS_Z * batch.sigmaShare * batch.mixedG,
      unit: 'g',
      formula: `${ENDS_Z.toFixed(3)} x doubt x mixed`,
      inputs: [
        ...input('doubt of the mix', batch.sigmaShare, '', HERE, 'share'),
        ...input('mixed', batch.mixedG, 'g', HERE),
      ],
      source: 'normal distribution; doubts added up by JCGM 100:2008',
    },
    ...partFigures(batch, ask),
    {
      key: 'molded_density_kg_m3',
      title: 'Molded density',
      value: batch.moldedDensityKgM3,
      unit: 'kg/m3',
      formula: 'free rise x pack',
      inputs: [...riseInput(ready, ask), ...packInput(batch)],
      source: 'definition of the packing factor',
    },
    {
      key: 'in_mold_g',
      title: 'What leaves the cup',
      value: batch.inMoldG,
      unit: 'g',
      formula: 'mixed - residue',
      inputs: [
        ...input('mixed', batch.mixedG, 'g', HERE),
        ...input(
          'residue in the cup',
          batch.inputs.residueG,
          'g',
          saidOr(ask.pour.residueG, batch.assumptions, 'residue_g'),
        ),
      ],
      source: 'mass balance, derived',
    },
  ];
}

function partFigures(batch: Batch, { pour }: PourAsk): OpenedFigure[] {
  const { massRatio, totalG, stepG, ratio } = batch;
  const inputs = [
    ...input(
      'mixed in all',
      totalG,
      'g',
      'mixed, rounded to the step so that the ratio stays right',
      'exact',
    ),
    ...input('parts A by weight', massRatio.a, '', ratio.by === 'mass' ? 'given' : HERE),
    ...input('parts B by weight', massRatio.b, '', ratio.by === 'mass' ? 'given' : HERE),
    ...input('step of the scale', stepG, 'g', saidOr(pour.scaleStepG, batch.assumptions, 'scale_step_g')),
  ];
  const part = (name: 'a' | 'b', value: number): OpenedFigure => ({
    key: `part_${name}_g`,
    title: `Part ${name.toUpperCase()}`,
    value,
    unit: 'g',
    shown: 'exact',
    formula: `mixed x ${name} / (a + b), to the step of the scale`,
    inputs,
    source: 'the ratio of the data sheet, A first',
  });
  return [...ratioFigures(batch, pour), part('a', batch.partAG), part('b', batch.partBG)];
}

/** Only where the card has it by volume. */
function ratioFigures({ ratio, massRatio }: Batch, { partDensities }: PourAsk['pour']): OpenedFigure[] {
  if (ratio.by === 'mass' || partDensities === undefined) return [];
  return [
    {
      key: 'ratio_by_mass',
      title: 'A to one part of B by weight',
      value: massRatio.a / massRatio.b,
      unit: '',
      formula: '(a x density of A) / (b x density of B)',
      inputs: [
        ...input('a, parts A by volume', ratio.a, '', 'given'),
        ...input('b, parts B by volume', ratio.b, '', 'given'),
        ...input('density of A', partDensities.aKgM3, 'kg/m3', 'given'),
        ...input('density of B', partDensities.bKgM3, 'kg/m3', 'given'),
      ],
      source: 'definition of density',
    },
  ];
}

/** Only where it follows from the densities of the parts. */
function liquidFigures({ liquidKgM3, massRatio: { a, b } }: Batch, { pour }: PourAsk): OpenedFigure[] {
  const { partDensities } = pour;
  if (pour.liquidKgM3 !== undefined || partDensities === undefined) return [];
  return [
    {
      key: 'liquid_kg_m3',
      title: 'Density of the liquid mix',
      value: liquidKgM3,
      unit: 'kg/m3',
      formula: '(a + b) / (a / density of A + b / density of B)',
      inputs: [
        ...input('a, parts A by weight', a, '', HERE),
        ...input('b, parts B by weight', b, '', HERE),
        ...input('density of A', partDensities.aKgM3, 'kg/m3', 'given'),
        ...input('density of B', partDensities.bKgM3, 'kg/m3', 'given'),
      ],
      source: 'volumes of the parts add up, derived',
    },
  ];
}

/** Only where nobody gave it. */
function gasFigures(ready: PreparedBatch, ask: PourAsk): OpenedFigure[] {
  const { batch } = ready;
  const { pour } = ask;
  if (pour.gasLossShare !== undefined) return [];
  return [
    {
      key: 'gas_loss',
      title: 'Share of the mix that leaves as gas',
      value: batch.inputs.gasLossShare,
      unit: '',
      shown: 'share',
      formula: '0.0440095 x p / (8.314463 x T) x (1 / free rise - 1 / liquid density)',
      inputs: [
        ...riseInput(ready, ask),
        ...input(
          'liquid density',
          batch.liquidKgM3,
          'kg/m3',
          saidOr(pour.liquidKgM3, batch.assumptions, 'liquid_density_kg_m3'),
        ),
        ...input(
          'p, air at sea level',
          1000 * RULES.standardPressure.value,
          'Pa',
          RULES.standardPressure.from,
        ),
        ...input('T, gas at gel', RULES.gasTemperature.value, 'K', RULES.gasTemperature.from),
      ],
      source:
        'carbon dioxide that blows a foam of this density, ideal gas law, derived; gas constant: SI, exact',
    },
  ];
}
