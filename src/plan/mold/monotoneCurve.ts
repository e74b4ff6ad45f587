/** A place the curve passes through; `slope` where it was measured. */
export interface CurvePoint {
  x: number;
  y: number;
  slope?: number;
}

/**
 * A smooth curve through points of rising x that never swings past them: cubic pieces, whose slopes are kept small enough for each piece
 * to rise or fall only as its ends do (Fritsch and Carlson 1980, SIAM J. Numer. Anal. 17, 238-246). A slope that was not measured is that of the parabola
 * through three points. Outside of the points it is not defined: NaN.
 *
 * @example
 * monotoneCurve([{ x: 0, y: 0 }, { x: 1, y: 1 }, { x: 2, y: 4 }])(1.5);
 */
export function monotoneCurve(points: readonly CurvePoint[]): (x: number) => number {
  const slopes = limited(
    points,
    points.map((point, i) => point.slope ?? parabolaSlope(points, i)),
  );
  return (x) => {
    const i = pieceAt(points, x);
    if (i < 0) return points.find((point) => point.x === x)?.y ?? NaN;
    const [from, to] = [points[i]!, points[i + 1]!];
    const h = to.x - from.x;
    const t = (x - from.x) / h;
    const [t2, t3] = [t * t, t * t * t];
    return (
      (2 * t3 - 3 * t2 + 1) * from.y +
      (t3 - 2 * t2 + t) * h * slopes[i]! +
      (3 * t2 - 2 * t3) * to.y +
      (t3 - t2) * h * slopes[i + 1]!
    );
  };
}

/** The piece that holds x; -1 where there is none. */
const pieceAt = (points: readonly CurvePoint[], x: number): number =>
  points.findIndex((point, i) => x >= point.x && x <= (points[i + 1]?.x ?? -Infinity));

const secant = (points: readonly CurvePoint[], i: number): number =>
  (points[i + 1]!.y - points[i]!.y) / (points[i + 1]!.x - points[i]!.x);

/** Slope at point i of the parabola through it and its neighbors, at an end through the next two; of the line, where there are two points. */
function parabolaSlope(points: readonly CurvePoint[], i: number): number {
  if (points.length < 2) return 0;
  if (points.length === 2) return secant(points, 0);
  const at = Math.min(Math.max(i, 1), points.length - 2);
  const [before, after] = [secant(points, at - 1), secant(points, at)];
  const [left, right] = [points[at]!.x - points[at - 1]!.x, points[at + 1]!.x - points[at]!.x];
  const middle = (right * before + left * after) / (left + right);
  return i === at ? middle : i < at ? 2 * before - middle : 2 * after - middle;
}

/** Within the circle of radius 3 times the secant a piece is monotone (their section 3, the second of their regions). */
function limited(points: readonly CurvePoint[], given: readonly number[]): number[] {
  const slopes = [...given];
  for (let i = 0; i + 1 < points.length; i++) {
    const line = secant(points, i);
    for (const end of [i, i + 1]) if (slopes[end]! * line <= 0) slopes[end] = 0;
    const steep = Math.hypot(slopes[i]!, slopes[i + 1]!) / Math.abs(line);
    if (!(steep > 3)) continue;
    slopes[i]! *= 3 / steep;
    slopes[i + 1]! *= 3 / steep;
  }
  return slopes;
}
