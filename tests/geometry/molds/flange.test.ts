import { afterAll, describe, expect, it } from 'vitest';
import { expectClose } from '../../support/close';
import { forgetMolds, moldOf, partCm3 } from '../../support/moldOf';
import {
  annulusMm2,
  cylinderOn,
  discMm2,
  mushroomFilledMm3,
  mushroomWithinMm3,
  pipeOn,
} from '../../support/moldShapes';
import { BALL, BOX, MUSHROOM } from '../../support/moldSamples';

afterAll(forgetMolds);

/** A flange lies on the board, as thick as the skin, from the outline of the rubber (its fill too) to its width beyond. */
const FLANGE = 5e-3;
const OUTLINE = 3e-3;
const VOXEL = { voxelMm: 1 };
const UP = { parts: '1', pull: '+z' };

describe('outline on the board and flange around it (elementary geometry)', () => {
  it('cylinder of radius 40, skin 6: a ring 25 mm wide from radius 46', () => {
    const mold = moldOf(cylinderOn(40, 60), 'skin', UP, VOXEL);
    expectClose(mold.flange!.outlineMm, 2 * Math.PI * 46, OUTLINE);
    expectClose(mold.flange!.areaMm2, annulusMm2(71, 46), FLANGE);
    expectClose(1000 * partCm3(mold, 'flange'), 6 * annulusMm2(71, 46), FLANGE);
  });

  it('box: its outline is rounded by the skin, its flange t (P w + pi w^2)', () => {
    const mold = moldOf(BOX, 'skin', { ...UP, flangeMm: 20 }, VOXEL);
    const outline = 200 + 2 * Math.PI * 6;
    expectClose(mold.flange!.outlineMm, outline, OUTLINE);
    expectClose(1000 * partCm3(mold, 'flange'), 6 * (outline * 20 + Math.PI * 400), FLANGE);
  });

  it('pipe: a ring outside and a ring inside, until the inner one has closed the hole', () => {
    const pipe = pipeOn(40, 50, 30);
    for (const [flangeMm, innerMm2] of [
      [10, annulusMm2(34, 24)],
      [30, annulusMm2(34, 4)],
      [38, discMm2(34)],
    ] as const) {
      const mold = moldOf(pipe, 'skin', { ...UP, flangeMm }, VOXEL);
      expectClose(mold.flange!.outlineMm, 2 * Math.PI * (56 + 34), OUTLINE);
      const truth = 6 * (annulusMm2(56 + flangeMm, 56) + innerMm2);
      expectClose(1000 * partCm3(mold, 'flange'), truth, FLANGE, `flange of ${flangeMm} mm`);
    }
  });

  it('wider than the jacket is thick, it is not cut off: every width from 5 to 100 mm', () => {
    for (const flangeMm of [5, 15, 25, 40, 100]) {
      const mold = moldOf(cylinderOn(40, 30), 'skin', { ...UP, flangeMm, jacketMm: 10 }, VOXEL);
      const truth = 6 * annulusMm2(46 + flangeMm, 46);
      expectClose(1000 * partCm3(mold, 'flange'), truth, FLANGE, `flange of ${flangeMm} mm`);
    }
  });

  it('none without a board, none of 0 mm', () => {
    const free = moldOf(BALL, 'skin', { base: 'closed', pull: '+z' }, { voxelMm: 2 });
    expect(partCm3(free, 'flange')).toBe(0);
    expect(free.flange).toBeUndefined();
    const none = moldOf(BALL, 'skin', { flangeMm: 0, pull: '+x' }, { voxelMm: 2 });
    expect([partCm3(none, 'flange'), partCm3(none, 'keys')]).toEqual([0, 0]);
  });
});

describe('a flange beside undercuts', () => {
  it('mushroom, 8 mm, one piece: it begins where the fill ends, at radius 38, and the fill stays what it was', () => {
    const mold = moldOf(MUSHROOM, 'skin', { ...UP, skinMm: 8 }, VOXEL);
    expectClose(mold.flange!.outlineMm, 2 * Math.PI * 38, OUTLINE);
    expectClose(1000 * partCm3(mold, 'flange'), 8 * annulusMm2(63, 38), FLANGE);
    expectClose(1000 * partCm3(mold, 'undercut fill'), mushroomFilledMm3(8) - mushroomWithinMm3(8), 2e-3);
  });

  it('mushroom, 8 mm, two pieces: nothing is filled, and it begins at the stem, radius 18', () => {
    const mold = moldOf(MUSHROOM, 'skin', { parts: '2', pull: '+x', skinMm: 8 }, VOXEL);
    expectClose(mold.flange!.outlineMm, 2 * Math.PI * 18, OUTLINE);
    expectClose(1000 * partCm3(mold, 'flange'), 8 * annulusMm2(43, 18), FLANGE);
  });

  it('ball on the board, two pieces: the skin bulges over the flange, and what it takes is not counted twice', () => {
    const mold = moldOf(BALL, 'skin', { parts: '2', pull: '+x' }, VOXEL);
    const r2 = 56 ** 2 - 50 ** 2;
    // Under 6 mm the ball of radius 56 holds pi times the integral of 56^2 - (50 - z)^2.
    const ball = Math.PI * (r2 * 6 + 50 * 36 - 6 ** 3 / 3);
    expectClose(1000 * partCm3(mold, 'flange'), 6 * discMm2(Math.sqrt(r2) + 25) - ball, FLANGE);
  });
});

describe('keys: half balls on the flange', () => {
  it('one of radius 8 takes 1.072 cm3, twelve 12.87 (2/3 pi r^3)', () => {
    // The middle of a flange of 20 mm around radius 46 is 352 mm long.
    const mold = moldOf(cylinderOn(40, 60), 'skin', { ...UP, flangeMm: 20, keySpacingMm: 29.3 }, VOXEL);
    expect(mold.keys).toEqual({ count: 12, radiusMm: 8 });
    expectClose(partCm3(mold, 'keys'), 12.87, 5e-4);
    expectClose(partCm3(mold, 'keys') / 12, 1.072, 5e-4);
  });

  it('fewer where they stand farther apart, two at least, none of radius 0', () => {
    const keysAt = (wish: object): number =>
      moldOf(cylinderOn(40, 60), 'skin', { ...UP, flangeMm: 20, ...wish }, { voxelMm: 2 }).keys?.count ?? 0;
    expect([50, 65, 80].map((keySpacingMm) => keysAt({ keySpacingMm }))).toEqual([7, 5, 4]);
    expect(keysAt({ keySpacingMm: 300 })).toBe(2);
    expect(keysAt({ keyRadiusMm: 0 })).toBe(0);
  });
});
