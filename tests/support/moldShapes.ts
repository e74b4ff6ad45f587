import type { TriangleMesh } from '../../src/geometry';
import { scaled } from './meshTools';
import { revolve, revolvedVolume, sphereOutline, torusOutline, type OutlinePoint } from './shapes';

/**
 * Round sculpts for molds, and what their molds take by elementary geometry. Their polygons are widened to the area of the circle, and balls and domes scaled to
 * the volume of the round one, so that the facets cost nothing of first order: what is left, some 1e-5, is far below every tolerance of the tests.
 */

const SIDES = 256;

/** A circle of this radius and a regular polygon of so many corners this many times as far out enclose the same. */
const widerBy = (sides: number): number => Math.sqrt((2 * Math.PI) / sides / Math.sin((2 * Math.PI) / sides));

export const turnedBody = (outline: readonly OutlinePoint[], ring = false, sides = SIDES): TriangleMesh =>
  revolve(
    outline.map(([r, z]) => [widerBy(sides) * r, z] as const),
    sides,
    ring,
  );

export const cylinderOn = (radius: number, tall: number): TriangleMesh =>
  turnedBody([
    [0, 0],
    [radius, 0],
    [radius, tall],
    [0, tall],
  ]);

/** Its lowest point on the board. */
export function ballOn(radius: number): TriangleMesh {
  const outline = sphereOutline(radius, SIDES / 2);
  const full = Math.cbrt(ballMm3(radius) / revolvedVolume(outline, SIDES));
  return scaled(
    revolve(
      outline.map(([r, z]) => [r, z + radius] as const),
      SIDES,
    ),
    full,
  );
}

export function domeOn(radius: number): TriangleMesh {
  const outline: OutlinePoint[] = [[0, 0], ...sphereOutline(radius, SIDES).slice(SIDES / 2)];
  return scaled(revolve(outline, SIDES), Math.cbrt(ballMm3(radius) / 2 / revolvedVolume(outline, SIDES)));
}

/** Its middle at the origin, its axis upright. */
export function ring(ringRadius: number, tubeRadius: number): TriangleMesh {
  const steps = SIDES / 2;
  const full = Math.sqrt((2 * Math.PI) / steps / Math.sin((2 * Math.PI) / steps));
  return turnedBody(torusOutline(ringRadius, full * tubeRadius, steps), true);
}

/** Stem of radius 10, 40 high, under a cap of radius 30, 10 high. With fewer sides it is worked out in less time. */
export const mushroomOn = (sides = SIDES): TriangleMesh =>
  turnedBody(
    [
      [0, 0],
      [STEM, 0],
      [STEM, UNDER],
      [CAP, UNDER],
      [CAP, TOP],
      [0, TOP],
    ],
    false,
    sides,
  );

const [STEM, CAP, UNDER, TOP] = [10, 30, 40, 50];

export const ballMm3 = (radius: number): number => (4 / 3) * Math.PI * radius ** 3;
export const discMm2 = (radius: number): number => Math.PI * radius ** 2;
/** What lies between two radii. */
export const annulusMm2 = (outer: number, inner: number): number => discMm2(outer) - discMm2(inner);

/** A quarter of a disc of radius t turned about an axis `out` of its straight side (Pappus). */
export const rimMm3 = (out: number, t: number): number =>
  ((Math.PI * t * t) / 4) * 2 * Math.PI * (out + (4 * t) / (3 * Math.PI));

export const mushroomMm3 = discMm2(STEM) * UNDER + discMm2(CAP) * (TOP - UNDER);

/** All within t of it, above the board: the rounded cap and the stem up to it. Holds up to t = 20. */
export const mushroomWithinMm3 = (t: number): number =>
  discMm2(CAP) * (TOP - UNDER + 2 * t) +
  annulusMm2(CAP + t, CAP) * (TOP - UNDER) +
  2 * rimMm3(CAP, t) +
  discMm2(STEM + t) * (UNDER - t);

/** The same with everything below the cap filled down to the board. */
export const mushroomFilledMm3 = (t: number): number =>
  discMm2(CAP) * (TOP + t) + annulusMm2(CAP + t, CAP) * TOP + rimMm3(CAP, t);

/** Between the two runs of a tube along a line across its ring, summed over all lines along x. */
export const ringLockedMm3 = (ringRadius: number, tubeRadius: number): number =>
  Math.PI *
  (2 * tubeRadius * ringRadius ** 2 - Math.PI * ringRadius * tubeRadius ** 2 + (4 / 3) * tubeRadius ** 3);

/**
 * An upright cylinder, its top edge rounded by t, widened downward by a draft: the cone touches the rounding, so at a height z below that its radius is
 * R + t / cos a + (H - z) tan a. Above it the rounding itself, by Simpson's rule.
 */
export function draftedMm3(radius: number, tall: number, t: number, degrees: number): number {
  const a = (degrees * Math.PI) / 180;
  const touch = tall + t * Math.sin(a);
  const low = radius + t / Math.cos(a) + tall * Math.tan(a);
  const high = radius + t * Math.cos(a);
  const cone = (Math.PI / 3) * touch * (low ** 2 + low * high + high ** 2);
  const steps = 2000;
  let top = 0;
  for (let i = 0; i <= steps; i++) {
    // By the angle from level: the square root of the height would not be smooth at the top.
    const angle = a + ((Math.PI / 2 - a) * i) / steps;
    const weight = i === 0 || i === steps ? 1 : i % 2 === 0 ? 2 : 4;
    top += weight * discMm2(radius + t * Math.cos(angle)) * t * Math.cos(angle);
  }
  return cone + (top * (Math.PI / 2 - a)) / steps / 3;
}

/** A pipe standing on its end. */
export const pipeOn = (inner: number, outer: number, tall: number): TriangleMesh =>
  turnedBody(
    [
      [inner, 0],
      [outer, 0],
      [outer, tall],
      [inner, tall],
    ],
    true,
  );

export const cylinderMm3 = (radius: number, tall: number): number => discMm2(radius) * tall;

/** All within t of an upright cylinder, above the board: side, top and the quarter round about the rim. */
export const cylinderWithinMm3 = (radius: number, tall: number, t: number): number =>
  discMm2(radius) * (tall + t) + annulusMm2(radius + t, radius) * tall + rimMm3(radius, t);

/** Of a ball, from its lowest point up (Archimedes). */
export const capMm3 = (radius: number, high: number): number =>
  (Math.PI * high ** 2 * (3 * radius - high)) / 3;

/** All within t of a ball that touches the board, above the board. */
export const ballWithinMm3 = (radius: number, t: number): number =>
  ballMm3(radius + t) - capMm3(radius + t, t);

/** A box grown by t on all sides: Steiner's formula. `onBoard`: without what is below its lowest face. */
export function boxSkinMm3(
  [a, b, c]: readonly [number, number, number],
  t: number,
  onBoard: boolean,
): number {
  const faces = 2 * (a * b + b * c + c * a) - (onBoard ? a * b : 0);
  const edges = onBoard ? 2 * (a + b) + 4 * c : 4 * (a + b + c);
  return faces * t + (edges * Math.PI * t * t) / 4 + ballMm3(t) * (onBoard ? 0.5 : 1);
}

/**
 * All within t of a cone frustum that widens upward, above the board, less the frustum: side, top, the arc about the upper rim; the side begins where the board
 * cuts it off square. By Simpson's rule over the height, as the section at each height is a disc.
 */
export function flaringSkinMm3(low: number, high: number, tall: number, t: number): number {
  const slope = (high - low) / tall;
  const along = Math.hypot(1, slope);
  // A point of the side (r, z) has its skin's face at (r + t / along, z - t slope / along).
  const edge = tall - (t * slope) / along;
  const radiusAt = (z: number): number =>
    z <= edge ? low + slope * z + t * along : high + Math.sqrt(Math.max(0, t * t - (z - tall) ** 2));
  const part = (from: number, to: number): number => {
    const steps = 2000;
    let sum = 0;
    for (let i = 0; i <= steps; i++) {
      // Denser toward the top, where the arc is steep.
      const z = to - (to - from) * (1 - i / steps) ** 2;
      const weight = i === 0 || i === steps ? 1 : i % 2 === 0 ? 2 : 4;
      sum += weight * discMm2(radiusAt(z)) * 2 * (to - from) * (1 - i / steps);
    }
    return sum / steps / 3;
  };
  const own = ((Math.PI * tall) / 3) * (low ** 2 + low * high + high ** 2);
  return part(0, edge) + part(edge, tall + t) - own;
}
