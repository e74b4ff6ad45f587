import { describe, expect, it } from 'vitest';
import { seedsAlongX, seedsAlongY, seedsAlongZ } from '../../../src/geometry/field/featureTransform';
import { cellCount, type Grid } from '../../../src/geometry/field/grid';
import { between, lcg } from '../../support/lcg';

const SEED = 77;

/** Runs the three passes, each in `parts` runs as threads would. */
function transform(grid: Grid, isSeed: Int32Array, reach: number, parts = 1): Int32Array {
  const site = new Int32Array(cellCount(grid));
  const shares = (total: number): [number, number][] =>
    Array.from({ length: parts }, (_, i) => [
      Math.floor((total * i) / parts),
      Math.floor((total * (i + 1)) / parts),
    ]);
  for (const share of shares(grid.nz)) seedsAlongX(grid, isSeed, site, reach, share);
  for (const share of shares(grid.nz)) seedsAlongY(grid, site, reach, share);
  for (const share of shares(grid.ny)) seedsAlongZ(grid, site, share);
  return site;
}

const squared = ({ nx, ny }: Grid, v: number, s: number): number => {
  const at = (w: number): number[] => [w % nx, Math.floor(w / nx) % ny, Math.floor(w / (nx * ny))];
  return at(v).reduce((sum, x, k) => sum + (x - at(s)[k]!) ** 2, 0);
};

function randomGrid(random: () => number): { grid: Grid; isSeed: Int32Array; seeds: number[] } {
  const size = (): number => Math.floor(between(random, 1, 14));
  const grid = { nx: size(), ny: size(), nz: size(), spacingMm: 1, ox: 0, oy: 0, oz: 0, firstPlane: 0 };
  const chance = between(random, 0.001, 0.1);
  const isSeed = Int32Array.from({ length: cellCount(grid) }, () => (random() < chance ? 7 : 0));
  const seeds = [...isSeed.keys()].filter((v) => isSeed[v]! > 0);
  return { grid, isSeed, seeds };
}

describe(`nearest seeds on small random grids, seeds from ${SEED}`, () => {
  it('equal the nearest of all seeds in turn', () => {
    for (let n = 0; n < 40; n++) {
      const { grid, isSeed, seeds } = randomGrid(lcg(SEED + n));
      const site = transform(grid, isSeed, 50);
      for (let v = 0; v < site.length; v++) {
        if (seeds.length === 0) expect(site[v]).toBe(-1);
        else {
          expect(isSeed[site[v]!], `seed ${SEED + n}`).toBe(7);
          const least = Math.min(...seeds.map((s) => squared(grid, v, s)));
          expect(squared(grid, v, site[v]!), `seed ${SEED + n}`).toBe(least);
        }
      }
    }
  });

  it('within a short reach the nearest still; beyond it none, or one that is told to be far', () => {
    let none = 0;
    for (let n = 0; n < 40; n++) {
      const random = lcg(SEED + 100 + n);
      const { grid, isSeed, seeds } = randomGrid(random);
      const reach = Math.floor(between(random, 1, 6));
      const site = transform(grid, isSeed, reach);
      for (let v = 0; v < site.length; v++) {
        const least = Math.min(Infinity, ...seeds.map((s) => squared(grid, v, s)));
        const found = site[v]! < 0 ? Infinity : squared(grid, v, site[v]!);
        if (least <= reach * reach) expect(found, `seed ${SEED + 100 + n}`).toBe(least);
        else expect(found, `seed ${SEED + 100 + n}`).toBeGreaterThan(reach * reach);
        if (site[v]! < 0) none++;
        else expect(isSeed[site[v]!]).toBe(7);
      }
    }
    expect(none).toBeGreaterThan(300);
  });

  it('three threads find the same seeds', () => {
    for (let n = 0; n < 20; n++) {
      const { grid, isSeed } = randomGrid(lcg(SEED + 200 + n));
      expect(transform(grid, isSeed, 6, 3)).toEqual(transform(grid, isSeed, 6));
    }
  });
});
