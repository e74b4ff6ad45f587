/** Days as YYYY-MM-DD (ISO 8601), reckoned by the calendar alone: no clock, no time zone. */

/** Day as YYYY-MM-DD (ISO 8601), or that it has not come. */
export type DayOrNotYet = string;
export const NOT_YET = 'not yet';

/** Whether the text is a day of the Gregorian calendar: 2024-02-29 is one, 2025-02-29 is not. */
export function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const { year, month, day } = partsOf(text);
  return month >= 1 && month <= 12 && day >= 1 && day <= daysOf(year, month);
}

/**
 * Whole months from one day to a later one; negative where it is an earlier one. A month is full on the same day of
 * the month, or on the last day of a month that has no such day: 2024-08-31 to 2025-02-28 is six months.
 */
export function wholeMonths(from: string, to: string): number {
  const [start, end] = [partsOf(from), partsOf(to)];
  const months = 12 * (end.year - start.year) + end.month - start.month;
  const full = end.day >= Math.min(start.day, daysOf(end.year, end.month));
  return full ? months : months - 1;
}

interface DayParts {
  year: number;
  month: number;
  day: number;
}

function partsOf(text: string): DayParts {
  const [year, month, day] = text.split('-').map(Number) as [number, number, number];
  return { year, month, day };
}

/** Day 0 of the next month is the last one of this; UTC, so that no time zone shifts it. */
const daysOf = (year: number, month: number): number => {
  const last = new Date(0);
  last.setUTCFullYear(year, month, 0);
  return last.getUTCDate();
};
