import { STANDARD_GRAVITY_M_S2 } from '../units';

/** A figure that is not geometry and not given by the user, with where it comes from. */
export interface Rule {
  value: number;
  low?: number;
  high?: number;
  unit: string;
  from: string;
}

const COMMON = 'common practice, no source';
const MEMORY = 'from memory, not verified';

/** Every default and bound of the pour. Each is shown as assumed until the user confirms it. */
export const RULES = {
  packFactor: { value: 1.3, low: 1, high: 2.5, unit: '', from: COMMON },
  packFine: { value: 1.3, low: 1.1, high: 1.6, unit: '', from: COMMON },
  packStopAbove: { value: 2, unit: '', from: COMMON },
  liquidDensity: { value: 1070, low: 1030, high: 1150, unit: 'kg/m3', from: `range ${MEMORY}` },
  minClampPressure: { value: 20, unit: 'kPa', from: `engineering choice; orders of magnitude ${MEMORY}` },
  clampSafety: {
    value: 2,
    unit: '',
    from: 'engineering choice: the ideal-gas pressure is off by up to a factor of two',
  },
  siliconeDensityMass: { value: 1100, low: 1070, high: 1300, unit: 'kg/m3', from: MEMORY },
  siliconeDensityThermal: { value: 1200, low: 1070, high: 1300, unit: 'kg/m3', from: MEMORY },
  ventDiameter: { value: 2, low: 1.5, high: 3, unit: 'mm', from: COMMON },
  ventPeakFlow: { value: 3, unit: '', from: COMMON },
  openingShare: { value: 0.05, low: 0.025, high: 0.1, unit: '', from: COMMON },
  gravity: { value: STANDARD_GRAVITY_M_S2, unit: 'm/s2', from: 'ISO 80000-3, exact' },

  riser: { value: 0, unit: 'cm3', from: 'no riser was given' },
  uRiser: { value: 0.2, unit: '', from: 'assumption of the uncertainty budget' },
  vents: { value: 10, unit: 'g', from: COMMON },
  uVents: { value: 5, unit: 'g', from: 'assumption of the uncertainty budget' },
  uGasLoss: { value: 0.005, unit: '', from: 'assumption of the uncertainty budget' },
  gasTemperature: { value: 350, unit: 'K', from: 'engineering choice: mean gas temperature at gel' },
  standardPressure: { value: 101.325, unit: 'kPa', from: 'ISO 2533 sea level, exact' },
  residue: { value: 30, unit: 'g', from: `${COMMON}, for a batch of about 1 kg` },
  uResidue: { value: 10, unit: 'g', from: 'assumption of the uncertainty budget' },
  scaleStep: { value: 1, unit: 'g', from: COMMON },
  uFreeRiseCup: {
    value: 0.015,
    unit: '',
    from: 'same-day cup test, 3 cups or more: 1.5 to 2 %, common practice, no source',
  },
  uFreeRiseLabel: {
    value: 0.08,
    unit: '',
    from: 'density from a label or an old cup: 8 %, common practice, no source',
  },
  uStationPressure: {
    value: 0.0127,
    unit: '',
    from: '1.5 kPa of weather through the ideal gas law; the 1.5 kPa is assumed',
  },
  uScanToMold: {
    value: 0.015,
    unit: '',
    from: 'scan, closure and shrink between the file and the mold: assumption',
  },
  minSigmaNoCup: { value: 0.05, unit: '', from: `${COMMON}: chosen floor without a cup test` },

  shortFillLook: { value: 0.01, unit: '', from: `${COMMON}: chosen` },
  shortFillStop: { value: 0.1, unit: '', from: `${COMMON}: chosen` },
  residueLook: { value: 0.15, unit: '', from: `${COMMON}: chosen; 10 % and more is usual for 100 g` },
  ratioLook: { value: 0.02, unit: '', from: COMMON },
  ratioStop: { value: 0.05, unit: '', from: COMMON },
  ratioFine: {
    value: 0.005,
    unit: '',
    from: 'chosen here: a ratio this close gains nothing that a bench could notice from a larger batch',
  },
  roundUpMost: {
    value: 0.05,
    unit: '',
    from: 'chosen here: more than that is another pack, not a rounding',
  },
  scaleRatioU2: { value: 0.01, unit: '', from: `twice the ratio's standard uncertainty; ${COMMON}` },

  cupToCup: {
    value: 0.03,
    low: 0.02,
    high: 0.04,
    unit: '',
    from: `one operator's scatter from cup to cup; ${COMMON}`,
  },
  smallCup: { value: 100, unit: 'g', from: COMMON },
  uSmallCup: { value: 0.04, unit: '', from: COMMON },
} as const satisfies Record<string, Rule>;

export type RuleName = keyof typeof RULES;

/** Bounds of sense for what is typed (chosen by us, no source): outside, the input is refused by its name. */
export const INPUT_BOUNDS = {
  cavityCm3: { low: 0.1, high: 1e7, unit: 'cm3' },
  riserCm3: { low: 0, high: 1e7, unit: 'cm3' },
  freeRiseKgM3: { low: 5, high: 1000, unit: 'kg/m3' },
  minFillKgM3: { low: 5, high: 1500, unit: 'kg/m3' },
  liquidKgM3: { low: 700, high: 2000, unit: 'kg/m3' },
  partDensityKgM3: { low: 500, high: 3000, unit: 'kg/m3' },
  overpackShare: { low: 1, high: 2.5, unit: '' },
  shortFillChance: { low: 1e-6, high: 0.5, unit: '' },
  ventsG: { low: 0, high: 1e5, unit: 'g' },
  gasLossShare: { low: 0, high: 0.2, unit: '' },
  residueG: { low: 0, high: 1e5, unit: 'g' },
  scaleStepG: { low: 0.001, high: 100, unit: 'g' },
  scaleMaxG: { low: 1, high: 1e7, unit: 'g' },
  uShare: { low: 0, high: 0.5, unit: '' },
  uAbsolute: { low: 0, high: 1e7, unit: '' },
  ratioOfSides: { low: 0.02, high: 50, unit: '' },
} as const satisfies Record<string, { low: number; high: number; unit: string }>;

export type BoundedInput = keyof typeof INPUT_BOUNDS;
