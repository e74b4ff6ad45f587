import Papa from 'papaparse';

/** A table as rows of cells; a number goes into a file as one. Units stand in the heads. */
interface Table {
  heads: readonly string[];
  rows: readonly (readonly (string | number)[])[];
}

/**
 * A table as comma-separated values (RFC 4180), by papaparse: one head row, lines end in CR LF, a cell with a comma, a quote or a line end is quoted
 * and its quotes are doubled. A text that a spreadsheet would take for a formula gets an apostrophe before it; a number is written as a number.
 */
export const csvText = ({ heads, rows }: Table): string =>
  `${Papa.unparse([heads, ...rows].map((row) => row.map(cellText)))}\r\n`;

/** Guarded by hand and not by the library's option, which cannot be taken off again. */
const cellText = (cell: string | number): string =>
  typeof cell === 'string' && FORMULA.test(cell) ? `'${cell}` : String(cell);

/** A guarded cell as it was before. */
export const unguarded = (cell: string): string =>
  cell.startsWith("'") && FORMULA.test(cell.slice(1)) ? cell.slice(1) : cell;

/** What starts a formula in a spreadsheet, also behind blanks; and what looks guarded already, so that a guard can be taken off again. */
const FORMULA = /^'*\s*[=+\-@\t\r]/;
