import { describe, expect, it } from 'vitest';
import { castingSize, cavityAtCasting, settleShrink, shrinkFromLengths } from '../../../src/yield';
import type { CastingCavity } from '../../../src/yield';
import type { Estimate } from '../../../src/estimate';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';

const exactly = (value: number): Estimate => ({ value, low: value, high: value, from: 'given' });
const fiveLiters: CastingCavity = { sculptCm3: 5000, shrink: exactly(0), castingTempC: 23 };
const cavity = (change: Partial<CastingCavity>): Estimate =>
  valueOf(cavityAtCasting({ ...fiveLiters, ...change })).cavityCm3;

describe('from sculpt to casting', () => {
  it.each([
    [0.005, 298.5, 0.98507],
    [0.01, 297, 0.9703],
  ])(
    'a mold that shrinks by %d makes 300 mm into %d mm and the volume x %d (arithmetic)',
    (share, mm, volume) => {
      const size = valueOf(castingSize({ lengthMm: 300, moldShrinkShare: share, castingShrinkShare: 0 }));
      expectClose(size.castingMm, mm, 1e-12, 'length');
      expectClose(size.volumeShare, volume, 6e-6, 'volume');
    },
  );

  it('shrinks of mold and foam multiply, and the sculpt enlarged by the factor casts as drawn', () => {
    const shrinks = { moldShrinkShare: 0.005, castingShrinkShare: 0.02 };
    const size = valueOf(castingSize({ lengthMm: 300, ...shrinks }));
    expectClose(size.linearShare, 0.995 * 0.98, 1e-12, 'both');
    expectClose(
      valueOf(castingSize({ lengthMm: 300 * size.sculptFactor, ...shrinks })).castingMm,
      300,
      1e-12,
      'as drawn',
    );
  });

  it.each([
    [{ lengthMm: 300, moldShrinkShare: 0.5, castingShrinkShare: 0 }, 'moldShrinkShare'],
    [{ lengthMm: 0, moldShrinkShare: 0, castingShrinkShare: 0 }, 'lengthMm'],
    [{ lengthMm: 300, moldShrinkShare: 0, castingShrinkShare: 1 }, 'castingShrinkShare'],
  ])('refuses %o', (input, name) => {
    expect(problemOf(castingSize(input))).toMatchObject({
      code: 'INPUT_OUT_OF_BOUNDS',
      values: { input: name },
    });
  });
});

describe('the cavity at casting temperature', () => {
  it('5 L at a shrink of 0.5 % lose 74.6 mL (arithmetic)', () => {
    expectClose(5000 - cavity({ shrink: exactly(0.005) }).value, 74.6, 1e-3, 'loss');
  });

  it('5 L warmed by 20 K at 2.4e-4 gain 72.3 mL: the cube; 3 alpha dT alone would say 72.0', () => {
    const gainCm3 = cavity({ castingTempC: 43 }).value - 5000;
    expectClose(gainCm3, 72.3, 7e-4, 'gain by the cube');
    expectClose(gainCm3, 3 * 2.4e-4 * 20 * 5000, 5e-3, 'gain by the straight line');
    expect(gainCm3).toBeGreaterThan(3 * 2.4e-4 * 20 * 5000);
  });

  it('so 20 K of warmth nearly cancel 0.5 % of shrink: 3.4 mL of 5 L are left', () => {
    expectClose(5000 - cavity({ shrink: exactly(0.005), castingTempC: 43 }).value, 3.36, 2e-3, 'left');
  });

  it('20 K at the ends of the range are 0.4 to 0.5 % in length, 1.2 to 1.6 % in volume', () => {
    const { low, high, from } = cavity({ castingTempC: 43 });
    expectClose(low / 5000, 1.004 ** 3, 1e-12, 'low');
    expectClose(high / 5000, 1.0052 ** 3, 1e-12, 'high');
    expect(from).toBe('assumed');
  });

  it('hotter is larger, more shrink is smaller, and the range holds the value, hot or cold (random, seed 29)', () => {
    const random = lcg(29);
    for (let round = 0; round < 300; round += 1) {
      const share = between(random, 0, 0.03);
      const shrink: Estimate = { value: share, low: share - 0.002, high: share + 0.003, from: 'given' };
      const castingTempC = between(random, -5, 100);
      const base = cavity({ shrink, castingTempC });
      const message = `seed 29, round ${round}`;
      expect(cavity({ shrink, castingTempC: castingTempC + 1 }).value, message).toBeGreaterThan(base.value);
      const more = { ...shrink, value: share + 0.001 };
      expect(cavity({ shrink: more, castingTempC }).value, message).toBeLessThan(base.value);
      expect(base.low, message).toBeLessThan(base.value);
      expect(base.high, message).toBeGreaterThan(base.value);
      expectClose(cavity({ shrink, castingTempC, sculptCm3: 10_000 }).value, 2 * base.value, 1e-12, message);
    }
  });

  it.each<[Partial<CastingCavity>, string, string]>([
    [{ castingTempC: 900 }, 'INPUT_OUT_OF_BOUNDS', 'castingTempC'],
    [{ castingTempC: -273.15 }, 'INPUT_OUT_OF_BOUNDS', 'castingTempC'],
    [{ roomTempC: Number.NaN }, 'INPUT_NOT_A_NUMBER', 'roomTempC'],
    [{ sculptCm3: -5 }, 'INPUT_OUT_OF_BOUNDS', 'sculptCm3'],
    [{ shrink: exactly(0.5) }, 'INPUT_OUT_OF_BOUNDS', 'moldShrinkShare'],
    [{ growth: { perK: 0.24, low: 0.2, high: 0.26 } }, 'INPUT_OUT_OF_BOUNDS', 'growthPerK'],
  ])('refuses %o', (change, code, input) => {
    expect(problemOf(cavityAtCasting({ ...fiveLiters, ...change }))).toMatchObject({
      code,
      values: { input },
    });
  });
});

describe('which shrink counts', () => {
  it("the user's measure wins over the data sheet, the data sheet over the default; each says what it is", () => {
    const measured = { share: 0.003 };
    const dataSheet = { share: 0.002 };
    const from = (known: object): string =>
      valueOf(settleShrink({ cure: 'condensation', ...known })).shrink.from;
    expect(valueOf(settleShrink({ cure: 'condensation', measured, dataSheet })).shrink.value).toBe(0.003);
    expect(from({ measured, dataSheet })).toBe('given');
    expect(from({ dataSheet })).toBe('data-sheet');
    expect(from({})).toBe('assumed');
  });

  it('without either: 0.5 % within 0.2 to 1.0 % for condensation cure, at most 0.1 % for addition cure, and it says so', () => {
    const condensation = valueOf(settleShrink({ cure: 'condensation' }));
    expect(condensation.shrink).toEqual({ value: 0.005, low: 0.002, high: 0.01, from: 'assumed' });
    expect(condensation.findings[0]).toMatchObject({ code: 'SHRINK_ASSUMED', status: 'look' });
    expect(valueOf(settleShrink({ cure: 'addition' })).shrink.high).toBe(0.001);
    expect(valueOf(settleShrink({ cure: 'addition', measured: { share: 0.0004 } })).findings).toEqual([]);
  });

  it('300 mm on the sculpt and 298.5 in the mold, read to 0.5 mm, is 0.5 % give or take 0.17 %', () => {
    const { value, low, high } = valueOf(shrinkFromLengths({ sculptMm: 300, moldMm: 298.5, readingMm: 0.5 }));
    expectClose(value, 0.005, 1e-9, 'shrink');
    expectClose(high - value, 0.00166, 3e-3, 'up');
    expectClose(value - low, 0.00166, 5e-3, 'down');
  });

  it('refuses a measure out of sense, or outside its own range, or a rule coarser than the length', () => {
    const of = (measured: object): string =>
      problemOf(settleShrink({ cure: 'addition', measured: { share: 0.01, ...measured } })).code;
    expect(of({ share: 0.4 })).toBe('INPUT_OUT_OF_BOUNDS');
    expect(of({ low: 0.02, high: 0.03 })).toBe('INPUT_OUT_OF_BOUNDS');
    expect(of({ share: Number.NaN })).toBe('INPUT_NOT_A_NUMBER');
    const lengths = { sculptMm: 300, moldMm: 100, readingMm: 1 };
    expect(problemOf(shrinkFromLengths(lengths)).values.input).toBe('moldShrinkShare');
    const tiny = { sculptMm: 1, moldMm: 1, readingMm: 5 };
    expect(problemOf(shrinkFromLengths(tiny)).values.input).toBe('readingMm');
  });
});
