import * as bunny from 'bunny';
import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../src/geometry';
import { expectClose } from '../support/close';
import { byManifold } from '../support/manifoldOracle';
import { measured } from '../support/measured';
import { asFloat32, cappedByFans, lowestVertex, moved, withoutRings } from '../support/meshTools';
import { CLEAN, sampleScan } from '../support/samples';
import {
  box,
  capsuleOutline,
  icosphere,
  revolve,
  revolvedArea,
  revolvedVolume,
  sphere,
  sphereOutline,
  torus,
  torusOutline,
  type OutlinePoint,
} from '../support/shapes';

/** Doubles over at most 60 000 triangles: the rounding of a sum of n terms grows at most as n x 1.1e-16. */
const DOUBLE_SUM = 1e-11;

describe('a polyhedron has the volume and area of elementary geometry, to the rounding of doubles', () => {
  it('box: length x width x height', () => {
    const solid = measured(box([264, 230, 291], [-17, 3, 1000]));
    expectClose(solid.volumeMm3, 264 * 230 * 291, DOUBLE_SUM);
    expectClose(solid.areaMm2, 2 * (264 * 230 + 264 * 291 + 230 * 291), DOUBLE_SUM);
    expect(solid).toMatchObject({
      closed: true,
      method: 'exact',
      pieces: 1,
      rims: [],
      extentsMm: [264, 230, 291],
    });
  });

  const revolved: [string, OutlinePoint[], number, boolean][] = [
    ['ball', sphereOutline(50, 48), 96, false],
    ['capsule', capsuleOutline(20, 60, 32), 64, false],
    ['torus', torusOutline(50, 12, 48), 128, true],
    [
      'cone',
      [
        [0, 0],
        [40, 0],
        [0, 90],
      ],
      128,
      false,
    ],
    [
      'cylinder',
      [
        [0, 0],
        [40, 0],
        [40, 90],
        [0, 90],
      ],
      128,
      false,
    ],
  ];
  it.each(revolved)('faceted %s: frusta and trapezoids of regular polygons', (_, outline, sides, ring) => {
    const solid = measured(revolve(outline, sides, ring));
    expectClose(solid.volumeMm3, revolvedVolume(outline, sides, ring), DOUBLE_SUM, 'volume');
    expectClose(solid.areaMm2, revolvedArea(outline, sides, ring), DOUBLE_SUM, 'area');
    expect(solid).toMatchObject({ closed: true, method: 'exact', pieces: 1 });
  });
});

describe('facets fall short of the round shape by a quarter as much when they are half as wide', () => {
  // The error of a chord is of second order in its length, so the ratio tends to 4; the next term is of fourth order:
  // with steps of 5 degrees (0.09 rad) it moves the ratio by less than 0.09^2 = 0.8 %.
  const RATIO = 0.01;
  it.each<[string, number, (fine: number) => TriangleMesh]>([
    ['ball, 4/3 pi r3', (4 / 3) * Math.PI * 50 ** 3, (n) => sphere(50, 36 * n)],
    [
      'ball by quartered icosahedra, 4/3 pi r3',
      (4 / 3) * Math.PI * 50 ** 3,
      (n) => icosphere(50, 3 + Math.log2(n)),
    ],
    [
      'capsule, pi r2 L + 4/3 pi r3',
      Math.PI * 20 ** 2 * 60 + (4 / 3) * Math.PI * 20 ** 3,
      (n) => revolve(capsuleOutline(20, 60, 36 * n), 72 * n),
    ],
    ['torus, 2 pi2 R r2 (Pappus)', 2 * Math.PI ** 2 * 50 * 12 ** 2, (n) => torus(50, 12, 72 * n, 72 * n)],
  ])('%s', (_, exact, make) => {
    const [coarse, fine] = [exact - measured(make(1)).volumeMm3, exact - measured(make(2)).volumeMm3];
    expect(coarse).toBeGreaterThan(0);
    expectClose(coarse / fine, 4, RATIO, 'ratio of deficits');
  });
});

describe('Manifold finds the same volume and area on every closed surface without overlaps', () => {
  // Both sum the same float32 vertices in doubles; measured agreement is below 1e-12.
  const SAME_SUM = 1e-10;
  const closed = CLEAN.map((t) => t.file).filter((f) => f !== 'twin-spheres-r40-d50.stl');
  it.each(closed)('%s', (file) => {
    const mesh = asFloat32(sampleScan(file).mesh);
    const [ours, theirs] = [measured(mesh), byManifold(mesh)];
    expectClose(ours.volumeMm3, theirs.volume, SAME_SUM, 'volume');
    expectClose(ours.areaMm2, theirs.area, SAME_SUM, 'area');
    expect(ours.closed).toBe(true);
  });

  it('the Stanford bunny (npm package bunny: 3 674 triangles, holes filled by its author)', () => {
    const mesh = asFloat32({
      positions: Float64Array.from(bunny.positions.flat()),
      triangles: Int32Array.from(bunny.cells.flat()),
    });
    const [ours, theirs] = [measured(mesh), byManifold(mesh)];
    expectClose(ours.volumeMm3, theirs.volume, SAME_SUM, 'volume');
    expectClose(ours.areaMm2, theirs.area, SAME_SUM, 'area');
    expect(ours).toMatchObject({ closed: true, pieces: 1, method: 'exact' });
  });

  it('the bunny with a hole at its base: Manifold, given the same bunny with a fan of this test in it, is within 0.1 % and in the range', () => {
    const whole = asFloat32({
      positions: Float64Array.from(bunny.positions.flat()),
      triangles: Int32Array.from(bunny.cells.flat()),
    });
    const open = withoutRings(whole, lowestVertex(whole, 1), 5);
    const solid = measured(open);
    const fanned = byManifold(asFloat32(cappedByFans(open)));
    expect(solid).toMatchObject({ closed: false, method: 'exact', pieces: 1 });
    // Two points in the middle of one rim: the caps differ by far less than the rim's unevenness times its area.
    expectClose(solid.volumeMm3, fanned.volume, 0.001, 'volume');
    expect(Math.abs(solid.volumeMm3 - fanned.volume)).toBeLessThanOrEqual(solid.doubt.capsMm3);
    expect(Math.abs(solid.volumeMm3 - byManifold(whole).volume)).toBeLessThanOrEqual(solid.doubt.capsMm3);
  });

  it('far from zero: 10 m off, in float32, as a scanner in world coordinates writes it', () => {
    const mesh = asFloat32(moved(sphere(50, 48), [10_000, -10_000, 10_000]));
    expectClose(
      measured(mesh).volumeMm3,
      byManifold(asFloat32(moved(mesh, [-10_000, 10_000, -10_000]))).volume,
      1e-9,
      'volume',
    );
  });
});
