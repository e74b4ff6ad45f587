import { isDate, NOT_YET } from './dates';

/** Whether a given value can be used as a fact of its kind. */
export type IsUsable = (value: unknown) => boolean;

export const isYesOrNo: IsUsable = (value) => typeof value === 'boolean';
export const isDay: IsUsable = (value) => typeof value === 'string' && isDate(value);
export const isDayOrNotYet: IsUsable = (value) => value === NOT_YET || isDay(value);
export const isAboveZero: IsUsable = (value) => isNumber(value) && value > 0;
export const isZeroOrMore: IsUsable = (value) => isNumber(value) && value >= 0;
export const isCount: IsUsable = (value) => isZeroOrMore(value) && Number.isInteger(value);
export const isShare: IsUsable = (value) => isNumber(value) && value >= 0 && value <= 1;

export const isWithin =
  ({ low, high }: { low: number; high: number }): IsUsable =>
  (value) =>
    isNumber(value) && value >= low && value <= high;

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
