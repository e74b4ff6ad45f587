import { describe, expect, it } from 'vitest';
import { areaWithin, distanceAt, growRegion, perimeterAt } from '../../../src/geometry/plane/growRegion';
import { grownOutline } from '../../../src/geometry/plane/grownOutline';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { disc, loop, rectangle, region, turnedBy, type Point } from './outlineShapes';

/** The promise at 200 cells across. */
const BY_CELLS = 5e-4;

function expectGrown(
  of: ReturnType<typeof growRegion>,
  growMm: number,
  area: number,
  perimeter: number,
): void {
  expectClose(areaWithin(of, growMm), area, BY_CELLS, `area at ${growMm} mm`);
  expectClose(perimeterAt(of, growMm), perimeter, BY_CELLS, `perimeter at ${growMm} mm`);
}

describe('a flange around an outline: closed forms', () => {
  it('disc of radius 50: a disc of radius 50 + r', () => {
    for (const r of [-20, -5, 0, 5, 25])
      expectGrown(region(disc(50, [3, 7])), r, Math.PI * (50 + r) ** 2, 2 * Math.PI * (50 + r));
  });

  it('square of 100, straight or turned: a2 + 4 a r + pi r2; shrunk it stays square', () => {
    for (const turn of [0, 0.3, Math.PI / 4]) {
      const square = region(turnedBy(rectangle(100, 100), turn));
      for (const r of [0, 5, 25])
        expectGrown(square, r, 1e4 + 400 * r + Math.PI * r * r, 400 + 2 * Math.PI * r);
      for (const r of [-5, -25]) expectGrown(square, r, (100 + 2 * r) ** 2, 4 * (100 + 2 * r));
    }
  });

  it('L of 100 with legs of 50: five outer corners are rounded, in the inner one the flange overlaps', () => {
    const corners: Point[] = [
      [0, 0],
      [100, 0],
      [100, 50],
      [50, 50],
      [50, 100],
      [0, 100],
    ];
    for (const turn of [0, 0.3])
      for (const r of [0, 5, 12.3, 25]) {
        const [area, perimeter] = [
          7500 + 400 * r + (5 * Math.PI * r * r) / 4 - r * r,
          400 + 2.5 * Math.PI * r - 2 * r,
        ];
        expectGrown(region(turnedBy(loop(corners), turn)), r, area, perimeter);
      }
  });

  it('ring of radii 30 and 50: the hole shrinks and is gone beyond 30 mm', () => {
    const ring = region(disc(50), disc(30, [0, 0], -1));
    for (const r of [-5, 0, 5, 25, 31]) {
      const hole = Math.max(0, 30 - r);
      expectGrown(ring, r, Math.PI * ((50 + r) ** 2 - hole ** 2), 2 * Math.PI * (50 + r + hole));
    }
  });

  it('two discs of radius 20, 60 mm apart: they merge at 10 mm (area of a lens, any handbook)', () => {
    const two = region(disc(20), disc(20, [60, 0]));
    for (const r of [0, 5, 9, 12, 30]) {
      const q = 20 + r;
      const half = q > 30 ? Math.acos(30 / q) : 0;
      const lens = q > 30 ? 2 * q * q * half - 30 * Math.sqrt(4 * q * q - 3600) : 0;
      expectGrown(two, r, 2 * Math.PI * q * q - lens, 4 * Math.PI * q - 4 * q * half);
    }
  });

  it('random convex outlines: area + perimeter x r + pi r2 (Steiner)', () => {
    for (let seed = 1; seed <= 8; seed++) {
      const random = lcg(seed);
      const angles = Array.from({ length: 7 }, () => between(random, 0, 2 * Math.PI)).sort((a, b) => a - b);
      const segments = turnedBy(loop(angles.map((a) => [40 * Math.cos(a), 25 * Math.sin(a)])), seed);
      let [area, perimeter] = [0, 0];
      for (let i = 0; i < segments.length; i += 4) {
        const [u0, v0, u1, v1] = segments.slice(i, i + 4) as [number, number, number, number];
        area += (u0 * v1 - u1 * v0) / 2;
        perimeter += Math.hypot(u1 - u0, v1 - v0);
      }
      const r = between(random, 0, 15);
      expectGrown(region(segments), r, area + perimeter * r + Math.PI * r * r, perimeter + 2 * Math.PI * r);
    }
  });
});

describe('what is boundary and what is not', () => {
  it('walls inside other bodies, walls that touch and walls that touch in part are none', () => {
    const overlapping = region(rectangle(10, 10), rectangle(10, 10, [5, 0]));
    const touching = region(rectangle(10, 10), rectangle(10, 10, [10, 0]));
    const inPart = region(rectangle(10, 10), rectangle(10, 4, [10, 3]));
    const twice = region(rectangle(10, 10), rectangle(10, 10));
    expectClose(distanceAt(overlapping, 7.5, 5), -5, 1e-12);
    expectClose(distanceAt(touching, 10, 5), -5, 1e-12);
    expectClose(distanceAt(inPart, 10, 5), -2, 1e-12);
    expectClose(distanceAt(twice, 5, 4), -4, 1e-12);
    expectGrown(overlapping, 0, 150, 50);
    expectGrown(touching, 0, 200, 60);
    expectGrown(inPart, 0, 140, 60);
    expectGrown(twice, 0, 100, 40);
  });

  it('the same turned at any angle', () => {
    for (const turn of [0.2, 1, 2.5]) {
      const touching = [...rectangle(10, 10), ...rectangle(10, 4, [10, 3])];
      expectGrown(region(turnedBy(touching, turn)), 0, 140, 60);
    }
  });

  it('an outline the wrong way round, on its own, is no region', () => {
    for (const nothing of [region(), region(disc(10, [0, 0], -1, 60))]) {
      expect(areaWithin(nothing, 5)).toBe(0);
      expect(perimeterAt(nothing, 5)).toBe(0);
      expect(distanceAt(nothing, 1, 2)).toBe(Infinity);
      expect(grownOutline(nothing, 5)).toHaveLength(0);
    }
  });

  it('shrunk by more than its half width nothing is left', () => {
    expect(areaWithin(region(rectangle(100, 20)), -10.1)).toBe(0);
    expect(perimeterAt(region(rectangle(100, 20)), -10.1)).toBe(0);
  });
});

describe('distances', () => {
  it('random stars: as the least over all sides, one by one, with the sign by counting crossings', () => {
    for (let seed = 1; seed <= 6; seed++) {
      const random = lcg(seed);
      const star = loop(
        Array.from({ length: 40 }, (_, k): Point => {
          const [angle, radius] = [(2 * Math.PI * k) / 40, between(random, 10, 50)];
          return [radius * Math.cos(angle) + 100, radius * Math.sin(angle)];
        }),
      );
      const of = region(star);
      for (let i = 0; i < 300; i++) {
        const [u, v] = [between(random, 30, 170), between(random, -70, 70)];
        expect(Math.abs(distanceAt(of, u, v) - byTrial(star, u, v)), `seed ${seed}, ${u} ${v}`).toBeLessThan(
          1e-10,
        );
      }
    }
  });

  it('on the boundary 0, beyond a corner as the crow flies', () => {
    expect(distanceAt(region(rectangle(10, 10)), 10, 5)).toBeCloseTo(0, 12);
    expect(distanceAt(region(rectangle(10, 10)), 13, 14)).toBeCloseTo(5, 12);
  });

  /** Nearest side by hand; inside by the even-odd rule along +u. */
  function byTrial(segments: readonly number[], u: number, v: number): number {
    let [nearest, crossings] = [Infinity, 0];
    for (let i = 0; i < segments.length; i += 4) {
      const [u0, v0, u1, v1] = segments.slice(i, i + 4) as [number, number, number, number];
      const length = Math.hypot(u1 - u0, v1 - v0);
      const along = ((u - u0) * (u1 - u0) + (v - v0) * (v1 - v0)) / length;
      const off = Math.abs((u - u0) * (v1 - v0) - (v - v0) * (u1 - u0)) / length;
      const ends = Math.min(Math.hypot(u - u0, v - v0), Math.hypot(u - u1, v - v1));
      nearest = Math.min(nearest, along >= 0 && along <= length ? off : ends);
      if (v0 > v !== v1 > v && u0 + ((v - v0) / (v1 - v0)) * (u1 - u0) > u) crossings++;
    }
    return crossings % 2 === 1 ? -nearest : nearest;
  }
});

describe('thin places', () => {
  it('a fin of 0.05 mm on 100 mm, ten times thinner than a cell', () => {
    expectGrown(region(rectangle(100, 0.05)), 0, 5, 200.1);
  });

  it('a slit of 0.05 mm between two plates, and closed by a tenth of a millimeter more', () => {
    const plates = region(rectangle(100, 100), rectangle(100, 100, [120, 0]));
    const apart = (r: number): number => 2 * (1e4 + 400 * r + Math.PI * r * r);
    expectGrown(plates, 9.975, apart(9.975), 2 * (400 + 2 * Math.PI * 9.975));
    // Beyond 10 mm the strips overlap in r - 10 on each side, and their round ends in two segments of circles.
    const r = 10.1;
    const half = Math.acos(10 / r);
    const ends = 2 * (r * r * half - 10 * Math.sqrt(r * r - 100));
    expectGrown(
      plates,
      r,
      apart(r) - 100 * 2 * (r - 10) - ends,
      2 * (400 + 2 * Math.PI * r) - 200 - 4 * r * half,
    );
  });
});

describe('laws and bad input', () => {
  const notched = [...disc(20, [0, 0], 1, 50), ...rectangle(60, 8, [0, -4])];

  it('k times as large: k2 the area, k times the perimeter', () => {
    const small = region(notched);
    const large = region(notched.map((x) => 7 * x));
    expectClose(areaWithin(large, 21), 49 * areaWithin(small, 3), 1e-9);
    expectClose(perimeterAt(large, 21), 7 * perimeterAt(small, 3), 1e-9);
  });

  it('a kilometer away nothing changes', () => {
    const far = region(notched.map((x) => x + 1e6));
    expectClose(areaWithin(far, 3), areaWithin(region(notched), 3), 1e-6);
    expectClose(perimeterAt(far, 3), perimeterAt(region(notched), 3), 1e-4);
  });

  it('the area grows with the perimeter: their integral over 10 mm', () => {
    const of = region(notched);
    const [from, to] = [2, 12];
    // Simpson's rule over 40 steps.
    let sum = 0;
    for (let i = 0; i <= 40; i++)
      sum += (i === 0 || i === 40 ? 1 : i % 2 === 1 ? 4 : 2) * perimeterAt(of, from + (i * (to - from)) / 40);
    expectClose((sum * (to - from)) / 120, areaWithin(of, to) - areaWithin(of, from), BY_CELLS);
  });

  it('a side without length and a side cut in a thousand pieces change nothing', () => {
    const fine = Array.from({ length: 1000 }, (_, i): Point => [i / 10, 0]);
    const corners: Point[] = [...fine, [100, 0], [100, 0], [100, 100], [0, 100]];
    expectGrown(region(loop(corners)), 10, 1e4 + 4000 + 100 * Math.PI, 400 + 20 * Math.PI);
  });

  it('refuses what is not a number, cells without size and no finite distance', () => {
    expect(() => growRegion(Float64Array.from([0, 0, 1, NaN]))).toThrow('finite coordinates');
    for (const cellMm of [0, -1, NaN, Infinity])
      expect(() => growRegion(Float64Array.from(rectangle(1, 1)), { cellMm })).toThrow('cells above 0 mm');
    for (const growMm of [NaN, Infinity, -Infinity])
      expect(() => areaWithin(region(rectangle(1, 1)), growMm)).toThrow('finite distance');
  });
});
