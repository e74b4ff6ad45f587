import { describe, expect, it } from 'vitest';
import { boundsOf, triangleCount, type TriangleMesh } from '../../../src/geometry';
import type { LevelField } from '../../../src/geometry/solids/levelField';
import { finestEdgeMm, gridAround } from '../../../src/geometry/solids/levelGrid';
import { levelShell, levelSurface } from '../../../src/geometry/solids/levelSurface';
import type { Solid } from '../../../src/geometry/solids/solid';
import { expectClose } from '../../support/close';
import { boxField, sphereField, torusField, type KnownField } from '../../support/distances';
import { byManifold } from '../../support/manifoldOracle';
import { problemOf, valueOf } from '../../support/outcome';
import type { Vec3 } from '../../support/shapes';

/**
 * Why the tolerances: corners sit on the level, to within a thousandth of the edge. At a point with weights w1, w2, w3 in a
 * facet with sides up to L, a level of curvatures up to k lies k/2 (w1 w2 + w2 w3 + w3 w1) L2 away at most; the mean of each
 * product over a facet is 1/12. So the volume is off by at most area x (k L2 / 8 + edge / 1000). Where the level has an edge,
 * facets within a cell (L) of it may cut it: at most a quarter disc, pi L2 / 4, for every mm of it.
 */
const SPHERE = { name: 'sphere', field: sphereField(50), curvature: (t: number) => 1 / (50 + t) };
const TORUS = { name: 'torus', field: torusField(50, 12), curvature: (t: number) => 1 / (12 + t) };
const BOX = { name: 'rounded box', field: boxField([80, 60, 41]), curvature: (t: number) => 1 / t };

const doubtMm3 = (field: KnownField, t: number, curvature: number, longest: number, edgeMm: number): number =>
  field.areaMm2(t) * ((curvature * longest ** 2) / 8 + edgeMm / 1000);

const smooth = [SPHERE, TORUS, BOX].flatMap((shape) =>
  [4, 2].flatMap((edgeMm) => (shape === BOX ? [3, 8] : [-4, 0, 8]).map((t) => ({ ...shape, edgeMm, t }))),
);

describe('levels of exact distances hold what closed forms say, and Manifold takes them', () => {
  it.each(smooth)('$name, level $t mm, edge $edgeMm mm', async ({ field, curvature, edgeMm, t }) => {
    const solid = valueOf(await levelSurface({ ...field, edgeMm, levelMm: t }));
    const longest = longestEdge(solid.mesh);
    expect(longest).toBeLessThan(1.3 * edgeMm);
    const offBy = Math.abs(solid.volumeMm3 - field.volumeMm3(t));
    expect(offBy).toBeLessThan(doubtMm3(field, t, curvature(t), longest, edgeMm));
    expectTaken(solid);
    expect(farthestOff(solid.mesh, field, t)).toBeLessThan(edgeMm / 1000);
  });

  it.each([SPHERE, TORUS])('$name: half the edge, a quarter of the error', async ({ field }) => {
    const errors: number[] = [];
    for (const edgeMm of [4, 2]) {
      const { volumeMm3 } = valueOf(await levelSurface({ ...field, edgeMm, levelMm: 0 }));
      errors.push(field.volumeMm3(0) - volumeMm3);
    }
    expect(errors[0]! / errors[1]!).toBeGreaterThan(3.5);
    expect(errors[0]! / errors[1]!).toBeLessThan(4.5);
  });

  const sides: Vec3 = [80, 60, 41];
  it.each([
    [-6, 2],
    [0, 2],
    [0, 4],
  ])('box, whose level %d mm has sharp edges, edge %d mm', async (t, edgeMm) => {
    const field = boxField(sides);
    for (const turn of [0, 0.4]) {
      const turnedField = turnedAboutX(field, turn);
      const solid = valueOf(await levelSurface({ ...turnedField, edgeMm, levelMm: t }));
      const rimMm = 4 * sides.reduce((sum, side) => sum + side + 2 * t, 0);
      const limit = (rimMm * Math.PI * longestEdge(solid.mesh) ** 2) / 4 + (field.areaMm2(0) * edgeMm) / 1000;
      expect(Math.abs(solid.volumeMm3 - field.volumeMm3(t))).toBeLessThan(limit);
      expectTaken(solid);
    }
  });

  it('a torus has one handle (Euler: vertices - edges + facets = 0), a sphere none (2)', async () => {
    for (const [field, euler] of [
      [torusField(50, 12), 0],
      [sphereField(50), 2],
    ] as const) {
      const { mesh } = valueOf(await levelSurface({ ...field, edgeMm: 4, levelMm: 0 }));
      expect(mesh.positions.length / 3 - triangleCount(mesh) / 2).toBe(euler);
    }
  });

  it('2 km from the origin as near it: corners on the level to 1e-5 mm, where float32 would step by 0.125 mm', async () => {
    const field = sphereField(50, [2e6, -1e6, 5e5]);
    const solid = valueOf(await levelSurface({ ...field, edgeMm: 4, levelMm: 1 }));
    expect(farthestOff(solid.mesh, field, 1)).toBeLessThan(1e-5);
    const offBy = Math.abs(solid.volumeMm3 - field.volumeMm3(1));
    expect(offBy).toBeLessThan(doubtMm3(field, 1, 1 / 51, longestEdge(solid.mesh), 4));
  });

  it('the same field gives the same mesh, to the last bit', async () => {
    const twice = await Promise.all(
      [0, 1].map(() => levelSurface({ ...TORUS.field, edgeMm: 4, levelMm: 2, baseMm: -1.7 })),
    );
    expect(valueOf(twice[0]!)).toEqual(valueOf(twice[1]!));
  });
});

describe('cut at the base', () => {
  const at: Vec3 = [10, 20, 31.7];
  const baseMm = 12.3456789;
  const field = sphereField(50, at);
  const below = (radius: number): number => capMm3(radius, radius - (at[2] - baseMm));

  it('a ball without its cap: flat to the last bit, closed, and of the volume that is left', async () => {
    const solid = valueOf(await levelSurface({ ...field, edgeMm: 2, levelMm: 0, baseMm }));
    expectFlatBase(solid.mesh, baseMm);
    const exact = field.volumeMm3(0) - below(50);
    expect(Math.abs(solid.volumeMm3 - exact)).toBeLessThan(
      doubtMm3(field, 0, 1 / 50, longestCurvedEdge(solid.mesh, baseMm), 2),
    );
    expectTaken(solid);
  });

  it('a shell is open at the board: its foot is the ring between two circles, flat and facing down', async () => {
    const solid = valueOf(await levelShell({ ...field, edgeMm: 2, innerMm: 0, outerMm: 6, baseMm }));
    expectFlatBase(solid.mesh, baseMm);
    const rise = at[2] - baseMm;
    const ringMm2 = Math.PI * (56 ** 2 - rise ** 2 - (50 ** 2 - rise ** 2));
    // Chords of a circle: sides up to 2.5 mm on 46 mm take off less than 2.5^2 / (6 x 46^2) of its disc, twice (two rims).
    expectClose(footMm2(solid.mesh, baseMm), ringMm2, 0.01);
    const exact = field.volumeMm3(6) - below(56) - (field.volumeMm3(0) - below(50));
    const longest = longestCurvedEdge(solid.mesh, baseMm);
    const limit = [0, 6].reduce((sum, t) => sum + doubtMm3(field, t, 1 / (50 + t), longest, 2), 0);
    expect(Math.abs(solid.volumeMm3 - exact)).toBeLessThan(limit);
    expectTaken(solid);
  });

  it('flat after simplifying too', async () => {
    const solid = valueOf(
      await levelShell({ ...field, edgeMm: 3, innerMm: 0, outerMm: 6, baseMm, simplifyMm: 0.1 }),
    );
    expectFlatBase(solid.mesh, baseMm);
    expectTaken(solid);
  });

  it('a base below everything cuts nothing; one above everything leaves nothing', async () => {
    const options = { ...field, edgeMm: 4, levelMm: 0 };
    const whole = valueOf(await levelSurface(options));
    const uncut = valueOf(await levelSurface({ ...options, baseMm: at[2] - 50 - 20 }));
    expectClose(uncut.volumeMm3, whole.volumeMm3, 1e-3);
    expect(problemOf(await levelSurface({ ...options, baseMm: at[2] + 50 })).code).toBe('ZERO_VOLUME');
  });
});

describe('between two levels', () => {
  const shells = [SPHERE, TORUS, BOX].flatMap((shape) =>
    [0.5, 6].map((thickness) => ({ ...shape, thickness })),
  );

  it.each(shells)('$name, $thickness mm thick, edge 4 mm', async ({ field, curvature, thickness }) => {
    const inner = 3;
    const outer = inner + thickness;
    const solid = valueOf(await levelShell({ ...field, edgeMm: 4, innerMm: inner, outerMm: outer }));
    const exact = field.volumeMm3(outer) - field.volumeMm3(inner);
    const limit = [inner, outer].reduce((sum, t) => sum + doubtMm3(field, t, curvature(t), 5.2, 4), 0);
    expect(Math.abs(solid.volumeMm3 - exact)).toBeLessThan(limit);
    expectTaken(solid);
  });

  it('an inner level deeper than the solid leaves it solid', async () => {
    const { field } = SPHERE;
    const solid = valueOf(await levelShell({ ...field, edgeMm: 4, innerMm: -60, outerMm: 1 }));
    const whole = valueOf(await levelSurface({ ...field, edgeMm: 4, levelMm: 1 }));
    expect(solid.volumeMm3).toBe(whole.volumeMm3);
  });
});

it('simplified by 0.05 mm: fewer facets, and none farther off than its chords and those 0.05 mm', async () => {
  const { field } = SPHERE;
  const full = valueOf(await levelSurface({ ...field, edgeMm: 2, levelMm: 0 }));
  const less = valueOf(await levelSurface({ ...field, edgeMm: 2, levelMm: 0, simplifyMm: 0.05 }));
  expect(triangleCount(less.mesh)).toBeLessThan(0.6 * triangleCount(full.mesh));
  // At the middle of a facet the three products of weights are 1/9: k/2 x 3/9 x L2.
  const chordMm = longestEdge(full.mesh) ** 2 / (6 * 50);
  const distances = middlesOf(less.mesh).map((p) => field.distanceAtMm(...p));
  expect(Math.max(...distances)).toBeLessThan(0.05);
  expect(Math.min(...distances)).toBeGreaterThan(-chordMm - 0.05);
  expectTaken(less);
});

describe('what can not be drawn', () => {
  const { field } = SPHERE;

  it('deeper than the solid: nothing is left (in range of the grid or not)', async () => {
    for (const levelMm of [-50.5, -80])
      expect(problemOf(await levelSurface({ ...field, edgeMm: 4, levelMm })).code).toBe('ZERO_VOLUME');
  });

  it('a distance that is no number, or a field that fails: its own error comes through, at once', async () => {
    let asked = 0;
    const broken = (): number => {
      asked++;
      throw new Error('the field broke');
    };
    await expect(levelSurface({ ...field, distanceAtMm: broken, edgeMm: 4, levelMm: 0 })).rejects.toThrow(
      'the field broke',
    );
    expect(asked).toBe(1);
    await expect(levelSurface({ ...field, distanceAtMm: () => NaN, edgeMm: 4, levelMm: 0 })).rejects.toThrow(
      /expected a distance, got NaN/,
    );
  });

  it('a level that leaves its bounds, which the grid would close with a wall', async () => {
    for (const [k, axis] of ['x', 'y', 'z'].entries()) {
      const bounds = structuredClone(field.bounds);
      bounds.max[k] = 20;
      await expect(levelSurface({ ...field, bounds, edgeMm: 4, levelMm: 0 })).rejects.toThrow(
        `leaves them along ${axis}`,
      );
    }
  });

  it('a shell turned inside out', () => {
    expect(() => levelShell({ ...field, edgeMm: 4, innerMm: 2, outerMm: 2 })).toThrow(
      /expected outerMm above/,
    );
  });

  it('an edge finer than the memory of the library allows; the finest one is told', () => {
    for (const levelMm of [0, 25]) {
      const edgeMm = finestEdgeMm({ bounds: field.bounds, levelMm });
      expect(edgeMm).toBeGreaterThan(0.2);
      expect(edgeMm).toBeLessThan(1);
      expect(gridAround({ bounds: field.bounds, levelMm, edgeMm })).toBeDefined();
      expect(() => gridAround({ bounds: field.bounds, levelMm, edgeMm: edgeMm / 1.1 })).toThrow(
        /finestEdgeMm/,
      );
    }
  });
});

/** Manifold, loaded apart from our code, takes the mesh and agrees about its volume (its coordinates are float32). */
function expectTaken(solid: Solid): void {
  expectClose(byManifold(solid.mesh).volume, solid.volumeMm3, 1e-5, 'volume by Manifold');
}

/** How far the farthest corner lies from the level. */
const farthestOff = (mesh: TriangleMesh, field: LevelField, levelMm: number): number =>
  pointsOf(mesh).reduce((most, p) => Math.max(most, Math.abs(field.distanceAtMm(...p) - levelMm)), 0);

function expectFlatBase(mesh: TriangleMesh, baseMm: number): void {
  expect(boundsOf(mesh).min[2]).toBe(baseMm);
  const near = pointsOf(mesh).filter(([, , z]) => z < baseMm + 1e-3);
  expect(near.length).toBeGreaterThan(50);
  expect(near.filter(([, , z]) => z !== baseMm)).toEqual([]);
}

/** Area of the facets in the base plane; throws where one faces up. */
function footMm2(mesh: TriangleMesh, baseMm: number): number {
  let sum = 0;
  for (const [a, b, c] of cornersOf(mesh)) {
    if (a[2] !== baseMm || b[2] !== baseMm || c[2] !== baseMm) continue;
    const area = ((c[0] - a[0]) * (b[1] - a[1]) - (b[0] - a[0]) * (c[1] - a[1])) / 2;
    if (area < 0) throw new Error('a facet of the base faces up');
    sum += area;
  }
  return sum;
}

/** Of a ball, by its height (Archimedes). */
const capMm3 = (radius: number, height: number): number =>
  (Math.PI * height ** 2 * (3 * radius - height)) / 3;

function pointsOf({ positions: p }: TriangleMesh): Vec3[] {
  return Array.from({ length: p.length / 3 }, (_, v): Vec3 => [p[3 * v]!, p[3 * v + 1]!, p[3 * v + 2]!]);
}

function cornersOf(mesh: TriangleMesh): (readonly [Vec3, Vec3, Vec3])[] {
  const points = pointsOf(mesh);
  return Array.from({ length: triangleCount(mesh) }, (_, t) => {
    const [a, b, c] = mesh.triangles.subarray(3 * t, 3 * t + 3);
    return [points[a!]!, points[b!]!, points[c!]!] as const;
  });
}

const middlesOf = (mesh: TriangleMesh): Vec3[] =>
  cornersOf(mesh).map(([a, b, c]) => [0, 1, 2].map((k) => (a[k]! + b[k]! + c[k]!) / 3) as unknown as Vec3);

const longestEdge = (mesh: TriangleMesh): number => longestCurvedEdge(mesh, NaN);

/** Of the facets that do not lie in the base plane. */
function longestCurvedEdge(mesh: TriangleMesh, baseMm: number): number {
  let longest = 0;
  for (const corners of cornersOf(mesh)) {
    if (corners.every(([, , z]) => z === baseMm)) continue;
    corners.forEach((a, k) => {
      const b = corners[(k + 1) % 3]!;
      longest = Math.max(longest, Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]));
    });
  }
  return longest;
}

/** The field turned about the x axis, so that its flat sides do not lie along the grid. */
function turnedAboutX({ distanceAtMm, bounds }: LevelField, angle: number): LevelField {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const half = bounds.max;
  const [y, z] = [c * half[1] + s * half[2], s * half[1] + c * half[2]];
  return {
    distanceAtMm: (px, py, pz) => distanceAtMm(px, c * py + s * pz, c * pz - s * py),
    bounds: { min: [-half[0], -y, -z], max: [half[0], y, z] },
  };
}
