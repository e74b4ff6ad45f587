import { describe, expect, it } from 'vitest';
import Module from 'manifold-3d';
import { boundsOf } from '../../../src/geometry';
import { areaWithin, growRegion, perimeterAt } from '../../../src/geometry/plane/growRegion';
import { loopsRegion } from '../../../src/geometry/plane/loopsRegion';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { joined } from '../../support/meshTools';
import { mushroom, polygonArea, polygonPerimeter } from '../../support/polygons';
import { sampleScan } from '../../support/samples';
import { box, revolve, torus } from '../../support/shapes';

/** The promise at 200 cells across. */
const BY_CELLS = 5e-4;

/** Of a full circle at rounded corners: 1.6e-7 below the circle. */
const SEGMENTS = 4096;

const wasm = await Module();
wasm.setup();

type Point = [number, number];

/** Figures of grown polygons by another program: Manifold's cross sections (Clipper2 inside). Winding number 1 or more is in. */
function byManifold(polygons: Point[][], growMm: number): { area: number; perimeter: number } {
  const flat = new wasm.CrossSection(polygons, 'Positive');
  const grown = flat.offset(growMm, 'Round', 2, SEGMENTS);
  const perimeter = grown
    .toPolygons()
    .flatMap((ring) => ring.map((p, i) => [p, ring[(i + 1) % ring.length]!] as const))
    .reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);
  const figures = { area: grown.area(), perimeter };
  flat.delete();
  grown.delete();
  return figures;
}

const segmentsOf = (polygons: readonly Point[][]): Float64Array =>
  Float64Array.from(
    polygons.flatMap((ring) => ring.flatMap((p, i) => [...p, ...ring[(i + 1) % ring.length]!])),
  );

/** Rings of segments that follow each other. */
function ringsOf(segments: Float64Array): Point[][] {
  const rings: Point[][] = [];
  for (let i = 0; i < segments.length; i += 4) {
    const [u, v] = [segments[i]!, segments[i + 1]!];
    if (i === 0 || segments[i - 2] !== u || segments[i - 1] !== v) rings.push([]);
    rings.at(-1)!.push([u, v]);
  }
  return rings;
}

function expectAsManifold(polygons: Point[][], growMm: number, what: string): void {
  const other = byManifold(polygons, growMm);
  const ours = growRegion(segmentsOf(polygons));
  expectClose(areaWithin(ours, growMm), other.area, BY_CELLS, `${what}, area`);
  expectClose(perimeterAt(ours, growMm), other.perimeter, BY_CELLS, `${what}, perimeter`);
}

const star = (random: () => number, count: number, at: Point): Point[] =>
  Array.from({ length: count }, (_, k) => {
    const [angle, radius] = [(2 * Math.PI * k) / count, between(random, 15, 50)];
    return [at[0] + radius * Math.cos(angle), at[1] + radius * Math.sin(angle)];
  });

describe('random outlines with a flange, as Manifold grows them', () => {
  it('stars with deep notches, grown and shrunk', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const random = lcg(seed);
      const polygon = star(random, 12, [0, 0]);
      for (const growMm of [0, between(random, 0.5, 10), between(random, 10, 40), -3])
        expectAsManifold([polygon], growMm, `seed ${seed}, ${growMm} mm`);
    }
  });

  it('two stars that overlap', () => {
    for (let seed = 21; seed <= 26; seed++) {
      const random = lcg(seed);
      const polygons = [star(random, 9, [0, 0]), star(random, 11, [40, 10])];
      for (const growMm of [0, between(random, 1, 30), -2])
        expectAsManifold(polygons, growMm, `seed ${seed}, ${growMm} mm`);
    }
  });

  it('tangles that cross themselves: what they wind around forward counts', () => {
    for (let seed = 31; seed <= 36; seed++) {
      const random = lcg(seed);
      const tangle = Array.from({ length: 9 }, (): Point => [between(random, 0, 90), between(random, 0, 90)]);
      for (const growMm of [0, between(random, 1, 15)])
        expectAsManifold([tangle], growMm, `seed ${seed}, ${growMm} mm`);
    }
  });
});

describe('the boundary itself', () => {
  it('of random tangles: as long as Manifold says, to the last digits it keeps', () => {
    for (let seed = 41; seed <= 59; seed++) {
      const random = lcg(seed);
      const tangle = Array.from({ length: 9 }, (): Point => [between(random, 0, 90), between(random, 0, 90)]);
      const { pieces } = growRegion(segmentsOf([tangle])).tree;
      let length = 0;
      for (let i = 0; i < pieces.length; i += 4)
        length += Math.hypot(pieces[i + 2]! - pieces[i]!, pieces[i + 3]! - pieces[i + 1]!);
      const { perimeter } = byManifold([tangle], 0);
      expect(Math.abs(length - perimeter), `seed ${seed}: ${length} ${perimeter}`).toBeLessThan(1e-4);
    }
  });
});

describe('the outline of a body at a height, with a flange', () => {
  it('a box: round corners of the flange', () => {
    const flange = growRegion(loopsRegion(box([100, 60, 30], [5, 5, 0]), 1));
    expectClose(areaWithin(flange, 25), 6000 + 320 * 25 + Math.PI * 625, BY_CELLS);
    expectClose(perimeterAt(flange, 0), 320, BY_CELLS);
  });

  it('a mushroom: its stem below, its cap above', () => {
    const body = revolve(mushroom, 64);
    expectClose(areaWithin(growRegion(loopsRegion(body, 20)), 0), polygonArea(10, 64), BY_CELLS);
    expectClose(perimeterAt(growRegion(loopsRegion(body, 45)), 0), polygonPerimeter(30, 64), BY_CELLS);
  });

  it('a torus at half height: its hole is no part of it', () => {
    const half = growRegion(loopsRegion(torus(40, 10, 128, 32), 0.001));
    const area = polygonArea(50, 128) - polygonArea(30, 128);
    expectClose(areaWithin(half, 0), area, BY_CELLS);
  });

  it('two boxes that overlap: one outline', () => {
    const both = joined(box([10, 10, 10]), box([10, 10, 10], [5, 0, 0]));
    expectClose(perimeterAt(growRegion(loopsRegion(both, 4)), 0), 50, BY_CELLS);
  });

  it('a sculpted head, grown and shrunk as Manifold does it', () => {
    const { mesh } = sampleScan('quay-troll-clean.stl');
    const { min, max } = boundsOf(mesh);
    for (const share of [0.02, 0.4, 0.8]) {
      const segments = loopsRegion(mesh, min[2] + share * (max[2] - min[2]));
      expect(segments.length).toBeGreaterThan(4 * 50);
      for (const growMm of [0, 6, 25])
        expectAsManifold(ringsOf(segments), growMm, `at ${share}, ${growMm} mm`);
    }
  });

  it('beside the body, and flush with its flat bottom, there is none', () => {
    expect(loopsRegion(box([10, 10, 10]), 11)).toHaveLength(0);
    expect(loopsRegion(box([10, 10, 10]), 0)).toHaveLength(0);
  });
});
