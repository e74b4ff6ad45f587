import type { FieldSpec } from './fieldSpec';
import { MADE_FIELDS, type MadeField } from './madeFields';
import { OPENING_FIELDS } from './openingFields';
import { POUR_FIELDS } from './pourFields';
import { SIZING_FIELDS } from './sizingFields';

const length = { kind: 'length', units: ['mm', 'in'] } as const;
const grams = { kind: 'mass', units: ['g', 'oz'], allowZero: true } as const;
const kilograms = { kind: 'mass', units: ['kg', 'g', 'lb', 'oz'], allowZero: true } as const;
const warmth = { kind: 'temperature', units: ['C', 'F'] } as const;
const percent = { kind: 'share', units: ['%'], allowZero: true } as const;
const number = { kind: 'plain', units: [] } as const;

export const FIELDS = {
  tape: length,
  checkLength: length,
  cutHeight: { ...length, allowZero: true },
  freeRise: { kind: 'density', units: ['lb/ft3', 'kg/m3'] },
  partsA: number,
  partsB: number,
  densityA: { kind: 'density', units: ['g/mL', 'kg/m3'] },
  densityB: { kind: 'density', units: ['g/mL', 'kg/m3'] },
  pack: { kind: 'packFactor', units: [] },
  riser: { kind: 'volume', units: ['cm3', 'fl oz'], allowZero: true },
  vents: grams,
  residue: grams,
  scaleStep: { kind: 'mass', units: ['g', 'oz'] },
  scaleMost: { kind: 'mass', units: ['kg', 'g', 'lb', 'oz'] },

  sculptMass: kilograms,
  boxWall: length,
  siliconeDensity: { kind: 'density', units: ['g/cm3', 'kg/m3', 'lb/ft3'] },
  siliconeBase: number,
  siliconeCatalyst: number,
  potLife: { ...number, after: 'min' },
  potLifeAt: warmth,
  room: warmth,
  stays: length,
  viscosity: { ...number, after: 'Pa s' },
  degasPressure: { kind: 'pressure', units: ['kPa', 'hPa', 'psi'] },
  mixingCup: { kind: 'volume', units: ['L', 'cm3', 'fl oz'] },
  stockBase: kilograms,
  stockCatalyst: kilograms,
  siliconeWaste: percent,
  cupLoss: grams,
  barrierDry: { ...number, allowZero: true, after: 'min' },
  pigmentShare: percent,
  sheetShrink: percent,
  measuredShrink: percent,
  castingTemp: warmth,
  coreVolume: { kind: 'volume', units: ['cm3', 'L', 'fl oz'], allowZero: true },
  coreMass: grams,
  armature: { kind: 'volume', units: ['cm3', 'fl oz'], allowZero: true },
  texture: number,
  paintCoverage: { ...number, after: 'm² a liter' },
  paintCoats: number,
  sealCoverage: { ...number, after: 'm² a kilogram' },
  sealCoats: number,
  bondFace: { ...number, after: 'cm²' },
  bondTakes: { ...number, after: 'g/m²' },
  openShare: percent,

  ...OPENING_FIELDS,
  ...POUR_FIELDS,
  ...SIZING_FIELDS,
} as const satisfies Record<string, FieldSpec>;

/** A field of the page by its own name; the others are made from the lists of mold types and jacket materials. */
export type OwnField = keyof typeof FIELDS;
export type FieldName = OwnField | MadeField;

/** What stands in a field. `picked` is the meaning the user chose where the text has several; typing on forgets it. */
export interface FieldText {
  text: string;
  unit: string;
  picked?: number;
}

export type Fields = Record<OwnField, FieldText> & Record<MadeField, FieldText>;

export function specOf(name: FieldName): FieldSpec {
  const spec = name in FIELDS ? FIELDS[name as OwnField] : MADE_FIELDS.get(name as MadeField)?.spec;
  if (spec === undefined) throw new Error(`specOf: expected a field of the ticket, got ${name}`);
  return spec;
}

export function textOf(fields: Fields, name: FieldName): FieldText {
  const field = fields[name];
  if (field === undefined) throw new Error(`textOf: expected a field of the ticket, got ${name}`);
  return field;
}

export const FIELD_NAMES: readonly FieldName[] = [
  ...(Object.keys(FIELDS) as OwnField[]),
  ...MADE_FIELDS.keys(),
];

export const blankFields = (): Fields =>
  Object.fromEntries(
    FIELD_NAMES.map((name) => [name, { text: '', unit: specOf(name).units[0] ?? '' }]),
  ) as Fields;
