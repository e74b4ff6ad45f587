import { finding, type Problem } from '../../problem';
import type { BookRow } from './bookRow';
import type { Imported } from './importBook';
import { isThere, newRow } from './newRow';

/**
 * Rows of a list beside what is in the book: new ones, how many are there word for word, how many say the same as a row of the list
 * before them, and those whose id is another row's.
 */
export interface SortedRows {
  fresh: BookRow[];
  there: number;
  twice: number;
  clashes: Problem[];
}

export function sortRows({ rows }: Pick<Imported, 'rows'>, known: readonly BookRow[]): SortedRows {
  const fresh: BookRow[] = [];
  const clashes: Problem[] = [];
  let there = 0;
  let twice = 0;
  for (const { row, draft } of rows) {
    const all = [...known, ...fresh];
    const made = newRow(draft, all);
    const one: BookRow = draft.id === undefined ? made : { ...made, id: draft.id };
    const found = isThere(one, all, draft);
    if (found === undefined) fresh.push(one);
    else if (found === 'same' && isThere(one, known, draft) === undefined) twice += 1;
    else if (found === 'same') there += 1;
    else clashes.push(finding('BOOK_ROW_THERE', 'stop', { row, id: one.id }));
  }
  return { fresh, there, twice, clashes };
}
