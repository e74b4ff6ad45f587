import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { footprintOf, type Footprint } from '../../../src/geometry/plane/footprint';
import { expectClose } from '../../support/close';
import { joined } from '../../support/meshTools';
import { mushroom, polygonArea } from '../../support/polygons';
import { box, revolve } from '../../support/shapes';

const areaOf = ({ us, vs }: Footprint): number =>
  us.reduce((sum, u, i) => {
    const next = (i + 1) % us.length;
    return sum + (u * vs[next]! - us[next]! * vs[i]!) / 2;
  }, 0);

describe('what a sculpt takes up on the board', () => {
  it('a box: its four corners seen from above', () => {
    const { us, vs } = footprintOf(box([30, 20, 50], [5, -7, 3]));
    expect([...us]).toEqual([5, 35, 35, 5]);
    expect([...vs]).toEqual([-7, -7, 13, 13]);
  });

  it('a mushroom: its cap, or up to 40 mm only its stem', () => {
    const cap = revolve(mushroom, 64);
    expectClose(areaOf(footprintOf(cap)), polygonArea(30, 64), 1e-12);
    expectClose(areaOf(footprintOf(cap, { throughZMm: 39.9 })), polygonArea(10, 64), 1e-12);
    expectClose(areaOf(footprintOf(cap, { throughZMm: 50 })), polygonArea(30, 64), 1e-12);
  });

  it('a cone that widens upward, up to half its height: half as wide, though no vertex is there', () => {
    const funnel = revolve(
      [
        [0, 0],
        [20, 40],
        [0, 40],
      ],
      32,
    );
    expectClose(areaOf(footprintOf(funnel, { throughZMm: 20 })), polygonArea(10, 32), 1e-12);
  });

  it('two bodies: the string around both', () => {
    const both = joined(box([10, 10, 10]), box([10, 10, 10], [20, 0, 0]));
    expectClose(areaOf(footprintOf(both)), 300, 1e-12);
  });

  it('a stray vertex that no triangle uses does not count; nothing there, nothing taken', () => {
    const cube = box([10, 10, 10]);
    const stray: TriangleMesh = { ...cube, positions: Float64Array.from([...cube.positions, 999, 999, 0]) };
    expectClose(areaOf(footprintOf(stray)), 100, 1e-12);
    expect(footprintOf({ ...cube, triangles: new Int32Array(0) }).us).toHaveLength(0);
    expect(footprintOf(cube, { throughZMm: -1 }).us).toHaveLength(0);
  });
});
