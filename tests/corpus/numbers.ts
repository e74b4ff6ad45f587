import { readQuantity, type ReadOptions, type ScalarKind } from '../../src/units';

/** A text as typed into a box of some kind, and what must come of it: a value, a pair, a question, or a refusal. */
export type NumberCase = [text: string, kind: string, wanted: number | [number, number] | 'ask' | 'error'];

/** Kinds of boxes as lists of numbers call them: ours, with the unit that the box states. */
const BOXES: Readonly<Record<string, [kind: ScalarKind, options: ReadOptions]>> = {
  mass_g: ['mass', { bareUnit: 'g' }],
  length_mm: ['length', { bareUnit: 'mm' }],
  density: ['density', {}],
  density_kg_m3: ['density', { bareUnit: 'kg/m3' }],
  density_g_cm3: ['density', { bareUnit: 'g/cm3' }],
  fraction: ['share', {}],
  pack_factor: ['packFactor', {}],
};

/** A density is kept in kg/m3: lists that want another unit give it so. */
const INSIDE_PER_WANTED: Readonly<Record<string, number>> = { density_g_cm3: 1000 };

/** What the box makes of a text, in the unit of the list. */
export function boxAnswer(text: string, box: string): NumberCase[2] {
  if (box === 'ratio') {
    const read = readQuantity(text, 'ratio');
    return read.kind === 'one' ? [read.value.a, read.value.b] : read.kind;
  }
  const known = BOXES[box];
  if (known === undefined) throw new Error(`boxAnswer: expected a known box, got ${box}`);
  const read = readQuantity(text, ...known);
  return read.kind === 'one' ? read.value / (INSIDE_PER_WANTED[box] ?? 1) : read.kind;
}

/** Is it what was wanted? Values to 1 part in 10 000, as lists round their constants. */
export function isWanted(wanted: NumberCase[2], got: NumberCase[2]): boolean {
  if (typeof wanted === 'string' || typeof got === 'string') return wanted === got;
  const [wants, gets] = [[wanted].flat(), [got].flat()];
  return (
    wants.length === gets.length &&
    wants.every((want, i) => Math.abs(gets[i]! - want) <= 1e-4 * Math.abs(want))
  );
}
