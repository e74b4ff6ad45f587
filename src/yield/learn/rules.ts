import type { Rule } from '../rules';
import { INPUT_BOUNDS } from '../rules';

const CHOSEN = 'Chosen here';

/** Figures of what is learned from past pours. None of them is a fact about a foam. */
export const LEARN_RULES = {
  leastPours: { value: 3, unit: '', from: `${CHOSEN}: two points always lie on a line, so they prove none` },
  rangeShare: { value: 0.9, unit: '', from: `${CHOSEN}: a predicted pour lies in its range 9 times of 10` },
  groupK: {
    value: 8,
    unit: 'K',
    from: `${CHOSEN}: half of the swing of an unheated room; a colder day is another foam`,
  },

  driftLeast: {
    value: 6,
    unit: 'castings',
    from: `${CHOSEN}: a line through fewer follows their scatter as much as the mold`,
  },

  residueScatter: {
    value: 3,
    unit: 'g',
    from: `${CHOSEN}: how much what one cup keeps differs from pour to pour`,
  },
  residueScatterWorth: {
    value: 3,
    unit: 'pours',
    from: `${CHOSEN}: how many pours that scatter counts for, so that three of them cannot claim to agree by luck`,
  },
  residueSlopeU: {
    value: 0.03,
    unit: '',
    from: `${CHOSEN}: a slope known worse than this is none; 2 to 4 % of a mix is common`,
  },
  residueReach: {
    value: 0.25,
    unit: '',
    from: `${CHOSEN}: how far from pours of one mass their mean still holds`,
  },

  skinInLeast: {
    value: 0.05,
    low: 0,
    high: 0.1,
    unit: '',
    from: 'what the skin adds to the free rise in a mold: 0 to 10 %, from a mass balance with a skin of 1 mm four times as dense as the core (assumed); the middle of it is Chosen here',
  },
  pourScatter: {
    value: 0.03,
    low: 0.02,
    high: 0.04,
    unit: '',
    from: "one operator's scatter from pour to pour, taken as that from cup to cup; common practice, no source",
  },
  pourScatterShape: {
    value: 6,
    unit: '',
    from: `${CHOSEN}: inverse-gamma shape that puts the scatter within 2 to 4 % about 9 times of 10`,
  },

  balanceMost: {
    value: 0.03,
    unit: '',
    from: 'common practice, no source: gas and crumbs take 0 to 3 % of the mix',
  },
  scanFactorScatter: {
    value: 0.01,
    unit: '',
    from: `${CHOSEN}: how much the factor differs from piece to piece`,
  },
  scanFactorWorth: { value: 2, unit: '', from: `${CHOSEN}: inverse-gamma shape of that scatter` },
  keptDensityU: {
    value: 0.05,
    unit: '',
    from: `${CHOSEN}: doubt of the free rise in a share kept, when nobody gives one`,
  },
  riserFactor: {
    value: 4,
    unit: '',
    from: 'pressure by the ideal gas law is off by up to a factor of 2 either way, and so may the time the foam flows: the two together (Chosen here)',
  },

  slipShare: {
    value: 0.06,
    unit: '',
    from: `${CHOSEN}: how near a weight must come to what is expected once its unit is put right`,
  },
  slipRatio: {
    value: 0.1,
    unit: '',
    from: `${CHOSEN}: how near A over B must come to the ratio of the card, or to its reverse`,
  },
  hottestMold: { value: 60, unit: 'C', from: `${CHOSEN}: no mold is poured into warmer` },
  hottestRoom: { value: 45, unit: 'C', from: `${CHOSEN}: nobody casts in a warmer room` },
  coldest: { value: -5, unit: 'C', from: `${CHOSEN}: nobody casts in a colder room or mold` },

  togetherR: {
    value: 0.7,
    unit: '',
    from: `${CHOSEN}: correlation from which two things moved together; half of what one did could be the other (0.7 squared)`,
  },
  samePack: { value: 0.02, unit: '', from: `${CHOSEN}: packs this near count as the same` },
  packStepNext: { value: 0.05, unit: '', from: `${CHOSEN}: one change of the pack at a time, this much` },
  moldStepLeast: {
    value: 3,
    unit: 'K',
    from: `${CHOSEN}: a smaller change of the mold drowns in its own unevenness`,
  },
  goodSkin: { value: 3, unit: '', from: `${CHOSEN}: skin from 1 to 5, good from here on` },
} as const satisfies Record<string, Rule>;

/** Bounds of sense for what is typed into the book (chosen by us, no source): outside, it is refused by its name. */
export const LEARN_BOUNDS = {
  mixedG: { low: 0.1, high: 1e8, unit: 'g' },
  pouredG: { low: 0.1, high: 1e8, unit: 'g' },
  castingG: { low: 0, high: 1e8, unit: 'g' },
  trimG: { low: 0, high: 1e8, unit: 'g' },
  riserTrimG: { low: 0.1, high: 1e6, unit: 'g' },
  residueG: INPUT_BOUNDS.residueG,
  cavityCm3: INPUT_BOUNDS.cavityCm3,
  filledCm3: INPUT_BOUNDS.cavityCm3,
  scanCm3: INPUT_BOUNDS.cavityCm3,
  freeRiseKgM3: INPUT_BOUNDS.freeRiseKgM3,
  scaleStepG: INPUT_BOUNDS.scaleStepG,
  uFreeRiseShare: { low: 1e-4, high: 0.5, unit: '' },
  uCavityShare: { low: 0, high: 0.5, unit: '' },
  gasLossShare: INPUT_BOUNDS.gasLossShare,
  shortShare: { low: 0, high: 0.9, unit: '' },
  fillChance: { low: 0.5, high: 0.999, unit: '' },
  packFactor: { low: 1, high: 2.5, unit: '' },
  sprueMm: { low: 1, high: 300, unit: 'mm' },
  sprueLengthMm: { low: 0.1, high: 2000, unit: 'mm' },
  riseS: { low: 0.1, high: 1e5, unit: 's' },
  gaugeKPa: { low: 0.001, high: 2000, unit: 'kPa' },
  moldedKgM3: { low: 5, high: 1500, unit: 'kg/m3' },
} as const satisfies Record<string, { low: number; high: number; unit: string }>;

export type LearnInput = keyof typeof LEARN_BOUNDS;
