import type { AskedField, UsualCasting } from '../../job/book';
import { BOOK_FIELDS } from '../../words/bookFields';
import { counted, percent } from '../../words/sentence';

/** What a button says that leaves a figure as it is. */
export const keepWords = (field: AskedField, typed = ''): string =>
  field === 'balance' ? 'It is as written' : `Keep ${typed} and learn nothing from it`;

/** Where the casting that is offered comes from. */
export function usualWords(
  { pours, lostShare, isOfFoam }: UsualCasting,
  grams: string,
  foam: string | undefined,
): string {
  const of = isOfFoam && foam !== undefined ? ` of ${foam}` : '';
  return `Gas and crumbs took ${percent(lostShare)} of what was poured in ${counted(pours, 'other pour')}${of}; by that about ${grams} g would be left. If the casting is still there, weigh it again.`;
}

/** The fields that can be typed anew, by what they are called in the book. */
export const TYPED_FIELDS = [
  ['aG', 'Part A'],
  ['bG', 'Part B'],
  ['mixedG', 'Mixed'],
  ['residueG', 'Left in the cup'],
  ['castingG', 'Casting'],
  ['trimG', 'Trim'],
  ['roomC', 'Room'],
  ['moldC', 'Mold'],
] as const;

export const fieldName = (field: AskedField): string =>
  field === 'balance' ? 'weights' : (BOOK_FIELDS[field] ?? field);

/** "Pour 12 is deleted." */
export const deletedWords = (what: string): string => `${what} is deleted.`;
