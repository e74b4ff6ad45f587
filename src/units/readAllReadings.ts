import { readbackOf } from './format';
import { INSIDE_UNIT } from './kinds';
import type { QuantityKind, RatioValue, Read, ScalarKind } from './kinds';
import { readQuantity } from './readQuantity';

export interface AnyReading {
  kind: QuantityKind;
  value: number | RatioValue;
  unit: string;
  text: string;
}

/**
 * Every meaning a text can have: `5 F` is a temperature and a difference of temperatures, `1,250` is two numbers.
 * The value is in `unit`. Empty when it is no quantity; `readQuantity(text, 'plain')` then says why.
 */
export function readAllReadings(text: string): AnyReading[] {
  const scalars = KINDS.flatMap((kind) => {
    const read = readQuantity(text, kind, { allowZero: true, allowNegative: true });
    const guess = PERCENT_KINDS.includes(kind) && read.kind === 'ask' && !text.includes('%');
    return guess ? [] : valuesOf(read).map((value) => reading(kind, value));
  });
  const ratios = valuesOf(readQuantity(text, 'ratio')).map((value) => reading('ratio', value));
  return [...scalars, ...ratios];
}

const KINDS: readonly ScalarKind[] = [
  'length',
  'mass',
  'volume',
  'density',
  'temperature',
  'temperatureDifference',
  'pressure',
  'viscosity',
  'share',
  'packFactor',
  'overpack',
  'plain',
];

/** A pure number is taken for one of these only where it has one meaning or was written in percent. */
const PERCENT_KINDS: readonly ScalarKind[] = ['share', 'packFactor', 'overpack'];

/** A number without a unit is not offered as a length or a mass: only what was written counts. */
function valuesOf<V>(read: Read<V>): V[] {
  if (read.kind === 'one') return [read.value];
  if (read.kind === 'error' || read.why.reason === 'unit-missing') return [];
  return read.readings.map(({ value }) => value);
}

const reading = (kind: QuantityKind, value: number | RatioValue): AnyReading => ({
  kind,
  value,
  unit: INSIDE_UNIT[kind],
  text: readbackOf(kind, value),
});
