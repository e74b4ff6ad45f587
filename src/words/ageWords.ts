import { counted, type Values } from './sentence';

/** "3 months ago", of something that was opened. */
export const monthsAgo = (v: Values): string =>
  v.months === 0 ? 'less than a month ago' : `${counted(v.months, 'month')} ago`;

export function monthsOver(v: Values): string {
  const over = Number(v.months) - Number(v.stopMonths);
  const limit = counted(v.stopMonths, 'month');
  return over === 0 ? `past the limit of ${limit}` : `${counted(over, 'month')} past the limit of ${limit}`;
}
