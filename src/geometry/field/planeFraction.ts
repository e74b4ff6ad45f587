/** Components of a normal smaller than this are raised to it: the formula divides by all three. */
const LEAST = 1e-4;

/**
 * Share of the unit cube on the near side of a plane: { x : n.x + d <= 0 } for a cube about the origin, `d` the signed distance of
 * the plane from the center in cube edges, n = (a, b, c) of unit length. Inclusion and exclusion over the corners
 * (the volume formula of a simplex cut by a cube; Scardovelli and Zaleski 2000, J. Comput. Phys. 164:228).
 */
export function planeFraction(d: number, a: number, b: number, c: number): number {
  if (a < 0) a = -a;
  if (b < 0) b = -b;
  if (c < 0) c = -c;
  if (a < LEAST) a = LEAST;
  if (b < LEAST) b = LEAST;
  if (c < LEAST) c = LEAST;
  const m = (a + b + c) / 2 - (d < 0 ? -d : d);
  if (m <= 0) return d > 0 ? 0 : 1;
  let sum = m * m * m;
  let r = m - a;
  if (r > 0) sum -= r * r * r;
  r = m - b;
  if (r > 0) sum -= r * r * r;
  r = m - c;
  if (r > 0) sum -= r * r * r;
  r = m - a - b;
  if (r > 0) sum += r * r * r;
  r = m - a - c;
  if (r > 0) sum += r * r * r;
  r = m - b - c;
  if (r > 0) sum += r * r * r;
  const share = sum / (6 * a * b * c);
  return d > 0 ? share : 1 - share;
}
