import type { ScalarKind } from '../../units';

/** A field that is typed into: what it can hold, and the units offered beside it (the first is the one to start with). */
export interface FieldSpec {
  kind: ScalarKind;
  units: readonly string[];
  allowZero?: true;
}

export const FIELDS = {
  tape: { kind: 'length', units: ['mm', 'in'] },
  cutHeight: { kind: 'length', units: ['mm', 'in'] },
  freeRise: { kind: 'density', units: ['lb/ft3', 'kg/m3'] },
  partsA: { kind: 'plain', units: [] },
  partsB: { kind: 'plain', units: [] },
  densityA: { kind: 'density', units: ['g/mL', 'kg/m3'] },
  densityB: { kind: 'density', units: ['g/mL', 'kg/m3'] },
  pack: { kind: 'packFactor', units: [] },
  riser: { kind: 'volume', units: ['cm3', 'fl oz'], allowZero: true },
  vents: { kind: 'mass', units: ['g', 'oz'], allowZero: true },
  residue: { kind: 'mass', units: ['g', 'oz'], allowZero: true },
  scaleStep: { kind: 'mass', units: ['g', 'oz'] },
} as const satisfies Record<string, FieldSpec>;

export type FieldName = keyof typeof FIELDS;

/** What stands in a field. `picked` is the meaning the user chose where the text has several; typing on forgets it. */
export interface FieldText {
  text: string;
  unit: string;
  picked?: number;
}

export const blankFields = (): Record<FieldName, FieldText> =>
  Object.fromEntries(
    Object.entries(FIELDS).map(([name, { units }]) => [name, { text: '', unit: units[0] ?? '' }]),
  ) as Record<FieldName, FieldText>;
