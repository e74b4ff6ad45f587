import { expect, test } from 'vitest';
import {
  sectionOf,
  widestCircle,
  type Section,
  type TriangleMesh,
  type WidestCircle,
} from '../../../src/geometry';
import { upTo, type Random } from '../../support/draws';
import { between, lcg } from '../../support/lcg';
import { unionByManifold } from '../../support/manifoldOracle';
import { joined, moved, reversed } from '../../support/meshTools';
import { cylinderOn } from '../../support/moldShapes';
import { turnAbout, turnedBy } from '../../support/pours';
import { box, type Vec3 } from '../../support/shapes';

const cut = (mesh: TriangleMesh, z = 5): WidestCircle | undefined =>
  widestCircle(sectionOf(mesh, { point: [0, 0, z], normal: [0, 0, 1] }));

/** What the search promises: to so much of the size of the outline, with both ends of a diameter and some slack. */
const SHARE = 3e-4;

/** One outline, no shells in each other. */
const unionOf = (...parts: readonly TriangleMesh[]): TriangleMesh =>
  parts.reduce((all, part) => unionByManifold(all, part).mesh);

/** A straight prism over a convex outline about the origin. */
function prism(outline: readonly (readonly [number, number])[]): TriangleMesh {
  const n = outline.length;
  const positions = [0, 10].flatMap((z) => outline.flatMap(([x, y]) => [x, y, z]));
  positions.push(0, 0, 0, 0, 0, 10);
  const triangles = outline.flatMap((_, i) => {
    const j = (i + 1) % n;
    return [i, j, n + j, i, n + j, n + i, 2 * n, j, i, 2 * n + 1, n + i, n + j];
  });
  return { positions: Float64Array.from(positions), triangles: Int32Array.from(triangles) };
}

test('The widest circle in an ellipse 30 by 12 is as wide as it is deep', () => {
  const ellipse = prism(
    Array.from({ length: 720 }, (_, i) => {
      const turn = (Math.PI * i) / 360;
      return [15 * Math.cos(turn), 6 * Math.sin(turn)] as const;
    }),
  );
  for (const degrees of [0, 17, 90, 133]) {
    const circle = cut(turnedBy(ellipse, turnAbout([0, 0, 1], degrees)))!;
    expect(Math.abs(circle.diameterMm - 12)).toBeLessThan(SHARE * 30);
    expect(Math.hypot(circle.atMm[0], circle.atMm[1])).toBeLessThan(0.5);
  }
});

test('In an angle it sits in the corner: it touches both outer sides and the inner corner', () => {
  // Arms 20 wide; center (r, r) from the outer corner, the inner corner at (20, 20): sqrt 2 (20 - r) = r.
  const angle = unionOf(box([80, 20, 10]), box([20, 80, 10]));
  const radius = (20 * Math.SQRT2) / (1 + Math.SQRT2);
  for (const degrees of [0, 31, 45]) {
    const circle = cut(turnedBy(angle, turnAbout([0, 0, 1], degrees)))!;
    expect(Math.abs(circle.diameterMm - 2 * radius), `${degrees}`).toBeLessThan(SHARE * 80);
  }
});

test('In a ring it is as wide as the wall, on the wide side of one that is off center', () => {
  const ring = (aside: number): TriangleMesh =>
    joined(cylinderOn(50, 10), reversed(moved(cylinderOn(30, 30), [aside, 0, -10])));
  expect(Math.abs(cut(ring(0))!.diameterMm - 20)).toBeLessThan(0.01 + SHARE * 100);
  const off = cut(ring(12))!;
  expect(Math.abs(off.diameterMm - 32)).toBeLessThan(0.01 + SHARE * 100);
  expect(off.atMm[0]).toBeCloseTo(-34, 0);
});

test('Of two lobes the larger is found, however narrow the neck and however far they lie apart', () => {
  for (const far of [70, 200, 600]) {
    const lobes = unionOf(
      cylinderOn(20, 10),
      moved(cylinderOn(20.5, 10), [far, 0, 0]),
      box([far, 2, 10], [0, -1, 0]),
    );
    const circle = cut(lobes)!;
    expect(Math.abs(circle.diameterMm - 41), `${far} apart`).toBeLessThan(0.01 + SHARE * (far + 40));
    expect(Math.abs(circle.atMm[0] - far)).toBeLessThan(0.3);
  }
});

test('A long thin wall with one thicker place has room for a circle as wide as that place is thick', () => {
  const wall = unionOf(box([400, 3, 10]), moved(cylinderOn(1.6, 10), [200, 1.5, 0]));
  expect(Math.abs(cut(wall)!.diameterMm - 3.2)).toBeLessThan(SHARE * 400);
});

test('Where shells overlap it lies in what they cover together', () => {
  const overlapping = joined(box([60, 40, 10]), box([60, 40, 10], [30, 0, 0]));
  expect(Math.abs(cut(overlapping)!.diameterMm - 40)).toBeLessThan(0.01);
});

test('Where there is nothing there is no circle', () => {
  const nothing: Section = sectionOf(box([1, 1, 1]), { point: [0, 0, 5], normal: [0, 0, 1] });
  expect(widestCircle(nothing)).toBeUndefined();
});

/** Largest circle in a convex polygon by brute force: a vertex of the region r <= distance from each side, so three sides decide. */
function bestOfTriples(outline: readonly (readonly [number, number])[]): number {
  const sides = outline.map(([x, y], i) => {
    const [x2, y2] = outline[(i + 1) % outline.length]!;
    const length = Math.hypot(x2 - x, y2 - y);
    const [nx, ny] = [-(y2 - y) / length, (x2 - x) / length];
    return [nx, ny, nx * x + ny * y] as const;
  });
  let best = 0;
  for (let i = 0; i < sides.length; i++)
    for (let j = i + 1; j < sides.length; j++)
      for (let k = j + 1; k < sides.length; k++) {
        const found = equallyFar(sides[i]!, sides[j]!, sides[k]!);
        if (found === undefined) continue;
        const [x, y, r] = found;
        if (sides.every(([nx, ny, c]) => nx * x + ny * y - c >= r - 1e-9)) best = Math.max(best, r);
      }
  return best;
}

type Line = readonly [number, number, number];

/** The point with nx x + ny y - c = r for three lines (Cramer's rule). */
function equallyFar(a: Line, b: Line, c: Line): Vec3 | undefined {
  const rows = [a, b, c].map(([nx, ny, off]) => [nx, ny, -1, off]);
  const det = (m: number[][]): number =>
    m[0]![0]! * (m[1]![1]! * m[2]![2]! - m[1]![2]! * m[2]![1]!) -
    m[0]![1]! * (m[1]![0]! * m[2]![2]! - m[1]![2]! * m[2]![0]!) +
    m[0]![2]! * (m[1]![0]! * m[2]![1]! - m[1]![1]! * m[2]![0]!);
  const whole = det(rows.map((row) => row.slice(0, 3)));
  if (Math.abs(whole) < 1e-12) return undefined;
  return [0, 1, 2].map(
    (k) => det(rows.map((row) => row.slice(0, 3).map((x, i) => (i === k ? row[3]! : x)))) / whole,
  ) as unknown as Vec3;
}

/** Points on a stretched circle at random angles: always convex, the origin inside. */
function convexOutline(random: Random): [number, number][] {
  const count = upTo(random, 3, 14);
  const [wide, deep] = [between(random, 5, 60), between(random, 5, 60)];
  const turns = Array.from(
    { length: count },
    (_, i) => (2 * Math.PI * (i + between(random, 0.05, 0.95))) / count,
  );
  return turns.map((turn) => [wide * Math.cos(turn), deep * Math.sin(turn)]);
}

test('In random convex outlines no circle that three sides allow is wider', () => {
  for (let seed = 1; seed <= 150; seed++) {
    const outline = convexOutline(lcg(seed));
    const best = 2 * bestOfTriples(outline);
    const circle = cut(prism(outline))!;
    const size = Math.max(...outline.flat().map(Math.abs));
    expect(circle.diameterMm, `seed ${seed}`).toBeLessThanOrEqual(best + 1e-6);
    expect(circle.diameterMm, `seed ${seed}: ${circle.diameterMm} of ${best}`).toBeGreaterThan(
      best - SHARE * size,
    );
  }
});
