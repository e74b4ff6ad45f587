import { RULES } from '../rules';
import type { Rule } from '../rules';

const COMMON = 'common practice, no source';
const MEMORY = 'from memory, not verified';
const TEXTBOOK = 'textbook ranges 2 to 25 free and 25 to 250 forced: Cengel, Heat and Mass Transfer';

/** Every default of heat: what silicone, jacket and air do, and how warm is wanted. Each is shown as assumed. */
export const WARMTH_RULES = {
  siliconeConductivity: {
    value: 0.25,
    low: 0.17,
    high: 0.3,
    unit: 'W/(m K)',
    from:
      'room-temperature cure rubber 0.27: Baudot, Mazuer & Odin, Cryogenics 38 (1998) 227; sheet by the method of ' +
      'ASTM E1530 0.22 to 0.25; metal-filled rubber is higher',
  },
  siliconeHeatCapacity: {
    value: 1300,
    low: 1100,
    high: 1500,
    unit: 'J/(kg K)',
    from: `derived: fluid 1666 (Melinder 2010, in CoolProp) with 30 % of silica at 740 gives 1390; the silica ${MEMORY}`,
  },
  siliconeDensity: RULES.siliconeDensityThermal,
  plasterDensity: {
    value: 1106,
    unit: 'kg/m3',
    from: 'derived: plaster mixed at 0.65 of water, set and dry',
  },
  plasterHeatCapacity: { value: 1090, unit: 'J/(kg K)', from: MEMORY },

  stillAir: {
    value: 8,
    low: 6,
    high: 10,
    unit: 'W/(m2 K)',
    from: `room or box without a fan, radiation of about 5 in it; ${MEMORY}; low end chosen; ${TEXTBOOK}`,
  },
  fanBox: { value: 25, low: 15, high: 40, unit: 'W/(m2 K)', from: `${MEMORY}; range chosen; ${TEXTBOOK}` },
  heatGun: { value: 60, low: 50, high: 120, unit: 'W/(m2 K)', from: `${MEMORY}; ${TEXTBOOK}` },
  heatGunAir: {
    value: 200,
    low: 150,
    high: 300,
    unit: 'C',
    from: `air where it meets the rubber, assumed; 300 to 600 at the outlet, ${MEMORY}`,
  },
  heatArriving: {
    value: 0.3,
    unit: '',
    from: 'share of the power of the gun that stays in the rubber: assumed',
  },
  lumpedBiot: {
    value: 0.1,
    unit: '',
    from: 'usual limit of the one-temperature shortcut; heat transfer textbooks',
  },
  jacketLook: { value: 1.5, unit: '', from: 'chosen here: times longer than the bare skin' },

  surfaceLook: { value: 50, unit: 'C', from: `${COMMON}: chosen` },
  surfaceStop: {
    value: 60,
    unit: 'C',
    from: `chosen: burns in about 5 s (the design time of ASTM C1055 for industry); the temperature ${MEMORY}`,
  },
  burnHours: { value: 44, unit: 'C', from: `${MEMORY}; contact burns are the subject of ISO 13732-1` },
  burnMinute: {
    value: 51,
    unit: 'C',
    from: `60 s is the design time for consumers in ASTM C1055; the temperature ${MEMORY}`,
  },
  burnSeconds: {
    value: 60,
    unit: 'C',
    from: `5 s is the design time for industry in ASTM C1055; the temperature ${MEMORY}`,
  },

  moldFine: { value: 31, low: 27, high: 45, unit: 'C', from: COMMON },
  moldCold: { value: 20, unit: 'C', from: `${COMMON}: below it foam rises less and leaves uneven places` },
  openWarm: { value: 30, low: 20, high: 60, unit: 'min', from: COMMON },

  densityPer5K: {
    value: 0.035,
    low: 0.02,
    high: 0.05,
    unit: '',
    from: `heavier for 5 K colder; the middle is chosen; ${COMMON}. The gas law alone gives 1.4 %`,
  },

  mixConductivity: { value: 0.18, unit: 'W/(m K)', from: `liquid foam mix; ${MEMORY}` },
  mixDensity: { value: 1050, unit: 'kg/m3', from: `liquid foam mix; ${MEMORY}` },
  mixHeatCapacity: { value: 1900, unit: 'J/(kg K)', from: `liquid foam mix; ${MEMORY}` },
} as const satisfies Record<string, Rule>;

/** Bounds of sense for what is typed (chosen by us, no source): outside, the input is refused by its name. */
export const WARMTH_BOUNDS = {
  biot: { low: 1e-6, high: 1e4, unit: '' },
  rootCount: { low: 1, high: 200, unit: '' },
  thicknessMm: { low: 0.01, high: 1e4, unit: 'mm' },
  depthMm: { low: 0, high: 1e4, unit: 'mm' },
  minutes: { low: 0, high: 1e6, unit: 'min' },
  seconds: { low: 0.1, high: 3600, unit: 's' },
  conductivityWMK: { low: 0.01, high: 500, unit: 'W/(m K)' },
  densityKgM3: { low: 5, high: 25_000, unit: 'kg/m3' },
  heatCapacityJKgK: { low: 100, high: 5000, unit: 'J/(kg K)' },
  hWM2K: { low: 0.5, high: 20_000, unit: 'W/(m2 K)' },
  diffusivityMm2S: { low: 0.001, high: 500, unit: 'mm2/s' },
  surroundTempC: { low: -100, high: 2000, unit: '\u00b0C' },
  bodyTempC: { low: -100, high: 2000, unit: '\u00b0C' },

  wallMm: { low: 0.5, high: 200, unit: 'mm' },
  sides: { low: 1, high: 2, unit: '' },
  jacketMm: { low: 0.3, high: 200, unit: 'mm' },
  airTempC: { low: -30, high: 700, unit: '\u00b0C' },
  startTempC: { low: -30, high: 150, unit: '\u00b0C' },
  targetTempC: { low: -30, high: 150, unit: '\u00b0C' },
  moldTempC: { low: -30, high: 200, unit: '\u00b0C' },
  mixTempC: { low: -10, high: 80, unit: '\u00b0C' },
  massG: { low: 0, high: 1e7, unit: 'g' },
  powerW: { low: 1, high: 1e5, unit: 'W' },
  arrivingShare: { low: 0.01, high: 1, unit: '' },
  openMin: { low: 0.1, high: 10_000, unit: 'min' },
  warmerK: { low: -20, high: 20, unit: 'K' },
} as const satisfies Record<string, { low: number; high: number; unit: string }>;

export type WarmthInput = keyof typeof WARMTH_BOUNDS;
