import { describe, expect, it } from 'vitest';
import { makeSolid } from '../../../src/geometry/solids/makeSolid';
import { expectClose } from '../../support/close';
import { joined, moved, reversed, withoutRings, withTriangles, trianglesOf } from '../../support/meshTools';
import { problemOf, valueOf } from '../../support/outcome';
import { box, icosphere, torus } from '../../support/shapes';

describe('a closed mesh becomes a solid as it is', () => {
  it('its volume is that of the mesh (a box: the product of its sides), even 1 km from the origin', async () => {
    for (const at of [
      [0, 0, 0],
      [1e6, -1e6, 5e5],
    ] as const) {
      const mesh = moved(box([40, 30, 20]), at);
      const solid = valueOf(await makeSolid(mesh));
      expect(solid.mesh).toBe(mesh);
      expectClose(solid.volumeMm3, 24_000, 1e-12);
    }
  });

  it('a hollow one too: the inner wall faces inward', async () => {
    const hollow = joined(box([10, 10, 10]), moved(reversed(box([4, 4, 4])), [3, 3, 3]));
    expectClose(valueOf(await makeSolid(hollow)).volumeMm3, 1000 - 64, 1e-12);
  });
});

describe('what is no solid is refused, and the reason told', () => {
  it('a hole: as many open edges as its rim has', async () => {
    // A vertex of the sphere that five triangles share: the rim is a pentagon.
    const holed = withoutRings(icosphere(10, 2), 0, 1);
    expect(problemOf(await makeSolid(holed))).toMatchObject({ code: 'NOT_CLOSED', values: { openEdges: 5 } });
  });

  it('turned inside out: Manifold lets it pass, the sign does not', async () => {
    expect(problemOf(await makeSolid(reversed(torus(20, 5, 12, 8)))).code).toBe('INSIDE_OUT');
  });

  it('one facet that disagrees with its three neighbors', async () => {
    const cube = box([1, 1, 1]);
    const [first, ...others] = trianglesOf(cube);
    const twisted = withTriangles(cube, [[first![0], first![2], first![1]], ...others]);
    expect(problemOf(await makeSolid(twisted))).toMatchObject({ code: 'NOT_ORIENTED', values: { count: 3 } });
  });

  it('a fin of one triangle more on an edge', async () => {
    const cube = box([1, 1, 1]);
    const finned = withTriangles(cube, [...trianglesOf(cube), trianglesOf(cube)[0]!]);
    expect(problemOf(await makeSolid(finned))).toMatchObject({ code: 'NON_MANIFOLD', values: { count: 3 } });
  });

  it('nothing, and a leaf of two sides', async () => {
    const leaf = withTriangles(box([1, 1, 1]), [
      [0, 1, 2],
      [0, 2, 1],
    ]);
    for (const mesh of [leaf, withTriangles(leaf, [])])
      expect(problemOf(await makeSolid(mesh)).code).toBe('ZERO_VOLUME');
  });

  it('a vertex that is not a number is a mistake of ours and throws', async () => {
    const mesh = box([1, 1, 1]);
    mesh.positions[4] = NaN;
    await expect(makeSolid(mesh)).rejects.toThrow(/finite/i);
  });
});
