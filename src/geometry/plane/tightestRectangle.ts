import { convexHull } from './convexHull';

/** Lengths in the unit of the points. */
export interface Rectangle {
  /** From the u axis to the first side, counter-clockwise, above -pi/4 and up to pi/4: 0 where turning gains nothing. */
  angleRad: number;
  /** Around the points, without the padding. The first is along `angleRad`, the second a quarter turn further. */
  sides: [number, number];
  center: [number, number];
}

/** A turned rectangle must be smaller by this share: rounding must not turn a box that stands straight. Chosen here. */
const WORTH_TURNING = 1e-9;

/** Corners of the hull closer together than this share of the size are one: rounding would stop the calipers there. */
const ONE_CORNER_SHARE = 1e-12;

/**
 * The rectangle around all points with the smallest area once it has grown by `padding` (0 or more) on all four sides: what a box
 * with that distance to the walls takes. Of such rectangles the smallest has a side along an edge of the hull (Freeman and
 * Shapira 1975, Commun. ACM 18:409). That holds with padding too: between edges each padded side is a positive concave function of
 * the angle, so the logarithm of the area is concave and least at an end. Throws without points.
 */
export function tightestRectangle(us: Float64Array, vs: Float64Array, padding = 0): Rectangle {
  if (!(padding >= 0)) throw new Error(`tightestRectangle: expected a padding of 0 or more, got ${padding}`);
  if (us.length === 0) throw new Error('tightestRectangle: expected points, got none');
  const corners = cornersOf(us, vs);
  const paddedArea = ({ sides }: Rectangle): number => (sides[0] + 2 * padding) * (sides[1] + 2 * padding);
  const straight = between(corners, 1, 0, calipersAt(corners, 1, 0));
  let best = straight;
  let limit = paddedArea(straight) * (1 - WORTH_TURNING);
  for (const rectangle of rectanglesOnEdges(corners)) {
    if (paddedArea(rectangle) >= limit) continue;
    best = rectangle;
    limit = paddedArea(rectangle);
  }
  return best;
}

/** Counter-clockwise. */
interface Corners {
  us: number[];
  vs: number[];
}

function cornersOf(us: Float64Array, vs: Float64Array): Corners {
  const hull = convexHull(us, vs);
  const [first, second] = [hull[0]!, hull[hull.length >> 1]!];
  const least = ONE_CORNER_SHARE * Math.hypot(us[second]! - us[first]!, vs[second]! - vs[first]!);
  const kept = hull.filter((i, k) => {
    const before = hull[(k + hull.length - 1) % hull.length]!;
    return k === 0 || Math.hypot(us[i]! - us[before]!, vs[i]! - vs[before]!) > least;
  });
  return { us: kept.map((i) => us[i]!), vs: kept.map((i) => vs[i]!) };
}

/** Corners farthest ahead, left, behind and right, looking along a direction. */
type Calipers = [number, number, number, number];

/** How far a corner is ahead, left, behind and right. */
const heights = [
  (u: number, v: number, du: number, dv: number): number => u * du + v * dv,
  (u: number, v: number, du: number, dv: number): number => v * du - u * dv,
  (u: number, v: number, du: number, dv: number): number => -u * du - v * dv,
  (u: number, v: number, du: number, dv: number): number => u * dv - v * du,
] as const;

function calipersAt({ us, vs }: Corners, du: number, dv: number): Calipers {
  return heights.map((height) =>
    us.reduce(
      (best, u, i) => (height(u, vs[i]!, du, dv) > height(us[best]!, vs[best]!, du, dv) ? i : best),
      0,
    ),
  ) as Calipers;
}

/** One rectangle per edge. The calipers turn with the edges, so all of them together take one trip around the hull. */
function* rectanglesOnEdges(corners: Corners): Generator<Rectangle> {
  const { us, vs } = corners;
  let calipers: Calipers | undefined;
  for (let i = 0; us.length > 1 && i < us.length; i++) {
    const j = (i + 1) % us.length;
    const [du, dv] = [us[j]! - us[i]!, vs[j]! - vs[i]!];
    const length = Math.hypot(du, dv);
    calipers = calipers
      ? turned(corners, du / length, dv / length, calipers)
      : calipersAt(corners, du / length, dv / length);
    yield between(corners, du / length, dv / length, calipers);
  }
}

/** Each on to the next corner for as long as that is no lower. */
function turned({ us, vs }: Corners, du: number, dv: number, calipers: Calipers): Calipers {
  return heights.map((height, side) => {
    let at = calipers[side]!;
    for (let steps = 0; steps < us.length; steps++) {
      const next = (at + 1) % us.length;
      if (height(us[next]!, vs[next]!, du, dv) < height(us[at]!, vs[at]!, du, dv)) break;
      at = next;
    }
    return at;
  }) as Calipers;
}

/** The rectangle between the calipers, its angle brought to within an eighth of a turn. */
function between({ us, vs }: Corners, du: number, dv: number, calipers: Calipers): Rectangle {
  const [ahead, left, behind, right] = heights.map((height, side) =>
    height(us[calipers[side]!]!, vs[calipers[side]!]!, du, dv),
  ) as Calipers;
  const [along, across] = [(ahead - behind) / 2, (left - right) / 2];
  const quarters = Math.ceil(Math.atan2(dv, du) / (Math.PI / 2) - 0.5);
  const sides: [number, number] = [ahead + behind, left + right];
  return {
    angleRad: Math.atan2(dv, du) - quarters * (Math.PI / 2),
    sides: quarters % 2 === 0 ? sides : [sides[1], sides[0]],
    center: [along * du - across * dv, along * dv + across * du],
  };
}
