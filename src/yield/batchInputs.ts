import type { Source } from '../estimate';
import { bad, good } from '../problem';
import type { Outcome, Problem } from '../problem';
import { checkInput } from './checkInput';
import type { MixRatio, PartDensities } from './foam';
import type { BoundedInput } from './rules';

/**
 * A number with its source and, if known, its doubt: a standard uncertainty `u` in its own unit, `uShare` as a share of
 * it, or the range that holds the truth 95 times of 100. The first that is there counts.
 */
export interface Given {
  value: number;
  from: Source;
  u?: number;
  uShare?: number;
  low?: number;
  high?: number;
}

/** A cup test counts as one of today, unless it is said to be old: then it counts as a label does. */
export interface GivenFreeRise extends Given {
  isOld?: boolean;
}

/** Everything a batch can be told. What is left out is assumed, and the answer says so. */
export interface BatchInputs {
  cavityCm3: Given;
  riserCm3?: Given;
  /** Scan, closure and shrink between the file and the mold, as a share of the cavity. */
  uScanToMoldShare?: Given;
  /** Doubt of the density by the air pressure of the day, as a share, where that pressure is known. */
  uStationPressureShare?: Given;
  freeRiseKgM3: GivenFreeRise;
  minFillKgM3?: Given;
  liquidKgM3?: Given;
  ratio: MixRatio;
  partDensities?: PartDensities;
  /** One of these three at most; none means the default pack. */
  packFactor?: Given;
  shortFillChance?: Given;
  overpackShare?: Given;
  ventsG?: Given;
  gasLossShare?: Given;
  residueG?: Given;
  scaleStepG?: Given;
  /** The most the scale takes. */
  scaleMaxG?: Given;
}

/** Standard uncertainty in the unit of the value; undefined when nothing is known of it. */
export function standardU({ value, u, uShare, low, high }: Given): number | undefined {
  if (u !== undefined) return u;
  if (uShare !== undefined) return uShare * Math.abs(value);
  return low === undefined || high === undefined ? undefined : (high - low) / WIDTH_OF_95_IN_SIGMA;
}

/** 2 x 1.959964 standard deviations of a normal distribution. */
const WIDTH_OF_95_IN_SIGMA = 3.92;

/** Refuses the first input that is no number, out of its bounds, or contradicts itself; names it. */
export function checkBatchInputs(inputs: BatchInputs): Outcome<BatchInputs> {
  for (const [input, bounds] of BOUNDS) {
    const given = inputs[input];
    const problem = given === undefined ? undefined : problemOf(given, bounds, input);
    if (problem !== undefined) return { ok: false, problem };
  }
  const ways = PACK_WAYS.filter((way) => inputs[way] !== undefined);
  const [first, second] = ways;
  if (first !== undefined && second !== undefined) return bad('INPUT_CONFLICT', { first, second });
  if (inputs.overpackShare !== undefined && inputs.minFillKgM3 === undefined) {
    return bad('MIN_FILL_NEEDED', { overpackShare: inputs.overpackShare.value });
  }
  return good(inputs);
}

const PACK_WAYS = ['packFactor', 'shortFillChance', 'overpackShare'] as const;

type GivenInput = Exclude<keyof BatchInputs, 'ratio' | 'partDensities' | 'packFactor'>;

/** The pack factor has bounds of its own: see `checkPack`. */
const BOUNDS: readonly (readonly [GivenInput, BoundedInput])[] = [
  ['cavityCm3', 'cavityCm3'],
  ['riserCm3', 'riserCm3'],
  ['uScanToMoldShare', 'uShare'],
  ['uStationPressureShare', 'uShare'],
  ['freeRiseKgM3', 'freeRiseKgM3'],
  ['minFillKgM3', 'minFillKgM3'],
  ['liquidKgM3', 'liquidKgM3'],
  ['shortFillChance', 'shortFillChance'],
  ['overpackShare', 'overpackShare'],
  ['ventsG', 'ventsG'],
  ['gasLossShare', 'gasLossShare'],
  ['residueG', 'residueG'],
  ['scaleStepG', 'scaleStepG'],
  ['scaleMaxG', 'scaleMaxG'],
];

function problemOf(given: Given, bounds: BoundedInput, input: string): Problem | undefined {
  const checks: Outcome<unknown>[] = [checkInput(given.value, bounds, input)];
  if (given.u !== undefined) checks.push(checkInput(given.u, 'uAbsolute', `${input}.u`));
  if (given.uShare !== undefined) checks.push(checkInput(given.uShare, 'uShare', `${input}.uShare`));
  if (given.low !== undefined || given.high !== undefined) checks.push(checkRange(given, input));
  const failed = checks.find((check) => !check.ok);
  return failed?.ok === false ? failed.problem : undefined;
}

function checkRange({ value, low = Number.NaN, high = Number.NaN }: Given, input: string): Outcome<true> {
  if (!Number.isFinite(low)) return bad('INPUT_NOT_A_NUMBER', { input: `${input}.low`, value: String(low) });
  if (!Number.isFinite(high))
    return bad('INPUT_NOT_A_NUMBER', { input: `${input}.high`, value: String(high) });
  if (low <= value && value <= high) return good(true);
  return bad('INPUT_OUT_OF_BOUNDS', { input: `${input} within its own range`, value, low, high, unit: '' });
}
