import { formatRatio, numberText } from './format';
import { ask, refuse } from './kinds';
import type { RatioValue, Read } from './kinds';
import { readParts } from './parts';
import { tidyText } from './tidyText';

/** Reads `52:100`, A first. `100/60` is asked about, one number alone is refused. */
export function readRatio(raw: string): Read<RatioValue> {
  if (raw.length > 80) return refuse('too-long');
  const { text, otherDigits } = tidyText(raw);
  if (text === '') return refuse('empty');
  const sides = text.split(':');
  const slashed = sides.length === 1 ? text.split('/') : [];
  const [a, b, more] = sides.length > 1 ? sides : slashed;
  if (a === undefined || b === undefined || more !== undefined) return refuse('bad-ratio', { text });
  const sideA = readSide(a);
  const sideB = readSide(b);
  if (!sideA.ok || !sideB.ok) return refuse('bad-ratio', { text });
  const readings = sideA.values
    .flatMap((first) => sideB.values.map((second) => ({ a: first, b: second })))
    .map((value) => ({ text: formatRatio(value), value }));
  const [only] = readings;
  if (only === undefined) return refuse('bad-ratio', { text });
  if (readings.length > 1) return ask('comma-or-thousands', readings);
  if (slashed.length > 0)
    return ask('slash-ratio', readings, { a: numberText(only.value.a), b: numberText(only.value.b) });
  if (otherDigits || sideA.doubtful || sideB.doubtful)
    return ask(otherDigits ? 'other-digits' : 'exponent', readings);
  return { kind: 'one', value: only.value, readback: only.text };
}

type Side = { ok: true; values: number[]; doubtful: boolean } | { ok: false };

function readSide(text: string): Side {
  const read = readParts(text);
  const [part, more] = read.ok ? read.parts : [];
  if (part === undefined || more !== undefined || part.unit !== undefined) return { ok: false };
  const values = part.numeral.values.filter((value) => value > 0 && Number.isFinite(value));
  if (values.length !== part.numeral.values.length) return { ok: false };
  return { ok: true, values, doubtful: part.numeral.doubt !== undefined };
}
