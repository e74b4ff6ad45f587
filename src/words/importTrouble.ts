import { finding, type Problem } from '../problem';
import type { Why } from '../units';
import { sayWhy } from './quantityWords';

/** Where in a list something was not taken, and why. */
type Trouble = { row: number; column?: number; head?: string; cell?: string } & (
  { why: Why; readings: string[] } | { wanted: string }
);

/** What of a list could not be taken, as a finding with its place. */
export function importTrouble(trouble: Trouble): Problem {
  const { row, column, head, cell } = trouble;
  const at = {
    row,
    ...(column === undefined ? {} : { column }),
    ...(head === undefined ? {} : { head }),
    ...(cell === undefined ? {} : { cell }),
  };
  if ('wanted' in trouble) return finding('BOOK_CELL_UNREAD', 'stop', { ...at, wanted: trouble.wanted });
  const { text, hint } = sayWhy(trouble.why);
  const readings = trouble.readings.map((reading) => `"${reading}"`).join(' or ');
  const why = readings === '' ? text : `${text} It can be ${readings}.`;
  return finding('BOOK_CELL_UNREAD', 'stop', { ...at, why, todo: hint });
}
