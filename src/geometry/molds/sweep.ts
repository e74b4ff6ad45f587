import { cubicWeights, type Sheared } from './sheared';

/*
 * Swept distance. psi(p) = min over s >= 0 of phi(p + s d) is the distance from the body swept against the pull d: a rigid piece drawn along d must
 * leave free what lies within the skin of it. Along the planes of a sheared field that is a running minimum, exact at any direction. With
 * draft a the piece widens: psi(p) = min of phi(p + s d) - s sin a, the distance from the body swept along cones of half-angle a.
 * Column runs of filled voxels, the plain way, switch whole columns on or off at the silhouette: 3 to 14 % off at coarse voxels where this is
 * within 0.4 % (measured on a torus pulled sideways).
 */

/** Rounding of a distance that was cut off; a distance that reaches nothing. */
const [FAR_MM, NOWHERE_MM] = [1e-3, 1e6];

/** The swept field of one piece. `sense` 1 draws along the pull, -1 against it. Nothing below the base is in the way of anything. */
export function sweep(
  { values, topMm, nu, nv, nw, sense: pullSense, stepMm, height }: Sheared,
  { sense = 1, draftDegrees = 0 }: { sense?: 1 | -1; draftDegrees?: number } = {},
): Float32Array {
  const swept = new Float32Array(values);
  const plane = nu * nv;
  const widenMm = stepMm * Math.sin((draftDegrees * Math.PI) / 180);
  // What is only known to be far casts no cone.
  if (widenMm > 0)
    for (let v = 0; v < swept.length; v++) if (swept[v]! >= topMm - FAR_MM) swept[v] = NOWHERE_MM;
  const up = pullSense * sense === 1;
  for (let n = 1; n < nw; n++) {
    const k = up ? nw - 1 - n : n;
    const at = k * plane;
    const ahead = at + (up ? plane : -plane);
    // A point below the base holds nothing: whoever meets it starts afresh.
    const below = height === undefined ? undefined : below0(height, up ? k + 1 : k - 1);
    for (let j = 0, v = 0; j < nv; j++) {
      const edge = below === undefined ? -1 : below.from - below.perV * j;
      for (let i = 0; i < nu; i++, v++) {
        if (below !== undefined && below.perU * i < edge) continue;
        const value = swept[ahead + v]! - widenMm;
        if (value < swept[at + v]!) swept[at + v] = value;
      }
    }
    if (widenMm > 0 && n > 1 && n + 1 < nw) castBetween(values, swept, { at, ahead, plane, widenMm, topMm });
  }
  return swept;
}

/** Places between two planes that cast cones too, and the cubic weights of the four planes around them. */
const BETWEEN = [0.25, 0.5, 0.75].map((t) => ({ t, weights: cubicWeights(t) }));

/**
 * With a draft the point that decides often lies on an edge between two planes: without these a piece loses half a plane of its height, 3 % of the
 * fill at coarse voxels.
 */
function castBetween(
  values: Float32Array,
  swept: Float32Array,
  {
    at,
    ahead,
    plane,
    widenMm,
    topMm,
  }: { at: number; ahead: number; plane: number; widenMm: number; topMm: number },
): void {
  const step = ahead - at;
  for (const {
    t,
    weights: [a, b, c, d],
  } of BETWEEN) {
    const lowered = t * widenMm;
    for (let v = 0; v < plane; v++) {
      const beyond = values[ahead + step + v]!;
      if (beyond >= topMm - FAR_MM) continue;
      const value =
        a * values[at - step + v]! + b * values[at + v]! + c * values[ahead + v]! + d * beyond - lowered;
      if (value < swept[at + v]!) swept[at + v] = value;
    }
  }
}

/** Point (i, j) of plane k lies below the base when perU i + perV j < from. */
const below0 = ({ atZero, perU, perV, perW }: NonNullable<Sheared['height']>, k: number) => ({
  perU,
  perV,
  from: -0.5 - atZero - perW * k,
});

/** What every piece must leave free is what no piece can leave by: the larger of the two, everywhere. */
export function larger(one: Float32Array, other: Float32Array): Float32Array {
  for (let v = 0; v < one.length; v++) if (other[v]! > one[v]!) one[v] = other[v]!;
  return one;
}
