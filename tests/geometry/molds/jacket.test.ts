import { afterAll, describe, expect, it } from 'vitest';
import { expectClose } from '../../support/close';
import { forgetMolds, moldOf, partCm3 } from '../../support/moldOf';
import {
  annulusMm2,
  ballMm3,
  ballWithinMm3,
  cylinderOn,
  cylinderWithinMm3,
  mushroomFilledMm3,
} from '../../support/moldShapes';
import { BALL, DOME, MUSHROOM, RING } from '../../support/moldSamples';

afterAll(forgetMolds);

/** The jacket is the difference of two swept volumes: within 0.05 % at 1.5 mm, bare 0.1 %. */
const JACKET = 1e-3;
/** The parting line is the outline of a shadow on the grid: up to 0.9 % at 1 mm where the board cuts it. */
const PARTING = 0.01;
const VOXEL = { voxelMm: 1.5 };
const NO_FLANGE = { flangeMm: 0, keyRadiusMm: 0 };

describe('a jacket of 15 mm over skin and fill (elementary geometry)', () => {
  it.each([
    [0, 259.5],
    [6, 326.3],
    [8, 350.08],
    [10, 374.6],
  ])('mushroom, skin of %i mm, lifted straight up: %f cm3', (skinMm, cm3) => {
    const { jacket } = moldOf(MUSHROOM, 'skin', { ...NO_FLANGE, skinMm, parts: '1', pull: '+z' }, VOXEL);
    expectClose(jacket!.volumeMm3, mushroomFilledMm3(skinMm + 15) - mushroomFilledMm3(skinMm), JACKET);
    expectClose(jacket!.volumeMm3 / 1000, cm3, JACKET);
  });

  it('ball hanging free, in two pieces: the shell from 56 to 71 mm, whichever way they part', () => {
    for (const pull of ['+x', '+z', '1,2,3', '2,-1,1']) {
      const { jacket } = moldOf(BALL, 'skin', { ...NO_FLANGE, parts: '2', pull, base: 'closed' }, VOXEL);
      expectClose(jacket!.volumeMm3, ballMm3(71) - ballMm3(56), JACKET, `jacket pulled ${pull}`);
      expectClose(jacket!.innerMm2, 4 * Math.PI * 56 ** 2, 5e-3, `its inside, pulled ${pull}`);
      expectClose(jacket!.outerMm2, 4 * Math.PI * 71 ** 2, 5e-3, `its outside, pulled ${pull}`);
    }
  });

  it('ball on the board: what lies above it', () => {
    const { jacket } = moldOf(BALL, 'skin', { ...NO_FLANGE, parts: '2', pull: '+x' }, VOXEL);
    expectClose(jacket!.volumeMm3, ballWithinMm3(50, 21) - ballWithinMm3(50, 6), JACKET);
  });

  it('around a cylinder: as thick as asked for at every thickness', () => {
    const cylinder = cylinderOn(40, 60);
    for (const jacketMm of [8, 15, 25]) {
      const { jacket } = moldOf(cylinder, 'skin', { ...NO_FLANGE, parts: '1', pull: '+z', jacketMm }, VOXEL);
      const truth = cylinderWithinMm3(40, 60, 6 + jacketMm) - cylinderWithinMm3(40, 60, 6);
      expectClose(jacket!.volumeMm3, truth, JACKET, `${jacketMm} mm`);
    }
  });

  it('a flange of 25 mm is covered as thick as the rest', () => {
    const cylinder = cylinderOn(40, 60);
    const { jacket } = moldOf(cylinder, 'skin', { parts: '1', pull: '+z', flangeMm: 25 }, { voxelMm: 1 });
    const over = cylinderWithinMm3(40, 60, 21) - cylinderWithinMm3(40, 60, 6);
    // From the outside of the jacket to the rim of the flange, skin and jacket high, less the flange itself.
    const cover = annulusMm2(71, 61) * 21 - annulusMm2(71, 46) * 6;
    expectClose(jacket!.volumeMm3, over + cover, 5e-3);
  });

  it('two pieces meet in flanges of their own: twice the parting line, flange wide, jacket thick', () => {
    const cylinder = cylinderOn(40, 60);
    const [plain, seamed] = ['1', '2'].map(
      (parts) =>
        moldOf(cylinder, 'skin', { parts, pull: parts === '1' ? '+z' : '+x', flangeMm: 10 }, VOXEL).jacket!,
    ) as [NonNullable<ReturnType<typeof moldOf>['jacket']>, NonNullable<ReturnType<typeof moldOf>['jacket']>];
    expectClose(seamed.volumeMm3 - plain.volumeMm3, 2 * (2 * 60 + Math.PI * 6 + 80) * 10 * 15, 0.02);
  });
});

describe('where two pieces meet: the outline of the skin as seen along the pull, above the board', () => {
  const partingMm = (mesh: typeof BALL, wish: Record<string, string | number>): number =>
    moldOf(mesh, 'skin', { ...NO_FLANGE, parts: '2', ...wish }, { voxelMm: 1 }).jacket!.partingMm;

  it('a ball hanging free: a whole circle of radius 56, whichever way', () => {
    for (const pull of ['+z', '+x', '1,2,3'])
      expectClose(partingMm(BALL, { pull, base: 'closed' }), 2 * Math.PI * 56, PARTING, pull);
  });

  it('a ball on the board: the circle as far as it lies above the board', () => {
    expectClose(partingMm(BALL, { pull: '+x' }), 2 * 56 * (Math.PI - Math.acos(50 / 56)), PARTING);
  });

  it('a dome: half a circle of radius 56, without the board', () => {
    expectClose(partingMm(DOME, { pull: '+y' }), Math.PI * 56, PARTING);
  });

  it('a cylinder: up one side, over the top with its rounded edges, down the other', () => {
    expectClose(partingMm(cylinderOn(40, 60), { pull: '+x' }), 2 * 60 + Math.PI * 6 + 80, PARTING);
  });

  it('a ring drawn along its axis parts outside and in its hole', () => {
    expectClose(partingMm(RING, { pull: '+z', base: 'closed' }), 2 * Math.PI * (56 + 24), PARTING);
  });

  it('one piece has none', () => {
    expect(moldOf(DOME, 'skin', { parts: '1', pull: '+z' }, VOXEL).jacket!.partingMm).toBe(0);
  });
});

it('fill goes under the jacket whether it is rubber or filler pieces: the same jacket, less rubber', () => {
  const [rubber, filler] = ['rubber', 'filler'].map((fill) =>
    moldOf(MUSHROOM, 'skin', { ...NO_FLANGE, parts: '1', pull: '+z', fill }, VOXEL),
  ) as [ReturnType<typeof moldOf>, ReturnType<typeof moldOf>];
  expect(filler.jacket!.volumeMm3).toBe(rubber.jacket!.volumeMm3);
  expectClose(rubber.rubberMm3 - filler.rubberMm3, filler.voids[0]!.volumeMm3, 1e-9);
  expectClose(filler.voids[0]!.volumeMm3 / 1000, partCm3(rubber, 'undercut fill'), 1e-9);
});
