import { describe, expect, it } from 'vitest';
import { coatInMixes, coatMasses, planCoats } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';
import { shellOnR50Cm3 } from './sphereShell';

const massesOf = (outerMm: number[], wasteShare: number): number[] =>
  valueOf(
    coatMasses({ outerMm, volumesCm3: outerMm.map(shellOnR50Cm3), densityKgM3: 1100, wasteShare }),
  ).coats.map(({ massG }) => massG);

describe('coats of a brushed skin', () => {
  it('four of 1.5 mm on a sphere of 50 mm take 53.4, 56.6, 59.9 and 63.3 g at 1.10 (closed formula of the shells)', () => {
    const { outerMm } = valueOf(planCoats({ skinMm: 6, firstCoatMm: 1.5, coatMm: 1.5 }));
    expect(outerMm).toEqual([1.5, 3, 4.5, 6]);
    const masses = massesOf(outerMm, 0);
    // The four are given to a tenth of a gram.
    for (const [index, wanted] of [53.4, 56.6, 59.9, 63.3].entries())
      expect(Math.abs(masses[index]! - wanted)).toBeLessThan(0.0501);
  });

  it('6 mm with the usual coats: one of 0.75 mm for the detail and four of at most 1.5 mm, assumed and said', () => {
    const { outerMm, assumptions } = valueOf(planCoats({ skinMm: 6 }));
    expect(outerMm).toHaveLength(Math.ceil((6 - 0.75) / 1.5) + 1);
    expect(outerMm[0]).toBe(0.75);
    expect(outerMm.at(-1)).toBe(6);
    expect(assumptions.map(({ name }) => name)).toEqual(['first_coat_mm', 'coat_mm']);
  });

  it('a skin no thicker than the first coat is one coat', () => {
    expect(valueOf(planCoats({ skinMm: 0.75 })).outerMm).toEqual([0.75]);
  });

  it('never thicker than asked, always growing, ending at the skin; their grams add up (seed 2401)', () => {
    const random = lcg(2401);
    for (let round = 0; round < 500; round += 1) {
      const firstCoatMm = between(random, 0.3, 2);
      const coatMm = between(random, 0.5, 3);
      const skinMm = firstCoatMm + between(random, 0, 12);
      const { outerMm } = valueOf(planCoats({ skinMm, firstCoatMm, coatMm }));
      const message = `seed 2401, round ${round}`;
      expect(outerMm.at(-1), message).toBe(skinMm);
      for (let coat = 1; coat < outerMm.length; coat += 1) {
        expect(outerMm[coat]! - outerMm[coat - 1]!, message).toBeLessThanOrEqual(coatMm * (1 + 1e-9));
        expect(outerMm[coat]!, message).toBeGreaterThan(outerMm[coat - 1]!);
      }
      const sum = massesOf(outerMm, 0.1).reduce((all, g) => all + g, 0);
      expectClose(sum, 1.1 * 1.1 * shellOnR50Cm3(skinMm), 1e-9, message);
    }
  });

  it('equal later coats of a round sculpt each take more than the one before', () => {
    const masses = massesOf(valueOf(planCoats({ skinMm: 9, firstCoatMm: 0.75 })).outerMm, 0.1);
    for (let coat = 2; coat < masses.length; coat += 1)
      expect(masses[coat]!).toBeGreaterThan(masses[coat - 1]!);
  });

  it('waste that was not given is a tenth, and listed', () => {
    const volumesCm3 = [100];
    const { coats, assumptions } = valueOf(coatMasses({ outerMm: [1], volumesCm3, densityKgM3: 1000 }));
    expectClose(coats[0]!.massG, 110, 1e-12);
    expect(assumptions).toMatchObject([{ name: 'silicone_waste', value: 0.1 }]);
  });

  it('each coat is mixed by itself, and one too small for the scale is told', () => {
    const { coats } = valueOf(
      coatMasses({ outerMm: [1.5], volumesCm3: [shellOnR50Cm3(1.5)], densityKgM3: 1100, wasteShare: 0.1 }),
    );
    const mixed = valueOf(
      coatInMixes(
        coats[0]!,
        { densityKgM3: 1100, ratio: { base: 10, catalyst: 1, by: 'mass' }, wasteShare: 0.1, scaleStepG: 1 },
        { potLifeMin: 25, degassed: false },
      ),
    );
    expectClose(mixed.neededG.value, 53.37 * 1.1 + 20, 1e-3);
    expect(mixed.findings).toMatchObject([{ code: 'MIX_BELOW_SCALE' }]);
  });
});

describe('coats that cannot be', () => {
  it('a skin thinner than its first coat', () => {
    expect(problemOf(planCoats({ skinMm: 0.5 })).code).toBe('COATS_DO_NOT_FIT');
  });

  it.each([
    ['a coat of 0', { skinMm: 6, coatMm: 0 }, 'coatMm'],
    ['a first coat of 0', { skinMm: 6, firstCoatMm: 0 }, 'firstCoatMm'],
    ['a skin of 0', { skinMm: 0 }, 'skinMm'],
    ['a skin that is not a number', { skinMm: NaN }, 'skinMm'],
    ['a negative coat', { skinMm: 6, coatMm: -1 }, 'coatMm'],
  ])('%s', (_, inputs, input) => {
    expect(problemOf(planCoats(inputs)).values.input).toBe(input);
  });

  it('a density of 0', () => {
    const zero = coatMasses({ outerMm: [1], volumesCm3: [10], densityKgM3: 0 });
    expect(problemOf(zero).values.input).toBe('densityKgM3');
  });

  it('volumes that are missing or shrink are a mistake of ours', () => {
    const silicone = { densityKgM3: 1100, wasteShare: 0 };
    expect(() => coatMasses({ ...silicone, outerMm: [1, 2], volumesCm3: [10] })).toThrow(
      /expected 2 volumes/,
    );
    expect(() => coatMasses({ ...silicone, outerMm: [1, 2], volumesCm3: [10, 9] })).toThrow(/grow/);
    expect(() => coatMasses({ ...silicone, outerMm: [1], volumesCm3: [NaN] })).toThrow(/grow/);
  });
});
