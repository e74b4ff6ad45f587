import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../src/geometry';
import { sizeScan } from '../../src/plan';
import type { Problem } from '../../src/problem';
import { expectClose } from '../support/close';
import { between, lcg } from '../support/lcg';
import { unionByManifold } from '../support/manifoldOracle';
import { halfWidth, measured } from '../support/measured';
import { asFloat32, joined, moved, reversed, turned } from '../support/meshTools';
import { valueOf } from '../support/outcome';
import { box, revolvedVolume, sphere, sphereOutline, type Vec3 } from '../support/shapes';

/** The promise for overlaps: what is measured along lines and not by a sum. */
const BY_LINES = 1e-4;

const findingsOf = (mesh: TriangleMesh): Problem[] =>
  valueOf(
    sizeScan(
      { mesh, format: 'stl', trianglesRead: mesh.triangles.length / 3, coordinateStep: 0, findings: [] },
      { fileUnit: 'mm' },
    ),
  ).findings;
const codesOf = (mesh: TriangleMesh): string[] => findingsOf(mesh).map((f) => f.code);

describe('boxes that overlap: the union is a + b less the common box, exactly known', () => {
  const one = box([10, 20, 30]);
  const cases: [string, Vec3, number][] = [
    ['a corner 7.5 x 10 x 25 in common', [2.5, 10, 5], 2 * 6000 - 7.5 * 10 * 25],
    ['a corner 3 x 7 x 11 in common', [7, 13, 19], 2 * 6000 - 3 * 7 * 11],
    ['one pushed 1 mm along x', [1, 0, 0], 11 * 20 * 30],
    ['one pushed 1 mm along z', [0, 0, 1], 10 * 20 * 31],
    ['a rod of 0.2 x 0.2 x 30 in common', [9.8, 19.8, 0], 2 * 6000 - 0.2 * 0.2 * 30],
  ];
  it.each(cases)('%s', (_, at, union) => {
    const both = joined(one, moved(one, at));
    const solid = measured(both);
    expectClose(solid.volumeMm3, union, BY_LINES, 'volume');
    expect(Math.abs(solid.volumeMm3 - union)).toBeLessThanOrEqual(halfWidth(solid) + 1e-9 * union);
    expect(codesOf(both)).toContain('SELF_INTERSECT');
    // The plain sum would count the common part twice: it is never the answer where that matters.
    if (12000 - union > 2 * BY_LINES * union) expect(solid.method).toBe('field');
  });

  it('10 125 mm3: two boxes of 10 x 20 x 30 and one common corner of 7.5 x 10 x 25', () => {
    expectClose(measured(joined(one, moved(one, [2.5, 10, 5]))).volumeMm3, 10_125, BY_LINES);
  });

  const SEED = 77;
  it(`turned any way, ten times, seed ${SEED}`, () => {
    const random = lcg(SEED);
    const both = joined(one, moved(one, [2.5, 10, 5]));
    for (let i = 0; i < 10; i++) {
      const q = [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];
      expectClose(measured(turned(both, q)).volumeMm3, 10_125, BY_LINES, `turn ${i} ${q.join(' ')}`);
    }
  });

  it(`balls and boxes against the union of Manifold, six times, seed ${SEED + 1}`, () => {
    const random = lcg(SEED + 1);
    for (let i = 0; i < 6; i++) {
      const a = asFloat32(sphere(between(random, 20, 40), 24));
      const b = asFloat32(
        box(
          [between(random, 20, 70), between(random, 20, 70), between(random, 20, 70)],
          [0, 1, 2].map(() => between(random, -20, 5)) as unknown as Vec3,
        ),
      );
      const solid = measured(joined(a, b));
      const union = unionByManifold(a, b).volume;
      expect(Math.abs(solid.volumeMm3 - union), `pair ${i}`).toBeLessThanOrEqual(
        halfWidth(solid) + 1e-6 * union,
      );
      expectClose(solid.volumeMm3, union, 2 * BY_LINES, `pair ${i}`);
    }
  });
});

describe('overlaps that are easily missed', () => {
  it.each<[string, Vec3, Vec3, number]>([
    ['lying, 0.5 mm deep along z', [100, 100, 10], [0, 0, 9.5], 100 * 100 * 19.5],
    ['standing, 0.5 mm deep along x', [10, 100, 100], [9.5, 0, 0], 100 * 100 * 19.5],
    ['standing, 0.5 mm deep along y', [100, 10, 100], [0, 9.5, 0], 100 * 100 * 19.5],
  ])('two plates of 100 mm %s', (_, size, at, union) => {
    const both = joined(box(size), moved(box(size), at));
    expect(codesOf(both)).toContain('SELF_INTERSECT');
    expectClose(measured(both).volumeMm3, union, BY_LINES, 'volume');
  });

  it('two boxes face to face share a face and no volume: 2 x 24 000, nothing is reported', () => {
    const both = joined(box([40, 30, 20]), box([40, 30, 20], [40, 0, 0]));
    expectClose(measured(both).volumeMm3, 48_000, 1e-11);
    expect(codesOf(both)).not.toContain('SELF_INTERSECT');
  });
});

describe('shells inside shells', () => {
  const [outer, inner] = [
    revolvedVolume(sphereOutline(50, 48), 96),
    revolvedVolume(sphereOutline(30, 48), 96),
  ];
  const [big, small] = [sphere(50, 48), sphere(30, 48)];

  it('a solid inside a solid is counted once: the outer ball', () => {
    const both = joined(big, small);
    expectClose(measured(both).volumeMm3, outer, 1e-11);
    expect(findingsOf(both).find((f) => f.code === 'NESTED_SHELL')?.values.part).toBe('solid');
  });

  it('an inner shell that faces in is a void and is taken off: outer less inner ball', () => {
    const both = joined(big, reversed(small));
    const solid = measured(both);
    expectClose(solid.volumeMm3, outer - inner, 1e-11);
    expect(solid).toMatchObject({ method: 'exact', closed: true });
    expect(findingsOf(both).find((f) => f.code === 'NESTED_SHELL')?.values.part).toBe('void');
  });

  it('a hollow ball all inside out stays hollow', () => {
    expectClose(measured(joined(reversed(big), small)).volumeMm3, outer - inner, 1e-11);
  });

  it('a marble loose in the void of a ball counts: outer - inner + marble', () => {
    const marble = revolvedVolume(sphereOutline(12, 48), 96);
    expectClose(
      measured(joined(big, reversed(small), sphere(12, 48))).volumeMm3,
      outer - inner + marble,
      1e-11,
    );
  });

  it.each([
    // The far corner of the box is at (c, c, c), sqrt(3) c from the middle of the ball; its neighbors at (c - 30, c, c) stay in.
    [32, 'one corner sticks out by 5.4 mm'],
    [28, 'all of it inside'],
  ])(
    'a box of 30 mm with its far corner at c = %d mm in a ball of radius 50 (%s): the union of Manifold',
    (c) => {
      const [a, b] = [asFloat32(big), asFloat32(box([30, 30, 30], [c - 30, c - 30, c - 30]))];
      const union = unionByManifold(a, b).volume;
      const solid = measured(joined(a, b));
      expect(Math.abs(solid.volumeMm3 - union)).toBeLessThanOrEqual(halfWidth(solid) + 1e-6 * union);
    },
  );

  it('three copies of the same ball, each with vertices of its own, are one ball', () => {
    expectClose(measured(joined(big, big, big)).volumeMm3, outer, BY_LINES);
  });
});
