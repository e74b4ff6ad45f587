import { MATERIAL_CHOICES, MATERIAL_USABLE, type MaterialFactKinds } from './materialFacts';
import { OPENING_USABLE, type OpeningFactKinds } from './openingFacts';
import { POUR_CHOICES, POUR_USABLE, type PourFactKinds } from './pourFacts';

/** Facts that are one of a few words; the form shows them in this order. */
export const CHOICES = { ...MATERIAL_CHOICES, ...POUR_CHOICES } as const;

type Words<Choices extends Record<string, readonly string[]>> = {
  -readonly [N in keyof Choices]: Choices[N][number];
};
type MaterialKinds = MaterialFactKinds & Words<typeof MATERIAL_CHOICES>;
type PourKinds = PourFactKinds & Words<typeof POUR_CHOICES>;
type Kinds = MaterialKinds & PourKinds & OpeningFactKinds;
type Given<All> = { readonly [N in keyof All]?: All[N] | undefined };

export type FactName = keyof Kinds;
export type PourFactName = keyof PourKinds;
export type OpeningFactName = keyof OpeningFactKinds;
/** Plain facts; what is left out is not known. */
export type CheckFacts = Given<Kinds>;
/** Those about materials alone, as a mold asks for them. */
export type MaterialFacts = Given<MaterialKinds>;
export type Surface = Kinds['sculptSurface'];
export type Cure = Kinds['siliconeCure'];

/** Whether a given fact is one that a check can use: a listed word, a day of the calendar, a number in its bounds. */
export function isUsable(name: FactName, value: unknown): boolean {
  if (name in CHOICES) return (CHOICES[name as keyof typeof CHOICES] as readonly unknown[]).includes(value);
  return USABLE[name as keyof typeof USABLE](value);
}

/** Absent: nothing was said. A saved job writes null. */
export const isAbsent = (value: unknown): boolean => value === undefined || value === null;

const USABLE = { ...MATERIAL_USABLE, ...OPENING_USABLE, ...POUR_USABLE };
