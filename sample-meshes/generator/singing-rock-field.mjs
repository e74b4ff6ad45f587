import { ellipsoid, smoothUnion } from './fields.mjs';

/** Box that holds the rock, mm (x symmetric). */
export const ROCK_REACH = { x: 232, y: [-172, 172], z: 262 };

/** The core: an ellipsoid, mm, in its right place in the rock. Its lowest point is 12 mm above the cut. */
export const CORE = { centreMm: [0, 0, 100], semiAxesMm: [150, 112, 88] };

const lumps = smoothUnion(
  smoothUnion(
    ellipsoid([0, 0, 120], [190, 150, 125]),
    ellipsoid([95, 40, 70], [110, 95, 80]), // lobe
    40,
  ),
  ellipsoid([-90, -50, 60], [105, 90, 70]), // lobe
  40,
);

/** The Singing Rock, outside: z up, mm, waves of up to 8 mm in it. The cut at z = 0 is left to the mesher. */
export function rockField(x, y, z) {
  return lumps(x, y, z) + 8 * Math.sin(x / 27) * Math.sin(y / 31 + 1) * Math.sin(z / 23 + 2);
}
