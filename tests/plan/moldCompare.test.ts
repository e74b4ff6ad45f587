import { describe, expect, it } from 'vitest';
import { MOLD_TYPES } from '../../src/geometry';
import { compareMolds, planMold, type Compared } from '../../src/plan';
import { expectClose } from '../support/close';
import { jittered } from '../support/looseCorners';
import { lcg } from '../support/lcg';
import { benchOf, moldOn } from '../support/moldBench';
import { MUSHROOM, TROLL } from '../support/moldSamples';
import { problemOf, valueOf } from '../support/outcome';
import { sphere } from '../support/shapes';

const SILICONE = {
  densityKgM3: 1180,
  kits: [
    { massKg: 1.1, price: 38 },
    { massKg: 5.5, price: 160 },
  ],
};
const ask = { silicone: SILICONE, settings: { pull: '+y' } };
const rows = valueOf(compareMolds(benchOf(MUSHROOM), ask));

const grams = ({ mold }: Compared): number => valueOf(mold).silicone.totalG;

describe('molds side by side', () => {
  it('three types at three thicknesses, the usual one in the middle, in the order of the list', () => {
    expect(rows.map(({ type }) => type)).toEqual(MOLD_TYPES.flatMap(({ key }) => [key, key, key]));
    expect(rows.map(({ isUsual }) => isUsual)).toEqual(Array(3).fill([false, true, false]).flat());
    expect(rows.map(({ thicknessMm }) => thicknessMm)).toEqual([9, 12, 18, 4.5, 6, 9, 7.5, 10, 15]);
  });

  it('each row is the mold one gets by asking for it alone, on a bench that has seen nothing', () => {
    for (const row of rows) {
      const compared = valueOf(row.mold);
      const own = ownSettings(row);
      const alone = moldOn(benchOf(MUSHROOM), { type: row.type, silicone: SILICONE, settings: own });
      // The field of the comparison may reach farther, on a grid of its own: 0.1 % of the rubber.
      expectClose(
        compared.siliconeCm3.value,
        alone.siliconeCm3.value,
        1e-3,
        `${row.type} ${row.thicknessMm}`,
      );
      expectClose(grams(row), alone.silicone.totalG, 0.02, `${row.type} ${row.thicknessMm}`);
      expect(compared.settings).toEqual(alone.settings);
    }
  });

  it('and asked for afterwards, on the bench of the comparison, to the last digit', () => {
    const bench = benchOf(MUSHROOM);
    for (const row of valueOf(compareMolds(bench, ask))) {
      const alone = moldOn(bench, { type: row.type, silicone: SILICONE, settings: ownSettings(row) });
      const compared = valueOf(row.mold);
      expect(compared.silicone).toEqual(alone.silicone);
      expect(compared.surroundings).toEqual(alone.surroundings);
    }
  });

  it('thicker takes more of every type', () => {
    for (let n = 0; n < 9; n += 3) {
      expect(grams(rows[n + 1]!)).toBeGreaterThan(grams(rows[n]!));
      expect(grams(rows[n + 2]!)).toBeGreaterThan(grams(rows[n + 1]!));
    }
  });

  it('is of the thickness that was asked for, where one was', () => {
    const asked = valueOf(
      compareMolds(benchOf(MUSHROOM), { settings: { skinMm: 8, wallMm: 20, pull: '+y' } }),
    );
    expect(asked.filter(({ isUsual }) => isUsual).map(({ thicknessMm }) => thicknessMm)).toEqual([20, 8, 8]);
  });

  function ownSettings({ type, mold }: Compared): Record<string, number | string> {
    expect(valueOf(mold).type).toBe(type);
    return { ...valueOf(mold).settings };
  }
});

describe('molds side by side, of a scan that does not take them all', () => {
  it('a type that does not fit stands there with its reason', () => {
    const strewn = benchOf(jittered(sphere(50, 24, 48), 1, lcg(3)));
    const all = valueOf(compareMolds(strewn, {}));
    expect(all).toHaveLength(9);
    expect(all.map(({ mold }) => (mold.ok ? 'a mold' : mold.problem.code))).toEqual([
      ...Array<string>(3).fill('a mold'),
      ...Array<string>(6).fill('MOLD_NEEDS_SURFACE'),
    ]);
  });

  it('a thickness out of range is refused in its row alone', () => {
    const all = valueOf(compareMolds(benchOf(MUSHROOM), { settings: { skinMm: 38, pull: '+y' } }));
    const refused = all.filter(({ mold }) => !mold.ok);
    expect(refused.map(({ type, thicknessMm }) => [type, thicknessMm])).toEqual([
      ['skin', 57],
      ['blanket', 57],
    ]);
  });

  it('a choice that no type has is refused as a whole, as is a stop', () => {
    const bench = benchOf(MUSHROOM);
    expect(problemOf(compareMolds(bench, { settings: { color: 'blue' } })).code).toBe(
      'MOLD_PARAMETER_FOREIGN',
    );
    const stopping = benchOf(MUSHROOM, { shouldStop: () => true });
    expect(problemOf(compareMolds(stopping, {})).code).toBe('STOPPED');
  });

  it('the damaged troll scan takes all nine, least rubber as a brushed skin', () => {
    const all = valueOf(compareMolds(benchOf(TROLL, { voxelMm: 4 }), { settings: { pull: '+y' } }));
    expect(all.every(({ mold }) => mold.ok)).toBe(true);
    const usual = all.filter(({ isUsual }) => isUsual).map(grams);
    expect(usual[1]).toBe(Math.min(...usual));
    expect(planMold(benchOf(TROLL, { voxelMm: 4 }), { type: 'skin', settings: { pull: '+y' } }).ok).toBe(
      true,
    );
  });
});
