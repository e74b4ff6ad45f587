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
const cellText = (cell: string | number): string => (typeof cell === 'string' ? guarded(cell) : String(cell));

/**
 * An apostrophe before each place where a spreadsheet could begin a formula: at the start of the cell, and after what some of them part cells or
 * rows by although the file does not (OWASP, CSV Injection).
 */
function guarded(text: string): string {
  const leads = leadsToFormula(text);
  let cell = '';
  for (let i = 0; i < text.length; i++)
    cell += startsCell(text, i) && leads[i] === 1 ? `'${text[i]}` : text[i];
  return cell;
}

/** A guarded cell as it was before. */
export function unguarded(cell: string): string {
  const leads = leadsToFormula(cell);
  let text = '';
  for (let i = 0; i < cell.length; i++)
    if (cell[i] !== "'" || leads[i + 1] !== 1 || !startsCell(cell, i)) text += cell[i];
  return text;
}

/** Signs that start a formula, the wide ones of East Asian keyboards too. */
const STARTS = /[=+\-@\t\r\uff0b\uff0d\uff1d\uff20]/;

/** Of each place: does a formula begin there, behind nothing but blanks, or apostrophes that may be a guard? So a guard never changes the answer. */
function leadsToFormula(text: string): Uint8Array {
  const leads = new Uint8Array(text.length + 1);
  for (let i = text.length - 1; i >= 0; i--)
    leads[i] = STARTS.test(text[i]!) || (/[\s']/.test(text[i]!) && leads[i + 1] === 1) ? 1 : 0;
  return leads;
}

const startsCell = (text: string, at: number): boolean => at === 0 || /[;\t\r\n]/.test(text[at - 1]!);
