export interface Circle {
  u: number;
  v: number;
  /** In the unit of the points. */
  radius: number;
}

/**
 * The smallest circle around all points: radius 0 around one point, NaN around none. It is set by two or three of them (Welzl
 * 1991, LNCS 555:359); the farthest point outside is taken in until none is left (pivoting after Gaertner 1999, LNCS 1643:325).
 * The circle grows at every step, so no order of points is slow; a few looks at all of them suffice. The same points in any
 * order give the same circle but for rounding.
 */
export function smallestCircle(us: Float64Array, vs: Float64Array): Circle {
  let set = [0];
  let circle = circleAround(set, us, vs);
  for (;;) {
    const far = farthestFrom(circle, us, vs);
    if (!(far.distance > circle.radius)) return circle;
    const wider = smallestOf([...set, far.point], us, vs);
    // Rounding: nothing left to gain. The circle reaches to the farthest point all the same.
    if (!(wider.circle.radius > circle.radius)) return { ...circle, radius: far.distance };
    ({ circle, set } = wider);
  }
}

function farthestFrom(
  { u, v }: Circle,
  us: Float64Array,
  vs: Float64Array,
): { point: number; distance: number } {
  let point = 0;
  let largest = -1;
  for (let i = 0; i < us.length; i++) {
    const [du, dv] = [us[i]! - u, vs[i]! - v];
    if (du * du + dv * dv <= largest) continue;
    largest = du * du + dv * dv;
    point = i;
  }
  return { point, distance: Math.hypot(us[point]! - u, vs[point]! - v) };
}

/** Of the circles set by two or three of at most four points, each widened to hold all four, the smallest. */
function smallestOf(points: number[], us: Float64Array, vs: Float64Array): { circle: Circle; set: number[] } {
  let best: { circle: Circle; set: number[] } | undefined;
  for (let mask = 1; mask < 1 << points.length; mask++) {
    const set = points.filter((_, k) => (mask >> k) & 1);
    if (set.length > 3) continue;
    const circle = circleAround(set, us, vs);
    circle.radius = Math.max(...points.map((i) => Math.hypot(us[i]! - circle.u, vs[i]! - circle.v)));
    if (best === undefined || circle.radius < best.circle.radius) best = { circle, set };
  }
  return best!;
}

/** Through three points, across two, or about one. Three on a line have none: the center is not a number, and no choice. */
function circleAround([a, b, c]: readonly number[], us: Float64Array, vs: Float64Array): Circle {
  const [au, av] = [us[a!] ?? NaN, vs[a!] ?? NaN];
  if (b === undefined) return { u: au, v: av, radius: 0 };
  const [bu, bv] = [us[b]! - au, vs[b]! - av];
  if (c === undefined) return { u: au + bu / 2, v: av + bv / 2, radius: Math.hypot(bu, bv) / 2 };
  const [cu, cv] = [us[c]! - au, vs[c]! - av];
  const [bb, cc, twice] = [bu * bu + bv * bv, cu * cu + cv * cv, 2 * (bu * cv - bv * cu)];
  const [u, v] = [(cv * bb - bv * cc) / twice, (bu * cc - cu * bb) / twice];
  return { u: au + u, v: av + v, radius: Math.hypot(u, v) };
}
