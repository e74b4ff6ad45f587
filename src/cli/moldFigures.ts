import { bad, good, type Outcome } from '../problem';
import { flagOf } from './batchOptions';
import { textOf, type OptionValues } from './command';
import { quantityOption } from './quantity';
import type { ScalarKind } from '../units';

/** One figure of the call: under which key it is kept, its option, and how it is read. */
export interface Figure<Key extends string> {
  key: Key;
  option: string;
  kind: ScalarKind | 'minutes' | 'area' | 'coverage';
  bareUnit?: string;
  allowZero?: boolean;
}

/** Every figure that was given, in inside units. The first that cannot be read is told: BAD_CALL. */
export function readFigures<Key extends string>(
  options: OptionValues,
  figures: readonly Figure<Key>[],
): Outcome<Partial<Record<Key, number>>> {
  const values: Partial<Record<Key, number>> = {};
  for (const { key, option, kind, bareUnit, allowZero } of figures) {
    const text = textOf(options, option);
    if (text === undefined) continue;
    const units = OTHER_UNITS[kind];
    const read =
      units === undefined
        ? quantityOption(flagOf(option), text, kind as ScalarKind, bareUnit, allowZero)
        : figureIn(units, flagOf(option), text, allowZero);
    if (!read.ok) return read;
    values[key] = read.value;
  }
  return good(values);
}

type Units = Readonly<Record<string, number>>;

/** Units of one command alone, with what a bare number is times. Square inch: 2.54 cm squared, exact. */
const OTHER_UNITS: Readonly<Partial<Record<string, Units>>> = {
  minutes: {
    ...{ min: 1, minute: 1, minutes: 1, h: 60, hour: 60, hours: 60 },
    ...{ s: 1 / 60, sec: 1 / 60, second: 1 / 60, seconds: 1 / 60 },
  },
  area: { cm2: 1, 'cm\u00b2': 1, m2: 1e4, 'm\u00b2': 1e4, in2: 6.4516, 'sq in': 6.4516 },
  plain: {},
  coverage: { m2: 1, 'm\u00b2': 1, 'm2/L': 1, 'm\u00b2/L': 1, 'm2/kg': 1, 'm\u00b2/kg': 1 },
};

export const DEGREES: Units = { deg: 1, degree: 1, degrees: 1, '\u00b0': 1 };

/** A plain number with one of these units, or without. What it refuses, it quotes as it was typed. */
export function figureIn(units: Units, option: string, text: string, allowZero = false): Outcome<number> {
  const typed = text.trim();
  const endsIn = (name: string): boolean =>
    typed.toLowerCase().endsWith(name.toLowerCase()) && /[\d.\s]$/.test(typed.slice(0, -name.length));
  // The longest that fits: "cm2" is no "m2".
  const [unit] = Object.keys(units)
    .filter(endsIn)
    .sort((a, b) => b.length - a.length);
  const number = unit === undefined ? typed : typed.slice(0, -unit.length).trim();
  const read = quantityOption(option, number, 'plain', undefined, allowZero);
  if (read.ok && (read.value > 0 || (allowZero && read.value === 0)))
    return good(read.value * (unit === undefined ? 1 : units[unit]!));
  if (read.ok)
    return bad('BAD_CALL', {
      text: `${option} "${text}" is not ${allowZero ? '0 or more' : 'above 0'}.`,
      hint: `Type a number ${allowZero ? 'of 0 or more' : 'above 0'}.`,
    });
  const { text: why, hint } = read.problem.values;
  return bad('BAD_CALL', { text: String(why).replace(`"${number}"`, `"${text}"`), hint: String(hint) });
}

/** Without what is undefined: an absent key and an undefined one are two things here. */
export function defined<T extends object>(values: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}
