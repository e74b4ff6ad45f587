import { describe, expect, it } from 'vitest';
import { measureSoup } from '../../src/geometry/measure/measureSoup';
import { windingAbout, windingTree } from '../../src/geometry/measure/windingTree';
import { sizeScan } from '../../src/plan';
import { say } from '../../src/words/say';
import { expectClose } from '../support/close';
import { lcg } from '../support/lcg';
import { jittered, patchedBox, strewn } from '../support/looseCorners';
import { halfWidth, measured, outcomeOf } from '../support/measured';
import { damaged, reversed } from '../support/meshTools';
import { problemOf, valueOf } from '../support/outcome';
import { box, revolvedVolume, sphere, sphereOutline, torus, torusOutline } from '../support/shapes';

describe('winding number of facets taken together', () => {
  it('is 1 inside a ball of 10 000 facets and 0 outside, to 0.04 (far ones as dipoles), to 2e-3 where asked closely', () => {
    const tree = windingTree(sphere(50, 51, 102));
    const random = lcg(11);
    for (let i = 0; i < 300; i++) {
      const at = [0, 1, 2].map(() => 140 * random() - 70) as [number, number, number];
      const radius = Math.hypot(...at);
      if (Math.abs(radius - 50) < 1) continue;
      const inside = radius < 50 ? 1 : 0;
      expect(Math.abs(windingAbout(tree, at) - inside)).toBeLessThan(0.04);
      expect(Math.abs(windingAbout(tree, at, 12) - inside)).toBeLessThan(2e-3);
    }
  });

  it('a square fills a sixth of what is seen from the middle of the cube on it (symmetry)', () => {
    const cube = box([2, 2, 2]);
    const face = { positions: cube.positions, triangles: cube.triangles.slice(0, 6) };
    expectClose(windingAbout(windingTree(face), [1, 1, 1]), 1 / 6, 1e-12, 'winding');
    expectClose(windingAbout(windingTree(reversed(face)), [1, 1, 1]), -1 / 6, 1e-12, 'winding, reversed');
  });
});

const BALL = revolvedVolume(sphereOutline(50, 24), 48);
const RING = revolvedVolume(torusOutline(60, 20, 24), 48, true);

describe('a volume from facets that do not join', () => {
  it.each([
    { name: 'ball', mesh: sphere(50, 24, 48), truth: BALL },
    { name: 'torus', mesh: torus(60, 20, 48, 24), truth: RING },
    { name: 'box', mesh: box([40, 30, 20]), truth: 24000 },
  ])(
    '$name with corners off by 0.02 and 1 mm, 0 and 5 % missing: the range holds the polyhedron',
    (shape) => {
      for (const rmsMm of [0.02, 1])
        for (const share of shape.name === 'box' ? [0] : [0, 0.05]) {
          const mesh = jittered(damaged(shape.mesh, 'deleted', share, lcg(2)), rmsMm, lcg(3));
          const solid = valueOf(measureSoup(mesh, 0));
          expect(Math.abs(solid.volumeMm3 - shape.truth), `${rmsMm} mm, ${share}`).toBeLessThanOrEqual(
            halfWidth(solid),
          );
          expect(solid.method).toBe('field');
          // Of a share missing, the same share is missing of the winding.
          expect(Math.abs(solid.soup!.insideWinding - (1 - share))).toBeLessThan(0.06);
        }
    },
  );

  it('facing inward altogether, it is the same piece', () => {
    const loose = jittered(sphere(50, 16, 32), 0.1, lcg(3));
    const [out, inward] = [valueOf(measureSoup(loose, 0)), valueOf(measureSoup(reversed(loose), 0))];
    expectClose(inward.volumeMm3, out.volumeMm3, 1e-9, 'volume');
    expect(inward.isMainTurned).toBe(true);
  });

  it('is what a size falls back on when merging corners does not close it, and NOT_CLOSED says so', () => {
    const mesh = patchedBox([40, 30, 20], [1, 2, 3, 4, 5, 6]);
    expect(measured(mesh).soup).toBeDefined();
    const size = valueOf(
      sizeScan(
        { mesh, format: 'stl', trianglesRead: mesh.triangles.length / 3, coordinateStep: 0, findings: [] },
        { fileUnit: 'mm' },
      ),
    );
    const codes = size.findings.map((f) => `${f.code} ${f.values.part ?? ''}`.trim());
    expect(codes).toContain('NOT_CLOSED winding');
    expect(codes).not.toContain('SELF_INTERSECT');
  });
});

describe('what has no inside stays refused', () => {
  it.each([100, 1000, 1_000_000])(
    '%i facets strewn at random: NOT_CLOSED, with the longest open loop in mm and as a share of the size',
    (count) => {
      const problem = problemOf(outcomeOf(strewn(count, lcg(count))));
      expect(problem.code).toBe('NOT_CLOSED');
      // A facet of a cube 16 mm wide is at most three of its diagonals around; the cube of all is 200 + 16 mm wide.
      expect(problem.values.longestLoopMm).toBeGreaterThan(16);
      expect(problem.values.longestLoopMm).toBeLessThan(3 * 16 * Math.sqrt(3));
      const share = Number(problem.values.longestLoopMm) / (216 * Math.sqrt(3));
      expectClose(Number(problem.values.longestLoopShare), share, 0.1, 'share of the size');
      expect(say(problem).text).toMatch(/longest open loop is [\d.]+ mm, [\d.]+ % of the size/);
    },
    60_000,
  );

  it('a flat sheet, a shallow bulge and a strip of one side, every corner moved by 0.02 mm', () => {
    const sheet = (bulge: (x: number, y: number) => number) => {
      const [flat] = [patchedBox([100, 100, 1], [20, 20, 20, 20, 20, 20])];
      const facets = flat.triangles.slice(0, 3 * 800);
      const positions = flat.positions.slice();
      for (let v = 0; v < positions.length; v += 3)
        positions[v + 2] = bulge(positions[v]! / 100, positions[v + 1]! / 100);
      return { positions, triangles: facets };
    };
    for (const mesh of [sheet(() => 0), sheet((x, y) => 3 * x * (1 - x) * y * (1 - y)), moebius()])
      for (const rmsMm of [0, 0.02])
        expect(problemOf(outcomeOf(jittered(mesh, rmsMm, lcg(8)))).code).toMatch(/NOT_CLOSED|NOT_ORIENTED/);
  });

  it('a ball whose facets face either way by a coin, and do not join', () => {
    const random = lcg(5);
    const mesh = jittered(damaged(sphere(50, 24), 'flipped', 0.5, random), 3, random);
    expect(problemOf(outcomeOf(mesh)).code).toMatch(/NOT_CLOSED|NOT_ORIENTED/);
  });
});

/** A band with one half turn (Moebius 1858, Listing 1861). */
function moebius() {
  const steps = 90;
  const positions = new Float64Array(6 * steps);
  const triangles: number[] = [];
  for (let i = 0; i < steps; i++) {
    const angle = (2 * Math.PI * i) / steps;
    [-10, 10].forEach((side, k) => {
      const r = 50 + side * Math.cos(angle / 2);
      positions.set([r * Math.cos(angle), r * Math.sin(angle), side * Math.sin(angle / 2)], 6 * i + 3 * k);
    });
    const [a, b] = [2 * i, 2 * i + 1];
    const [c, d] = i + 1 < steps ? [2 * i + 2, 2 * i + 3] : [1, 0];
    triangles.push(a, c, b, b, c, d);
  }
  return { positions, triangles: Int32Array.from(triangles) };
}
