import { describe, expect, it } from 'vitest';
import Module from 'manifold-3d';
import { convexHull } from '../../../src/geometry/plane/convexHull';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';

const wasm = await Module();
wasm.setup();

type Point = [number, number];
const hullOf = (points: readonly Point[]): Point[] =>
  convexHull(
    Float64Array.from(points, (p) => p[0]),
    Float64Array.from(points, (p) => p[1]),
  ).map((i) => points[i]!);

const areaOf = (ring: readonly Point[]): number =>
  ring.reduce((sum, [u, v], i) => {
    const [nextU, nextV] = ring[(i + 1) % ring.length]!;
    return sum + (u * nextV - nextU * v) / 2;
  }, 0);

describe('a string pulled taut around points', () => {
  it('around a square with points on its sides and in it: the four corners, counter-clockwise', () => {
    const points: Point[] = [
      [10, 10],
      [5, 0],
      [0, 0],
      [3, 4],
      [10, 5],
      [10, 0],
      [0, 10],
      [10, 10],
      [0, 0],
    ];
    expect(hullOf(points)).toEqual([
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ]);
  });

  it.each<[string, Point[], Point[]]>([
    ['nothing', [], []],
    ['one point', [[3, 4]], [[3, 4]]],
    [
      'one point three times',
      [
        [3, 4],
        [3, 4],
        [3, 4],
      ],
      [[3, 4]],
    ],
    [
      'points on a line: its ends',
      [
        [2, 2],
        [0, 0],
        [4, 4],
        [1, 1],
      ],
      [
        [0, 0],
        [4, 4],
      ],
    ],
  ])('around %s', (_, points, hull) => {
    expect(hullOf(points)).toEqual(hull);
  });

  it('around random points has the area that Manifold finds', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const random = lcg(seed);
      const points = Array.from({ length: 200 }, (): Point => [
        between(random, -50, 50),
        between(random, 0, 30),
      ]);
      const other = wasm.CrossSection.hull([points]);
      expectClose(areaOf(hullOf(points)), other.area(), 1e-7, `seed ${seed}`);
      other.delete();
    }
  });
});
