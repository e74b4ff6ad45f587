import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { joined, moved, reversed, turned } from '../../support/meshTools';
import { box, icosphere, revolve, revolvedVolume, type OutlinePoint } from '../../support/shapes';
import { levelsOf } from './levelsOf';
import {
  ballMm3,
  boxTruth,
  ell,
  ellTruth,
  fullBall,
  fullTorus,
  steinerOf,
  tangentialOf,
  torusMm3,
} from './truths';

/** Of the volume at 1 mm voxels: on the surface, and off it. */
const ON = 2e-4;
const OFF = 5e-4;

type Truth = (levelMm: number) => number;

const POSE = [1, 0.31, -0.22, 0.45] as const;

/** A tube with half balls on its ends, whose facets hold what the round one does. */
function fullCapsule(radius: number, length: number, rings: number): TriangleMesh {
  const ends: OutlinePoint[] = Array.from({ length: 2 * rings + 2 }, (_, k) => {
    const angle = (Math.PI * (k <= rings ? k : k - 1)) / (2 * rings);
    const r = k === 0 || k === 2 * rings + 1 ? 0 : radius * Math.sin(angle);
    return [r, -radius * Math.cos(angle) + (k <= rings ? -length / 2 : length / 2)];
  });
  const grow = Math.sqrt(capsuleMm3(radius, length) / revolvedVolume(ends, 4 * rings));
  return revolve(
    ends.map(([r, z]) => [grow * r, z] as const),
    4 * rings,
  );
}

const capsuleMm3 = (radius: number, length: number): number =>
  ballMm3(radius) + Math.PI * radius ** 2 * length;

const ICOSAHEDRON = turned(icosphere(36, 0), POSE);
const OCTAHEDRON: TriangleMesh = turned(
  {
    positions: Float64Array.from([40, 0, 0, -40, 0, 0, 0, 40, 0, 0, -40, 0, 0, 0, 40, 0, 0, -40]),
    triangles: Int32Array.from(
      [0, 1].flatMap((x) =>
        [2, 3].flatMap((y) => [4, 5].flatMap((z) => ((x + y + z) % 2 === 0 ? [x, y, z] : [x, z, y]))),
      ),
    ),
  },
  POSE,
);
const ELL = ell(60, 28, 34);

describe.each<[string, TriangleMesh, Truth]>([
  [
    'box of 12 triangles, turned (Steiner; smaller box)',
    turned(box([60, 50, 40]), POSE),
    boxTruth([60, 50, 40]),
  ],
  ['icosahedron (Steiner; smaller copy)', ICOSAHEDRON, tangentialOf(ICOSAHEDRON)],
  ['octahedron (Steiner; smaller copy)', OCTAHEDRON, tangentialOf(OCTAHEDRON)],
  ['L with an inner edge (plane figures)', turned(ELL, POSE), ellTruth(60, 28, 34)],
  ['ball (closed form)', fullBall(32, 100), (t) => ballMm3(32 + t)],
  ['torus (Pappus)', fullTorus(36, 16, 160, 80), (t) => torusMm3(36, 16 + t)],
  ['capsule (closed form)', fullCapsule(20, 30, 40), (t) => capsuleMm3(20 + t, 30)],
  [
    'hollow ball (two closed forms)',
    joined(fullBall(32, 80), reversed(fullBall(16, 60))),
    (t) => ballMm3(32 + t) - ballMm3(16 - t),
  ],
])('levels at 1 mm: %s', (_name, mesh, truth) => {
  it('0, +10 and -8 mm', () => {
    const [on, out, inward] = levelsOf(mesh, [0, 10, -8]);
    expectClose(on!.volumeMm3, truth(0), ON, 'on the surface');
    expectClose(out!.volumeMm3, truth(10), OFF, '10 mm out');
    // What the hollow ball and the torus leave is nothing, or a tenth.
    if (truth(-8) > 0.2 * truth(0)) expectClose(inward!.volumeMm3, truth(-8), OFF, '8 mm in');
  });
});

it('a wall of 16 mm is gone 11 mm in; a hollow of radius 16 is filled 18 mm out (two closed forms)', () => {
  const shell = joined(fullBall(32, 80), reversed(fullBall(16, 60)));
  const [gone, filled] = levelsOf(shell, [-11, 18]);
  expect(gone!.volumeMm3).toBe(0);
  expectClose(filled!.volumeMm3, ballMm3(50), OFF);
});

describe('levels close to the surface, in voxels', () => {
  const SMALL = [0, 0.3, -0.3, 1, -1, 2, -2];

  it.each<[string, TriangleMesh, Truth]>([
    ['ball', fullBall(24, 120), (t) => ballMm3(24 + t)],
    ['ball of 320 triangles (Steiner)', icosphere(24, 2), steinerOf(icosphere(24, 2))],
    ['box, turned', turned(box([40, 50, 30]), POSE), boxTruth([40, 50, 30])],
    ['torus', fullTorus(24, 10, 240, 120), (t) => torusMm3(24, 10 + t)],
  ])('%s', (name, mesh, truth) => {
    const levels = name.includes('Steiner') ? SMALL.filter((level) => level >= 0) : SMALL;
    levelsOf(mesh, levels).forEach((found, i) =>
      expectClose(found.volumeMm3, truth(levels[i]!), ON, `level ${levels[i]!}`),
    );
  });

  it('between 3.4 and 3.7 voxels, where the octants cease to need a sign of their own', () => {
    for (const level of [3.4, 3.47, 3.5, 3.55, 3.59, 3.61, 3.7])
      for (const side of [level, -level])
        expectClose(
          levelsOf(fullBall(24, 60), [side])[0]!.volumeMm3,
          ballMm3(24 + side),
          OFF,
          `level ${side}`,
        );
  });

  it('the layer between two of them is told to 1 %: it is what a brushed skin holds', () => {
    const [a, b] = levelsOf(fullBall(24, 120), [0, 0.3]);
    expectClose(b!.volumeMm3 - a!.volumeMm3, ballMm3(24.3) - ballMm3(24), 0.01);
  });
});

it('areas of the levels: ball and torus (closed forms)', () => {
  const [ball, torus] = [fullBall(24, 100), fullTorus(24, 10, 120, 60)];
  levelsOf(ball, [5, -5]).forEach(({ areaMm2 }, i) =>
    expectClose(areaMm2, 4 * Math.PI * (i === 0 ? 29 : 19) ** 2, 0.005),
  );
  levelsOf(torus, [5, -5]).forEach(({ areaMm2 }, i) =>
    expectClose(areaMm2, 4 * Math.PI ** 2 * 24 * (i === 0 ? 15 : 5), 0.01),
  );
});

it('a coarse lattice says so: on a box, what it is off by is within three times its doubt and a layer', () => {
  const [mesh, truth] = [turned(box([60, 50, 40]), POSE), boxTruth([60, 50, 40])];
  for (const voxelMm of [1, 2, 3]) {
    levelsOf(mesh, [10, -8], { voxelMm }).forEach(({ volumeMm3, doubtMm3, areaMm2 }, i) => {
      const off = Math.abs(volumeMm3 - truth([10, -8][i]!));
      expect(off).toBeLessThan(3 * doubtMm3 + 1e-3 * voxelMm * areaMm2);
    });
  }
});

it('two pieces apart each grow alone, until they meet (closed form of two balls)', () => {
  const pair = joined(fullBall(18, 70), moved(fullBall(18, 70), [50, 0, 0]));
  const [apart, met] = levelsOf(pair, [5, 10]);
  expectClose(apart!.volumeMm3, 2 * ballMm3(23), OFF);
  const lens = (Math.PI * (4 * 28 + 50) * (2 * 28 - 50) ** 2) / 12;
  expectClose(met!.volumeMm3, 2 * ballMm3(28) - lens, OFF);
});
