import type { Rule } from '../rules';

const COMMON = 'common practice, no source';
const MEMORY = 'from memory, not verified';

/** Every default and bound of the silicone amounts. Each is shown as assumed until the user confirms it. */
export const SILICONE_RULES = {
  wastePour: { value: 0.05, low: 0.05, high: 0.2, unit: '', from: COMMON },
  wasteBrush: { value: 0.1, low: 0.05, high: 0.2, unit: '', from: COMMON },
  cupLoss: { value: 20, low: 10, high: 30, unit: 'g', from: `${COMMON}, per mix` },
  scaleErrorShare: { value: 0.05, unit: '', from: `${COMMON}: the catalyst may be off by so much` },
  ratioFine: {
    value: 0.005,
    unit: '',
    from: 'chosen here: a ratio this close gains nothing that a bench could notice from a larger mix',
  },
  roundUpMost: { value: 0.05, unit: '', from: 'chosen here: more than that is no rounding' },

  density: {
    value: 1100,
    low: 1070,
    high: 1300,
    unit: 'kg/m3',
    from: `${COMMON}; filled grades 1100 to 1300, ${MEMORY}`,
  },
  basePerCatalyst: {
    value: 10,
    unit: '',
    from: `${COMMON} of condensation cures; many addition cures are 1`,
  },
  potLife: { value: 30, low: 20, high: 45, unit: 'min', from: COMMON },
  brushRate: { value: 60, unit: 'g/min', from: COMMON },
  pourRate: { value: 400, unit: 'g/min', from: COMMON },
  mixTime: { value: 4, unit: 'min', from: COMMON },
  degasTime: { value: 5, unit: 'min', from: COMMON },
  potLifeTemperature: { value: 23, unit: 'C', from: `temperature of data sheets, ${MEMORY}` },
  potLifeHalves: {
    value: 10,
    unit: 'K',
    from: `the pot life halves for so much more warmth: rule of thumb after Arrhenius, ${MEMORY}`,
  },
  mostMixes: { value: 200, unit: '', from: 'chosen here: more is another way of making the mold' },

  firstCoat: { value: 0.75, low: 0.5, high: 1, unit: 'mm', from: COMMON },
  coat: { value: 1.5, low: 1, high: 3, unit: 'mm', from: COMMON },

  entrainedAir: { value: 0.1, unit: '', from: 'assumed for the froth; agrees with four times the volume' },
  frothRatio: { value: 4, low: 3, high: 5, unit: '', from: COMMON },
  stirRatio: { value: 1.5, unit: '', from: `${COMMON}: a cup over two thirds full spills when stirred` },
  degasPressure: {
    value: 3.2,
    unit: 'kPa',
    from: `${COMMON}: absolute, what 29 inches of mercury leave at sea level`,
  },

  viscosity: { value: 20, low: 10, high: 40, unit: 'Pa s', from: COMMON },
  laminarReynolds: { value: 2000, unit: '', from: `below it the flow in a tube is laminar; ${MEMORY}` },
} as const satisfies Record<string, Rule>;

interface Bounds {
  low: number;
  high: number;
  unit: string;
}

/** Bounds of sense for what is typed (chosen by us, no source): outside, the input is refused by its name. */
export const SILICONE_BOUNDS = {
  volumeCm3: { low: 0.01, high: 1e7, unit: 'cm3' },
  densityKgM3: { low: 700, high: 2000, unit: 'kg/m3' },
  wasteShare: { low: 0, high: 1, unit: '' },
  cupLossG: { low: 0, high: 1000, unit: 'g' },
  cups: { low: 1, high: SILICONE_RULES.mostMixes.value, unit: '' },
  scaleStepG: { low: 0.001, high: 100, unit: 'g' },
  ratioPart: { low: 0.001, high: 1e6, unit: '' },
  totalG: { low: 0.01, high: 1e8, unit: 'g' },

  potLifeMin: { low: 0.5, high: 2880, unit: 'min' },
  potLifeAtC: { low: 0, high: 50, unit: 'C' },
  roomC: { low: -10, high: 60, unit: 'C' },
  applyGPerMin: { low: 0.1, high: 1e5, unit: 'g/min' },
  mixMin: { low: 0, high: 120, unit: 'min' },
  degasMin: { low: 0, high: 120, unit: 'min' },
  leftMin: { low: 0.1, high: 2880, unit: 'min' },

  skinMm: { low: 0.05, high: 500, unit: 'mm' },
  firstCoatMm: { low: 0.05, high: 50, unit: 'mm' },
  coatMm: { low: 0.05, high: 50, unit: 'mm' },

  entrainedAirShare: { low: 0, high: 0.6, unit: '' },
  pressureKPa: { low: 0.01, high: 110, unit: 'kPa' },
  ambientKPa: { low: 50, high: 110, unit: 'kPa' },
  vacuumKPa: { low: 0, high: 110, unit: 'kPa' },
  frothRatio: { low: 1, high: 100, unit: '' },
  containerCm3: { low: 1, high: 1e6, unit: 'cm3' },

  viscosityPaS: { low: 0.001, high: 1e4, unit: 'Pa s' },
  diameterMm: { low: 0.5, high: 200, unit: 'mm' },
  heightMm: { low: 1, high: 1e4, unit: 'mm' },
  drainS: { low: 1, high: 1e6, unit: 's' },
  yieldStressPa: { low: 0.001, high: 1e5, unit: 'Pa' },
  staysMm: { low: 0.001, high: 500, unit: 'mm' },

  needKg: { low: 0, high: 2000, unit: 'kg' },
  kitKg: { low: 0.001, high: 1000, unit: 'kg' },
  kitPrice: { low: 0, high: 1e9, unit: '' },
  kits: { low: 0, high: 50, unit: '' },
  stockKg: { low: 0, high: 1e5, unit: 'kg' },

  cureMin: { low: 0.5, high: 20160, unit: 'min' },
  shoreA: { low: 0, high: 100, unit: '' },
  elongationAtBreak: { low: 0.2, high: 15, unit: '' },
  linearShrinkShare: { low: 0, high: 0.1, unit: '' },
} as const satisfies Record<string, Bounds>;

export type SiliconeInput = keyof typeof SILICONE_BOUNDS;
