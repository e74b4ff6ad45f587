import { describe, expect, it } from 'vitest';
import { packForChance, shortFillChance, shortFillFindings } from '../../src/yield/shortFill';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';

describe('chance of a short fill', () => {
  it('is the tail of the normal table: a margin of 1.96 standard deviations leaves 2.49979 %', () => {
    const packFactor = Math.exp(1.96 * 0.08);
    expectClose(shortFillChance({ packFactor, leastPack: 1, sigmaShare: 0.08 }), 0.0249978951, 1e-8);
  });

  it('is a half at the least pack and falls with the pack', () => {
    expectClose(shortFillChance({ packFactor: 1.125, leastPack: 1.125, sigmaShare: 0.05 }), 0.5, 1e-12);
    const chances = [1.0, 1.1, 1.2, 1.3, 1.5].map((packFactor) =>
      shortFillChance({ packFactor, leastPack: 1.1, sigmaShare: 0.08 }),
    );
    expect(chances.every((chance, index) => index === 0 || chance < (chances[index - 1] ?? 0))).toBe(true);
  });

  it('is certain where nothing is uncertain', () => {
    expect(shortFillChance({ packFactor: 1.2, leastPack: 1, sigmaShare: 0 })).toBe(0);
    expect(shortFillChance({ packFactor: 1, leastPack: 1.1, sigmaShare: 0 })).toBe(1);
    expect(shortFillChance({ packFactor: 1.1, leastPack: 1.1, sigmaShare: 0 })).toBe(0.5);
  });

  it('the pack for a wanted chance gives that chance back, though the uncertainty moves with the pack', () => {
    const sigmaShareAt = (pack: number): number => 0.05 + 0.04 / pack;
    for (const chance of [0.2, 0.05, 0.01, 1e-4]) {
      const packFactor = valueOf(packForChance({ chance, leastPack: 1.1, sigmaShareAt }));
      expectClose(
        shortFillChance({ packFactor, leastPack: 1.1, sigmaShare: sigmaShareAt(packFactor) }),
        chance,
        1e-9,
      );
    }
  });

  it('with a fixed uncertainty it is the closed form', () => {
    expectClose(
      valueOf(packForChance({ chance: 0.025, leastPack: 1.1, sigmaShareAt: () => 0.08 })),
      1.1 * Math.exp(1.95996398454 * 0.08),
      1e-11,
    );
  });

  it('says so when no allowed pack is enough', () => {
    const result = packForChance({ chance: 0.001, leastPack: 1.1, sigmaShareAt: () => 0.4 });
    expect(problemOf(result)).toMatchObject({
      code: 'SHORT_FILL_OUT_OF_REACH',
      values: { chance: 0.001, largest: 2.5 },
    });
  });

  it.each([
    [0.009, undefined],
    [0.02, 'look'],
    [0.11, 'stop'],
  ])('a chance of %d is said as %s', (chance, status) => {
    expect(shortFillFindings({ chance, sigmaShare: 0.08, packFactor: 1.2 })[0]?.status).toBe(status);
  });

  it.each([
    [0.01, undefined],
    [0.1, 'look'],
  ])('a pack made for a chance of %d is not found fault with for the last digit', (chance, status) => {
    const sigmaShareAt = (pack: number): number => 0.05 + 0.04 / pack;
    const packFactor = valueOf(packForChance({ chance, leastPack: 1, sigmaShareAt }));
    const sigmaShare = sigmaShareAt(packFactor);
    const found = shortFillChance({ packFactor, leastPack: 1, sigmaShare });
    for (const near of [found, chance * (1 + 1e-10)])
      expect(shortFillFindings({ chance: near, sigmaShare, packFactor })[0]?.status).toBe(status);
  });

  it('is never said to be 0 where something is uncertain, however far the margin', () => {
    // ln 2.5 over 0.02 is 45.8 standard deviations: a tail of about 1e-457, which no double holds.
    expect(shortFillChance({ packFactor: 2.5, leastPack: 1, sigmaShare: 0.02 })).toBeGreaterThan(0);
  });
});
