import { describe, expect, it } from 'vitest';
import { boundsOf, distanceFunction, type TriangleMesh } from '../../../src/geometry';
import { boxField, sphereField, torusField, type KnownField } from '../../support/distances';
import { between, lcg } from '../../support/lcg';
import { joined, moved } from '../../support/meshTools';
import { box, icosphere, torus, type Vec3 } from '../../support/shapes';
import { fieldOf } from './levelsOf';

const SEED = 505;
const REACH_MM = 8;

/** How far facets of a round body lie inside it, and the search may miss, mm. */
const FACETS_MM = 0.02;

const union = (a: KnownField, b: KnownField): KnownField['distanceAtMm'] => {
  // Outside two bodies the nearer one counts; inside that holds only away from their crease, so inside is not asked.
  return (x, y, z) => Math.min(a.distanceAtMm(x, y, z), b.distanceAtMm(x, y, z));
};

const MIDDLE: Vec3 = [7, -3, 11];
const [left, right] = [sphereField(18), sphereField(18, [21, 4, 2])];

describe.each<[string, TriangleMesh, KnownField['distanceAtMm'], { mm: number; inward: boolean }]>([
  [
    'box',
    box([40, 30, 26], [-13, -18, -2]),
    boxField([40, 30, 26], MIDDLE).distanceAtMm,
    { mm: 1e-4, inward: true },
  ],
  [
    'ball',
    moved(icosphere(20, 5), MIDDLE),
    sphereField(20, MIDDLE).distanceAtMm,
    { mm: FACETS_MM, inward: true },
  ],
  ['torus', torus(24, 10, 180, 90), torusField(24, 10).distanceAtMm, { mm: FACETS_MM, inward: true }],
  [
    'two balls that overlap',
    joined(icosphere(18, 4), moved(icosphere(18, 4), [21, 4, 2])),
    union(left, right),
    { mm: 2 * FACETS_MM, inward: false },
  ],
])(`signed distance of any point: %s (closed form), seed ${SEED}`, (_name, mesh, truth, { mm, inward }) => {
  const field = fieldOf(mesh, [REACH_MM, -REACH_MM]);
  const distanceAtMm = distanceFunction(field);
  const corners = boundsOf(mesh);

  it('within the reach', () => {
    const random = lcg(SEED);
    const errors: number[] = [];
    while (errors.length < 600) {
      const p = [0, 1, 2].map((k) =>
        between(random, corners.min[k]! - REACH_MM, corners.max[k]! + REACH_MM),
      ) as unknown as Vec3;
      const expected = truth(...p);
      if (Math.abs(expected) > REACH_MM || (!inward && expected < 0)) continue;
      errors.push(Math.abs(distanceAtMm(...p) - expected));
    }
    errors.sort((a, b) => a - b);
    // Where two feet are about as far, the search may keep to the farther one: one point in a hundred, by half a millimeter at most.
    expect(errors[Math.floor(0.99 * errors.length)]).toBeLessThan(mm);
    expect(errors.at(-1)).toBeLessThan(inward ? mm : 0.5);
  });

  it('its sign changes at the surface and nowhere else', () => {
    const random = lcg(SEED + 1);
    for (let i = 0; i < 600; i++) {
      const v = 3 * Math.floor(between(random, 0, mesh.positions.length / 3));
      const p = [0, 1, 2].map((k) => mesh.positions[v + k]! + between(random, -1, 1)) as unknown as Vec3;
      const expected = truth(...p);
      if (Math.abs(expected) > mm) expect(distanceAtMm(...p) < 0, p.join(' ')).toBe(expected < 0);
    }
  });

  it('far outside it is the reach', () => {
    expect(distanceAtMm(1000, 0, 0)).toBe(field.reachMm);
  });
});
