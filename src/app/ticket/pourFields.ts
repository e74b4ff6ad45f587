import type { FieldSpec } from './fieldSpec';

const warmth = { kind: 'temperature', units: ['C', 'F'] } as const;
const number = { kind: 'plain', units: [] } as const;
const seconds = { ...number, allowZero: true, after: 's' } as const;
const area = { ...number, after: 'cm²' } as const;
const length = { kind: 'length', units: ['mm', 'in'] } as const;
/** Below the sea too: much land behind dikes is. */
const height = {
  kind: 'length',
  units: ['m', 'ft'],
  allowZero: true,
  isSigned: true,
  isHeight: true,
} as const;
const percent = { kind: 'share', units: ['%'], allowZero: true } as const;

/** How many drops are weighed together: one alone is lighter than most scales can tell. Common practice, no source. */
export const DROPS_WEIGHED = 20;

/** What is typed about the pour, in the order of the page. */
export const POUR_FIELDS = {
  priceA: { ...number, allowZero: true, after: 'a kilogram' },
  priceB: { ...number, allowZero: true, after: 'a kilogram' },
  failPrice: { ...number, allowZero: true },
  skinDepth: length,

  pourRoom: warmth,
  ingredients: warmth,
  moldTemp: warmth,
  altitude: height,
  station: { kind: 'pressure', units: ['hPa', 'kPa', 'psi'] },
  sheetTemp: warmth,
  sheetAltitude: height,

  foamCup: { kind: 'volume', units: ['L', 'cm3', 'fl oz'] },
  cupFill: percent,
  hands: number,
  cream: { ...number, after: 's' },
  mixTime: seconds,
  carryTime: seconds,

  projected: area,
  plugArea: { ...area, allowZero: true },
  lidMass: { kind: 'mass', units: ['kg', 'lb'], allowZero: true },
  strapTension: { ...number, after: 'N' },
  strapCount: number,
  peakPressure: { kind: 'pressure', units: ['kPa', 'psi'] },
  peakPack: { kind: 'packFactor', units: [] },

  warmWall: length,
  warmAir: warmth,
  warmTarget: warmth,
  warmJacket: length,

  nco: percent,
  water: percent,
  openTime: { ...number, after: 'min' },

  ventCount: { ...number, allowZero: true },
  ventMm: length,
  panelSpan: { ...length, allowZero: true },
  strapWorking: { ...number, after: 'N' },

  bInCup: { kind: 'mass', units: ['g', 'oz'] },
} as const satisfies Record<string, FieldSpec>;

export type PourField = keyof typeof POUR_FIELDS;

/** Of the mold of one scan, or of the cup in hand: forgotten with the scan. */
export const POUR_FIELDS_OF_SCAN: readonly PourField[] = [
  'moldTemp',
  'projected',
  'plugArea',
  'lidMass',
  'peakPressure',
  'peakPack',
  'warmWall',
  'warmJacket',
  'ventCount',
  'ventMm',
  'panelSpan',
  'bInCup',
];
