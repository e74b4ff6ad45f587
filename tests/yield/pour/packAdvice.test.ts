import { describe, expect, it } from 'vitest';
import {
  fillRate,
  MDI_LIMITS,
  mdiMgPerM3,
  sizeAwarePack,
  skinAddsKgM3,
  stiffnessRatio,
} from '../../../src/yield';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

/** The part of T20, scaled: surface goes with volume to the power of 2/3. */
const scaledCm2 = (cavityCm3: number): number => 1500 * (cavityCm3 / 4500) ** (2 / 3);

describe('pack by size (a mass balance of ours; skin depth and density: common practice, no source)', () => {
  it('T20: skin of 1 mm, 600 on a core of 150 kg/m3, 0.15 m2 on 4.5 L adds 15 kg/m3 and needs a pack of 1.100', () => {
    const adds = skinAddsKgM3({ skinKgM3: 600, coreKgM3: 150, skinMm: 1, castingCm2: 1500, cavityCm3: 4500 });
    expectClose(adds, 15, 1e-12);
    const { leastPack } = valueOf(sizeAwarePack({ castingCm2: 1500, cavityCm3: 4500, skinMm: 1 }));
    expectClose(leastPack.value, 1.1, 1e-12);
    expectClose(leastPack.value, (150 + adds) / 150, 1e-12);
  });

  it.each([
    [200, '1.282', '1.482'],
    [1000, '1.165', '1.365'],
    [5200, '1.095', '1.295'],
  ])('T21: the same part of %d cm3 needs %s, and T21b: the advice is %s', (cavityCm3, least, advised) => {
    const pack = valueOf(sizeAwarePack({ castingCm2: scaledCm2(cavityCm3), cavityCm3 }));
    expectPrinted(pack.leastPack.value, least);
    expectPrinted(pack.advisedPack.value, advised);
  });

  it('the skin is an assumption one can turn: it is listed, with a range of 0.5 to 2 mm until it is given', () => {
    const open = valueOf(sizeAwarePack({ castingCm2: 1500, cavityCm3: 4500 }));
    expect(open.assumptions.map(({ name, value }) => [name, value])).toContainEqual(['skin_depth_mm', 1]);
    expectClose(open.leastPack.low, 1.05, 1e-12);
    expectClose(open.leastPack.high, 1.2, 1e-12);
    // A margin of 0.2 on top, at either end and between.
    expectClose(open.advisedPack.low, 1.25, 1e-12);
    expectClose(open.advisedPack.value, 1.3, 1e-12);
    expectClose(open.advisedPack.high, 1.4, 1e-12);
    expect([open.leastPack.from, open.advisedPack.from]).toEqual(['assumed', 'assumed']);
    const set = valueOf(sizeAwarePack({ castingCm2: 1500, cavityCm3: 4500, skinMm: 2 }));
    expect(set.leastPack).toMatchObject({ from: 'given', low: set.leastPack.value });
    expectClose(set.leastPack.value, 1.2, 1e-12);
  });

  it('smaller parts and thicker skins never need less (random, seed 21)', () => {
    const random = lcg(21);
    for (let round = 0; round < 200; round += 1) {
      const cavityCm3 = between(random, 20, 20_000);
      const skinMm = between(random, 0.5, 2);
      const least = (cm3: number, mm: number): number =>
        valueOf(sizeAwarePack({ castingCm2: scaledCm2(cm3), cavityCm3: cm3, skinMm: mm })).leastPack.value;
      const message = `seed 21, round ${round}`;
      expect(least(0.9 * cavityCm3, skinMm), message).toBeGreaterThan(least(cavityCm3, skinMm));
      expect(least(cavityCm3, 1.1 * skinMm), message).toBeGreaterThan(least(cavityCm3, skinMm));
    }
  });

  it('a part that is all skin is as dense as skin and no denser', () => {
    const sheet = sizeAwarePack({ castingCm2: 20_000, cavityCm3: 100, skinMm: 2 });
    expect(valueOf(sheet).leastPack.value).toBe(4);
  });

  it.each([
    [{ castingCm2: 0, cavityCm3: 100 }, 'castingCm2'],
    [{ castingCm2: 100, cavityCm3: Number.NaN }, 'cavityCm3'],
    [{ castingCm2: 100, cavityCm3: 100, skinMm: 0 }, 'skinMm'],
    [{ castingCm2: 100, cavityCm3: 100, packMargin: -0.1 }, 'packMargin'],
  ])('refuses %o', (part, input) => {
    expect(problemOf(sizeAwarePack(part)).values.input).toBe(input);
  });
});

describe('stiffness within one formulation (Gibson and Ashby, Cellular Solids)', () => {
  it('T22: from 10 to 12 pcf 1.440 times as stiff; 160.18 of a solid of 1200 is a share of 0.0178188', () => {
    const denser = valueOf(stiffnessRatio({ packFactor: 1.2, referencePack: 1 }));
    expectPrinted(denser.value, '1.440');
    expectPrinted((160.184634 / 1200) ** 2, '0.0178188');
    expectClose(denser.low, 1.2 ** 1.5, 1e-12);
    expectClose(denser.high, 1.2 ** 2.5, 1e-12);
  });

  it('a lighter pack is softer, with its range turned round; the same pack is the same', () => {
    const softer = valueOf(stiffnessRatio({ packFactor: 1.1, referencePack: 1.3 }));
    expect(softer.value).toBeLessThan(1);
    expect(softer.low).toBeLessThan(softer.value);
    expect(softer.high).toBeGreaterThan(softer.value);
    expect(valueOf(stiffnessRatio({ packFactor: 1.3, referencePack: 1.3 }))).toMatchObject({
      low: 1,
      high: 1,
    });
  });

  it('refuses a pack of 0, a reference of 5, a power of 9', () => {
    expect(problemOf(stiffnessRatio({ packFactor: 0, referencePack: 1.3 })).code).toBe('PACK_REFUSED');
    expect(problemOf(stiffnessRatio({ packFactor: 1.3, referencePack: 5 })).code).toBe('PACK_REFUSED');
    const power = stiffnessRatio({ packFactor: 1.3, referencePack: 1.3, stiffnessPower: 9 });
    expect(problemOf(power).values.input).toBe('stiffnessPower');
  });
});

describe('how often a level filled', () => {
  it('T36: 7 of 8 filled: mean 0.8, and only 0.570864 at the lower 5 % (Beta(8, 2))', () => {
    const rate = valueOf(fillRate({ poured: 8, filled: 7 }));
    expectClose(rate.mean, 0.8, 1e-12);
    expectPrinted(rate.low, '0.570864');
    // Beta(8, 2) below x is 9 x^8 - 8 x^9 (by hand).
    expectClose(9 * rate.low ** 8 - 8 * rate.low ** 9, 0.05, 1e-6);
  });

  it('nothing poured says nothing: half, and from 5 % on', () => {
    const rate = valueOf(fillRate({ poured: 0, filled: 0 }));
    expect(rate.mean).toBe(0.5);
    expectClose(rate.low, 0.05, 1e-9);
  });

  it.each([
    [{ poured: 3, filled: 4 }, 'INPUT_OUT_OF_BOUNDS'],
    [{ poured: -1, filled: 0 }, 'INPUT_OUT_OF_BOUNDS'],
    [{ poured: 2.5, filled: 1 }, 'INPUT_NOT_WHOLE'],
    [{ poured: Number.NaN, filled: 1 }, 'INPUT_NOT_A_NUMBER'],
  ])('refuses %o', (counts, code) => {
    expect(problemOf(fillRate(counts)).code).toBe(code);
  });
});

describe('MDI in the air (NIOSH, documentation of IDLH 101-68-8)', () => {
  it('T39: 0.005 and 0.02 ppm are 0.051176 and 0.204703 mg/m3 at 25 C (x 250.25 / 24.45, by hand)', () => {
    expectPrinted(valueOf(mdiMgPerM3(MDI_LIMITS.nioshMean.value)), '0.051176');
    expectPrinted(valueOf(mdiMgPerM3(MDI_LIMITS.nioshCeiling.value)), '0.204703');
    expect(problemOf(mdiMgPerM3(-1)).values.input).toBe('ppm');
  });
});
