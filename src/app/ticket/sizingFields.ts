import type { FieldSpec } from './fieldSpec';

const water = { kind: 'mass', units: ['g', 'kg', 'oz', 'lb'] } as const;
const warmth = { kind: 'temperature', units: ['C', 'F'] } as const;
const level = { kind: 'volume', units: ['L', 'cm3', 'fl oz'] } as const;

/** What is typed about the size where it is not a scan that tells it: water in the mold, levels around the sculpt, water that ran over. */
export const SIZING_FIELDS = {
  fillWater: water,
  fillTemp: warmth,
  sunkBefore: { ...level, allowZero: true },
  sunkAfter: level,
  sunkStep: level,
  overWater: water,
  overTemp: warmth,
} as const satisfies Record<string, FieldSpec>;

export type SizingField = keyof typeof SIZING_FIELDS;

/** Of the mold in hand: another mold is filled anew. */
export const FILL_FIELDS: readonly SizingField[] = ['fillWater', 'fillTemp'];

/** More bodies than these are better sunk in water. Chosen here. */
export const MOST_BODIES = 8;

/** Sides that a tape takes of one body or another. */
export const BODY_SIDES = ['length', 'girth', 'otherGirth', 'width', 'depth', 'height'] as const;
export type BodySide = (typeof BODY_SIDES)[number];

type BodyField = `body.${string}`;

/** The boxes of one body, counted from 0. */
export const bodyFields = (row: number): Record<BodySide, BodyField> =>
  Object.fromEntries(BODY_SIDES.map((side) => [side, `body.${row}.${side}`])) as Record<BodySide, BodyField>;
