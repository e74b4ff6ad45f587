import { bad, good, type Outcome } from '../problem';
import { INSIDE_UNIT, type QuantityKind } from '../units';
import { unitSign } from '../words/unitSign';
import { flagOf } from './batchOptions';
import { textOf, type OptionValues } from './command';
import { readFigures, type Figure } from './moldFigures';
import { readPourFigures, type PourFigure } from './pourFigures';

export interface Bounds {
  low: number;
  high: number;
}

type Bounded<F> = F & { bounds?: Bounds };

/** As `readFigures`, each within its bounds of sense: a figure is not used in every plan, and is then looked at nowhere else. */
export function readBounded<Key extends string>(
  options: OptionValues,
  figures: readonly Bounded<Figure<Key>>[],
): Outcome<Partial<Record<Key, number>>> {
  const read = readFigures(options, figures);
  return read.ok
    ? checked(options, figures, read.value, ({ kind }) =>
        kind in INSIDE_UNIT ? INSIDE_UNIT[kind as QuantityKind] : '',
      )
    : read;
}

/** As `readPourFigures`, for times alone. */
export function readBoundedTimes<Key extends string>(
  options: OptionValues,
  figures: readonly Bounded<PourFigure<Key>>[],
): Outcome<Partial<Record<Key, number>>> {
  const read = readPourFigures(options, figures);
  return read.ok ? checked(options, figures, read.value, () => 's') : read;
}

function checked<F extends { key: string; option: string }, Key extends string>(
  options: OptionValues,
  figures: readonly Bounded<F>[],
  values: Partial<Record<Key, number>>,
  unitOf: (figure: F) => string,
): Outcome<Partial<Record<Key, number>>> {
  for (const figure of figures) {
    const { key, option, bounds } = figure;
    const value = values[key as unknown as Key];
    const outside =
      value === undefined || bounds === undefined
        ? undefined
        : outsideOf(bounds, {
            option: flagOf(option),
            text: textOf(options, option)!,
            value,
            unit: unitOf(figure),
          });
    if (outside !== undefined) return outside;
  }
  return good(values);
}

/** A refusal, or undefined where the value is within. */
export function outsideOf(
  { low, high }: Bounds,
  { option, text, value, unit }: { option: string; text: string; value: number; unit: string },
): ReturnType<typeof bad> | undefined {
  if (value >= low && value <= high) return undefined;
  const range = unit === '' ? `${low} to ${high}` : `${low} to ${high} ${unitSign(unit)}`;
  return bad('BAD_CALL', {
    text: `${option} "${text}" is outside ${range}.`,
    hint: 'Check the number and its unit.',
  });
}
