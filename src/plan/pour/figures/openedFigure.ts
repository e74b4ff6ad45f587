import type { Assumption } from '../../../estimate';

/** How a number is said to people: a share in percent, a chance as "1 in 120", grams of a scale to the last step. */
export type Shown = 'share' | 'chance' | 'exact';

/** One number of a plan, opened: how it came about, from what, in which unit, and where that comes from. */
export interface OpenedFigure {
  key: string;
  title: string;
  value: number;
  unit: string;
  shown?: Shown;
  formula: string;
  inputs: readonly OpenedInput[];
  source: string;
}

export interface OpenedInput {
  title: string;
  value: number;
  unit: string;
  from: string;
  shown?: Shown;
  /** Nobody has said so: `from` is what it was taken by. */
  isAssumed?: true;
}

type From = string | Pick<OpenedInput, 'from' | 'isAssumed'>;

/** Worked out beside it, by a figure of its own. */
export const HERE = 'this plan';

/** A row for a value that there is; none for one that there is not. */
export function input(
  title: string,
  value: number | undefined,
  unit: string,
  from: From,
  shown?: Shown,
): OpenedInput[] {
  if (value === undefined) return [];
  const origin = typeof from === 'string' ? { from } : from;
  return [{ title, value, unit, ...origin, ...(shown === undefined ? {} : { shown }) }];
}

/** The user's word, or the assumption that stands in for it. */
export function saidOr(
  given: { from: string } | undefined,
  assumptions: readonly Noted[],
  name: string,
): Exclude<From, string> {
  return given === undefined ? takenBy(assumptions, name) : { from: given.from };
}

/** A plain number of the ask: given, or what was noted for it. */
export const givenOr = (
  given: number | undefined,
  assumptions: readonly Noted[],
  name: string,
): Exclude<From, string> => (given === undefined ? takenBy(assumptions, name) : { from: 'given' });

export type Noted = Assumption & { basis?: string };

/** One that is not in the list was worked out. */
function takenBy(assumptions: readonly Noted[], name: string): Exclude<From, string> {
  const noted = assumptions.find((one) => one.name === name);
  return noted === undefined ? { from: HERE } : { from: noted.basis ?? noted.from, isAssumed: true };
}

export const notedValue = (assumptions: readonly Noted[], name: string): number | undefined => {
  const value = assumptions.find((one) => one.name === name)?.value;
  return typeof value === 'number' ? value : undefined;
};
