import { describe, expect, it } from 'vitest';
import { boundsOf, divergenceVolume, simplifyMesh, type TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { joined, quartered } from '../../support/meshTools';
import { openSides } from '../../support/openSides';
import { box, icosphere } from '../../support/shapes';

const count = (mesh: TriangleMesh): number => mesh.triangles.length / 3;

/** Vertices that a triangle uses, as [x, y, z]. */
const points = ({ positions }: TriangleMesh): number[][] =>
  Array.from({ length: positions.length / 3 }, (_, v) => [...positions.slice(3 * v, 3 * v + 3)]);

describe('a mesh simplified for show', () => {
  const ball = icosphere(50, 6);
  const simple = simplifyMesh(ball, 5000);

  it('is given back as it is where it has no more triangles than wanted', () => {
    expect(simplifyMesh(ball, count(ball))).toBe(ball);
    expect(simplifyMesh(ball, 1e6)).toBe(ball);
  });

  it('has about as many triangles as wanted, is closed and of the same volume', () => {
    expect(count(ball)).toBe(81_920);
    expect(count(simple)).toBeGreaterThan(0.75 * 5000);
    expect(count(simple)).toBeLessThan(1.1 * 5000);
    expect(openSides(simple)).toBe(0);
    // Vertices lie on the ball, so facets lie within it: those of L long take k L2 / 8 off, 5 mm of 50 mm a thousandth of the radius.
    expectClose(divergenceVolume(simple), divergenceVolume(ball), 4e-3);
  });

  it('leaves every vertex within a cell of the original: cells here are 5 mm at most, tangent planes of one meet this near to the ball', () => {
    const cellMm = 5;
    const reachRad = (Math.sqrt(3) * cellMm) / 2 / 50;
    const beyond = 50 / Math.cos(reachRad) - 50;
    for (const [x, y, z] of points(simple)) {
      const r = Math.hypot(x!, y!, z!);
      expect(r).toBeLessThan(50 + beyond);
      expect(r).toBeGreaterThan(50 - beyond);
    }
  });

  it('keeps corners and edges of a box where they are, and flats flat', () => {
    let fine = box([60, 40, 20], [1000, 0, 0]);
    for (let n = 0; n < 6; n++) fine = quartered(fine);
    const few = simplifyMesh(fine, 3000);
    expect(count(few)).toBeLessThan(3300);
    for (const corner of points(box([60, 40, 20], [1000, 0, 0]))) {
      const nearest = Math.min(...points(few).map((p) => Math.hypot(...p.map((c, a) => c - corner[a]!))));
      expect(nearest).toBeLessThan(0.02);
    }
    expectClose(divergenceVolume(few), 60 * 40 * 20, 1e-3);
  });

  it('takes what is smaller than a cell away and leaves the rest', () => {
    const speck = icosphere(0.05, 3);
    const few = simplifyMesh(joined(ball, speck), 5000);
    expect(openSides(few)).toBe(0);
    expectClose(divergenceVolume(few), divergenceVolume(ball), 4e-3);
  });

  it('ends where all of it lies in one place or has no area', () => {
    const flat: TriangleMesh = {
      positions: new Float64Array(30).fill(7),
      triangles: Int32Array.from({ length: 30 }, (_, c) => c % 10),
    };
    const none = simplifyMesh(flat, 5);
    expect(count(none)).toBeLessThanOrEqual(5);
    expect(none.positions.every(Number.isFinite)).toBe(true);
    expect(boundsOf(flat).min).toEqual([7, 7, 7]);
  });
});
