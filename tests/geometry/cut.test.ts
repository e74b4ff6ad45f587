import { describe, expect, it } from 'vitest';
import {
  cutMesh,
  findFloor,
  measureSolid,
  type CutPlane,
  type SolidMeasure,
  type TriangleMesh,
} from '../../src/geometry';
import { sizeScan } from '../../src/plan';
import { expectClose } from '../support/close';
import { unionByManifold } from '../support/manifoldOracle';
import { asFloat32, joined, moved, reversed } from '../support/meshTools';
import { valueOf } from '../support/outcome';
import { roughTable } from '../support/roughTable';
import {
  box,
  icosphere,
  revolve,
  revolvedVolume,
  sphere,
  sphereOutline,
  type OutlinePoint,
} from '../support/shapes';

const TABLE_SEED = 43;

const scanOf = (mesh: TriangleMesh): Parameters<typeof sizeScan>[0] => ({
  mesh,
  format: 'stl',
  trianglesRead: mesh.triangles.length / 3,
  coordinateStep: 0,
  findings: [],
});

function cutAndMeasured(mesh: TriangleMesh, cuts: readonly CutPlane[]): SolidMeasure {
  const cut = cutMesh(mesh, cuts);
  return valueOf(measureSolid(cut.mesh, { coordinateStepMm: 0, isCutVertex: (v) => cut.onCut[v] === 1 }));
}

const above = (zMm: number): CutPlane => ({ axis: 2, atMm: zMm, keep: 'above' });
const below = (zMm: number): CutPlane => ({ axis: 2, atMm: zMm, keep: 'below' });

/** An outline of a ball cut at a height: the facet across the height is cut too, as a plane does. */
function outlineAbove(outline: readonly OutlinePoint[], height: number): OutlinePoint[] {
  const at = outline.findIndex(([, z]) => z > height);
  const [[r1, z1], [r2, z2]] = [outline[at - 1]!, outline[at]!];
  return [[r1 + ((height - z1) / (z2 - z1)) * (r2 - r1), height], ...outline.slice(at)];
}

describe('a faceted ball cut by a plane', () => {
  const outline = sphereOutline(50, 48);
  const ball = sphere(50, 48);
  const whole = revolvedVolume(outline, 96);

  it.each([20, 0, -33.3, 49.95])(
    'at z = %d mm: frusta of polygons above it, no hole and no doubt is left',
    (z) => {
      const kept = revolvedVolume(outlineAbove(outline, z), 96);
      const upper = cutAndMeasured(ball, [above(z)]);
      const lower = cutAndMeasured(ball, [below(z)]);
      expectClose(upper.volumeMm3, kept, 1e-10, 'above');
      expectClose(lower.volumeMm3, whole - kept, 1e-10, 'below');
      for (const solid of [upper, lower]) {
        expect(solid.rims.map((r) => r.kind)).toEqual(['cut']);
        expect(solid.doubt.capsMm3).toBe(0);
      }
    },
  );

  it('a round ball, at z = 20: pi h2 (3r - h) / 3 with h = 30, facets four times finer four times closer', () => {
    const exact = (Math.PI * 30 ** 2 * (150 - 30)) / 3;
    const [coarse, fine] = [4, 5].map(
      (level) => exact - cutAndMeasured(icosphere(50, level), [above(20)]).volumeMm3,
    ) as [number, number];
    expect(coarse).toBeGreaterThan(0);
    // Second order in the chord; where the plane crosses the facets moves the next term, so 3 % and not less.
    expectClose(coarse / fine, 4, 0.03, 'ratio of deficits');
  });

  it('a plane through a row of vertices, and a plane along a face: nothing is lost, nothing doubled', () => {
    const rowZ = outline[30]![1];
    expectClose(
      cutAndMeasured(ball, [above(rowZ)]).volumeMm3,
      revolvedVolume(outline.slice(30), 96),
      1e-10,
      'through vertices',
    );
    expectClose(cutAndMeasured(box([40, 30, 20]), [above(0)]).volumeMm3, 24_000, 1e-12, 'along the bottom');
    expectClose(cutAndMeasured(box([40, 30, 20]), [below(20)]).volumeMm3, 24_000, 1e-12, 'along the top');
  });

  const cube = box([40, 30, 20]);
  it.each<[string, CutPlane[], number, number[]]>([
    ['a slice between two heights', [above(4), below(9)], 40 * 30 * 5, [40, 30, 5]],
    [
      'two planes that meet inside: a corner block',
      [{ axis: 0, atMm: 10, keep: 'above' }, above(5)],
      30 * 30 * 15,
      [30, 30, 15],
    ],
    [
      'three planes: an eighth',
      [{ axis: 0, atMm: 10, keep: 'above' }, { axis: 1, atMm: 12, keep: 'below' }, above(5)],
      30 * 12 * 15,
      [30, 12, 15],
    ],
    [
      'six planes: a block from the middle, of which no facet of the file is left',
      [
        { axis: 0, atMm: 3, keep: 'above' },
        { axis: 0, atMm: 13, keep: 'below' },
        { axis: 1, atMm: 7, keep: 'above' },
        { axis: 1, atMm: 19, keep: 'below' },
        above(4),
        below(9),
      ],
      10 * 12 * 5,
      [10, 12, 5],
    ],
  ])('several cuts of a box: %s (length x width x height)', (_, cuts, volume, extents) => {
    const solid = cutAndMeasured(cube, cuts);
    expectClose(solid.volumeMm3, volume, 1e-12, 'volume');
    solid.extentsMm.forEach((mm, k) => expectClose(mm, extents[k]!, 1e-12, 'extent'));
    expect(solid.doubt.capsMm3).toBe(0);
  });

  it('what goes and what stays make the whole, and the finding names what went', () => {
    const size = valueOf(sizeScan(scanOf(ball), { fileUnit: 'mm', cuts: [above(20)] }));
    const cut = size.findings.find((f) => f.code === 'CUT_AWAY')!;
    expectClose(
      Number(cut.values.keptCm3) - Number(cut.values.effectCm3),
      whole / 1000,
      1e-10,
      'kept + removed',
    );
    expect(Number(cut.values.effectCm3)).toBeLessThan(0);
    expect(size).toMatchObject({ holes: 0, closed: true });
  });
});

describe('a table under the piece is found, and cutting there gives the piece back', () => {
  const slab = box([220, 200, 10], [-110, -100, 0]);
  const bust = box([60, 50, 120], [-30, -25, 10]);
  const ball = moved(asFloat32(sphere(50, 48)), [0, 0, 50]);
  const ballAbove = revolvedVolume(outlineAbove(sphereOutline(50, 48), -40), 96);

  it.each<[string, TriangleMesh, number]>([
    ['box on a slab, two shells', joined(bust, slab), 60 * 50 * 120],
    ['box on a slab, fused by Manifold', unionByManifold(bust, slab).mesh, 60 * 50 * 120],
    ['ball sunk 10 mm into a slab, two shells', joined(ball, slab), ballAbove],
    ['ball sunk 10 mm into a slab, fused by Manifold', unionByManifold(ball, slab).mesh, ballAbove],
  ])('%s', (_, scan, piece) => {
    const size = valueOf(sizeScan(scanOf(scan), { fileUnit: 'mm' }));
    const floor = size.findings.find((f) => f.code === 'FLOOR_FOUND');
    expect(floor?.status).toBe('look');
    expect(Math.abs(Number(floor?.values.topMm) - 10)).toBeLessThanOrEqual(0.5);
    const cut = valueOf(
      sizeScan(scanOf(scan), { fileUnit: 'mm', cuts: [above(Number(floor?.values.topMm))] }),
    );
    // 1e-6: Manifold writes float32; a top a hair off the true one takes or leaves a hair of the slab.
    expectClose(1000 * cut.volumeCm3.value, piece, 1e-6, 'piece without its table');
    expect(cut.findings.map((f) => f.code)).not.toContain('FLOOR_FOUND');
  });

  it.each<[string, TriangleMesh]>([
    ['a ball', ball],
    ['a box', box([60, 50, 120])],
    ['a smaller ball in the air', moved(sphere(30, 24), [0, 0, 9])],
  ])('%s alone has no table', (_, mesh) => {
    expect(findFloor(mesh)).toBeUndefined();
  });
});

describe('tables that are thick, or not quite level', () => {
  const block = box([60, 50, 80], [-30, -25, 20]);

  it('a table of 20 mm under a block of 80 is found, by the top of its 200 x 200 mm', () => {
    const table = box([200, 200, 20], [-100, -100, 0]);
    const floor = findFloor(joined(table, block))!;
    expectClose(floor.topMm, 20, 1e-6, 'top');
    expectClose(floor.areaMm2, 40_000, 1e-9, 'area, with what stands under the block');
    expect(floor.tiltDegrees).toBe(0);
  });

  it('a table that leans by 2 degrees is found, and the cut clears its highest corner', () => {
    const lean = Math.tan((2 * Math.PI) / 180);
    const level = box([200, 200, 20], [-100, -100, 0]);
    const positions = level.positions.map((x, i) => (i % 3 === 2 ? x + lean * level.positions[i - 2]! : x));
    const floor = findFloor(joined({ positions, triangles: level.triangles }, block))!;
    expectClose(floor.tiltDegrees, 2, 1e-6, 'tilt');
    // By hand: 20 mm plus 100 mm x tan 2 degrees at the edge of the table.
    expectClose(floor.topMm, 20 + 100 * lean, 1e-6, 'highest corner');
  });

  it(`a rough table (seed ${TABLE_SEED}): the top clears its highest corner, by little, and a speck on it does not raise it`, () => {
    const rough = roughTable(TABLE_SEED);
    const highest = Math.max(...rough.positions.filter((_, i) => i % 3 === 2));
    const speck = { ...rough, positions: rough.positions.slice() };
    speck.positions[3 * 500 + 2]! += 2;
    for (const table of [rough, speck]) {
      const { topMm } = findFloor(joined(table, block))!;
      expect(topMm).toBeGreaterThanOrEqual(highest);
      // The noise leans the mean plane by some 0.1 mm in 300 as well.
      expect(topMm).toBeLessThan(highest + 0.1);
    }
  });

  it('a foot that runs out onto the table is of the piece: the top stays near the table, far below where the foot ends', () => {
    // The foot starts at 6 degrees off level and would pass for table up to z = 20.5.
    const outline: OutlinePoint[] = [
      [150, 20],
      [41, 20],
      [36, 20.5],
      [33, 22],
      [30, 30],
      [30, 100],
      [0, 100],
    ];
    const { topMm } = findFloor(revolve(outline, 64))!;
    expect(topMm).toBeGreaterThanOrEqual(20);
    expect(topMm).toBeLessThan(20.2);
  });

  it('the underside of an inside-out block is no table', () => {
    expect(findFloor(reversed(block), { isInsideOut: true })).toBeUndefined();
  });
});
