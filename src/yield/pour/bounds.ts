import { INPUT_BOUNDS } from '../rules';

interface Bounds {
  low: number;
  high: number;
  unit: string;
}

/** Bounds of sense for what is typed about the pour (chosen by us, no source): outside, it is refused by its name. */
export const POUR_BOUNDS = {
  cavityCm3: INPUT_BOUNDS.cavityCm3,
  freeRiseKgM3: INPUT_BOUNDS.freeRiseKgM3,
  liquidKgM3: INPUT_BOUNDS.liquidKgM3,
  residueG: INPUT_BOUNDS.residueG,
  scaleStepG: INPUT_BOUNDS.scaleStepG,
  ambientKPa: { low: 50, high: 110, unit: 'kPa' },

  mixedG: { low: 0.1, high: 1e8, unit: 'g' },
  waterShare: { low: 0, high: 0.1, unit: '' },
  ncoShare: { low: 0.01, high: 0.5, unit: '' },
  gasTempK: { low: 250, high: 600, unit: 'K' },
  airTempK: { low: 250, high: 350, unit: 'K' },
  gasCm3: { low: 0, high: 1e7, unit: 'cm3' },
  gasGamma: { low: 1.05, high: 1.67, unit: '' },
  gaugeKPa: { low: 0, high: 2000, unit: 'kPa' },
  peakKPa: { low: 0.1, high: 2000, unit: 'kPa' },
  trappedCm3: { low: 0, high: 1e7, unit: 'cm3' },

  lidCm2: { low: 0.01, high: 1e5, unit: 'cm2' },
  projectedCm2: { low: 0.01, high: 1e6, unit: 'cm2' },
  lidG: { low: 0, high: 1e6, unit: 'g' },
  safety: { low: 1, high: 10, unit: '' },
  forceN: { low: 0, high: 1e8, unit: 'N' },
  chordMm: { low: 1, high: 1e4, unit: 'mm' },
  strapHeightMm: { low: 1, high: 1e4, unit: 'mm' },
  straps: { low: 1, high: 1000, unit: '' },
  strapN: { low: 1, high: 1e5, unit: 'N' },
  strapFriction: { low: 0, high: 1, unit: '' },
  strapWrapDegrees: { low: 0, high: 720, unit: 'degrees' },
  strapLossShare: { low: 0, high: 0.9, unit: '' },
  radiusMm: { low: 1, high: 1e4, unit: 'mm' },
  pitchMm: { low: 1, high: 1e4, unit: 'mm' },
  panelMm: { low: 0.5, high: 500, unit: 'mm' },
  panelSpanMm: { low: 1, high: 1e4, unit: 'mm' },

  altitudeM: { low: -500, high: 6000, unit: 'm' },
  stationKPa: { low: 45, high: 110, unit: 'kPa' },
  ingredientsC: { low: -10, high: 60, unit: '\u00b0C' },

  timeS: { low: 0.1, high: 1e6, unit: 's' },
  creamS: { low: 1, high: 3600, unit: 's' },
  openMin: { low: 0.5, high: 10080, unit: 'min' },
  statedAtC: { low: -10, high: 60, unit: '\u00b0C' },
  nowC: { low: -10, high: 60, unit: '\u00b0C' },
  mixS: { low: 0, high: 3600, unit: 's' },
  carryS: { low: 0, high: 3600, unit: 's' },
  marginS: { low: 0, high: 3600, unit: 's' },

  startC: { low: -10, high: 80, unit: '\u00b0C' },
  coolingMin: { low: 0.1, high: 10080, unit: 'min' },

  castingCm2: { low: 0.01, high: 1e7, unit: 'cm2' },
  skinMm: { low: 0.05, high: 10, unit: 'mm' },
  skinOverCore: { low: 1, high: 10, unit: '' },
  packMargin: { low: 0, high: 1, unit: '' },

  stiffnessPower: { low: 1, high: 4, unit: '' },
  partPrice: { low: 0, high: 1e6, unit: '' },
  failurePrice: { low: 0, high: 1e9, unit: '' },
  packStep: { low: 0.005, high: 1.5, unit: '' },

  cupCm3: { low: 10, high: 1e6, unit: 'cm3' },
  cupFillShare: { low: 0.05, high: 0.5, unit: '' },
  mixers: { low: 1, high: 50, unit: '' },
  pourGPerS: { low: 0.1, high: 1e4, unit: 'g/s' },

  colorShare: { low: 0, high: 0.2, unit: '' },
  dropsG: { low: 0.01, high: 1000, unit: 'g' },
  drops: { low: 5, high: 10_000, unit: '' },
  dropRadiusMm: { low: 0.1, high: 5, unit: 'mm' },
  surfaceTensionMNM: { low: 5, high: 100, unit: 'mN/m' },
  colorWaterG: { low: 0, high: 1e5, unit: 'g' },
  waterC: { low: 0, high: 60, unit: '\u00b0C' },

  shellCm3: { low: 0.1, high: 1e8, unit: 'cm3' },
  coreCm3: { low: 0, high: 1e8, unit: 'cm3' },
  armatureCm3: { low: 0, high: 1e7, unit: 'cm3' },
  coreG: { low: 0, high: 1e8, unit: 'g' },
  moldedKgM3: { low: 5, high: 1500, unit: 'kg/m3' },
  neckCm2: { low: 0, high: 1e6, unit: 'cm2' },

  sectionCm2: { low: 0.01, high: 1e5, unit: 'cm2' },
  shareMost: { low: 1e-3, high: 0.5, unit: '' },
  wantedKPa: { low: 0, high: 2000, unit: 'kPa' },
  ventsPlaced: { low: 0, high: 1000, unit: '' },
  sprueMm: { low: 1, high: 300, unit: 'mm' },
  sprueLengthMm: { low: 0, high: 2000, unit: 'mm' },
  headMm: { low: 0, high: 2000, unit: 'mm' },
  mixPaS: { low: 1e-3, high: 1e3, unit: 'Pa s' },
  foamPaS: { low: 0.1, high: 1e5, unit: 'Pa s' },
  liquidCm3: { low: 0.01, high: 1e7, unit: 'cm3' },
  withinS: { low: 0.1, high: 1e5, unit: 's' },
  riseS: { low: 0.1, high: 1e5, unit: 's' },
  vents: { low: 1, high: 1000, unit: '' },
  ventMm: { low: 0.1, high: 100, unit: 'mm' },
  ventLengthMm: { low: 0.1, high: 500, unit: 'mm' },
  ventPressurePa: { low: 0.1, high: 1e6, unit: 'Pa' },
  peakFlow: { low: 1, high: 20, unit: '' },

  poured: { low: 0, high: 1e6, unit: '' },
  filled: { low: 0, high: 1e6, unit: '' },
  ppm: { low: 0, high: 1e6, unit: 'ppm' },
} as const satisfies Record<string, Bounds>;

export type PourInput = keyof typeof POUR_BOUNDS;
