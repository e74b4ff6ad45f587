import { describe, expect, it } from 'vitest';
import { openingKeeps } from '../../../src/yield/learn/openingKeeps';
import type { TrimmedPour } from '../../../src/yield/learn/openingKeeps';
import { riserViscosityPaS } from '../../../src/yield/learn/riserViscosity';
import { learnScanFactor } from '../../../src/yield/learn/scanToMold';
import { foamThroughVentG, riserBackPressureKPa, RULES } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';

describe('from scan to mold', () => {
  it('without a water fill: 1, known to the assumed 1.5 %', () => {
    const { factor, uShare, pieces } = valueOf(learnScanFactor([]));
    expect(factor).toMatchObject({ value: 1, from: 'assumed' });
    expectClose(uShare, RULES.uScanToMold.value, 1e-12);
    expect(pieces).toBe(0);
  });

  it('the two of the sample shop (4 470 g and 906 g at 20 C over 4 434 and 908 cm3) pull it up by less than they say', () => {
    const water = 0.998207;
    const { factor } = valueOf(
      learnScanFactor([
        { scanCm3: 4434, cavityCm3: 4470 / water },
        { scanCm3: 908, cavityCm3: 906 / water },
      ]),
    );
    const said = (4470 / water / 4434 + 906 / water / 908) / 2;
    expect(factor.from).toBe('learned');
    expect(factor.value).toBeGreaterThan(1);
    expect(factor.value).toBeLessThan(said);
    // Two rows of weight 1 against a prior of weight 0.01^2 / (0.015^2 - 0.01^2) = 0.8.
    expectClose(factor.value, (0.8 + 2 * said) / 2.8, 1e-6);
  });

  it('many pieces that agree narrow it, to the scatter from piece to piece', () => {
    const many = Array.from({ length: 30 }, (_, i) => ({ scanCm3: 1000, cavityCm3: 1020 + (i % 3) }));
    const { factor, uShare } = valueOf(learnScanFactor(many));
    expectClose(factor.value, 1.0205, 1e-3);
    expect(uShare).toBeLessThan(0.005);
    expect(factor.low).toBeGreaterThan(1.01);
  });

  it('refuses a cavity that is none', () => {
    expect(problemOf(learnScanFactor([{ scanCm3: 5, cavityCm3: 0 }])).values.input).toBe('cavityCm3');
  });
});

describe('what an opening keeps of the overpack', () => {
  const troll: TrimmedPour = {
    opening: 'plug',
    packFactor: 1.25,
    freeRiseKgM3: 100,
    uFreeRiseShare: 0.02,
    cavityCm3: 4480,
    trimG: 21,
  };

  it('by hand: 112 g over the free rise, 21 g trimmed, 81 % kept', () => {
    const [plug, ...more] = valueOf(openingKeeps([troll]));
    expect(more).toEqual([]);
    expectClose(plug!.keptShare.value, 1 - 21 / 112, 1e-12);
    // 2 % of the free rise is 8 % of a quarter of it, 13.2 % at 1.645.
    expectClose(plug!.keptShare.low, 1 - 21 / (112 * (1 - 1.644854 * 0.08)), 1e-6);
    expect(plug).toMatchObject({ opening: 'plug', pours: 1 });
  });

  it('a doubt that takes all of the overpack leaves nothing at its lower end; 5 % is assumed', () => {
    const { uFreeRiseShare: _u, ...untold } = { ...troll, trimG: 0.5 };
    const keptAt = (packFactor: number) => valueOf(openingKeeps([{ ...untold, packFactor }]))[0]!.keptShare;
    // 1.645 x 5 % of the free rise is 8.2 %: more than the 5 % packed beyond it, and 0.41 of a fifth.
    expect(keptAt(1.05).low).toBe(0);
    const share = (1.644854 * 0.05) / 0.2;
    expectClose(keptAt(1.2).low, 1 - 0.5 / (89.6 * (1 - share)), 1e-6);
    expectClose(keptAt(1.2).high, 1 - 0.5 / (89.6 * (1 + share)), 1e-6);
  });

  it('open and plugged apart; no trim or no overpack says nothing', () => {
    const kept = valueOf(
      openingKeeps([
        troll,
        { ...troll, packFactor: 1.35, trimG: 31 },
        { ...troll, opening: 'open', trimG: 90 },
        { opening: 'plug', packFactor: 1.3, freeRiseKgM3: 100, cavityCm3: 4480 },
        { ...troll, packFactor: 1, trimG: 4 },
      ]),
    );
    expect(kept.map(({ opening, pours }) => `${opening} ${pours}`)).toEqual(['open 1', 'plug 2']);
    expectClose(kept[1]!.keptShare.value, 1 - 52 / (112 + 156.8), 1e-12);
    expect(kept[0]!.keptShare.high).toBeLessThan(kept[1]!.keptShare.low);
  });

  it('more trimmed than was packed keeps nothing, not less', () => {
    expect(valueOf(openingKeeps([{ ...troll, trimG: 500 }]))[0]!.keptShare.value).toBe(0);
  });
});

describe('apparent viscosity from a trimmed riser', () => {
  it('gives back the 50 Pa s that put 3.39 kPa before a riser of 25 x 50 mm (k 1.3, 5.2 L, 120 s)', () => {
    const riser = { sprueMm: 25, sprueLengthMm: 50, riseS: 120 };
    const kPa = valueOf(
      riserBackPressureKPa({ ...riser, packFactor: 1.3, cavityCm3: 5200, foamPaS: 50 }),
    ).value;
    expectClose(kPa, 3.39, 1e-3);
    // What leaves is 0.3 x 5.2 L, here of 160 kg/m3.
    const { value, low, high } = valueOf(
      riserViscosityPaS({ ...riser, riserTrimG: 0.3 * 5.2 * 160, moldedKgM3: 160, gaugeKPa: kPa }),
    );
    expectClose(value, 50, 1e-9);
    expectClose(low, 12.5, 1e-9);
    expectClose(high, 200, 1e-9);
  });

  it('and that of a vent of 6 mm that bled 20.4 g', () => {
    const vent = { ventMm: 6, ventLengthMm: 15, gaugeKPa: 25, riseS: 120, moldedKgM3: 160.18, foamPaS: 50 };
    const bled = valueOf(foamThroughVentG(vent));
    const { value } = valueOf(
      riserViscosityPaS({ ...vent, sprueMm: 6, sprueLengthMm: 15, riserTrimG: bled }),
    );
    expectClose(value, 50, 1e-12);
  });

  it('a riser that was not trimmed says nothing', () => {
    const riser = { sprueMm: 25, sprueLengthMm: 50, riseS: 120, riserTrimG: 0, moldedKgM3: 160, gaugeKPa: 3 };
    expect(problemOf(riserViscosityPaS(riser)).values.input).toBe('riserTrimG');
  });
});
