/** Components of a normal smaller than this are raised to it: the formulas divide by both. Chosen here. */
const LEAST = 1e-4;

/**
 * Share of the unit square on the near side of a line: { x : n.x + d <= 0 } for a square about the origin, `d` the signed distance of
 * the line from the center in sides, n = (a, b) of unit length. Inclusion and exclusion over the corners, as for a cube
 * (Scardovelli and Zaleski 2000, J. Comput. Phys. 164:228).
 */
export function lineShare(d: number, a: number, b: number): number {
  a = Math.max(Math.abs(a), LEAST);
  b = Math.max(Math.abs(b), LEAST);
  const m = (a + b) / 2 - Math.abs(d);
  if (m <= 0) return d > 0 ? 0 : 1;
  const [overA, overB] = [Math.max(0, m - a), Math.max(0, m - b)];
  const share = (m * m - overA * overA - overB * overB) / (2 * a * b);
  return d > 0 ? share : 1 - share;
}

/**
 * Length of that line in the square, in sides: how fast the share shrinks with `d`. A line along the common side of two squares
 * has half its length in each.
 */
export function lineLength(d: number, a: number, b: number): number {
  a = Math.max(Math.abs(a), LEAST);
  b = Math.max(Math.abs(b), LEAST);
  const m = (a + b) / 2 - Math.abs(d);
  if (m <= 0) return 0;
  return (m - Math.max(0, m - a) - Math.max(0, m - b)) / (a * b);
}
