import type { Estimate } from '../../estimate';
import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkWarmth } from './checkWarmth';
import type { HeatMaterial } from './heatMaterial';
import { WARMTH_RULES as R } from './rules';
import { lumpedMinutes, minutesToShare, seriesBiot, timeConstantMin } from './transient';
import type { HeatedBody } from './transient';

/** Where the mold stands; each has a usual heat transfer. */
export type AirAround = keyof typeof SURROUNDINGS;

/** A jacket left on. Without properties it is dry plaster. */
export interface JacketOn {
  thicknessMm: number;
  densityKgM3?: number;
  heatCapacityJKgK?: number;
}

/** A wall of silicone in air, at one temperature to begin with. */
export interface WallInAir {
  wallMm: number;
  /** One face in the air and the other insulated (by a jacket, a board), or both in it. */
  sides: 1 | 2;
  surroundings: AirAround;
  /** Wins over the usual figure of the surroundings. */
  hWM2K?: number;
  airTempC: number;
  startTempC: number;
  jacket?: JacketOn;
  /** With a jacket on and one face in the air, which; the usual one is the inside, where foam will go. */
  airOn?: 'inside' | 'outside';
  properties?: Partial<HeatMaterial>;
}

interface Range {
  value: number;
  low?: number;
  high?: number;
}

const SURROUNDINGS = {
  'still room': R.stillAir,
  'still box': R.stillAir,
  'fan box': R.fanBox,
  'heat gun': R.heatGun,
} as const;

/** Bounds of everything that is typed about a wall. */
export function checkWall(wall: WallInAir): Outcome<true> {
  const { wallMm, sides, airTempC, startTempC, hWM2K, jacket, properties = {} } = wall;
  if (!Object.hasOwn(SURROUNDINGS, wall.surroundings)) {
    throw new Error(`checkWall: expected ${Object.keys(SURROUNDINGS).join(', ')}, got ${wall.surroundings}`);
  }
  const checked = checkWarmth({ wallMm, sides, airTempC, startTempC }, { hWM2K, ...properties });
  if (!checked.ok || jacket === undefined) return checked;
  const { thicknessMm: jacketMm, densityKgM3, heatCapacityJKgK } = jacket;
  return checkWarmth({ jacketMm }, { densityKgM3, heatCapacityJKgK });
}

/**
 * When the nearest and the farthest rubber reach a share of the first difference to the air, min, with the range from
 * every assumed figure at its end at once (wide, but nothing lies outside it), and what the one-temperature shortcut says.
 *
 * A jacket counts by the warmth it takes up, as if it were more silicone of the same capacity behind the wall. Against a
 * plaster jacket reckoned layer by layer this is within 5 % with air on one face and 10 % with air on both (a test does
 * that).
 */
export function reachShare(
  wall: WallInAir,
  share: number,
): {
  nearMin: Estimate;
  farMin: Estimate;
  lumpedMin: number;
  biot: number;
  timeConstantMin: number;
} {
  const usual = bodyOf(wall, usualPoint(wall));
  const at = (depthOf: DepthOf) => spread(wall, (body) => minutesToShare(body, depthOf(wall, body), share));
  return {
    nearMin: at(nearDepthMm),
    farMin: at(farDepthMm),
    lumpedMin: lumpedMinutes(usual, share),
    biot: seriesBiot(usual),
    timeConstantMin: timeConstantMin(usual),
  };
}

/** The share of the difference to the air that is left at the target, on the way up (`warm`) or down. */
export function shareOnTheWay(wall: WallInAir, targetTempC: number, isWarming: boolean): Outcome<number> {
  const sign = isWarming ? 1 : -1;
  const { startTempC, airTempC } = wall;
  const values = { startTempC, airTempC, targetTempC };
  if (sign * (targetTempC - startTempC) <= 0) return bad('WARM_ALREADY_THERE', values);
  if (sign * (airTempC - targetTempC) <= 0) return bad('WARM_UNREACHABLE', values);
  return good((targetTempC - airTempC) / (startTempC - airTempC));
}

type Point = Record<'h' | 'k' | 'density' | 'capacity', number>;
type DepthOf = (wall: WallInAir, body: HeatedBody) => number;

/** The value at the usual figures, and the least and the most over every corner of their ranges. */
export function spread(wall: WallInAir, valueAt: (body: HeatedBody) => number): Estimate {
  const ranges = rangesOf(wall);
  const ends = (range: Range): number[] => [
    ...new Set([range.low ?? range.value, range.high ?? range.value]),
  ];
  const all = ends(ranges.h).flatMap((h) =>
    ends(ranges.k).flatMap((k) =>
      ends(ranges.density).flatMap((density) =>
        ends(ranges.capacity).map((capacity) => valueAt(bodyOf(wall, { h, k, density, capacity }))),
      ),
    ),
  );
  const value = valueAt(bodyOf(wall, usualPoint(wall)));
  const isGiven = all.length === 1;
  return {
    value,
    low: Math.min(value, ...all),
    high: Math.max(value, ...all),
    from: isGiven ? 'given' : 'assumed',
  };
}

function rangesOf({ surroundings, hWM2K, properties = {} }: WallInAir): Record<keyof Point, Range> {
  const given = (value: number | undefined, rule: Range): Range => (value === undefined ? rule : { value });
  return {
    h: given(hWM2K, SURROUNDINGS[surroundings]),
    k: given(properties.conductivityWMK, R.siliconeConductivity),
    density: given(properties.densityKgM3, R.siliconeDensity),
    capacity: given(properties.heatCapacityJKgK, R.siliconeHeatCapacity),
  };
}

function usualPoint(wall: WallInAir): Point {
  const { h, k, density, capacity } = rangesOf(wall);
  return { h: h.value, k: k.value, density: density.value, capacity: capacity.value };
}

/** The wall as a slab; a jacket adds its capacity as silicone. */
function bodyOf({ wallMm, sides, airTempC, startTempC, jacket }: WallInAir, point: Point): HeatedBody {
  const { h, k, density, capacity } = point;
  const jacketMm = jacket === undefined ? 0 : (jacketJPerM2K(jacket) * 1000) / (density * capacity);
  return {
    shape: 'slab',
    thicknessMm: wallMm + jacketMm,
    sides,
    conductivityWMK: k,
    densityKgM3: density,
    heatCapacityJKgK: capacity,
    hWM2K: h,
    surroundTempC: airTempC,
    startTempC,
  };
}

const jacketJPerM2K = ({
  thicknessMm,
  densityKgM3 = R.plasterDensity.value,
  heatCapacityJKgK = R.plasterHeatCapacity.value,
}: JacketOn): number => (thicknessMm / 1000) * densityKgM3 * heatCapacityJKgK;

const isBehindJacket = ({ sides, jacket, airOn }: WallInAir): boolean =>
  sides === 1 && jacket !== undefined && airOn === 'outside';

/** The heated face; behind a jacket, the back of the rubber, which it warms first. */
const nearDepthMm: DepthOf = (wall, { thicknessMm }) =>
  isBehindJacket(wall) ? thicknessMm - wall.wallMm : 0;

/** The rubber that is reached last. */
export const farDepthMm: DepthOf = (wall, { thicknessMm }) => {
  if (isBehindJacket(wall)) return thicknessMm;
  return wall.sides === 1 ? wall.wallMm : Math.min(wall.wallMm, thicknessMm / 2);
};
