import { describe, expect, it } from 'vitest';
import {
  adhesiveG,
  amountByCoverage,
  flangeVolumeMm3,
  keyCount,
  keyVolumeMm3,
  moldWeight,
  outerSize,
  paintLiters,
  poreFillGPerM2,
  spreadingRateM2PerL,
  standingBox,
} from '../../../src/yield';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';

describe('paint and sealer', () => {
  it.each([
    [0.65, 5.2],
    [0.71, 5.68],
  ])(
    'paint of %d volume solids at 125 um dry covers %d m2 per L (balance of volumes)',
    (solidsShare, rate) => {
      expectClose(valueOf(spreadingRateM2PerL({ solidsShare, dryFilmUm: 125 })), rate, 1e-12);
    },
  );

  const threeCoats = {
    surfaceCm2: 3500,
    textureFactor: 1,
    coats: 3,
    dryFilmUm: 50,
    solidsShare: 0.35,
    lossShare: 0.3,
  };

  it('0.35 m2, 3 coats of 50 um, 35 % solids, 30 % lost: 0.214 L (arithmetic)', () => {
    expectClose(valueOf(paintLiters(threeCoats)), 0.214, 2e-3);
  });

  it('the solids that stay on the piece are its area times the dry film', () => {
    const solidsCm3 = valueOf(paintLiters(threeCoats)) * 1000 * 0.35 * (1 - 0.3);
    expectClose(solidsCm3, 3500 * 3 * 0.005, 1e-12);
  });

  it('a rough surface takes more: 1.1 unless said otherwise, as a scan smooths', () => {
    const { surfaceCm2, coats, dryFilmUm, solidsShare, lossShare } = threeCoats;
    const rough = { surfaceCm2, coats, dryFilmUm, solidsShare, lossShare };
    expectClose(valueOf(paintLiters(rough)), 1.1 * valueOf(paintLiters(threeCoats)), 1e-12);
  });

  it("by a figure of one's own: 0.5 m2 in two coats at 4 m2 per kg is 0.25 kg", () => {
    const kg = amountByCoverage({ surfaceCm2: 5000, textureFactor: 1, coats: 2, coverageM2: 4 });
    expectClose(valueOf(kg), 0.25, 1e-12);
  });

  it('both ways agree where the figure is the spreading rate and the loss is the same', () => {
    const coverageM2 = valueOf(spreadingRateM2PerL(threeCoats));
    expectClose(
      valueOf(amountByCoverage({ ...threeCoats, coverageM2 })),
      valueOf(paintLiters(threeCoats)),
      1e-12,
    );
  });

  it('open cells 0.3 mm deep swallow about 280 g/m2 (0.9 x 0.3 mm x 1.05 g/mL)', () => {
    expectClose(valueOf(poreFillGPerM2()), 283.5, 1e-12);
    expectClose(valueOf(poreFillGPerM2({ poreDepthMm: 0.6 })), 2 * 283.5, 1e-12);
  });

  it('a seam of 100 cm2 takes 3 to 5 g of adhesive, on both its faces (150 to 250 g/m2: common practice, no source)', () => {
    const { low, value, high } = valueOf(adhesiveG({ surfaceCm2: 100 }));
    expect([low, value, high]).toEqual([3, 4, 5]);
    expect(valueOf(adhesiveG({ surfaceCm2: 100, adhesiveGPerM2: 300 }))).toMatchObject({
      value: 6,
      from: 'given',
    });
  });

  it.each([
    ['no solids', paintLiters({ ...threeCoats, solidsShare: 0 }), 'INPUT_OUT_OF_BOUNDS', 'solidsShare'],
    [
      'solids in percent',
      paintLiters({ ...threeCoats, solidsShare: 35 }),
      'INPUT_OUT_OF_BOUNDS',
      'solidsShare',
    ],
    ['all paint lost', paintLiters({ ...threeCoats, lossShare: 1 }), 'INPUT_OUT_OF_BOUNDS', 'lossShare'],
    ['no area', paintLiters({ ...threeCoats, surfaceCm2: 0 }), 'INPUT_OUT_OF_BOUNDS', 'surfaceCm2'],
    ['NaN coats', paintLiters({ ...threeCoats, coats: Number.NaN }), 'INPUT_NOT_A_NUMBER', 'coats'],
    [
      'no coverage',
      amountByCoverage({ surfaceCm2: 9, coats: 1, coverageM2: 0 }),
      'INPUT_OUT_OF_BOUNDS',
      'coverageM2',
    ],
    [
      'minus adhesive',
      adhesiveG({ surfaceCm2: 9, adhesiveGPerM2: -1 }),
      'INPUT_OUT_OF_BOUNDS',
      'adhesiveGPerM2',
    ],
    ['pores of 120 %', poreFillGPerM2({ poreShare: 1.2 }), 'INPUT_OUT_OF_BOUNDS', 'poreShare'],
  ])('refuses %s', (_name, outcome, code, input) => {
    expect(problemOf<unknown>(outcome)).toMatchObject({ code, values: { input } });
  });
});

describe('weight and size of the mold', () => {
  it('silicone and dry jacket add up; 16 kg are for two', () => {
    const { moldG, findings } = valueOf(moldWeight({ siliconeG: 9000, jacketDryG: 7000 }));
    expect(moldG).toBe(16_000);
    expect(findings[0]?.code).toBe('LIFT_HEAVY');
    expect(valueOf(moldWeight({ siliconeG: 2000, jacketDryG: 3000 })).findings).toEqual([]);
  });

  it('a 100 mm cube under 8 mm of rubber and 15 mm of jacket: 146 x 146 x 123 mm on its base, 146 high closed', () => {
    const cube = { sculptMm: [100, 100, 100] as const, rubberMm: 8, jacketMm: 15 };
    expect(valueOf(outerSize({ ...cube, base: 'open' }))).toEqual([146, 146, 123]);
    expect(valueOf(outerSize({ ...cube, base: 'closed' }))).toEqual([146, 146, 146]);
    expect(valueOf(outerSize({ ...cube, base: 'open', flangeMm: 25 }))).toEqual([166, 166, 123]);
  });

  it('a standing box with 20 mm at the sides and beneath; the packing is what box and mold differ by', () => {
    const { innerMm, packingCm3 } = valueOf(standingBox({ outerMm: [100, 200, 300], clearanceMm: 20 }));
    expect(innerMm).toEqual([140, 240, 320]);
    expectClose(packingCm3, 14 * 24 * 32 - 10 * 20 * 30, 1e-12, 'round a block');
    const cylinderCm3 = (Math.PI / 4) * 10 * 20 * 30;
    const round = valueOf(standingBox({ outerMm: [100, 200, 300], clearanceMm: 20, outerCm3: cylinderCm3 }));
    expectClose(round.packingCm3, 14 * 24 * 32 - cylinderCm3, 1e-12, 'round an oval');
  });

  it.each([
    ['a mass below 0', moldWeight({ siliconeG: -1, jacketDryG: 0 }), 'INPUT_OUT_OF_BOUNDS', 'siliconeG'],
    ['a flat box', standingBox({ outerMm: [100, 100, 0] }), 'INPUT_OUT_OF_BOUNDS', 'outerZMm'],
    ['a NaN side', standingBox({ outerMm: [Number.NaN, 1, 1] }), 'INPUT_NOT_A_NUMBER', 'outerXMm'],
    [
      'a clearance below 0',
      standingBox({ outerMm: [9, 9, 9], clearanceMm: -1 }),
      'INPUT_OUT_OF_BOUNDS',
      'clearanceMm',
    ],
    [
      'a jacket below 0',
      outerSize({ sculptMm: [9, 9, 9], rubberMm: 8, jacketMm: -15, base: 'open' }),
      'INPUT_OUT_OF_BOUNDS',
      'jacketMm',
    ],
  ])('refuses %s', (_name, outcome, code, input) => {
    expect(problemOf<unknown>(outcome)).toMatchObject({ code, values: { input } });
  });
});

describe('keys and flange', () => {
  it('a half-ball key of radius 8 is 1.072 mL, twelve are 12.87 (2/3 pi r^3)', () => {
    expectClose(keyVolumeMm3(8) / 1000, 1.072, 5e-4);
    expectClose((12 * keyVolumeMm3(8)) / 1000, 12.87, 5e-4);
  });

  it('a flange 25 wide and 6 thick round 300 mm is 56.8 mL, as round a circle of that girth', () => {
    const flangeMm3 = flangeVolumeMm3({ outlineMm: 300, widthMm: 25, thicknessMm: 6 });
    expectClose(flangeMm3 / 1000, 56.8, 5e-4, 'published');
    const radiusMm = 300 / (2 * Math.PI);
    expectClose(flangeMm3, 6 * Math.PI * ((radiusMm + 25) ** 2 - radiusMm ** 2), 1e-12, 'ring');
  });

  it('a seam of 600 mm at 65 mm has 10 keys, never farther apart; two rows have twice as many', () => {
    expect(valueOf(keyCount({ seamMm: 600 }))).toBe(10);
    expect(valueOf(keyCount({ seamMm: 600, keyRows: 2 }))).toBe(20);
    expect(valueOf(keyCount({ seamMm: 600, keySpacingMm: 60 }))).toBe(10);
    expect(problemOf(keyCount({ seamMm: 600, keySpacingMm: 0 })).values.input).toBe('keySpacingMm');
    expect(problemOf(keyCount({ seamMm: Number.NaN })).code).toBe('INPUT_NOT_A_NUMBER');
  });
});
