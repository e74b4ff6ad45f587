import type { Estimate } from '../../estimate';
import { bad, finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { checkBounds } from './checkBounds';
import { MOLDMAKING_RULES as R } from './rules';

/** How the silicone cures: addition (platinum) or condensation (tin). */
export type SiliconeCure = 'addition' | 'condensation';

/** A linear shrink share, and its range if it is known. */
export interface KnownShrink {
  share: number;
  low?: number;
  high?: number;
}

/**
 * Linear shrink of the mold, as a share: the user's measure wins, then the data sheet, then the default of the cure,
 * which comes with a finding. Shrink of condensation cure grows with age; a skin keyed into a rigid jacket shrinks less
 * than a block.
 */
export function settleShrink({
  cure,
  measured,
  dataSheet,
}: {
  cure: SiliconeCure;
  measured?: KnownShrink;
  dataSheet?: KnownShrink;
}): Outcome<{ shrink: Estimate; findings: Problem[] }> {
  if (measured !== undefined) {
    return withRange(measured, R.shrinkMeasuredDoubt.value, 'given');
  }
  if (dataSheet !== undefined) {
    return withRange(dataSheet, R.shrinkSheetDoubt.value * Math.abs(dataSheet.share), 'data-sheet');
  }
  const { value, low, high } = cure === 'addition' ? R.shrinkAddition : R.shrinkCondensation;
  return good({
    shrink: { value, low, high, from: 'assumed' },
    findings: [finding('SHRINK_ASSUMED', 'look', { cure, share: value, low, high })],
  });
}

/** Linear shrink from the same length on sculpt and mold; the range is what a step of the rule leaves open. */
export function shrinkFromLengths({
  sculptMm,
  moldMm,
  readingMm,
}: {
  sculptMm: number;
  moldMm: number;
  readingMm: number;
}): Outcome<Estimate> {
  const checked = checkBounds({ lengthMm: sculptMm, moldLengthMm: moldMm, readingMm });
  if (!checked.ok) return checked;
  const half = readingMm / 2;
  const value = 1 - moldMm / sculptMm;
  const inBounds = checkBounds({ moldShrinkShare: value });
  if (!inBounds.ok) return inBounds;
  if (readingMm > sculptMm) {
    return bad('INPUT_OUT_OF_BOUNDS', {
      input: 'readingMm',
      value: readingMm,
      low: 0,
      high: sculptMm,
      unit: 'mm',
    });
  }
  const low = 1 - (moldMm + half) / (sculptMm - half);
  return good({ value, low, high: 1 - (moldMm - half) / (sculptMm + half), from: 'taped' });
}

export interface CastingCavity {
  sculptCm3: number;
  shrink: Estimate;
  castingTempC: number;
  /** Where the shrink holds; without it, 23 C. */
  roomTempC?: number;
  /** Linear growth of the rubber, 1/K. */
  growth?: { perK: number; low: number; high: number };
}

/**
 * Cavity at casting temperature: sculpt x (1 - s)^3 x (1 + alpha dT)^3, for a mold free to shrink and grow. Cubes, not
 * 3 alpha dT: at 20 K those differ by 0.5 % of the growth. Low and high from the ranges of s and alpha at once; doubt of
 * the sculpt's volume is not in them. `volumeShare` is cavity over sculpt.
 */
export function cavityAtCasting({
  sculptCm3,
  shrink,
  castingTempC,
  roomTempC = R.roomTemp.value,
  growth,
}: CastingCavity): Outcome<{ cavityCm3: Estimate; volumeShare: Estimate }> {
  const alpha = growth ?? { perK: R.growthPerK.value, low: R.growthPerK.low, high: R.growthPerK.high };
  const checked = checkBounds({ sculptCm3, castingTempC, roomTempC });
  if (!checked.ok) return checked;
  for (const moldShrinkShare of [shrink.value, shrink.low, shrink.high]) {
    const inBounds = checkBounds({ moldShrinkShare });
    if (!inBounds.ok) return inBounds;
  }
  for (const growthPerK of [alpha.perK, alpha.low, alpha.high]) {
    const inBounds = checkBounds({ growthPerK });
    if (!inBounds.ok) return inBounds;
  }
  const warmK = castingTempC - roomTempC;
  const share = (s: number, perK: number): number => ((1 - s) * (1 + perK * warmK)) ** 3;
  // Warmer than the room, more growth means a larger cavity; colder, a smaller one.
  const [least, most] = warmK >= 0 ? [alpha.low, alpha.high] : [alpha.high, alpha.low];
  const volumeShare: Estimate = {
    value: share(shrink.value, alpha.perK),
    low: share(shrink.high, least),
    high: share(shrink.low, most),
    from: growth === undefined && warmK !== 0 ? 'assumed' : shrink.from,
  };
  const cm3 = (of: number): number => sculptCm3 * of;
  const cavityCm3 = {
    ...volumeShare,
    value: cm3(volumeShare.value),
    low: cm3(volumeShare.low),
    high: cm3(volumeShare.high),
  };
  return good({ cavityCm3, volumeShare });
}

/**
 * From sculpt to casting through both shrinks: length of the casting, its share of length and volume, and the factor by
 * which to make the sculpt larger so that the casting comes out as drawn: 1 / ((1 - s_mold)(1 - s_casting)).
 */
export function castingSize({
  lengthMm,
  moldShrinkShare,
  castingShrinkShare,
}: {
  lengthMm: number;
  moldShrinkShare: number;
  castingShrinkShare: number;
}): Outcome<{ castingMm: number; linearShare: number; volumeShare: number; sculptFactor: number }> {
  const checked = checkBounds({ lengthMm, moldShrinkShare, castingShrinkShare });
  if (!checked.ok) return checked;
  const linearShare = (1 - moldShrinkShare) * (1 - castingShrinkShare);
  return good({
    castingMm: lengthMm * linearShare,
    linearShare,
    volumeShare: linearShare ** 3,
    sculptFactor: 1 / linearShare,
  });
}

function withRange(
  { share, low = share, high = share }: KnownShrink,
  doubt: number,
  from: 'given' | 'data-sheet',
): Outcome<{ shrink: Estimate; findings: Problem[] }> {
  for (const moldShrinkShare of [share, low, high]) {
    const inBounds = checkBounds({ moldShrinkShare });
    if (!inBounds.ok) return inBounds;
  }
  if (share < low || share > high) {
    return bad('INPUT_OUT_OF_BOUNDS', { input: 'moldShrinkShare', value: share, low, high, unit: '' });
  }
  const shrink =
    low === high
      ? { value: share, low: share - doubt, high: share + doubt, from }
      : { value: share, low, high, from };
  return good({ shrink, findings: [] });
}
