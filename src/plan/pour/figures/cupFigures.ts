import { POUR_RULES, type CupPlan } from '../../../yield';
import type { PourAsk } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { givenOr, HERE, input, notedValue, saidOr, type OpenedFigure } from './openedFigure';

/** The largest mix, and what that makes of the batch. */
export function cupFigures(ready: PreparedPour, ask: PourAsk): OpenedFigure[] {
  const { cups, batch } = ready;
  const one = cups.cups[0];
  return [
    ...limitFigures(ready, ask),
    {
      key: 'cups',
      title: 'Cups',
      value: cups.cups.length,
      unit: '',
      formula: 'fewest equal cups whose mix is at most what the cup or the pour window takes',
      inputs: [
        ...input('what leaves the cups for the mold', batch.inMoldG, 'g', HERE),
        ...input(
          'residue of a cup',
          batch.inputs.residueG,
          'g',
          saidOr(ask.pour.residueG, batch.assumptions, 'residue_g'),
        ),
        ...input('largest mix', cups.largestMixG, 'g', HERE),
      ],
      source: POUR_RULES.cupFill.from,
    },
    ...(one === undefined ? [] : mixFigures(ready, ask, one)),
  ];
}

type OneCup = CupPlan['cups'][number];

/** What one cup takes, and all of them. */
function mixFigures({ cups, batch }: PreparedPour, { pour }: PourAsk, one: OneCup): OpenedFigure[] {
  const count = input('cups', cups.cups.length, '', HERE);
  const mix = input('mix in a cup', one.totalG, 'g', HERE, 'exact');
  const { a, b } = batch.massRatio;
  const ratioFrom = batch.ratio.by === 'mass' ? 'given' : HERE;
  const part = (name: 'a' | 'b', value: number): OpenedFigure => ({
    key: `cup_${name}_g`,
    title: `Part ${name.toUpperCase()}${cups.cups.length > 1 ? ', in each cup' : ''}`,
    value,
    unit: 'g',
    shown: 'exact',
    formula: `mix in a cup x ${name} / (a + b), to the step of the scale`,
    inputs: [
      ...mix,
      ...input('a, parts A by weight', a, '', ratioFrom),
      ...input('b, parts B by weight', b, '', ratioFrom),
      ...input(
        'step of the scale',
        batch.stepG,
        'g',
        saidOr(pour.scaleStepG, batch.assumptions, 'scale_step_g'),
      ),
    ],
    source: 'the ratio of the data sheet, A first',
  });
  return [
    {
      key: 'cup_g',
      title: 'Mix in a cup',
      value: one.totalG,
      unit: 'g',
      shown: 'exact',
      formula: 'for the mold / cups + residue, to the step of the scale so that the ratio stays right',
      inputs: [
        ...input('for the mold', batch.inMoldG, 'g', HERE),
        ...count,
        ...input(
          'residue of a cup',
          batch.inputs.residueG,
          'g',
          saidOr(pour.residueG, batch.assumptions, 'residue_g'),
        ),
      ],
      source: 'mass balance, derived',
    },
    part('a', one.partAG),
    part('b', one.partBG),
    ...(cups.cups.length === 1
      ? []
      : [
          {
            key: 'all_cups_g',
            title: 'All cups together',
            value: cups.totalG,
            unit: 'g',
            shown: 'exact' as const,
            formula: 'cups x mix in a cup',
            inputs: [...count, ...mix],
            source: 'a sum',
          },
        ]),
    {
      key: 'cup_liquid_cm3',
      title: 'Liquid in a cup',
      value: (1000 * one.totalG) / batch.liquidKgM3,
      unit: 'cm3',
      formula: '1000 x mix / liquid density',
      inputs: [
        ...mix,
        ...input(
          'liquid density',
          batch.liquidKgM3,
          'kg/m3',
          saidOr(pour.liquidKgM3, batch.assumptions, 'liquid_density_kg_m3'),
        ),
      ],
      source: 'definition of density',
    },
  ];
}

/** What sets the largest mix: how far the cup may be filled, or the time to pour. */
function limitFigures({ cups, batch }: PreparedPour, { cups: limits = {} }: PourAsk): OpenedFigure[] {
  const { largestMixG, limitedBy, window, assumptions } = cups;
  if (largestMixG === undefined) return [];
  const figure = { key: 'largest_mix_g', title: 'Largest mix of one cup', value: largestMixG, unit: 'g' };
  if (limitedBy === 'container')
    return [
      {
        ...figure,
        formula: 'liquid density / 1000 x cup x fill',
        inputs: [
          ...input('liquid density', batch.liquidKgM3, 'kg/m3', HERE),
          ...input('cup to its rim', limits.cupCm3, 'cm3', 'given'),
          ...input(
            'fill',
            limits.cupFillShare ?? notedValue(assumptions, 'cup_fill'),
            '',
            givenOr(limits.cupFillShare, assumptions, 'cup_fill'),
            'share',
          ),
        ],
        source: POUR_RULES.cupFill.from,
      },
    ];
  return [
    {
      ...figure,
      formula: 'rate x time to pour',
      inputs: [
        ...input(
          'rate',
          notedValue(assumptions, 'pour_rate'),
          'g/s',
          givenOr(undefined, assumptions, 'pour_rate'),
        ),
        ...input('time to pour', window?.pourWindowS.value, 's', HERE),
      ],
      source: POUR_RULES.pourRate.from,
    },
  ];
}
