import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { boundsOf, buildField, divergenceVolume, thinWalls, type TriangleMesh } from '../../../src/geometry';
import { planeFraction } from '../../../src/geometry/field/planeFraction';
import { sizeScan } from '../../../src/plan';
import { expectClose } from '../../support/close';
import { joined, moved, reversed, turned } from '../../support/meshTools';
import { problemOf, valueOf } from '../../support/outcome';
import { box, sphere } from '../../support/shapes';
import { levelsOf } from './levelsOf';
import { ballMm3, boxTruth, fullBall } from './truths';

/** What the field once got wrong: each of these failed before it was mended. */

it.each([3.47, 3.5, -3.5, 3.55, 3.59])(
  'a level %d voxels off the surface (closed form of a ball)',
  (level) => {
    expectClose(levelsOf(fullBall(30, 60), [level])[0]!.volumeMm3, ballMm3(30 + level), 5e-4);
  },
);

it('a base plane far below the body leaves all of it (Steiner)', () => {
  for (const baseMm of [-20, -60, -500])
    expectClose(levelsOf(box([60, 50, 40]), [6], { baseMm })[0]!.volumeMm3, boxTruth([60, 50, 40])(6), 5e-4);
});

describe('progress', () => {
  const toldBy = (mesh: TriangleMesh): number[] => {
    const told: number[] = [];
    levelsOf(mesh, [8, -8], { voxelMm: 0.6, onProgress: (share) => told.push(share) });
    return told;
  };
  it('never falls back where shells overlap', () => {
    const told = toldBy(joined(sphere(40, 48), moved(sphere(40, 48), [50, 0, 0])));
    told.forEach((share, i) => expect(share).toBeGreaterThanOrEqual(told[i - 1] ?? 0));
  });
  it('ends at 1', () => expect(toldBy(fullBall(40, 60)).at(-1)).toBe(1));
});

it('a stop is heard while faces inside the body are looked for', () => {
  const pair = joined(sphere(40, 48), moved(sphere(40, 48), [50, 0, 0]));
  // A clock on which each step is long enough for a question.
  let clockMs = 0;
  vi.spyOn(Date, 'now').mockImplementation(() => (clockMs += 100));
  onTestFinished(() => void vi.restoreAllMocks());
  let share = 0;
  let asked = 0;
  // Faces inside are looked for between 0.3 and 0.35 of the work.
  const field = buildField(pair, boundsOf(pair), {
    voxelMm: 2,
    levelsMm: [10, -8],
    onProgress: (told) => (share = told),
    shouldStop: () => {
      if (share > 0.3 && share < 0.35) asked++;
      return asked > 0;
    },
  });
  expect(problemOf(field).code).toBe('STOPPED');
  expect(asked).toBe(1);
});

describe('what is left a voxel or less thick', () => {
  const shell = joined(fullBall(32, 80), reversed(fullBall(16, 60)));
  const truth = (t: number): number => Math.max(0, ballMm3(32 + t) - ballMm3(16 - t));
  it.each([-7, -7.5, -7.75, -7.9, -8, -8.2, -8.4, -8.6, -9, -9.5])('a wall of 16 mm, %d mm', (level) => {
    const size = valueOf(
      sizeScan(
        { mesh: shell, format: 'stl', trianglesRead: 0, coordinateStep: 0, findings: [] },
        { fileUnit: 'mm', voxelMm: 1, offsetsMm: [level] },
      ),
    );
    const { value, low, high } = size.offsets!.volumes[0]!.volumeCm3;
    expect(value).toBeGreaterThanOrEqual(low);
    expect(high).toBeGreaterThanOrEqual(value);
    expect(truth(level) / 1000).toBeGreaterThanOrEqual(low);
    expect(truth(level) / 1000).toBeLessThanOrEqual(high);
  });
});

describe('thin walls that face no axis', () => {
  it.each([40, 45, 50])('a plate of 0.4 mm tilted by %d degrees', (degrees) => {
    const half = (degrees * Math.PI) / 360;
    const plate = turned(box([100, 80, 0.4]), [Math.cos(half), Math.sin(half), 0, 0]);
    expectClose(thinWalls(plate, boundsOf(plate)).thinnestMm!, 0.4, 1e-6);
  });
  it('a body none of whose faces look along an axis', () => {
    const octahedron: TriangleMesh = {
      positions: Float64Array.from([40, 0, 0, -40, 0, 0, 0, 40, 0, 0, -40, 0, 0, 0, 40, 0, 0, -40]),
      triangles: Int32Array.from([0, 2, 4, 0, 5, 2, 0, 4, 3, 0, 3, 5, 1, 4, 2, 1, 2, 5, 1, 3, 4, 1, 5, 3]),
    };
    expect(divergenceVolume(octahedron)).toBeGreaterThan(0);
    expect(thinWalls(octahedron, boundsOf(octahedron)).thinnerThan(1)).toEqual({
      areaMm2: 0,
      thinnestMm: Infinity,
    });
  });
});

it('planes across an axis leave a slab exactly', () => {
  for (const d of [-0.45, -0.2, 0.1, 0.3, 0.45])
    expectClose(planeFraction(d, 1, 0, 0), 0.5 - d, 1e-7, `at ${d}`);
});

it('boxes of whole millimeters along the axes: 8 mm in within 0.05 %, on the surface within 0.02 %', () => {
  for (const size of [
    [120, 80, 60],
    [60, 50, 60],
    [41, 61, 81],
  ] as const) {
    const [on, inward] = levelsOf(box(size), [0, -8]);
    expectClose(on!.volumeMm3, boxTruth(size)(0), 2e-4, `${size.join(' ')} on`);
    expectClose(inward!.volumeMm3, boxTruth(size)(-8), 5e-4, `${size.join(' ')} in`);
  }
});
