import { describe, expect, it } from 'vitest';
import { divergenceVolume, type TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { lcg } from '../../support/lcg';
import { measured } from '../../support/measured';
import { damaged, turned } from '../../support/meshTools';
import { icosphere, revolve, sphereOutline } from '../../support/shapes';
import { levelsOf } from './levelsOf';
import { ballMm3, steinerOf } from './truths';

const SEED = 404;

/** Of the volume at 1 mm voxels: on the surface, and off it. */
const ON = 2e-4;
const OFF = 5e-4;

/** The levels of a scan as the program measures them: of the closed chain that was made of it. */
const repairedLevels = (mesh: TriangleMesh, levelsMm: readonly number[]): number[] =>
  levelsOf(measured(mesh).chain, levelsMm).map(({ volumeMm3 }) => volumeMm3);

describe(`a broken ball has the levels of the whole one (Steiner outward, a ball of equal volume inward), seed ${SEED}`, () => {
  const ball = icosphere(30, 6);
  const grown = steinerOf(ball);
  const radius = Math.cbrt(divergenceVolume(ball) / ballMm3(1));

  for (const how of ['deleted', 'flipped', 'doubled', 'all three'] as const)
    it.each([0.05, 0.1, 0.2])(`${how}: %d of its triangles`, (share) => {
      const broken = damaged(ball, how, share, lcg(SEED));
      const [on, out, inward] = repairedLevels(broken, [0, 10, -8]);
      expectClose(on!, grown(0), ON, 'on the surface');
      expectClose(out!, grown(10), OFF, '10 mm out');
      expectClose(inward!, ballMm3(radius - 8), OFF, '8 mm in');
    });
});

describe('an open base is closed flat, and the field goes by that', () => {
  const POSE = [1, 0.3, 0.2, 0.1] as const;
  /** Half a ball with nothing below it. */
  const dome = turned(revolve(sphereOutline(36, 120).slice(60), 240), POSE);
  // Facets: the radius of the round half ball of the same volume.
  const radius = Math.cbrt((2 * measured(dome).volumeMm3) / ballMm3(1));

  it('half ball (closed forms: Steiner outward, a cap inward)', () => {
    const [on, out, inward] = repairedLevels(dome, [0, 10, -8]);
    expectClose(on!, ballMm3(radius) / 2, ON, 'on the surface');
    expectClose(out!, grownHalfBallMm3(radius, 10), OFF, '10 mm out');
    expectClose(inward!, capMm3(radius - 8, 8), OFF, '8 mm in');
  });

  it(`5 % of its triangles broken in every way, seed ${SEED}: its rim is ragged, so the truth is that of its caps`, () => {
    const broken = measured(damaged(dome, 'all three', 0.05, lcg(SEED)));
    const [on, out] = levelsOf(broken.chain, [0, 10]);
    expectClose(on!.volumeMm3, divergenceVolume(broken.chain), ON, 'on the surface');
    const off = Math.abs(out!.volumeMm3 - grownHalfBallMm3(radius, 10));
    expect(off).toBeLessThan(broken.doubt.capsMm3);
  });
});

/**
 * Steiner's formula for half a ball: area 3 pi r^2; M = half the mean curvature of the dome, 2 pi r^2 / r, and of the rim, 2 pi r times a
 * right angle, halved.
 */
const grownHalfBallMm3 = (r: number, t: number): number =>
  ballMm3(r) / 2 + 3 * Math.PI * r * r * t + (2 * Math.PI * r + (Math.PI ** 2 * r) / 2) * t * t + ballMm3(t);

/** A ball of radius r above the plane at height h: pi/3 (r - h)^2 (2 r + h). */
const capMm3 = (r: number, h: number): number => (Math.PI / 3) * (r - h) ** 2 * (2 * r + h);
