import { describe, expect, it } from 'vitest';
import { shareThinner, type Thickness, type TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { turned } from '../../support/meshTools';
import { box, capsuleOutline, icosphere, revolve, torus, type Vec3 } from '../../support/shapes';
import { finely, hurt, percentiles, thicknessOf } from './thicknessOf';

const SEED = 7;
const TURN = [0.8, 0.3, -0.4, 0.2] as const;

/** Half of the area is this thick within 1 %, all but the outermost hundredths within 4 %. */
function expectEven(thickness: Thickness, mm: number, isAsked?: (at: Vec3) => boolean): void {
  const [p01, p50, p99] = percentiles(thickness, [0.01, 0.5, 0.99], isAsked);
  expectClose(p50!, mm, 0.01, 'median');
  expectClose(p01!, mm, 0.04, 'first hundredth');
  expectClose(p99!, mm, 0.04, 'last hundredth');
}

const SLAB = finely(box([80, 70, 12]), 5);
const offItsEdges = ([x, y]: Vec3): boolean => x > 6 && x < 74 && y > 6 && y < 64;

describe(`thickness of even bodies (closed form), clean and with 5 % of the facets each deleted, turned over and doubled, seed ${SEED}`, () => {
  it.each<[string, TriangleMesh, number, ((at: Vec3) => boolean)?]>([
    ['a ball is as thick as its diameter', icosphere(30, 5), 60],
    ['a capsule is as thick as its shaft, ends and all', revolve(capsuleOutline(20, 60, 64), 128), 40],
    ['a ring is as thick as its tube', torus(40, 10, 160, 64), 20],
    ['a slab is as thick as it is, away from its edges', SLAB, 12, offItsEdges],
  ])('%s', (_name, mesh, mm, isAsked) => {
    expectEven(thicknessOf(mesh), mm, isAsked);
    expectEven(thicknessOf(hurt(mesh, SEED)), mm, isAsked);
  });

  it.each<[string, TriangleMesh, number]>([
    ['ball', icosphere(30, 5), 60],
    ['capsule', revolve(capsuleOutline(20, 60, 64), 128), 40],
    ['ring', torus(40, 10, 160, 64), 20],
  ])('the same however it lies: %s', (_name, mesh, mm) => {
    expectEven(thicknessOf(turned(mesh, TURN)), mm);
  });

  it('with voxels of half and of twice the edge as well', () => {
    for (const voxelMm of [0.5, 2]) expectEven(thicknessOf(icosphere(30, 5), { voxelMm }), 60);
  });
});

describe('bodies that are not even', () => {
  const cone = revolve(
    [
      [0, 0],
      [20, 0],
      [8, 60],
      [0, 60],
    ],
    96,
  );

  it('a blunt cone: on its side as thick as the largest ball within it that reaches there (asked of every ball on its axis)', () => {
    const { thicknessMm, positions, toleranceMm } = thicknessOf(cone);
    // A ball about the axis at height z has the radius (20 - z / 5) cos a, tan a = 12 / 60, where the ends leave room for it.
    const along = Math.cos(Math.atan(0.2));
    const radiusAt = (z: number): number => Math.min((20 - z / 5) * along, z, 60 - z);
    const reaching = (out: number, high: number, beyondMm: number): number => {
      let largest = 0;
      for (let z = 0; z < 60; z += 0.02)
        if (Math.hypot(out, high - z) <= radiusAt(z) + beyondMm) largest = Math.max(largest, radiusAt(z));
      return largest;
    };
    let asked = 0;
    for (let s = 0; s < thicknessMm.length; s += 7) {
      const [x, y, z] = positions.subarray(3 * s, 3 * s + 3);
      if (!(thicknessMm[s]! > 0) || z! < 22 || z! > 48) continue;
      const out = Math.hypot(x!, y!);
      // Facets lie inside the round cone by up to 0.011 mm.
      expect(thicknessMm[s]! / 2).toBeGreaterThan(0.99 * reaching(out, z!, 0.03));
      expect(thicknessMm[s]! / 2).toBeLessThan(1.002 * reaching(out, z!, toleranceMm + 0.03));
      asked++;
    }
    expect(asked).toBeGreaterThan(50);
  });

  it('a wedge of 18 degrees: its edge is its thin place, its square edges are not', () => {
    const wedge: TriangleMesh = {
      positions: Float64Array.from([0, 0, 0, 60, 0, 0, 60, 0, 20, 0, 40, 0, 60, 40, 0, 60, 40, 20]),
      triangles: Int32Array.from([0, 1, 2, 3, 5, 4, 0, 3, 4, 0, 4, 1, 1, 4, 5, 1, 5, 2, 0, 2, 5, 0, 5, 3]),
    };
    const { thinnest } = thicknessOf(wedge);
    expect(thinnest).toHaveLength(1);
    expect(thinnest[0]!.atMm[0]).toBeLessThan(2);
    expect(thinnest[0]!.thicknessMm).toBeLessThan(1);
  });

  it('what is thicker than asked for is told as that much, and is no thin place', () => {
    const capped = thicknessOf(icosphere(30, 4), { mostMm: 40 });
    expect(capped.cappedMm).toBe(40);
    expect(percentiles(capped, [0, 0.5, 1])).toEqual([40, 40, 40]);
    expect(capped.thinnest).toEqual([]);
    const shallow = thicknessOf(icosphere(30, 4), { levelsMm: [-10] });
    expect(shallow.cappedMm).toBeGreaterThanOrEqual(20);
    expect(shallow.cappedMm).toBeLessThan(28);
    expect(percentiles(shallow, [0, 1])).toEqual([shallow.cappedMm, shallow.cappedMm]);
  });

  it('samples stand for the whole area, and the share below a thickness follows from them', () => {
    const ball = thicknessOf(icosphere(30, 5));
    const area = ball.areaMm2.reduce((sum, one) => sum + one, 0);
    expectClose(area, 4 * Math.PI * 900, 0.002);
    expectClose(ball.spacingMm ** 2 * ball.sampleCount, area, 1e-6);
    expect(shareThinner(ball, 50)).toBe(0);
    expect(shareThinner(ball, 70)).toBeCloseTo(1, 9);
    for (let s = 0; s < ball.sampleCount; s++)
      expect(Math.hypot(...ball.positions.subarray(3 * s, 3 * s + 3))).toBeCloseTo(30, 1);
  });
});
