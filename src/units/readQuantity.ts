import { KELVIN_AT_0_C } from './constants';
import { formatQuantity, numberText } from './format';
import { ask, refuse } from './kinds';
import type { AskReason, QuantityKind, RatioValue, Read, Reading, ScalarKind, Why } from './kinds';
import { readParts } from './parts';
import type { Part } from './parts';
import { readPercentKind } from './percentKinds';
import { readRatio } from './readRatio';
import { findUnit, kindsOfUnit, OFFERED_UNITS } from './unitTable';
import type { Unit } from './unitTable';

export interface ReadOptions {
  /** The unit in which a bare number is taken: the option's stated unit. */
  bareUnit?: string;
  allowZero?: boolean;
  allowNegative?: boolean;
}

/**
 * Reads a typed quantity into the inside unit of its kind (mm, g, cm3, kg/m3, C, K, kPa; shares 0..1). What has one
 * meaning is read, what has several comes back with each of them, what has none with the reason; nothing is guessed.
 * Example: readQuantity('5 ft 3 in', 'length') -> { kind: 'one', value: 1600.2, readback: '1600.2 mm (63.00 in)' }.
 */
export function readQuantity(text: string, kind: 'ratio', options?: ReadOptions): Read<RatioValue>;
export function readQuantity(text: string, kind: ScalarKind, options?: ReadOptions): Read<number>;
export function readQuantity(
  text: string,
  kind: QuantityKind,
  options: ReadOptions = {},
): Read<number> | Read<RatioValue> {
  if (kind === 'ratio') return readRatio(text);
  const read = readParts(text);
  if (!read.ok) return refuse(read.reason);
  const { parts, otherDigits } = read;
  const percentKind = kind === 'share' || kind === 'packFactor' || kind === 'overpack';
  if (percentKind)
    return readPercentKind({ kind, parts, otherDigits, percentStated: options.bareUnit === '%' });
  if (parts.length > 1) return readCompound({ kind, parts, otherDigits, options });
  const [part] = parts;
  if (part === undefined) return refuse('empty');
  return readOnePart({ kind, part, otherDigits, options });
}

interface OnePart {
  kind: ScalarKind;
  part: Part;
  otherDigits: boolean;
  options: ReadOptions;
}

function readOnePart({ kind, part, otherDigits, options }: OnePart): Read<number> {
  const spelling = part.unit ?? options.bareUnit;
  if (kind === 'plain') {
    if (part.unit !== undefined) return unitRefused(part.unit, kind);
    return settle({ kind, readings: plainReadings(part), part, otherDigits, options });
  }
  if (spelling === undefined) return askForUnit({ kind, part, otherDigits, options });
  const unit = findUnit(kind, spelling);
  if (unit === undefined) {
    if (part.unit === undefined)
      throw new Error(`readQuantity: expected a unit of ${kind}, got bareUnit ${spelling}`);
    return unitRefused(part.unit, kind);
  }
  return settle({ kind, readings: readingsIn(unit, part), part, otherDigits, options });
}

function unitRefused(unit: string, kind: ScalarKind): Read<number> {
  const kinds = kindsOfUnit(unit);
  return kinds.length === 0
    ? refuse('unknown-unit', { unit, kind })
    : refuse('wrong-kind', { unit, kind, unitKind: kinds[0] ?? '' });
}

function askForUnit({ kind, part, options }: OnePart): Read<number> {
  const readings = inOfferedUnits(kind, part).filter(
    ({ value }) => fault(kind, value, options) === undefined,
  );
  const first = inOfferedUnits(kind, part)[0];
  if (readings.length > 0 || first === undefined) return ask('unit-missing', readings);
  return fault(kind, first.value, options) ?? refuse('not-a-number');
}

interface Settle extends OnePart {
  readings: Reading<number>[];
}

/** One reading if it is the only one that is possible and nothing about its writing is in doubt. */
function settle({ kind, readings, part, otherDigits, options }: Settle): Read<number> {
  const possible = readings.filter(({ value }) => fault(kind, value, options) === undefined);
  const [only] = possible;
  if (only === undefined)
    return fault(kind, readings[0]?.value ?? Number.NaN, options) ?? refuse('not-a-number');
  const doubt = doubtOf(part, otherDigits);
  if (doubt !== undefined) return ask(doubt, possible);
  if (!isPlausible(kind, only.value))
    return ask('implausible', withOtherUnits(kind, part, only), oddValues(kind, only));
  return { kind: 'one', value: only.value, readback: formatQuantity(kind, only.value) };
}

/** A fraction with its unit (`1/2 in`) is plain; without one it may be a date, a ratio or a list. */
function doubtOf(part: Part, otherDigits: boolean): AskReason | undefined {
  const { doubt } = part.numeral;
  if (doubt === 'bare-fraction' && part.unit !== undefined) return otherDigits ? 'other-digits' : undefined;
  return doubt ?? (otherDigits ? 'other-digits' : undefined);
}

const plainReadings = (part: Part): Reading<number>[] =>
  part.numeral.values.map((value) => ({ text: numberText(value), value }));

const readingsIn = (unit: Unit, part: Part): Reading<number>[] =>
  part.numeral.values.map((typed) => ({
    text: `${numberText(typed)} ${unit.shown}`,
    value: typed * unit.factor + unit.offset,
  }));

function inOfferedUnits(kind: ScalarKind, part: Part): Reading<number>[] {
  return OFFERED_UNITS[kind].flatMap((spelling) => {
    const unit = findUnit(kind, spelling);
    return unit === undefined ? [] : readingsIn(unit, part);
  });
}

/** The reading as typed first; then, if no unit was typed, the units that would make sense of it. */
function withOtherUnits(kind: ScalarKind, part: Part, asTyped: Reading<number>): Reading<number>[] {
  if (part.unit !== undefined) return [asTyped];
  const others = inOfferedUnits(kind, part).filter(
    ({ text, value }) => text !== asTyped.text && isPlausible(kind, value),
  );
  return [asTyped, ...others];
}

/** `5 ft 3 in`, `5 lb 3 oz`: falling units of one kind, whole numbers but for the last, each less than one of the last. */
function readCompound({
  kind,
  parts,
  otherDigits,
  options,
}: {
  kind: ScalarKind;
  parts: Part[];
  otherDigits: boolean;
  options: ReadOptions;
}): Read<number> {
  let value = 0;
  let biggerFactor = Number.POSITIVE_INFINITY;
  for (const [index, part] of parts.entries()) {
    if (part.unit === undefined) return refuse('bad-compound');
    const unit = findUnit(kind, part.unit);
    if (unit === undefined || kind === 'plain') return unitRefused(part.unit, kind);
    const [typed = Number.NaN, second] = part.numeral.values;
    const last = index === parts.length - 1;
    const whole = last || Number.isInteger(typed);
    const clean =
      second === undefined && (part.numeral.doubt === undefined || part.numeral.doubt === 'bare-fraction');
    const fits = typed >= 0 && typed * unit.factor < biggerFactor && unit.factor < biggerFactor;
    if (!whole || !clean || !fits || unit.offset !== 0) return refuse('bad-compound');
    value += typed * unit.factor;
    biggerFactor = unit.factor;
  }
  const reading = { text: formatQuantity(kind, value), value };
  const problem = fault(kind, value, options);
  if (problem !== undefined) return problem;
  if (otherDigits) return ask('other-digits', [reading]);
  return isPlausible(kind, value)
    ? { kind: 'one', value, readback: reading.text }
    : ask('implausible', [reading], oddValues(kind, reading));
}

function fault(kind: ScalarKind, value: number, options: ReadOptions): ReturnType<typeof refuse> | undefined {
  if (!Number.isFinite(value)) return refuse('out-of-reach');
  if (kind === 'temperature')
    return value < -KELVIN_AT_0_C ? refuse('below-absolute-zero', { valueC: value }) : undefined;
  if (kind === 'temperatureDifference' || kind === 'plain') return undefined;
  if (value < 0 && options.allowNegative !== true) return refuse('negative', { value, kind });
  if (value === 0 && options.allowZero !== true) return refuse('not-positive', { value, kind });
  return undefined;
}

/**
 * Sizes between which a shop's number is taken without a question (chosen by us, no source): up to 100 m, 10 t, 10 m3;
 * densities from 1 kg/m3 (air) to 25 000 (above osmium, so 96 g/cm3 is asked about); -100..400 C; 0.1 mPa s (thinner than water) to 100 kPa s.
 */
const PLAUSIBLE: Readonly<Partial<Record<ScalarKind, readonly [low: number, high: number]>>> = {
  length: [0.001, 1e5],
  mass: [0.001, 1e7],
  volume: [0.001, 1e7],
  density: [1, 25000],
  temperature: [-100, 400],
  temperatureDifference: [-400, 400],
  pressure: [0.001, 1e4],
  viscosity: [1e-4, 1e5],
};

/** What is odd about it: which bound it passes, and on which side. */
function oddValues(kind: ScalarKind, { text, value }: Reading<number>): Why['values'] {
  const [low, high] = PLAUSIBLE[kind] ?? [0, 0];
  const size = SIZES.includes(kind) ? Math.abs(value) : value;
  const [side, bound] = size > high ? ['above', high] : ['below', low];
  // A bound so near to 0 that it is shown as 0 is written out.
  const shown = formatQuantity(kind, Number(bound), 'metric').replace(/^0(?= )/, String(bound));
  return { value: text, kind, side: String(side), bound: shown };
}

/** A negative one is as large as a positive one. */
const SIZES: readonly ScalarKind[] = ['length', 'mass', 'volume'];

function isPlausible(kind: ScalarKind, value: number): boolean {
  const bounds = PLAUSIBLE[kind];
  if (bounds === undefined || value === 0) return true;
  const size = SIZES.includes(kind) ? Math.abs(value) : value;
  return size >= bounds[0] && size <= bounds[1];
}
