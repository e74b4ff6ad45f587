import { finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { leastSprueMm, pourFlow } from './opening';
import { openingLimits, smallestLimit } from './openingLimits';
import type { LimitedOpening, MostBy, OpeningLimits } from './openingLimits';

/** What has to run in, and through what. What is not known is left out: then the lower end is not known. */
export interface PourThrough {
  liquidCm3?: number | undefined;
  /** Time left to pour in. */
  withinS?: number | undefined;
  mixPaS?: number | undefined;
  liquidKgM3: number;
  sprueLengthMm: number;
  headMm: number;
  vented: boolean;
}

/** A pour of which all is known. */
export interface TimedPour extends PourThrough {
  liquidCm3: number;
  withinS: number;
  mixPaS: number;
}

export interface OpeningBand {
  /** Narrowest that pours in time; absent while `notKnown` names something, or where none is wide enough. */
  leastMm?: number;
  notKnown: readonly (typeof TIMED)[number][];
  mostMm: number;
  mostBy: MostBy;
  limits: OpeningLimits;
  /** Known to be: no width both pours in time and is within the upper limits. */
  isEmpty: boolean;
  findings: Problem[];
}

/**
 * The advised band of diameters of one round opening, mm: wide enough to pour in time (`leastSprueMm`), within a share of the largest
 * section across it and of the casting's surface, and, where the foam's viscosity was learned, narrow enough to hold a wanted
 * pressure back. The smallest upper limit wins and is named. Errors: INPUT_OUT_OF_BOUNDS, NO_HEAD, PACK_REFUSED.
 * Findings: OPENING_BAND_EMPTY, OPENING_NONE, OPENING_FLOW_FAST.
 */
export function openingBand({
  pour,
  ...opening
}: LimitedOpening & { pour: PourThrough }): Outcome<OpeningBand> {
  const limits = openingLimits(opening);
  if (!limits.ok) return limits;
  const upper = { ...smallestLimit(limits.value), limits: limits.value };
  if (!isTimed(pour)) {
    const notKnown = TIMED.filter((name) => pour[name] === undefined);
    return good({ ...upper, notKnown, isEmpty: false, findings: [] });
  }
  const least = leastSprueMm(pour);
  if (!least.ok)
    return least.problem.code === 'OPENING_NONE'
      ? good({ ...upper, notKnown: [], isEmpty: true, findings: [least.problem] })
      : least;
  return bandFrom(least.value, pour, upper);
}

export const isTimed = (pour: PourThrough): pour is TimedPour =>
  TIMED.every((name) => pour[name] !== undefined);

const TIMED = ['liquidCm3', 'withinS', 'mixPaS'] as const;

function bandFrom(
  leastMm: number,
  pour: TimedPour,
  upper: Pick<OpeningBand, 'mostMm' | 'mostBy' | 'limits'>,
): Outcome<OpeningBand> {
  const flow = pourFlow({ ...pour, sprueMm: leastMm });
  if (!flow.ok) return flow;
  const { mostMm } = upper;
  const isEmpty = leastMm > mostMm;
  const empty = isEmpty ? [finding('OPENING_BAND_EMPTY', 'look', { leastMm, mostMm })] : [];
  return good({ leastMm, notKnown: [], ...upper, isEmpty, findings: [...empty, ...flow.value.findings] });
}
