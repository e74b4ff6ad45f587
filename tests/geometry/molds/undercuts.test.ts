import { afterAll, describe, expect, it } from 'vitest';
import { expectClose } from '../../support/close';
import { turned } from '../../support/meshTools';
import { forgetMolds, moldOf, partCm3 } from '../../support/moldOf';
import {
  ballMm3,
  ballWithinMm3,
  cylinderMm3,
  cylinderOn,
  cylinderWithinMm3,
  draftedMm3,
  mushroomFilledMm3,
  mushroomWithinMm3,
  ringLockedMm3,
} from '../../support/moldShapes';
import { BALL, MUSHROOM, RING } from '../../support/moldSamples';

afterAll(forgetMolds);

/**
 * What must be filled behind the skin so that a rigid jacket draws. A skin of 0 mm shows the sculpt's own undercuts. The fill is the difference of two
 * volumes on a field swept along the pull.
 */

/** Swept along an axis of the board: the check values are met within 0.05 % at 1 mm, 0.13 % at 1.5 mm. */
const FILL = 2e-3;
/** Across a ring the sweep runs askew to the grid and over silhouettes: 0.3 % at 1 mm. */
const ASKEW = 4e-3;
/** Where nothing is locked, cm3: what a silhouette between two voxels leaves. */
const NOTHING_CM3 = 0.05;

const PLAIN = { flangeMm: 0, keyRadiusMm: 0 };

const fillCm3 = (mesh: typeof BALL, wish: Record<string, string | number>, voxelMm = 1.5): number =>
  partCm3(moldOf(mesh, 'skin', { ...PLAIN, ...wish }, { voxelMm }), 'undercut fill');

describe('a ball of radius 50', () => {
  it('lifted straight off the board, the space under it locks: pi R^3 / 3 = 130.90 cm3', () => {
    const found = fillCm3(BALL, { skinMm: 0, parts: '1', pull: '+z' });
    expectClose(1000 * found, (Math.PI * 50 ** 3) / 3, FILL);
    expectClose(found, 130.9, FILL);
  });

  it('in a skin of 6 mm: half a ball and a cylinder of radius 56, less the ball of radius 56 above the board', () => {
    const filled = ballMm3(56) / 2 + cylinderMm3(56, 50);
    const found = fillCm3(BALL, { skinMm: 6, parts: '1', pull: '+z' });
    expectClose(1000 * found, filled - ballWithinMm3(50, 6), FILL);
  });

  it('in two pieces nothing locks, whichever way they go', () => {
    for (const pull of ['+z', '+x', '1,2,3'])
      expect(fillCm3(BALL, { skinMm: 0, parts: '2', pull, base: 'closed' })).toBeLessThan(NOTHING_CM3);
    expect(fillCm3(BALL, { skinMm: 6, parts: '2', pull: '+y' })).toBeLessThan(NOTHING_CM3);
  });

  it('nor under a thin jacket, where the field around it ends close by', () => {
    for (const jacketMm of [1, 3, 8])
      expect(
        fillCm3(BALL, { skinMm: 6, jacketMm, parts: '2', pull: '1,2,3', base: 'closed' }, 1),
        `jacket of ${jacketMm} mm`,
      ).toBeLessThan(NOTHING_CM3);
  });
});

describe('a mushroom: stem of radius 10, cap of radius 30', () => {
  it.each([
    [0, 100.53],
    [6, 112.77],
    [8, 115.72],
    [10, 118.19],
  ])('skin of %i mm, lifted straight up: %f cm3 under the cap (elementary geometry)', (skinMm, cm3) => {
    const found = fillCm3(MUSHROOM, { skinMm, parts: '1', pull: '+z' });
    expectClose(1000 * found, mushroomFilledMm3(skinMm) - mushroomWithinMm3(skinMm), FILL);
    expectClose(found, cm3, FILL);
  });

  it('in two pieces that part to the sides nothing locks', () => {
    for (const pull of ['+x', '+y', '3,4,0'])
      expect(fillCm3(MUSHROOM, { skinMm: 8, parts: '2', pull })).toBeLessThan(NOTHING_CM3);
  });

  it('the place that locks is the ring under the cap: below 32 mm, 76 mm across', () => {
    const { undercut } = moldOf(
      MUSHROOM,
      'skin',
      { ...PLAIN, skinMm: 8, parts: '1', pull: '+z' },
      { voxelMm: 1 },
    );
    expect(undercut!.places).toHaveLength(1);
    const [{ volumeMm3, atMm, sizeMm }] = undercut!.places as [(typeof undercut & object)['places'][0]];
    // Places leave out the voxels that are filled by less than a tenth.
    expectClose(volumeMm3, mushroomFilledMm3(8) - mushroomWithinMm3(8), 0.02);
    expect(Math.hypot(atMm[0], atMm[1])).toBeLessThan(0.5);
    expect(atMm[2]).toBeGreaterThan(14);
    expect(atMm[2]).toBeLessThan(22);
    // The box around points 2 mm apart, a step more on either side.
    for (const mm of [sizeMm[0], sizeMm[1]]) expect(Math.abs(mm - 76)).toBeLessThan(4);
  });
});

describe('a ring of radius 40, 10 thick to its middle, hanging free, in two pieces', () => {
  it('drawn apart along its axis nothing locks', () => {
    for (const skinMm of [0, 6])
      expect(fillCm3(RING, { skinMm, parts: '2', pull: '+z', base: 'closed' })).toBeLessThan(NOTHING_CM3);
  });

  it('drawn apart along x its hole locks: pi (2 r R^2 - pi R r^2 + 4/3 r^3) = 65.24 cm3', () => {
    const found = fillCm3(RING, { skinMm: 0, parts: '2', pull: '+x', base: 'closed' }, 1);
    expectClose(1000 * found, ringLockedMm3(40, 10), ASKEW);
    expectClose(found, 65.24, ASKEW);
    const skinned = fillCm3(RING, { skinMm: 6, parts: '2', pull: '+x', base: 'closed' }, 1);
    expectClose(1000 * skinned, ringLockedMm3(40, 16), ASKEW, 'a tube of 16 with its skin');
  });

  it('tumbled, and drawn along its own tumbled axes: the same', () => {
    const tumble = [0.8, 0.3, -0.4, 0.33] as const;
    const tumbled = turned(RING, tumble);
    const [x, z] = [axisOf(tumble, [1, 0, 0]), axisOf(tumble, [0, 0, 1])];
    const across = fillCm3(tumbled, { skinMm: 6, parts: '2', pull: x, base: 'closed' }, 1);
    expectClose(1000 * across, ringLockedMm3(40, 16), ASKEW);
    expect(fillCm3(tumbled, { skinMm: 6, parts: '2', pull: z, base: 'closed' })).toBeLessThan(NOTHING_CM3);
  });
});

describe('draft: a cylinder of radius 40, 100 high, lifted straight up', () => {
  // The widest first: its field serves the others.
  const cylinder = cylinderOn(40, 100);

  it.each([
    [5, 117.96],
    [3, 68.73],
    [2, 45.16],
  ])('%i degrees take %f cm3 on the bare cylinder: pi H w (R + w/3), w = H tan a', (draftDegrees, cm3) => {
    // The least distance along a line is taken at the grid's own steps, which the sharp upper edge shows most: 3 % at 2 degrees.
    const found = fillCm3(cylinder, { skinMm: 0, parts: '1', pull: '+z', draftDegrees }, 0.75);
    const w = 100 * Math.tan((draftDegrees * Math.PI) / 180);
    expectClose(1000 * found, Math.PI * 100 * w * (40 + w / 3), 0.03);
    expectClose(found, cm3, 0.03);
  });

  it.each([5, 3, 2])('%i degrees over a skin of 6 mm: the cone touches the rounded edge', (draftDegrees) => {
    const found = fillCm3(cylinder, { skinMm: 6, parts: '1', pull: '+z', draftDegrees }, 1);
    expectClose(1000 * found, draftedMm3(40, 100, 6, draftDegrees) - cylinderWithinMm3(40, 100, 6), 0.03);
  });

  it('under the cap of a mushroom it adds to what is locked: 143.0 cm3 at 5 degrees, 131.7 at 3', () => {
    for (const [draftDegrees, cm3] of [
      [5, 143],
      [3, 131.7],
    ] as const) {
      const found = fillCm3(MUSHROOM, { skinMm: 8, parts: '1', pull: '+z', draftDegrees }, 1);
      expectClose(1000 * found, draftedMm3(30, 50, 8, draftDegrees) - mushroomWithinMm3(8), 0.01);
      expectClose(found, cm3, 0.01);
    }
  });
});

/** Where a turn by the quaternion brings a direction, as a pull is written. */
function axisOf(quaternion: readonly [number, number, number, number], axis: readonly number[]): string {
  const point = { positions: Float64Array.from(axis), triangles: new Int32Array(0) };
  return [...turned(point, quaternion).positions].join(',');
}
