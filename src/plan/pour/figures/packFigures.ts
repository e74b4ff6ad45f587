import { mixedMassG, POUR_RULES, shortFillChance, type PackColumn } from '../../../yield';
import type { PourAsk } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { packInput } from './batchFigures';
import { givenOr, HERE, input, notedValue, type OpenedFigure } from './openedFigure';

/** What stands in the table of packs beside the batch itself, for the pack of the batch; and what the size of the part says. */
export function packFigures(ready: PreparedPour, ask: PourAsk): OpenedFigure[] {
  const columns = ready.packs?.columns.filter((one) => one.refused === undefined) ?? [];
  const own = columns.find(({ packFactor }) => packFactor === ready.batch.packFactor);
  return [
    ...stiffnessFigures(ready, columns),
    ...(own === undefined ? [] : costFigures(own, ask)),
    ...pastFigures(own),
    ...sizeFigures(ready, ask),
  ];
}

/** Of the pack farthest from the one it is told against: that one itself is once as stiff. */
function stiffnessFigures({ packs }: PreparedPour, columns: readonly PackColumn[]): OpenedFigure[] {
  const reference = packs?.reference;
  const other = columns.filter(({ packFactor }) => packFactor !== reference?.packFactor).at(-1);
  if (reference === undefined || other === undefined) return [];
  const { stiffnessPower } = POUR_RULES;
  return [
    {
      key: 'stiffness_ratio',
      title: `Stiffness at pack ${other.packFactor.toFixed(2)}, times that of ${reference.packFactor.toFixed(2)}`,
      value: other.stiffnessRatio.value,
      unit: '',
      formula: '(pack / other pack)^power',
      inputs: [
        ...input('pack', other.packFactor, '', 'of its column'),
        ...input('other pack', reference.packFactor, '', reference.basis),
        ...input('power', stiffnessPower.value, '', `${stiffnessPower.low} to ${stiffnessPower.high}`),
      ],
      source: stiffnessPower.from,
    },
  ];
}

function costFigures({ batch, cost }: PackColumn, { prices }: PourAsk): OpenedFigure[] {
  if (cost === undefined || prices === undefined) return [];
  const packFactor = batch.packFactor * (1 + POUR_RULES.morePack.value);
  const mix = input('mix', cost.mixPrice, '', HERE);
  const failed = input('failed casting', cost.failurePrice, '', HERE);
  const { leastPack, packSigmaShare } = batch;
  return [
    {
      key: 'mix_price',
      title: 'Mix costs',
      value: cost.mixPrice,
      unit: '',
      formula: '(A x price of A + B x price of B) / 1000',
      inputs: [
        ...input('A', batch.partAG, 'g', HERE, 'exact'),
        ...input('B', batch.partBG, 'g', HERE, 'exact'),
        ...input('price of A, a kilogram', prices.aPerKg, '', 'given'),
        ...input('price of B, a kilogram', prices.bPerKg, '', 'given'),
      ],
      source: 'a sum, in the money that was typed',
    },
    {
      key: 'failure_price',
      title: 'A failed casting',
      value: cost.failurePrice,
      unit: '',
      formula: 'mix + what else it costs',
      inputs: [
        ...mix,
        ...input(
          'what else it costs',
          prices.failurePrice ?? 0,
          '',
          prices.failurePrice === undefined ? 'none was given' : 'given',
        ),
      ],
      source: 'a sum; only a short fill counts as a failure',
    },
    {
      key: 'expected_failure_price',
      title: 'A failed casting, times its chance',
      value: cost.expectedFailurePrice,
      unit: '',
      formula: 'chance x failed casting',
      inputs: [...input('chance of a short fill', batch.shortFillChance, '', HERE, 'chance'), ...failed],
      source: 'definition of an expected cost',
    },
    {
      key: 'more_pack_price',
      title: '5 % more pack costs',
      value: cost.morePackPrice,
      unit: '',
      formula: 'more mix / mix in grams x mix costs',
      inputs: [
        ...input('more mix', mixedMassG({ ...batch.inputs, packFactor }) - batch.mixedG, 'g', HERE),
        ...input('mix in grams', batch.totalG, 'g', HERE, 'exact'),
        ...mix,
      ],
      source: `a sum; ${POUR_RULES.morePack.from}`,
    },
    {
      key: 'more_pack_saves',
      title: '5 % more pack saves',
      value: cost.morePackSaves,
      unit: '',
      formula: '(chance - chance with more pack) x failed casting',
      inputs: [
        ...input('chance of a short fill', batch.shortFillChance, '', HERE, 'chance'),
        ...input(
          'chance with more pack',
          shortFillChance({ packFactor, leastPack, sigmaShare: packSigmaShare }),
          '',
          HERE,
          'chance',
        ),
        ...failed,
      ],
      source: 'definition of an expected cost',
    },
  ];
}

function pastFigures(column: PackColumn | undefined): OpenedFigure[] {
  if (column?.past === undefined || column.past.poured === 0) return [];
  const { filled, poured } = column.past;
  return [
    {
      key: 'past_filled',
      title: 'Castings of before that filled at this pack',
      value: filled,
      unit: '',
      formula: `those that filled, of all within ${POUR_RULES.samePack.value} of the pack`,
      inputs: [...packInput(column.batch), ...input('castings that near', poured, '', 'given')],
      source: POUR_RULES.samePack.from,
    },
  ];
}

function sizeFigures({ sizeAware, cavityCm3 }: PreparedPour, ask: PourAsk): OpenedFigure[] {
  if (sizeAware === undefined) return [];
  const { leastPack, advisedPack, assumptions } = sizeAware;
  const { skinDepth, skinOverCore, packMargin } = POUR_RULES;
  return [
    {
      key: 'skin_pack',
      title: 'Pack that the skin alone takes',
      value: leastPack.value,
      unit: '',
      formula: '1 + (skin over core - 1) x depth / 10 x surface / cavity',
      inputs: [
        ...input(
          'skin over core',
          notedValue(assumptions, 'skin_over_core'),
          '',
          givenOr(undefined, assumptions, 'skin_over_core'),
        ),
        ...input(
          'depth of the skin',
          ask.skinMm ?? notedValue(assumptions, 'skin_depth_mm'),
          'mm',
          givenOr(ask.skinMm, assumptions, 'skin_depth_mm'),
        ),
        ...input('surface', ask.castingCm2, 'cm2', 'scanned'),
        ...input('cavity', cavityCm3.value, 'cm3', cavityCm3.from),
      ],
      source: `mass balance, derived; skin of ${skinDepth.low} to ${skinDepth.high} mm: ${skinDepth.from}; ${skinOverCore.from}`,
    },
    {
      key: 'advised_pack',
      title: 'Pack with a margin',
      value: advisedPack.value,
      unit: '',
      formula: 'pack of the skin + margin',
      inputs: [
        ...input('pack of the skin', leastPack.value, '', HERE),
        ...input(
          'margin',
          notedValue(assumptions, 'pack_margin'),
          '',
          givenOr(undefined, assumptions, 'pack_margin'),
        ),
      ],
      source: packMargin.from,
    },
  ];
}
