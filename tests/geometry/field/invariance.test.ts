import { describe, expect, it } from 'vitest';
import { boundsOf, type LevelVolume, type TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { joined, moved, reversed, scaled, turned } from '../../support/meshTools';
import { box, torus, type Vec3 } from '../../support/shapes';
import { levelsOf } from './levelsOf';
import { fullBall } from './truths';

const SEED = 808;
const LEVELS = [0, 6, -5];

/** What the program adds to the field's own doubt: a share of the volume, and a layer over the level in voxels. */
const halfWidth = ({ doubtMm3, volumeMm3, areaMm2 }: LevelVolume): number =>
  Math.hypot(doubtMm3, 3e-5 * volumeMm3, 2.5e-3 * areaMm2);

const SOLIDS: [string, TriangleMesh][] = [
  ['ball', fullBall(25, 50)],
  ['box', turned(box([44, 40, 30]), [1, 0.1, 0.2, 0.3])],
  ['torus', torus(25, 11, 120, 60)],
  ['two balls that overlap', joined(fullBall(20, 24), moved(fullBall(20, 24), [22, 4, 3]))],
  ['hollow ball', joined(fullBall(25, 50), reversed(fullBall(10, 30)))],
];

describe.each(SOLIDS)(`%s, seed ${SEED}`, (name, mesh) => {
  const base = levelsOf(mesh, LEVELS);

  it('five poses: the levels differ by less than their doubts', () => {
    const random = lcg(SEED);
    for (let i = 0; i < 5; i++) {
      const pose = [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];
      expectSame(base, levelsOf(turned(mesh, pose), LEVELS), `${name}, pose ${pose.join(' ')}`);
    }
  });

  it('the grid laid elsewhere by parts of a voxel: the same', () => {
    const random = lcg(SEED + 1);
    const bounds = boundsOf(mesh);
    for (let i = 0; i < 4; i++) {
      const by = [0, 1, 2].map(() => between(random, 0, 2)) as unknown as Vec3;
      // The grid starts from the bounds it is given.
      const shifted = bounds.min.map((x, k) => x - by[k]!) as [number, number, number];
      expectSame(base, levelsAt(mesh, shifted), `${name}, moved by ${by.join(' ')}`);
    }
  });

  it('moved far off: the same to single precision', () => {
    levelsOf(moved(mesh, [3000, -2000, 1000]), LEVELS).forEach(({ volumeMm3 }, i) =>
      expectClose(volumeMm3, base[i]!.volumeMm3, 1e-5),
    );
  });

  it('scaled with its voxels: k^3 times the volume, k^2 times the area', () => {
    const k = 3.7;
    levelsOf(
      scaled(mesh, k),
      LEVELS.map((level) => k * level),
      { voxelMm: k },
    ).forEach((found, i) => {
      // Where faces are cut at a crease, single precision decides about pieces of an eighth of a voxel.
      expectClose(
        found.volumeMm3,
        k ** 3 * base[i]!.volumeMm3,
        name.includes('overlap') ? 1e-4 : 1e-5,
        'volume',
      );
      expectClose(found.areaMm2, k ** 2 * base[i]!.areaMm2, 1e-4, 'area');
    });
  });
});

function levelsAt(mesh: TriangleMesh, min: [number, number, number]): LevelVolume[] {
  const far = boundsOf(mesh).max;
  return levelsOf(mesh, LEVELS, {}, { min, max: [far[0] + 2, far[1] + 2, far[2] + 2] });
}

function expectSame(base: readonly LevelVolume[], found: readonly LevelVolume[], what: string): void {
  found.forEach((level, i) => {
    const allowed = Math.hypot(halfWidth(level), halfWidth(base[i]!));
    const off = Math.abs(level.volumeMm3 - base[i]!.volumeMm3);
    expect(off, `${what}, level ${LEVELS[i]!}: ${off} of ${allowed} mm3`).toBeLessThanOrEqual(allowed);
  });
}
