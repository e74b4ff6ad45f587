import { BOOK_COLUMNS, type BookRow } from '../../job/book';
import { amount } from '../../words/sentence';

/** As many rows are shown before they are written. */
const SHOWN = 5;

/** The first rows as they were understood, in the units of the book. */
export function PreviewTable({ rows }: { rows: readonly BookRow[] }) {
  return (
    <ul className="preview" aria-label="The first rows as they were read">
      {rows.slice(0, SHOWN).map((row) => (
        <li key={row.id} className="note">
          {sayRow(row)}
        </li>
      ))}
      {rows.length > SHOWN && <li className="note quiet">and {rows.length - SHOWN} more</li>}
    </ul>
  );
}

/** "Kind pour, No 1, Piece Troll, Mixed 513 g". */
export function sayRow(row: BookRow): string {
  const known = row as unknown as Readonly<Record<string, unknown>>;
  return BOOK_COLUMNS.flatMap(({ field, head, unit }) => {
    const value = known[field];
    if (value === undefined || field === 'id') return [];
    const list = Array.isArray(value) ? (value as unknown[]) : [value];
    const text = list.map((one) => (typeof one === 'number' ? amount(one, 6) : String(one))).join(' and ');
    return [`${head} ${text}${unit === undefined ? '' : ` ${UNIT_WORDS[unit]}`}`];
  }).join(', ');
}

const UNIT_WORDS = { g: 'g', C: '°C', cm3: 'cm³' } as const;
