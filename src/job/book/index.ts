/** The book of past pours: rows, what is asked about them, what they teach, and their list as CSV. */
export type { AskedField, BookRow, CupRow, FillRow, PourRow } from './bookRow';
export { findingsOf, pourFindings, unreadFindings } from './bookFindings';
export { bookCsv } from './bookCsv';
export { BOOK_COLUMNS, type BookField } from './bookColumns';
export { checkedPours, type CheckedPour } from './checkedPours';
export { columnOf } from './columnOf';
export { cavityOf } from './evidence';
export { importBook, type ColumnMap, type Imported } from './importBook';
export { LEARN_CHANCE, learnBook, type LearnedBook, type LearnWish } from './learnBook';
export type { LearnedFoam } from './learnFoam';
export { isThere, newRow, type RowDraft } from './newRow';
export { numberedPours } from './numberedPours';
export { readBook, type Book } from './readBook';
export { readRow } from './readRow';
export { sortRows, type SortedRows } from './sortRows';
export { usualCasting, type UsualCasting } from './usualCasting';
export { withRows } from './withRows';
