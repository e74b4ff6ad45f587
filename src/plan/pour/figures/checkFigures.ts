import { panelStress, POUR_RULES, RULES } from '../../../yield';
import { ratioUncertaintyShare } from '../../../yield/scaleCheck';
import type { PourAsk } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { HERE, input, type OpenedFigure } from './openedFigure';

/** What the checks hold against their limits and no other question tells. */
export function checkFigures(ready: PreparedPour, ask: PourAsk): OpenedFigure[] {
  const { cups, batch } = ready;
  const cup = cups.cups[0];
  if (cup === undefined) return [];
  const { partAG, partBG, totalG } = cup;
  const { stepG } = batch;
  const liquidCm3 = (1000 * totalG) / batch.liquidKgM3;
  const cupCm3 = ask.cups?.cupCm3;
  return [
    {
      key: 'ratio_doubt',
      title: 'Doubt of the ratio by the scale, twice',
      value: 2 * ratioUncertaintyShare({ partAG, partBG, stepG }),
      unit: '',
      shown: 'share',
      formula: '2 x step / square root of 6 x square root of (1/A^2 + 1/B^2)',
      inputs: [
        ...input('step', stepG, 'g', HERE),
        ...input('A', partAG, 'g', HERE, 'exact'),
        ...input('B', partBG, 'g', HERE, 'exact'),
      ],
      source: `two readings of each, each rounded: JCGM 100:2008, 5.1.6; wanted ${100 * RULES.scaleRatioU2.value} %: ${RULES.scaleRatioU2.from}`,
    },
    ...(cupCm3 === undefined
      ? []
      : [
          {
            key: 'cup_share',
            title: 'Liquid in the cup, of its volume',
            value: liquidCm3 / cupCm3,
            unit: '',
            shown: 'share' as const,
            formula: 'liquid / cup',
            inputs: [...input('liquid', liquidCm3, 'cm3', HERE), ...input('cup', cupCm3, 'cm3', 'given')],
            source: POUR_RULES.cupFill.from,
          },
        ]),
    ...(ready.times.window === undefined
      ? []
      : [
          {
            key: 'pour_time_s',
            title: 'The pour takes',
            value: totalG / POUR_RULES.pourRate.value,
            unit: 's',
            formula: 'mix / rate',
            inputs: [
              ...input('mix in a cup', totalG, 'g', HERE, 'exact'),
              ...input('rate', POUR_RULES.pourRate.value, 'g/s', {
                from: POUR_RULES.pourRate.from,
                isAssumed: true,
              }),
            ],
            source: POUR_RULES.pourRate.from,
          },
        ]),
    ...pigmentFigures(ready, ask),
    ...panelFigures(ready, ask),
  ];
}

/** Of A and B together. What was said of it in Mold wins over the recipe. */
function pigmentFigures({ batch }: PreparedPour, { facts, colors = [] }: PourAsk): OpenedFigure[] {
  const value = facts?.pigmentShare;
  if (value === undefined) return [];
  const { a, b } = batch.massRatio;
  const ofRecipe = colors.reduce((sum, { share, of }) => sum + share * (of === 'B' ? b / (a + b) : 1), 0);
  const isOfRecipe = Math.abs(ofRecipe - value) <= 1e-9;
  return [
    {
      key: 'pigment_share',
      title: 'Pigment, of A and B together',
      value,
      unit: '',
      shown: 'share',
      formula: isOfRecipe ? 'shares of B x b / (a + b), and shares of the mix, added up' : 'as said in Mold',
      inputs: isOfRecipe
        ? [
            ...colors.flatMap(({ name, share, of }) =>
              input(`${name}, of ${of === 'B' ? 'B' : 'A and B'}`, share, '', 'given', 'share'),
            ),
            ...input('a, parts A by weight', a, '', HERE),
            ...input('b, parts B by weight', b, '', HERE),
          ]
        : input('pigment', value, '', 'given', 'share'),
      source: 'a recipe by mass',
    },
  ];
}

function panelFigures({ forces }: PreparedPour, { clamp, warm, facts }: PourAsk): OpenedFigure[] {
  const panelMm = clamp?.jacketMm ?? warm?.jacket?.thicknessMm;
  const panelSpanMm = facts?.panelSpanMm;
  if (panelMm === undefined || panelSpanMm === undefined || !(panelSpanMm > 0)) return [];
  const gaugeKPa = forces.pressureKPa.designKPa;
  const stress = panelStress({ gaugeKPa, panelSpanMm, panelMm });
  if (!stress.ok) return [];
  const { panelBend, panelStrength, panelSpan } = POUR_RULES;
  return [
    {
      key: 'panel_mpa',
      title: 'Pull in the widest flat part of the jacket',
      value: stress.value.stressMPa,
      unit: 'MPa',
      formula: 'factor x pressure / 1000 x (span / thickness)^2',
      inputs: [
        ...input('factor', panelBend.value, '', panelBend.from),
        ...input('pressure to plan for', gaugeKPa, 'kPa', HERE),
        ...input('span', panelSpanMm, 'mm', 'given'),
        ...input('thickness', panelMm, 'mm', 'given'),
      ],
      source: `${panelBend.from}; strength ${panelStrength.low} to ${panelStrength.high} MPa: ${panelStrength.from}; ${panelSpan.value} mm at most: ${panelSpan.from}`,
    },
  ];
}
