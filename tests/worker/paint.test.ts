import { describe, expect, it } from 'vitest';
import type { BaseChoice, TriangleMesh } from '../../src/geometry';
import type { SizeOptions } from '../../src/plan';
import { paintWish } from '../../src/worker/paint';
import { picturePoints } from '../../src/worker/picture';
import { benchOf, scanOf } from '../support/moldBench';
import { moved, quartered, scaled } from '../support/meshTools';
import { valueOf } from '../support/outcome';
import { box, capsuleOutline, revolve } from '../support/shapes';

/** Thickness at every vertex, and where it is on the scan's own axes. */
function painted(mesh: TriangleMesh, options: SizeOptions = {}, base?: BaseChoice) {
  const bench = benchOf(mesh, options);
  const points = valueOf(picturePoints(scanOf(mesh), { up: options.up ?? '+z' }));
  const { thicknessMm, cappedMm } = valueOf(paintWish({ bench }, points, {}, base));
  expect(thicknessMm).toHaveLength(mesh.positions.length / 3);
  return { bench, points, thicknessMm, cappedMm };
}

describe('thickness at every vertex of a picture', () => {
  const capsule = revolve(capsuleOutline(20, 60, 12), 48);

  it("of a capsule of radius 20: 40 mm all round, at the file's own scale and turn", () => {
    const inches = moved(scaled(capsule, 1 / 25.4), [30, -20, 4]);
    const { bench, thicknessMm, cappedMm } = painted(inches, { fileUnit: 'in', up: '+y' });
    // Flats of 7.5 degrees take this much off a circle; the rest is what the measure says of itself.
    const { toleranceMm } = bench.thicknesses.get('open inside')!;
    const flatMm = 40 * (1 - Math.cos(Math.PI / 48));
    const known = thicknessMm.filter((mm) => !Number.isNaN(mm));
    expect(known.length).toBeGreaterThan(0.95 * thicknessMm.length);
    expect(toleranceMm).toBeLessThan(0.5);
    for (const mm of known) expect(Math.abs(mm - 40)).toBeLessThan(flatMm + toleranceMm);
    expect(cappedMm).toBeGreaterThan(39.8);
  });

  it('of a slab 8 mm thick: 8 mm where it has one, on nearly all of both faces away from its rim', () => {
    let slab = box([60, 45, 8]);
    for (let n = 0; n < 3; n++) slab = quartered(slab);
    const { thicknessMm } = painted(slab, { voxelMm: 1 }, 'closed');
    const [inner, known] = [new Set<number>(), new Set<number>()];
    for (let v = 0; v < thicknessMm.length; v++) {
      const [x, y, z] = slab.positions.slice(3 * v, 3 * v + 3);
      if (Math.min(x!, 60 - x!, y!, 45 - y!) < 12 || (z !== 0 && z !== 8)) continue;
      inner.add(v);
      if (!Number.isNaN(thicknessMm[v]!)) known.add(v);
    }
    for (const v of known) expect(Math.abs(thicknessMm[v]! - 8)).toBeLessThan(0.1);
    expect(inner.size).toBeGreaterThan(25);
    expect(known.size).toBeGreaterThan(0.9 * inner.size);
  });

  it('is measured once: the opening and the next picture take what stands', () => {
    const { bench, points, thicknessMm } = painted(capsule);
    const known = bench.thicknesses.get('open inside');
    expect(known).toBeDefined();
    const looked: number[] = [];
    const again = valueOf(paintWish({ bench }, points, { onProgress: (share) => void looked.push(share) }));
    expect(again.thicknessMm).toEqual(thicknessMm);
    expect(looked).toEqual([]);
    expect(bench.thicknesses.get('open inside')).toBe(known);
  });

  it('is not known far from the surface that was measured', () => {
    const { bench, points } = painted(capsule);
    const away = { ...points, positions: points.positions.map((c, i) => (i % 3 === 0 ? c + 200 : c)) };
    expect(valueOf(paintWish({ bench }, away, {})).thicknessMm.every(Number.isNaN)).toBe(true);
  });

  it('stops when it is told to, and is begun again', () => {
    const bench = benchOf(capsule);
    const points = valueOf(picturePoints(scanOf(capsule), { up: '+z' }));
    let looks = 0;
    const stopped = paintWish({ bench }, points, { shouldStop: () => ++looks > 5 });
    expect(stopped).toMatchObject({ ok: false, problem: { code: 'STOPPED' } });
    expect(valueOf(paintWish({ bench }, points, {})).thicknessMm).toHaveLength(points.positions.length / 3);
  });

  it('throws on a picture of another way up: a slip of ours', () => {
    const points = valueOf(picturePoints(scanOf(capsule), { up: '+x' }));
    expect(() => paintWish({ bench: benchOf(capsule) }, points, {})).toThrow('paintWish: expected');
  });
});
