import { describe, expect, it } from 'vitest';
import { divergenceVolume, type TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { moved } from '../../support/meshTools';
import { box, revolve, revolvedVolume, sphereOutline, type OutlinePoint } from '../../support/shapes';
import { levelsOf } from './levelsOf';
import { ballMm3, boxTruth } from './truths';

/** Of the skin, at 1 mm voxels. */
const SKIN = 5e-4;

/** A skin of 6 mm over a body that stands on a board: above the base plane, what the level holds less the body. */
const skinCm3 = (mesh: TriangleMesh, baseMm: number, voxelMm = 1): number =>
  (levelsOf(mesh, [6], { baseMm, voxelMm })[0]!.volumeMm3 - divergenceVolume(mesh)) / 1000;

/** The outline of a half ball with its flat base, its facets holding what the round one does. */
const DOME: OutlinePoint[] = [[0, 0], ...sphereOutline(50, 256).slice(128)];
const FULL = Math.cbrt(ballMm3(50) / 2 / revolvedVolume(DOME, 512));
const dome = revolve(
  DOME.map(([r, z]) => [FULL * r, FULL * z] as const),
  512,
);
/** A cylinder whose polygon has the circle's area. */
const wide = 40 * Math.sqrt((2 * Math.PI) / 256 / Math.sin((2 * Math.PI) / 256));
const cylinder = revolve(
  [
    [0, 0],
    [wide, 0],
    [wide, 100],
    [0, 100],
  ],
  256,
);

describe('skins 6 mm thick over bodies on a board (elementary geometry)', () => {
  it('half ball of radius 50: 2/3 pi (56^3 - 50^3) = 106.01 cm3', () => {
    expectClose(skinCm3(dome, 0), ((2 / 3) * Math.PI * (56 ** 3 - 50 ** 3)) / 1000, SKIN);
  });

  it('cube of 100: five faces, eight edges of a quarter round, four eighths of a ball = 323.07 cm3', () => {
    const truth = 5 * 100 ** 2 * 6 + 8 * 100 * (Math.PI / 4) * 36 + (4 / 8) * ballMm3(6);
    expectClose(skinCm3(box([100, 100, 100]), 0), truth / 1000, SKIN);
  });

  it('cylinder of radius 40, 100 high: side, top and the quarter round about the rim (Pappus) = 199.82 cm3', () => {
    const rim = (Math.PI / 4) * 36 * 2 * Math.PI * (40 + (4 * 6) / (3 * Math.PI));
    const truth = Math.PI * (46 ** 2 - 40 ** 2) * 100 + Math.PI * 40 ** 2 * 6 + rim;
    expectClose(skinCm3(cylinder, 0), truth / 1000, SKIN);
  });
});

describe('the base runs along voxel faces wherever it lies', () => {
  it('odd heights and odd voxels', () => {
    for (const [z, voxelMm] of [
      [13.37, 1],
      [-7.1, 0.83],
      [400.2, 1.3],
    ] as const)
      expectClose(skinCm3(moved(box([60, 50, 40]), [5, -9, z]), z, voxelMm), cubeSkinCm3(60, 50, 40), SKIN);
  });

  it('through the middle of a box: half of it, grown', () => {
    const [grown] = levelsOf(box([60, 50, 40]), [6], { baseMm: 20 });
    expectClose(grown!.volumeMm3, boxTruth([60, 50, 40])(6) / 2, SKIN);
  });

  it('just below what the level reaches: all of it; above everything: nothing', () => {
    const [all] = levelsOf(box([60, 50, 40]), [6], { baseMm: -8 });
    expectClose(all!.volumeMm3, boxTruth([60, 50, 40])(6), SKIN);
    expect(levelsOf(box([60, 50, 40]), [6], { baseMm: 48 })[0]!.volumeMm3).toBe(0);
  });
});

const cubeSkinCm3 = (a: number, b: number, c: number): number =>
  (a * b * 6 + 2 * (a + b) * c * 6 + (2 * (a + b) + 4 * c) * (Math.PI / 4) * 36 + ballMm3(6) / 2) / 1000;
