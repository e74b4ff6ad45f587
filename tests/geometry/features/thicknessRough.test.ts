import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { boundsOf, buildField, measureThickness, type TriangleMesh } from '../../../src/geometry';
import { startCrew } from '../../../src/cli/nodeCrew';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { joined, moved } from '../../support/meshTools';
import { problemOf, valueOf } from '../../support/outcome';
import { box, icosphere, revolve, sphereOutline, torus, type OutlinePoint } from '../../support/shapes';
import { bundledHelper } from '../field/bundledHelper';
import { finely, percentiles, thicknessOf } from './thicknessOf';

const SEED = 5;

const noisy = (mesh: TriangleMesh, mm: number, seed = SEED): TriangleMesh => {
  const random = lcg(seed);
  return { ...mesh, positions: mesh.positions.map((x) => x + between(random, -mm, mm)) };
};

describe(`rough scans, seed ${SEED} and on`, () => {
  it.each([
    [0.1, 5],
    [0.25, 5],
    [0.1, 6],
    [0.25, 6],
  ])('a ball of 60 mm with noise of %d mm stays one, facets quartered %d times', (mm, levels) => {
    for (let seed = SEED; seed < SEED + 2; seed++) {
      const ball = thicknessOf(noisy(icosphere(30, levels), mm, seed));
      const [p01, p50, p99] = percentiles(ball, [0.01, 0.5, 0.99]);
      // The ball inside touches the lowest spots on both sides, moved in by up to the root of three times the noise.
      expect(p50, `seed ${seed}`).toBeGreaterThan(60 - 2 * Math.sqrt(3) * mm - 0.05);
      expect(p99, `seed ${seed}`).toBeLessThan(60);
      expectClose(p01!, 60, 0.03, `seed ${seed}`);
      expect(ball.notMeasuredShare, `seed ${seed}`).toBeLessThan(0.15);
      // Noise spread evenly has a root mean square of 0.58 of its bound; feet seen from outside lie on the bumps and scatter less.
      expect(ball.roughnessMm, `seed ${seed}`).toBeGreaterThan(0.3 * mm);
      expect(ball.roughnessMm, `seed ${seed}`).toBeLessThan(0.6 * mm);
      expect(ball.thinnest, `seed ${seed}`).toHaveLength(1);
    }
  });

  it('a finger on a block, all of it with noise of 0.25 mm, is still the thin place, less the noise around it', () => {
    const tip = sphereOutline(6, 12);
    const shaft = Array.from({ length: 33 }, (_, n): OutlinePoint => [6, (50 * (n + 1)) / 34]);
    const outline = [
      ...tip.slice(0, 7),
      ...shaft,
      ...tip.slice(6).map(([r, z]): OutlinePoint => [r, z + 50]),
    ];
    for (let seed = SEED; seed < SEED + 3; seed++) {
      const finger = moved(noisy(revolve(outline, 20), 0.25, seed), [30, 30, 15]);
      const block = noisy(finely(box([60, 60, 30]), 5), 0.25, seed);
      const { thinnest } = thicknessOf(joined(block, finger));
      // Its twenty sides are 11.85 mm apart; lowest spots on both sides lie deeper by up to the root of two times the noise.
      expect(thinnest[0]!.thicknessMm, `seed ${seed}`).toBeGreaterThan(11.85 - 2 * 0.25 * Math.SQRT2 - 0.1);
      expect(thinnest[0]!.thicknessMm, `seed ${seed}`).toBeLessThan(12);
      expectClose(thinnest[0]!.lengthMm, 41, 0.15, `seed ${seed}`);
      expect(thinnest, `seed ${seed}`).toHaveLength(1);
    }
  });

  it('a smooth ball is not rough, nor are the edges of a box', () => {
    expect(thicknessOf(icosphere(30, 5)).roughnessMm).toBeLessThan(0.01);
    expect(thicknessOf(box([40, 30, 50])).roughnessMm).toBeLessThan(0.01);
  });
});

describe('the work itself', () => {
  let helper: URL;
  let crew: ReturnType<typeof startCrew>;
  beforeAll(async () => {
    helper = await bundledHelper();
    crew = startCrew(3, helper);
  }, 30_000);
  afterAll(() => {
    crew.end();
    rmSync(dirname(fileURLToPath(helper)), { recursive: true, force: true });
  });

  it.each<[string, TriangleMesh]>([
    ['ring', torus(26, 11, 90, 45)],
    ['block with a fin', joined(box([60, 40, 30]), box([40, 4, 30], [10, 18, 20]))],
    ['two balls that overlap', joined(icosphere(16, 4), moved(icosphere(16, 4), [18, 3, 1]))],
  ])('one thread and three give the same to the last bit: %s', (_name, mesh) => {
    expect(thicknessOf(mesh, { crew })).toEqual(thicknessOf(mesh));
  });

  const ball = icosphere(40, 4);
  const field = valueOf(buildField(ball, boundsOf(ball), { voxelMm: 0.7, levelsMm: [-40] }));

  it('progress rises from nothing to at most all', () => {
    const told: number[] = [];
    valueOf(measureThickness(field, { onProgress: (share) => told.push(share) }));
    expect(told.length).toBeGreaterThan(3);
    told.forEach((share, n) => expect(share).toBeGreaterThanOrEqual(n === 0 ? 0 : told[n - 1]!));
    expect(told.at(-1)).toBeLessThanOrEqual(1);
    expect(told.at(-1)).toBeGreaterThan(0.5);
  });

  it('a stop is heard, at once and in the midst of it', () => {
    for (const share of [0, 0.05, 0.3, 0.6]) {
      let told = -1;
      const options = { onProgress: (now: number) => (told = now), shouldStop: () => told >= share };
      expect(problemOf(measureThickness(field, options)).code).toBe('STOPPED');
    }
  });

  it('a ball is measured again alike', () => {
    expect(valueOf(measureThickness(field))).toEqual(valueOf(measureThickness(field)));
    expectClose(valueOf(measureThickness(field)).medianMm, 80, 0.01);
  });
});
