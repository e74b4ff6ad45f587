import { finding, type BookCode, type Problem } from '../../problem';
import { massBalance, type Slip } from '../../yield';
import { checkedPours, isKept, type CheckedPour, type ShopFacts } from './checkedPours';
import type { BookRow } from './bookRow';
import type { UnreadRow } from './readBook';

/** What is to be asked about pour by pour: slips of the pen, and weights that do not add up. */
export const pourFindings = (rows: readonly BookRow[], shop: ShopFacts): Problem[] =>
  checkedPours(rows, shop).flatMap((pour) => findingsOf(pour, shop.scale?.stepG));

export function findingsOf({ no, row, slips, doubted }: CheckedPour, stepG: number | undefined): Problem[] {
  const asked = slips.map((slip) => slipFinding(no, slip));
  // A field that is held back leaves nothing to balance.
  if (row.isLeftOut === true || isKept(row, 'balance') || doubted.length > 0) return asked;
  const balance = massBalance(row, stepG);
  if (!balance.ok || balance.value.off === undefined) return asked;
  const { mixedG = 0, foundG, missingG = 0 } = balance.value;
  return [...asked, finding('BOOK_BALANCE_OFF', 'look', { no, mixedG, foundG, missingG })];
}

const slipFinding = (no: number, { code, field, typed, instead, isPoured }: Slip): Problem =>
  finding(CODES[code], 'look', {
    no,
    field,
    typed,
    ...(instead === undefined ? {} : { instead }),
    ...(isPoured === undefined ? {} : { isPoured: Number(isPoured) }),
  });

const CODES: Readonly<Record<Slip['code'], BookCode>> = {
  'casting-over': 'BOOK_CASTING_OVER',
  ounces: 'BOOK_OUNCES',
  pounds: 'BOOK_POUNDS',
  fahrenheit: 'BOOK_FAHRENHEIT',
  'sides-swapped': 'BOOK_SIDES_SWAPPED',
  'sum-off': 'BOOK_SUM_OFF',
};

/** Entries that cannot be read: they stay in the file. */
export const unreadFindings = (unread: readonly UnreadRow[]): Problem[] =>
  unread.map(({ at, why }) => finding('BOOK_ROW_UNREAD', 'look', { entry: at, why }));
