import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { joined, moved } from '../../support/meshTools';
import { box, type Vec3 } from '../../support/shapes';
import { fieldOf, levelsOf } from './levelsOf';
import { ballMm3, fullBall } from './truths';

/** Of the volume at 1 mm voxels: on the surface, and off it. */
const ON = 2e-4;
const OFF = 5e-4;

const RADIUS = 26;
const APART = 32;

/** Two balls less their lens (elementary geometry). */
const twoBallsMm3 = (r: number): number =>
  2 * ballMm3(r) - (Math.PI * (4 * r + APART) * (2 * r - APART) ** 2) / 12;

/**
 * What is left of the two balls 8 mm in: points at least that far from everything outside. On the half of one ball the nearest point outside
 * is straight out from its middle, unless that lies beyond the plane of the crease: then it is the crease. Disks summed along the axis.
 */
function shrunkTwoBallsMm3(byMm: number): number {
  const crease = Math.sqrt(RADIUS ** 2 - APART ** 2 / 4);
  const isLeft = (x: number, r: number): boolean => {
    const out = Math.hypot(x - APART / 2, r);
    if (out > RADIUS) return false;
    const isStraight = APART / 2 + (RADIUS * (x - APART / 2)) / out >= 0;
    return (isStraight ? RADIUS - out : Math.hypot(x, r - crease)) >= byMm;
  };
  const disks = 4000;
  const thick = (APART / 2 + RADIUS) / disks;
  let sum = 0;
  for (let i = 0; i < disks; i++) {
    const x = (i + 0.5) * thick;
    if (!isLeft(x, 0)) continue;
    let [low, high] = [0, RADIUS];
    for (let halving = 0; halving < 45; halving++) {
      const r = (low + high) / 2;
      if (isLeft(x, r)) low = r;
      else high = r;
    }
    sum += Math.PI * low * low * thick;
  }
  return 2 * sum;
}

describe('two balls that overlap', () => {
  const ball = fullBall(RADIUS, 80);
  const pair = joined(ball, moved(ball, [APART, 0, 0]));

  it('on the surface and outward: two balls less their lens; inward: by the distance to the crease', () => {
    expectClose(shrunkTwoBallsMm3(0), twoBallsMm3(RADIUS), 1e-6, 'the integral itself');
    const [on, out, inward] = levelsOf(pair, [0, 10, -8]);
    expectClose(on!.volumeMm3, twoBallsMm3(RADIUS), ON, 'on the surface');
    expectClose(out!.volumeMm3, twoBallsMm3(RADIUS + 10), OFF, '10 mm out');
    expectClose(inward!.volumeMm3, shrunkTwoBallsMm3(8), OFF, '8 mm in');
  });
});

/** A box whose faces are cut in n x n squares. */
function cutBox(size: Vec3, at: Vec3, n: number): TriangleMesh {
  const positions: number[] = [];
  const triangles: number[] = [];
  const numbers = new Map<string, number>();
  const vertex = (...steps: number[]): number => {
    const key = steps.join(' ');
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, positions.length / 3);
    positions.push(...steps.map((step, k) => at[k]! + (size[k]! * step) / n));
    return positions.length / 3 - 1;
  };
  for (const axis of [0, 1, 2])
    for (const side of [0, n])
      for (let i = 0; i < n; i++)
        for (let j = 0; j < n; j++) {
          const corner = (u: number, w: number): number => {
            const steps = [0, 0, 0];
            [steps[axis], steps[(axis + 1) % 3], steps[(axis + 2) % 3]] = [side, u, w];
            return vertex(...steps);
          };
          const [a, b, c, d] = [corner(i, j), corner(i + 1, j), corner(i + 1, j + 1), corner(i, j + 1)];
          triangles.push(...(side > 0 ? [a, b, c, a, c, d] : [a, c, b, a, d, c]));
        }
  return { positions: Float64Array.from(positions), triangles: Int32Array.from(triangles) };
}

describe('two boxes on each other see no wall between them: the same numbers as one box', () => {
  const levels = [0, 10, -8, -1, 1];
  const one = levelsOf(box([60, 50, 60]), levels);

  it.each([
    ['a common face of two tessellations', 0],
    ['0.03 mm of overlap', 0.03],
    ['0.3 mm of overlap', 0.3],
    ['4 mm of overlap', 4],
  ])('%s', (_name, overMm) => {
    const pair = joined(
      cutBox([60, 50, 30], [0, 0, 0], 7),
      cutBox([60, 50, 30 + overMm], [0, 0, 30 - overMm], 5),
    );
    levelsOf(pair, levels).forEach(({ volumeMm3 }, i) =>
      expectClose(volumeMm3, one[i]!.volumeMm3, 1e-5, `level ${levels[i]!}`),
    );
  });

  it('a gap of 0.3 mm is a gap: 8 mm in there are two boxes', () => {
    const pair = joined(cutBox([60, 50, 30], [0, 0, 0], 7), cutBox([60, 50, 30], [0, 0, 30.3], 5));
    const alone = levelsOf(cutBox([60, 50, 30], [0, 0, 0], 7), [-8])[0]!.volumeMm3;
    expectClose(levelsOf(pair, [-8])[0]!.volumeMm3, 2 * alone, 2e-3);
    expectClose(2 * alone, 2 * 44 * 34 * 14, 5e-3, 'one box of it (product of the sides)');
  });
});

it('a solid buried in another adds nothing; a body inside out is nothing', () => {
  const outer = box([50, 40, 40]);
  const buried = joined(outer, box([20, 20, 20], [13, 9, 11]));
  const levels = [4, -4];
  const alone = levelsOf(outer, levels);
  levelsOf(buried, levels).forEach(({ volumeMm3 }, i) =>
    expectClose(volumeMm3, alone[i]!.volumeMm3, 1e-9, `level ${levels[i]!}`),
  );
  const out: TriangleMesh = { ...outer, triangles: outer.triangles.slice().reverse() };
  expect(levelsOf(out, levels).map(({ volumeMm3 }) => volumeMm3)).toEqual([0, 0]);
});

it('where nothing overlaps no triangle is touched', () => {
  const ball = fullBall(20, 40);
  const apart = joined(ball, moved(ball, [41, 0, 0]));
  const { surface, task } = fieldOf(apart, [2]);
  expect(task.triangles.length).toBe(surface.triangles.length);
});
