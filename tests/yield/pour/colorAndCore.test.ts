import { describe, expect, it } from 'vitest';
import { coreLift, dropMassG, hollowCavityCm3, scaleColor, waterReaction } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

describe('a color recipe', () => {
  const skin = [
    { name: 'white', share: 0.01, of: 'B', weighedDrops: { drops: 20, dropsG: 0.44 } },
    { name: 'red', share: 0.001, of: 'mix' },
  ] as const;

  it('1 % of 400 g of B is 4.0 g, 182 drops of 22 mg: weigh, do not count (arithmetic)', () => {
    const { items } = valueOf(scaleColor({ colors: skin, partAG: 208, partBG: 400 }));
    expectClose(items[0]!.massG, 4, 1e-12);
    expect(items[0]).toMatchObject({ drops: 182, dropFrom: 'weighed' });
    expectClose(items[1]!.massG, 0.608, 1e-12);
    expect(items[1]!.dropFrom).toBe('assumed');
  });

  it('a drop nobody weighed is assumed and listed; one that was weighed is not', () => {
    const listed = valueOf(scaleColor({ colors: skin, partAG: 208, partBG: 400 })).assumptions;
    expect(listed.map(({ name }) => name)).toEqual(['drop_g']);
    expect(valueOf(scaleColor({ colors: [skin[0]], partAG: 208, partBG: 400 })).assumptions).toEqual([]);
  });

  it('kept by mass: a batch so many times larger takes so many times the color (random, seed 7)', () => {
    const random = lcg(7);
    for (let round = 0; round < 100; round += 1) {
      const times = between(random, 0.1, 20);
      const [partAG, partBG] = [between(random, 10, 2000), between(random, 10, 2000)];
      const once = valueOf(scaleColor({ colors: skin, partAG, partBG }));
      const more = valueOf(scaleColor({ colors: skin, partAG: times * partAG, partBG: times * partBG }));
      expectClose(more.totalG, times * once.totalG, 1e-9, `seed 7, round ${round}`);
    }
  });

  it('a drop from a tip of 1.5 mm at 35 mN/m weighs 21.9 mg, 46 a gram; of water 45.5 mg (Tate, Harkins and Brown, from memory)', () => {
    const dropG = valueOf(dropMassG({ dropRadiusMm: 1.5, surfaceTensionMNM: 35 }));
    expectPrinted(1000 * dropG, '21.9');
    expectPrinted(1 / dropG, '46');
    expectPrinted(4 / dropG, '183');
    expectPrinted(1000 * valueOf(dropMassG({ dropRadiusMm: 1.5, surfaceTensionMNM: 72.8 })), '45.5');
  });

  it.each([
    [0, '1.24'],
    [25, '1.36'],
    [40, '1.43'],
  ])(
    'a gram of water makes gas: at %d C %s L, and takes 15.55 g of a part A with 30 % NCO (stoichiometry)',
    (waterC, liters) => {
      const { co2L, isocyanateG } = valueOf(waterReaction({ waterG: 1, ncoShare: 0.3, waterC }));
      expectPrinted(co2L, liters);
      expectPrinted(isocyanateG, '15.55');
    },
  );

  it('so a gram of acrylic, half of it water, makes 0.68 L and eats 7.8 g', () => {
    const half = valueOf(waterReaction({ waterG: 0.5, ncoShare: 0.3 }));
    expectPrinted(half.co2L, '0.68');
    expectPrinted(half.isocyanateG, '7.8');
  });

  it.each([
    ['a share of half the batch', [{ ...skin[0], share: 0.5 }], 'INPUT_OUT_OF_BOUNDS'],
    ['a share that is no number', [{ ...skin[0], share: Number.NaN }], 'INPUT_NOT_A_NUMBER'],
    ['two colors of one name', [skin[0], skin[0]], 'COLOR_NAMED_TWICE'],
    [
      'drops that weigh nothing',
      [{ ...skin[0], weighedDrops: { drops: 20, dropsG: 0 } }],
      'INPUT_OUT_OF_BOUNDS',
    ],
    [
      'two drops, too few to weigh',
      [{ ...skin[0], weighedDrops: { drops: 2, dropsG: 1 } }],
      'INPUT_OUT_OF_BOUNDS',
    ],
    ['broken drops', [{ ...skin[0], weighedDrops: { drops: 20.5, dropsG: 1 } }], 'INPUT_NOT_WHOLE'],
  ])('refused: %s', (_, colors, code) => {
    expect(problemOf(scaleColor({ colors, partAG: 208, partBG: 400 })).code).toBe(code);
  });

  it('refused: no batch, NCO in percent, a tip without width', () => {
    expect(problemOf(scaleColor({ colors: skin, partAG: 0, partBG: 400 })).values.input).toBe('mixedG');
    expect(problemOf(waterReaction({ waterG: 1, ncoShare: 30 })).values.input).toBe('ncoShare');
    expect(problemOf(waterReaction({ waterG: -1, ncoShare: 0.3 })).values.input).toBe('colorWaterG');
    expect(problemOf(dropMassG({ dropRadiusMm: 0, surfaceTensionMNM: 35 })).values.input).toBe(
      'dropRadiusMm',
    );
  });
});

describe('a hollow casting', () => {
  it('a sphere of 100 mm in one of 150 mm, with 9 cm3 of wire: the shell between them less the wire', () => {
    const sphere = (mm: number): number => (Math.PI * mm ** 3) / 6000;
    const cavity = hollowCavityCm3({
      outerCm3: { value: sphere(150) },
      coreCm3: { value: sphere(100) },
      armatureCm3: { value: 9 },
    });
    expectClose(valueOf(cavity).value, (Math.PI * (150 ** 3 - 100 ** 3)) / 6000 - 9, 1e-12);
  });

  it('ranges of 1 % of a large outside and a large core are a large share of the little between (quadrature)', () => {
    const { value, low, high } = valueOf(
      hollowCavityCm3({
        outerCm3: { value: 10_000, low: 9900, high: 10_100 },
        coreCm3: { value: 9000, low: 8910, high: 9090 },
      }),
    );
    expect(value).toBe(1000);
    expectClose(high - value, Math.hypot(100, 90), 1e-12);
    expectClose(value - low, Math.hypot(100, 90), 1e-12);
  });

  it('ranges that lean to one side stay on theirs', () => {
    const leaning = valueOf(
      hollowCavityCm3({
        outerCm3: { value: 1000, high: 1030 },
        coreCm3: { value: 400, low: 360 },
        armatureCm3: { value: 10 },
      }),
    );
    expect(leaning).toMatchObject({ value: 590, low: 590 });
    expectClose(leaning.high, 590 + 50, 1e-12);
  });

  it('a core as large as its outside, a range that leaves its value out, a volume that is no number', () => {
    const outerCm3 = { value: 100 };
    expect(problemOf(hollowCavityCm3({ outerCm3, coreCm3: { value: 100 } })).code).toBe('CORE_FILLS_MOLD');
    expect(problemOf(hollowCavityCm3({ outerCm3: { value: 100, low: 101 } })).code).toBe(
      'INPUT_OUT_OF_BOUNDS',
    );
    expect(problemOf(hollowCavityCm3({ outerCm3: { value: Number.NaN } })).code).toBe('INPUT_NOT_A_NUMBER');
    expect(problemOf(hollowCavityCm3({ outerCm3, coreCm3: { value: 9, high: Infinity } })).code).toBe(
      'INPUT_NOT_A_NUMBER',
    );
  });

  it('a core of 2 L and 450 g in liquid of 1120: 17.6 N up at most (Archimedes), 1.5 N when foam of 300 surrounds it', () => {
    const { lift, findings } = valueOf(
      coreLift({ coreCm3: 2000, coreG: 450, liquidKgM3: 1120, moldedKgM3: 300 }),
    );
    expectPrinted(lift!.inLiquidN, '17.6');
    expectPrinted(lift!.inFoamN, '1.5');
    expect(findings).toMatchObject([{ code: 'CORE_FLOATS', status: 'look' }]);
    expectClose(Number(findings[0]!.values.advisedN), 2 * lift!.holdN, 1e-12);
  });

  it('a neck of 20 cm2 through the wall is pushed out with 50 N at 25 kPa, on top of the lift', () => {
    const core = { coreCm3: 2000, coreG: 450, liquidKgM3: 1120, moldedKgM3: 300 };
    const { lift } = valueOf(coreLift({ ...core, gaugeKPa: 25, neckCm2: 20 }));
    expect(lift!.neckN).toBe(50);
    expectClose(lift!.holdN, 50 + lift!.inLiquidN, 1e-12);
  });

  it('a core as heavy as the liquid it displaces stays down; one of unknown mass is Not checked', () => {
    const heavy = valueOf(coreLift({ coreCm3: 1000, coreG: 1070, liquidKgM3: 1070, moldedKgM3: 200 }));
    expect(Math.abs(heavy.lift!.inLiquidN)).toBeLessThan(1e-12);
    expect(heavy.findings).toEqual([]);
    const unknown = valueOf(coreLift({ coreCm3: 1000, liquidKgM3: 1070, moldedKgM3: 200 }));
    expect(unknown).not.toHaveProperty('lift');
    expect(unknown.findings).toMatchObject([
      { code: 'CORE_MASS_UNKNOWN', status: 'unknown', values: { needG: 1070 } },
    ]);
  });

  it.each([
    [{ coreCm3: -1, coreG: 1 }, 'coreCm3'],
    [{ coreCm3: 1, coreG: Number.NaN }, 'coreG'],
    [{ coreCm3: 1, coreG: 1, neckCm2: -1 }, 'neckCm2'],
    [{ coreCm3: 1, coreG: 1, moldedKgM3: 0 }, 'moldedKgM3'],
  ])('refuses %o', (core, input) => {
    const lift = coreLift({ liquidKgM3: 1070, moldedKgM3: 200, ...core });
    expect(problemOf(lift).values.input).toBe(input);
  });
});
