import { describe, expect, it } from 'vitest';
import { planeFraction } from '../../../src/geometry/field/planeFraction';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import type { Vec3 } from '../../support/shapes';

const SEED = 11;

/** Components of a normal below 1e-4 are raised to it: the share is off by their square at most, and by rounding. */
const RAISED = 1e-7;

function randomNormal(random: () => number): Vec3 {
  for (;;) {
    const n = [0, 1, 2].map(() => between(random, -1, 1)) as unknown as Vec3;
    const length = Math.hypot(...n);
    if (length <= 1 && length > 0.1) return n.map((x) => x / length) as unknown as Vec3;
  }
}

/** Distribution of the sum of three even numbers of 0..1 (Irwin 1927, Hall 1927, Biometrika 19). */
const ofThreeSummed = (s: number): number =>
  [1, -3, 3, -1].reduce((sum, sign, k) => sum + sign * Math.max(0, s - k) ** 3, 0) / 6;

describe('planeFraction', () => {
  it('planes across an axis leave a slab', () => {
    const normals: Vec3[] = [
      [1, 0, 0],
      [0, -1, 0],
      [0, 0, 1],
    ];
    for (const n of normals)
      for (const d of [-0.45, -0.2, 0, 0.1, 0.3, 0.45])
        expect(Math.abs(planeFraction(d, ...n) - (0.5 - d)), `${n.join(' ')} at ${d}`).toBeLessThan(RAISED);
  });

  it('planes across the diagonal of a face leave a prism of half the square of its legs', () => {
    const n: Vec3 = [Math.SQRT1_2, 0, -Math.SQRT1_2];
    for (const d of [0, 0.1, 0.3, 0.5, 0.65]) {
      const cut = (1 - Math.SQRT2 * d) ** 2 / 2;
      expect(Math.abs(planeFraction(d, ...n) - cut), `at ${d}`).toBeLessThan(RAISED);
      expect(Math.abs(planeFraction(-d, ...n) - (1 - cut)), `at ${-d}`).toBeLessThan(RAISED);
    }
  });

  it('planes across the diagonal of the cube: sums of three even numbers (Irwin and Hall)', () => {
    const c = 1 / Math.sqrt(3);
    for (let d = -0.85; d <= 0.86; d += 0.05)
      expectClose(planeFraction(d, c, -c, c), ofThreeSummed(1.5 - Math.sqrt(3) * d), 1e-9, `at ${d}`);
  });

  it('beyond the corners all or nothing', () => {
    expect(planeFraction(0.8661, 0.6, 0.8, 0)).toBe(0);
    expect(planeFraction(-0.8661, 0.6, 0.8, 0)).toBe(1);
  });

  it(`both sides make up the cube; signs and order of the normal do not matter, seed ${SEED}`, () => {
    const random = lcg(SEED);
    for (let i = 0; i < 500; i++) {
      const [a, b, c] = randomNormal(random);
      const d = between(random, -0.9, 0.9);
      const share = planeFraction(d, a, b, c);
      expect(Math.abs(share + planeFraction(-d, a, b, c) - 1)).toBeLessThan(1e-12);
      for (const turned of [
        [-a, b, c],
        [b, c, a],
        [c, -b, -a],
      ] as const)
        expect(Math.abs(planeFraction(d, ...turned) - share)).toBeLessThan(1e-9);
    }
  });

  it(`falls from 1 to 0 as the plane moves, seed ${SEED}`, () => {
    const random = lcg(SEED + 1);
    for (let i = 0; i < 50; i++) {
      const n = randomNormal(random);
      let last = 1;
      for (let d = -0.9; d < 0.9; d += 0.02) {
        const share = planeFraction(d, ...n);
        expect(share).toBeLessThanOrEqual(last + 1e-9);
        last = share;
      }
      expect(last).toBe(0);
    }
  });

  it(`summed over all planes it is the step, and its first moment 1/24 more (the spread of a cube), seed ${SEED}`, () => {
    const random = lcg(SEED + 2);
    const step = 1e-3;
    for (let i = 0; i < 20; i++) {
      const n = randomNormal(random);
      let sum = 0;
      let moment = 0;
      // Middles of steps, symmetric about 0.
      for (let k = -900; k < 900; k++) {
        const d = (k + 0.5) * step;
        const over = planeFraction(d, ...n) - (d < 0 ? 1 : 0);
        sum += over * step;
        moment += d * over * step;
      }
      expect(Math.abs(sum), n.join(' ')).toBeLessThan(1e-9);
      expectClose(moment, 1 / 24, 1e-5, n.join(' '));
    }
  });
});
