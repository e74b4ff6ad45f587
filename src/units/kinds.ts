/** What a typed quantity can be. Each is kept in one unit inside: see `INSIDE_UNIT`. */
export type ScalarKind =
  | 'length'
  | 'mass'
  | 'volume'
  | 'density'
  | 'temperature'
  | 'temperatureDifference'
  | 'pressure'
  | 'viscosity'
  | 'share'
  | 'packFactor'
  | 'overpack'
  | 'plain';

export type QuantityKind = ScalarKind | 'ratio';

/** A mixing ratio as typed, always A:B. By mass or by volume is a second question. */
export interface RatioValue {
  a: number;
  b: number;
}

/** The unit of the value that comes back. `share`, `packFactor`, `overpack`, `ratio` and `plain` have none. */
export const INSIDE_UNIT: Readonly<Record<QuantityKind, string>> = {
  length: 'mm',
  mass: 'g',
  volume: 'cm3',
  density: 'kg/m3',
  temperature: 'C',
  temperatureDifference: 'K',
  pressure: 'kPa',
  viscosity: 'Pa s',
  share: '',
  packFactor: '',
  overpack: '',
  plain: '',
  ratio: '',
};

export type AskReason =
  | 'comma-or-thousands'
  | 'exponent'
  | 'other-digits'
  | 'bare-fraction'
  | 'unit-missing'
  | 'implausible'
  | 'percent-or-number'
  | 'slash-ratio';

export type ErrorReason =
  | 'empty'
  | 'too-long'
  | 'not-a-number'
  | 'bad-grouping'
  | 'out-of-reach'
  | 'unknown-unit'
  | 'wrong-kind'
  | 'not-positive'
  | 'negative'
  | 'bad-compound'
  | 'bad-ratio'
  | 'share-out-of-range'
  | 'below-absolute-zero';

/** Why a text was asked about or refused: plain data, its sentence is in `words/quantityWords`. */
export interface Why<R extends AskReason | ErrorReason = AskReason | ErrorReason> {
  reason: R;
  values: Readonly<Record<string, number | string>>;
}

export interface Reading<V> {
  text: string;
  value: V;
}

/** One meaning, several (the user picks), or none. */
export type Read<V> =
  | { kind: 'one'; value: V; readback: string }
  | { kind: 'ask'; readings: Reading<V>[]; why: Why<AskReason> }
  | { kind: 'error'; why: Why<ErrorReason> };

export const ask = <V>(reason: AskReason, readings: Reading<V>[], values: Why['values'] = {}): Read<V> => ({
  kind: 'ask',
  readings,
  why: { reason, values },
});

export const refuse = (
  reason: ErrorReason,
  values: Why['values'] = {},
): { kind: 'error'; why: Why<ErrorReason> } => ({ kind: 'error', why: { reason, values } });
