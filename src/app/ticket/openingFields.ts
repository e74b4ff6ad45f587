import type { FieldSpec } from './fieldSpec';

const length = { kind: 'length', units: ['mm', 'in'] } as const;
const place = { ...length, allowZero: true, isSigned: true } as const;
const seconds = { kind: 'plain', units: [], after: 's' } as const;

/** What is typed about opening, vents and the way out, in the order of the page. */
export const OPENING_FIELDS = {
  openWide: length,
  openX: place,
  openY: place,
  openZ: place,
  pourWithin: seconds,
  mixViscosity: { kind: 'viscosity', units: ['Pa s', 'mPa s', 'cP'] },
  riseTime: seconds,
  ventWide: length,
  thinUnder: length,
  breakStretch: { kind: 'plain', units: [], after: '%' },
} as const satisfies Record<string, FieldSpec>;

export type OpeningField = keyof typeof OPENING_FIELDS;

/** Of the mold of one scan: forgotten with it. */
export const OPENING_FIELDS_OF_SCAN: readonly OpeningField[] = ['openWide', 'openX', 'openY', 'openZ'];
