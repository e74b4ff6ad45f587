import type { Problem } from '../problem';

/** What is wrong and by how much, then what to do now. */
export interface Sentence {
  text: string;
  hint: string;
}

export type Values = Problem['values'];

/** A value as a number for people: at most four digits that count, never an exponent, thousands apart by a narrow no-break space. */
export function amount(value: number | string | undefined, digits = 4): string {
  if (typeof value !== 'number' || !Number.isFinite(value)) return String(value ?? 'an unknown amount');
  const rounded = Number(value.toPrecision(digits));
  const decimals = rounded === 0 ? 0 : Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(rounded))));
  const [whole, fraction] = Math.abs(rounded).toFixed(Math.min(decimals, 6)).split('.') as [
    string,
    string | undefined,
  ];
  const grouped = whole.length > 3 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole;
  const tail = fraction?.replace(/0+$/, '');
  return `${rounded < 0 ? '\u2212' : ''}${grouped}${tail === undefined || tail === '' ? '' : `.${tail}`}`;
}

export const percent = (share: number | string | undefined): string =>
  typeof share === 'number' ? `${amount(100 * share, 2)} %` : String(share);

/** "36.5 °C": three digits that count. */
export const celsius = (tempC: number | string | undefined): string => `${amount(tempC, 3)} °C`;

/** "1 hole", "3 holes". */
export const counted = (count: number | string | undefined, one: string, many = `${one}s`): string =>
  `${amount(count, 9)} ${count === 1 ? one : many}`;

/** A height in file units for a command: plain digits, finer than a cut can tell apart, never an exponent. */
export const unitsText = (units: number | string | undefined): string =>
  Number(units)
    .toFixed(7)
    .replace(/\.?0+$/, '');
