import { describe, expect, it } from 'vitest';
import { SAMPLE_BOOK } from '../../../src/job/sampleBook';
import {
  fillBatch,
  learnFill,
  learnFreeRise,
  learnResidue,
  openingKeeps,
  waterGPerCm3,
} from '../../../src/yield';
import type { FillPour, FreeRisePour, TrimmedPour } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { valueOf } from '../../support/outcome';

/** Cavities of the light pieces, cm3: water at 20 C of the troll's mold, and the recipe of the hollow rock. */
const CAVITY_CM3: Record<string, number> = { '1-troll': 4470 / waterGPerCm3(20), '3-rock': 10_787 };
const SHEET_KG_M3 = (6 * 0.45359237) / 0.3048 ** 3;
const CUP_CM3 = 500 / waterGPerCm3(20);
const CUPS_KG_M3 = [53.4, 50.3].map((foamG) => (1000 * foamG) / CUP_CM3);
/** Pour 1 was short by 2.7 %. */
const SHORT_SHARE = 0.027;

const light = SAMPLE_BOOK.filter(({ foam }) => foam === 'Sample Foam Light');
const cavityOf = ({ piece }: (typeof light)[number]): number => CAVITY_CM3[piece]!;

describe('what the book of the sample shop says of its light foam', () => {
  const freeRise = valueOf(
    learnFreeRise({
      cups: CUPS_KG_M3.map((freeRiseKgM3) => ({ freeRiseKgM3 })),
      sheet: { freeRiseKgM3: SHEET_KG_M3 },
      pours: light.map((pour): FreeRisePour => ({
        outcome: pour.no === 1 ? 'short' : 'full',
        castingG: pour.castingG,
        filledCm3: cavityOf(pour) * (pour.no === 1 ? 1 - SHORT_SHARE : 1),
      })),
    }),
  );

  it('free rise from two cups and the short pour, above the data sheet; five full pours are bounds only', () => {
    expect(freeRise).toMatchObject({ cups: 2, shortPours: 1, bounds: 5 });
    expect(freeRise.freeRiseKgM3.low).toBeGreaterThan(SHEET_KG_M3);
    // Two cups alone have a mean of 103.3; the full pours lie at 112 to 120.
    expectClose(freeRise.freeRiseKgM3.value, 103.3, 0.015);
  });

  const pours = light.map((pour): FillPour => ({
    outcome: pour.no === 1 ? 'short' : 'full',
    cavityCm3: cavityOf(pour),
    pouredG: pour.mixedG - pour.residueG,
    ...(pour.no === 1 ? { shortShare: SHORT_SHARE } : {}),
  }));
  const fill = valueOf(
    learnFill({ freeRiseKgM3: CUPS_KG_M3[0]!, from: 'cup-test', uFreeRiseShare: 0.03 }, pours),
  );
  const residue = valueOf(learnResidue(SAMPLE_BOOK));

  it('what just fills the troll: the short 489 g over what they filled, and the residue', () => {
    expect(fill).toMatchObject({ exact: 1, bounds: 5, from: 'learned', atOdds: false });
    const cavityCm3 = CAVITY_CM3['1-troll']!;
    const { leastMixedG, mixedG } = valueOf(fillBatch({ fill, residue, cavityCm3, chance: 0.95 }));
    expectClose(leastMixedG.value, 489 / (1 - SHORT_SHARE) + 24, 0.02);
    expect(leastMixedG.low).toBeLessThan(513);
    expect(leastMixedG.high).toBeGreaterThan(527);
    // The advised batch is the upper end of the range: 95 times of 100.
    expectClose(mixedG, leastMixedG.high, 0.005);
  });

  it('plugs kept about four fifths of the overpack; the rock whose trim nobody weighed is left out', () => {
    const trimmed = light
      .filter(({ no }) => no !== 1)
      .map((pour): TrimmedPour => ({
        opening: pour.opening,
        packFactor: pour.pack,
        freeRiseKgM3: freeRise.freeRiseKgM3.value,
        cavityCm3: cavityOf(pour),
        ...(pour.trimG === undefined ? {} : { trimG: pour.trimG }),
      }));
    const kept = valueOf(openingKeeps(trimmed));
    expect(kept).toHaveLength(1);
    expect(kept[0]).toMatchObject({ opening: 'plug', pours: 4 });
    expectClose(kept[0]!.keptShare.value, 0.8, 0.05);
  });
});
