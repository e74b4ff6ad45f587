import { good, type Outcome } from '../problem';
import { G_PER_LB, MM_PER_FT, STANDARD_GRAVITY_M_S2 } from '../units';
import { flagOf } from './batchOptions';
import { textOf, type OptionValues } from './command';
import { figureIn } from './moldFigures';

type Units = Readonly<Record<string, number>>;

/** Units of the pour alone, with what a bare number is times: s, m, N, mm, and the shop's own money. */
const UNITS = {
  seconds: { s: 1, sec: 1, second: 1, seconds: 1, min: 60, minute: 60, minutes: 60 },
  height: { m: 1, meter: 1, meters: 1, km: 1000, ft: MM_PER_FT / 1000, feet: MM_PER_FT / 1000 },
  force: { N: 1, kN: 1000, lbf: (G_PER_LB * STANDARD_GRAVITY_M_S2) / 1000, kgf: STANDARD_GRAVITY_M_S2 },
  money: {},
  count: {},
  millimeters: { mm: 1, cm: 10, in: 25.4 },
} as const satisfies Readonly<Record<string, Units>>;

/** One figure of the call in such a unit. `signed`: it may lie below 0, as a place below the sea. */
export interface PourFigure<Key extends string> {
  key: Key;
  option: string;
  unit: keyof typeof UNITS;
  allowZero?: boolean;
  signed?: boolean;
}

/** Every figure that was given. The first that cannot be read is told: BAD_CALL. */
export function readPourFigures<Key extends string>(
  options: OptionValues,
  figures: readonly PourFigure<Key>[],
): Outcome<Partial<Record<Key, number>>> {
  const values: Partial<Record<Key, number>> = {};
  for (const { key, option, unit, allowZero, signed } of figures) {
    const text = textOf(options, option);
    if (text === undefined) continue;
    const [, minus, rest] = /^\s*([-\u2212]?)(.*)$/s.exec(text)!;
    const isBelow = signed === true && minus !== '';
    const read = figureIn(UNITS[unit], flagOf(option), isBelow ? rest! : text, allowZero);
    if (!read.ok) return read;
    values[key] = isBelow ? -read.value : read.value;
  }
  return good(values);
}
