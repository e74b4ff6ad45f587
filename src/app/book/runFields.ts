import type { FieldSpec } from '../ticket/fieldSpec';

const number = { kind: 'plain', units: [] } as const;

/** What is typed about a run, in the order of the page. */
export const RUN_FIELDS = {
  castings: number,
  molds: number,
  mixedG: { kind: 'mass', units: ['g', 'kg', 'oz', 'lb'] },
  spareShare: { kind: 'share', units: ['%'], allowZero: true },
  cupG: { kind: 'mass', units: ['g', 'oz'], allowZero: true },
  openMin: { ...number, after: 'min' },
  turnaroundMin: { ...number, allowZero: true, after: 'min' },
  dayH: { ...number, after: 'h' },
  moldLife: number,
  moldUsed: { ...number, allowZero: true },
  foamPerKg: { ...number, allowZero: true, after: 'a kilogram' },
  otherPerCasting: { ...number, allowZero: true },
} as const satisfies Record<string, FieldSpec>;

export type RunField = keyof typeof RUN_FIELDS;
