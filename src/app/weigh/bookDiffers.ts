import type { PourRow } from '../../job/book';
import { formatGrams, formatTemperature } from '../../units';
import { BOOK_FIELDS } from '../../words/bookFields';

const WEIGHTS = ['mixedG', 'residueG', 'trimG', 'castingG'] as const;
const WARMTHS = ['roomC', 'moldC'] as const;

/** Two figures that a box shows alike are the same. */
const SAME = 1e-6;

/**
 * Figures of the row in the book that this page would write otherwise, in words: typed anew there perhaps, and older here. Writing must
 * not take them back in silence.
 */
export function bookDiffers(known: PourRow, draft: Omit<PourRow, 'id'>, stepG: number): string[] {
  const isOther = (field: keyof PourRow): boolean => {
    const [there, here] = [known[field], draft[field as keyof typeof draft]];
    return typeof there === 'number' && !(typeof here === 'number' && Math.abs(there - here) <= SAME);
  };
  return [
    ...WEIGHTS.filter(isOther).map((field) => `${BOOK_FIELDS[field]} ${formatGrams(known[field]!, stepG)}`),
    ...WARMTHS.filter(isOther).map(
      (field) => `${BOOK_FIELDS[field]} ${formatTemperature(known[field]!, 'metric')}`,
    ),
  ];
}
