import { amount } from './sentence';

type Value = number | string | undefined;

/** Limits are rounded to the safe side, so that a width typed as it is shown is never refused. */
export const atLeast = (mm: Value): string => `${amount(Math.ceil(10 * Number(mm) - SLACK) / 10)} mm`;
export const atMost = (mm: Value): string => `${amount(Math.floor(10 * Number(mm) + SLACK) / 10)} mm`;

/** 20.3 stays 20.3, whatever its last digit in a double is. */
const SLACK = 1e-6;
