import { formatShare, numberText } from './format';
import { ask, refuse } from './kinds';
import type { Read, Reading } from './kinds';
import type { Part } from './parts';

/** `1 in 100`: a chance as people say it. Here the word is no inch, as a number without a unit follows. */
export function isOneIn([first, second, ...more]: Part[]): boolean {
  return (
    first?.unit?.toLowerCase() === 'in' &&
    second?.unit === undefined &&
    second !== undefined &&
    more.length === 0
  );
}

export function readOneIn(parts: Part[], otherDigits: boolean): Read<number> {
  const [some = [], all = []] = parts.map(({ numeral }) => numeral.values);
  for (const value of [...some, ...all]) if (value < 0) return refuse('negative', { value, kind: 'share' });
  if (all.includes(0)) return refuse('not-positive', { value: 0, kind: 'share' });
  const readings = some.flatMap((a) => all.map((b) => readingOf(a, b))).filter(({ value }) => value <= 1);
  const [only] = readings;
  if (only === undefined)
    return refuse('share-out-of-range', {
      value: Number(((100 * (some[0] ?? 0)) / (all[0] ?? 1)).toPrecision(4)),
    });
  const doubt = parts.find(({ numeral }) => numeral.doubt !== undefined)?.numeral.doubt;
  if (doubt !== undefined || otherDigits) return ask(doubt ?? 'other-digits', readings);
  return { kind: 'one', value: only.value, readback: formatShare(only.value) };
}

const readingOf = (a: number, b: number): Reading<number> => ({
  text: `${numberText(a)} in ${numberText(b)}`,
  value: a / b,
});
