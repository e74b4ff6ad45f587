import { afterAll, describe, expect, it } from 'vitest';
import {
  boundsOf,
  MOLD_TYPES,
  type MoldKey,
  type MoldShape,
  type MoldWish,
  type TriangleMesh,
} from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { forgetMolds, moldOf } from '../../support/moldOf';
import { BALL, BOX, MUSHROOM, SCULPTS, TROLL } from '../../support/moldSamples';

afterAll(forgetMolds);

/** Rubber, clay, sculpt and what is kept free fill the box or the jacket: by volumes measured on ways of their own. */
const FULL = 1e-3;

/** Some three times coarser than the program takes: at voxels of a fifth of a stem's width the two ways part by 0.11 %. */
const voxelFor = (mesh: TriangleMesh): { voxelMm: number } => ({
  voxelMm: boundsOf(mesh).max[2] - boundsOf(mesh).min[2] > 150 ? 3 : 1.5,
});

/** A pull that suits the pieces, so that none is searched. */
const JACKETS: readonly MoldWish[] = [
  { parts: '1', pull: '+z' },
  { parts: '2', pull: '+y' },
];
const wishesFor = (key: MoldKey): readonly MoldWish[] =>
  key === 'block' ? [{ parts: '1' }, { parts: '2' }] : JACKETS;
/** Two types share their jacket: the second one is spared the walk over all sculpts in one piece. */
const fillingsOf = (key: MoldKey): readonly MoldWish[] => wishesFor(key).slice(key === 'blanket' ? 1 : 0);

const sum = (volumes: readonly { volumeMm3: number }[]): number =>
  volumes.reduce((all, { volumeMm3 }) => all + volumeMm3, 0);

describe.each(MOLD_TYPES.map((type) => [type.title, type] as const))('%s', (_, { key, parameters }) => {
  it.each(SCULPTS)('around the %s: what is in it fills it, at every step of the work', (_name, mesh) => {
    for (const wish of fillingsOf(key)) {
      const mold = moldOf(mesh, key, wish, voxelFor(mesh));
      expect(mold.fillings.length).toBeGreaterThan(0);
      for (const { when, rubberMm3, clayMm3, sculptMm3, voidMm3, containerMm3 } of mold.fillings) {
        const inside = rubberMm3 + clayMm3 + sculptMm3 + voidMm3;
        expectClose(inside, containerMm3, FULL, `${when}, ${String(wish.parts)} pieces`);
      }
      expectClose(sum(mold.rubber), mold.rubberMm3, 1e-9, 'its parts');
      for (const { volumeMm3 } of [...mold.rubber, ...mold.clay, ...mold.voids])
        expect(volumeMm3).toBeGreaterThanOrEqual(0);
    }
  });

  it('around a sculpt that hangs free, too', () => {
    for (const wish of key === 'block' ? wishesFor(key) : [JACKETS[1]!]) {
      const mold = moldOf(BALL, key, { ...wish, base: 'closed' }, { voxelMm: 2 });
      for (const { rubberMm3, clayMm3, sculptMm3, voidMm3, containerMm3 } of mold.fillings)
        expectClose(rubberMm3 + clayMm3 + sculptMm3 + voidMm3, containerMm3, FULL);
    }
  });

  const thickness = parameters.find((p) => p.key === 'skinMm') ?? parameters.find((p) => p.key === 'wallMm')!;

  it.each(SCULPTS.filter(([, mesh]) => mesh === MUSHROOM || mesh === TROLL || mesh === BOX))(
    'around the %s: thicker never takes less rubber',
    (_name, mesh) => {
      // The thickest first: its field serves the others.
      const taken = [14, 9, 6, 4].map(
        (mm) => moldOf(mesh, key, { ...wishesFor(key)[0], [thickness.key]: mm }, voxelFor(mesh)).rubberMm3,
      );
      for (let n = 1; n < taken.length; n++) expect(taken[n]!).toBeLessThan(taken[n - 1]!);
    },
  );

  it('every length of it changes the answer: rubber, clay, what is kept free, or the jacket', () => {
    const base = moldOf(MUSHROOM, key, wishesFor(key)[1]!, { voxelMm: 2 });
    for (const parameter of parameters) {
      // A first coat is thin or thick, the skin is the same.
      if (['firstCoatMm', 'coatMm'].includes(parameter.key)) continue;
      if (!['length', 'height', 'angle', 'count'].includes(parameter.kind)) continue;
      const value = Number(parameter.default) === 0 ? 3 : Number(parameter.default) * 2;
      const free = parameter.key === 'underMm' ? { base: 'closed' } : {};
      const from =
        parameter.key === 'underMm' ? moldOf(MUSHROOM, key, { ...wishesFor(key)[1], ...free }) : base;
      const other = moldOf(
        MUSHROOM,
        key,
        { ...wishesFor(key)[1], ...free, [parameter.key]: value },
        { voxelMm: 2 },
      );
      expect(amounts(other), parameter.key).not.toEqual(amounts(from));
    }
  });
});

const amounts = ({ rubber, clay, voids, jacket }: MoldShape): unknown => [
  rubber,
  clay,
  voids,
  jacket?.volumeMm3,
];

describe('what one choice adds', () => {
  const skin = (wish: MoldWish): MoldShape => moldOf(BOX, 'skin', { ...JACKETS[0], ...wish }, { voxelMm: 2 });

  it('a wider flange takes more rubber and more jacket; more keys, more rubber', () => {
    const [narrow, wide] = [skin({ flangeMm: 10, keyRadiusMm: 0 }), skin({ flangeMm: 20, keyRadiusMm: 0 })];
    expect(wide.rubberMm3).toBeGreaterThan(narrow.rubberMm3);
    expect(wide.jacket!.volumeMm3).toBeGreaterThan(narrow.jacket!.volumeMm3);
    const keyed = skin({ flangeMm: 20, keyRadiusMm: 8 });
    expectClose(keyed.rubberMm3 - wide.rubberMm3, keyed.keys!.count * (2 / 3) * Math.PI * 512, 1e-9);
  });

  it('a poured skin takes the rubber of its clay, and of funnel and risers: pi/4 d^2 times jacket and height over it', () => {
    const poured = moldOf(BOX, 'blanket', { ...JACKETS[0], risers: 3 }, { voxelMm: 2 });
    const risers = (15 + 45) * (Math.PI / 4) * (20 ** 2 + 3 * 7 ** 2);
    expectClose(poured.rubberMm3 - sum(poured.clay), risers, 1e-9);
  });

  it('brushed and poured to one thickness, skin, fill and jacket are the same', () => {
    const [brushed, poured] = (['skin', 'blanket'] as const).map((key) =>
      moldOf(MUSHROOM, key, { ...JACKETS[0], skinMm: 8 }, { voxelMm: 2 }),
    ) as [MoldShape, MoldShape];
    expectClose(sum(poured.clay), brushed.rubberMm3, 1e-9);
    expectClose(poured.jacket!.volumeMm3, brushed.jacket!.volumeMm3, 1e-9);
  });
});
