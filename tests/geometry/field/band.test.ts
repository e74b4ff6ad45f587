import { describe, expect, it } from 'vitest';
import { markBand, mergeBands } from '../../../src/geometry/field/band';
import { cellCount, type Grid } from '../../../src/geometry/field/grid';
import { between, lcg } from '../../support/lcg';
import type { Vec3 } from '../../support/shapes';
import { distanceTo } from './pointTriangle';

const SEED = 31;
const BAND_MM = 2;
const GRID: Grid = { nx: 17, ny: 15, nz: 13, spacingMm: 2, ox: -4, oy: -4, oz: -4, firstPlane: 0 };

interface Soup {
  positions: Float32Array;
  triangles: Int32Array;
}

/** Loose triangles of about `size` mm; every fourth lies in a plane across an axis, as the faces of boxes do. */
function soup(count: number, sizeMm: number, random: () => number): Soup {
  const positions = new Float32Array(9 * count);
  for (let t = 0; t < count; t++) {
    const middle = [between(random, 2, 22), between(random, 2, 18), between(random, 2, 14)];
    const flat = t % 4 === 0 ? t % 3 : -1;
    for (let c = 0; c < 3; c++)
      for (let k = 0; k < 3; k++)
        positions[9 * t + 3 * c + k] =
          middle[k]! + (k === flat ? 0 : between(random, -sizeMm / 2, sizeMm / 2));
  }
  return { positions, triangles: Int32Array.from({ length: 3 * count }, (_, i) => i) };
}

interface Band {
  distance: Float32Array;
  nearest: Int32Array;
}

function bandOf({ positions, triangles }: Soup, from = 0, to = triangles.length / 3): Band {
  const distance = new Float32Array(cellCount(GRID)).fill(BAND_MM);
  const nearest = new Int32Array(cellCount(GRID));
  markBand(GRID, positions, triangles, distance, nearest, BAND_MM, [from, to]);
  return { distance, nearest };
}

const pointOf = (v: number): Vec3 => [
  GRID.ox + (v % GRID.nx) * GRID.spacingMm,
  GRID.oy + (Math.floor(v / GRID.nx) % GRID.ny) * GRID.spacingMm,
  GRID.oz + Math.floor(v / (GRID.nx * GRID.ny)) * GRID.spacingMm,
];

describe.each([
  ['small', 40, 2],
  ['large', 6, 14],
  ['mixed', 12, 7],
] as const)(`%s triangles: the band holds the nearest, seed ${SEED}`, (_name, count, sizeMm) => {
  it('like the distance from every triangle in turn', () => {
    const mesh = soup(count, sizeMm, lcg(SEED));
    const { distance, nearest } = bandOf(mesh);
    let inBand = 0;
    for (let v = 0; v < cellCount(GRID); v++) {
      const all = Array.from({ length: count }, (_, t) => distanceTo(mesh, t, pointOf(v)));
      const least = Math.min(BAND_MM, ...all);
      expect(Math.abs(distance[v]! - least)).toBeLessThan(1e-5);
      if (least < BAND_MM - 1e-5) {
        inBand++;
        // 3 * triangle + 1.
        expect(Math.abs(all[(nearest[v]! - 1) / 3]! - least)).toBeLessThan(1e-5);
      } else if (least === BAND_MM) expect(nearest[v]).toBe(0);
    }
    expect(inBand).toBeGreaterThan(100);
  });

  it('three threads that merge hold the same, bit for bit', () => {
    const mesh = soup(count, sizeMm, lcg(SEED + 1));
    const whole = bandOf(mesh);
    const third = Math.ceil(count / 3);
    const parts = [0, 1, 2].map((i) => bandOf(mesh, i * third, Math.min(count, (i + 1) * third)));
    mergeBands(
      parts.map((part) => part.distance),
      parts.map((part) => part.nearest),
      [0, cellCount(GRID)],
    );
    expect(parts[0]).toEqual(whole);
  });
});

it('a triangle that stands twice goes to its lower number, whichever thread had it', () => {
  const one = soup(3, 4, lcg(SEED + 2));
  const twice = {
    positions: Float32Array.from([...one.positions, ...one.positions]),
    triangles: Int32Array.from({ length: 18 }, (_, i) => i),
  };
  const [first, second] = [bandOf(twice, 0, 3), bandOf(twice, 3, 6)];
  const [a, b] = [first.nearest.slice(), second.nearest.slice()];
  mergeBands([first.distance, second.distance], [first.nearest, second.nearest], [0, cellCount(GRID)]);
  mergeBands([second.distance, first.distance], [b, a], [0, cellCount(GRID)]);
  expect(first.nearest).toEqual(bandOf(one).nearest);
  expect(b).toEqual(first.nearest);
});

it('a tiny triangle counts as its middle at the eight points around it: within an eighth of a step', () => {
  const random = lcg(SEED + 3);
  const mesh = soup(30, 0.2, random);
  const { distance, nearest } = bandOf(mesh);
  for (let t = 0; t < 30; t++) {
    const p = [0, 1, 2].map((k) => mesh.positions[9 * t + k]!);
    const low = p.map((x, k) => Math.floor((x - [GRID.ox, GRID.oy, GRID.oz][k]!) / GRID.spacingMm));
    let best = Infinity;
    for (let q = 0; q < 8; q++) {
      const v = ((low[2]! + (q >> 2)) * GRID.ny + low[1]! + ((q >> 1) & 1)) * GRID.nx + low[0]! + (q & 1);
      best = Math.min(best, distance[v]!);
      if (nearest[v] === 0) continue;
      const own = distanceTo(mesh, (nearest[v]! - 1) / 3, pointOf(v));
      expect(Math.abs(distance[v]! - own)).toBeLessThan(GRID.spacingMm / 8);
    }
    // Half the diagonal of a cell, and the size of the triangle itself.
    expect(best).toBeLessThan((Math.sqrt(3) / 2 + 1 / 8) * GRID.spacingMm);
  }
});
