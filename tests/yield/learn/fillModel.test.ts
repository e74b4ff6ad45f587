import { describe, expect, it } from 'vitest';
import { logShareBelow, shareBelow } from '../../../src/yield/learn/fastNormal';
import { fillAt, learnFill } from '../../../src/yield/learn/fillModel';
import type { FillPour } from '../../../src/yield/learn/fillModel';
import { fillBelief, fillRow } from '../../../src/yield/learn/fillPrior';
import type { FillPrior } from '../../../src/yield/learn/fillPrior';
import { learnRows, predictAt } from '../../../src/yield/learn/normalInverseGamma';
import type { NormalInverseGamma } from '../../../src/yield/learn/normalInverseGamma';
import { studentQuantile } from '../../../src/yield/learn/studentT';
import { normalCdf } from '../../../src/yield/normal';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';

const prior: FillPrior = { freeRiseKgM3: 100, from: 'data-sheet', uFreeRiseShare: 0.08 };
const troll = { cavityCm3: 4478 };
const short = (pouredG: number, shortShare: number): FillPour => ({
  ...troll,
  outcome: 'short',
  pouredG,
  shortShare,
});
const full = (pouredG: number): FillPour => ({ ...troll, outcome: 'full', pouredG });
const over = (pouredG: number, trimG: number): FillPour => ({
  ...troll,
  outcome: 'overflowed',
  pouredG,
  trimG,
});

describe('before any pour', () => {
  it('the belief has the doubts that were stated, in quadrature', () => {
    const belief = valueOf(fillBelief({ ...prior, uCavityShare: 0.015, gasLossShare: 0.01 }));
    const density = (100 * 1.05) / 0.99;
    expectClose(belief.mean[1]!, density, 1e-12);
    // 8 %, 1.5 % and an even 0 to 10 % of skin: its deviation is 0.1/sqrt(12), seen from 1.05.
    const u = Math.hypot(0.08, 0.015, 0.1 / Math.sqrt(12) / 1.05);
    const expectedS2 = belief.rate / (belief.shape - 1);
    expectClose(Math.sqrt(expectedS2 / belief.precision[1]![1]!), density * u, 1e-12);
    expectClose(Math.sqrt(expectedS2 / belief.precision[0]![0]!), 5, 1e-12);
    expectClose(Math.sqrt(expectedS2), 0.03 * density, 1e-12);
  });

  it('a doubt that is not told is 8 % of a data sheet and 3 % of a cup', () => {
    const told = (from: FillPrior['from'], uFreeRiseShare?: number): unknown =>
      valueOf(
        fillBelief({ freeRiseKgM3: 100, from, ...(uFreeRiseShare === undefined ? {} : { uFreeRiseShare }) }),
      );
    expect(told('data-sheet')).toEqual(told('data-sheet', 0.08));
    expect(told('cup-test')).toEqual(told('cup-test', 0.03));
    expect(told('cup-test')).not.toEqual(told('cup-test', 0.08));
  });

  it('under three pours it stands alone and says so', () => {
    const model = valueOf(learnFill(prior, [short(480, 0.02), full(560)]));
    expect(model).toMatchObject({ from: 'data-sheet', fellBack: true, pours: 2, exact: 0, bounds: 0 });
    const alone = valueOf(learnFill(prior, []));
    const at = { ...troll, chance: 0.95 };
    expect(valueOf(fillAt(model, at))).toEqual(valueOf(fillAt(alone, at)));
  });

  it('no doubt makes the least mass less than nothing', () => {
    const alone = valueOf(learnFill(prior, []));
    const { leastG } = valueOf(fillAt(alone, { cavityCm3: 100, chance: 0.5, extraUG: 1000 }));
    expect(leastG.low).toBe(0);
    expect(leastG.high).toBeGreaterThan(1000);
  });

  it('a cup test narrows it', () => {
    const at = { ...troll, chance: 0.95 };
    const sheet = valueOf(fillAt(valueOf(learnFill(prior, [])), at)).pouredG;
    const cups = valueOf(learnFill({ ...prior, from: 'cup-test', uFreeRiseShare: 0.0173 }, []));
    expect(valueOf(fillAt(cups, at)).pouredG).toBeLessThan(0.95 * sheet);
  });
});

describe('exact rows only', () => {
  const pours = [short(480, 0.02), over(560, 60), over(590, 85), short(470, 0.03)];
  const model = valueOf(learnFill(prior, pours));

  it('short pours and weighed overflows are the rows of the conjugate model', () => {
    expect(model).toMatchObject({ from: 'learned', exact: 4, bounds: 0, fellBack: false, atOdds: false });
    const filled = troll.cavityCm3 * 0.98;
    const rows = [
      { x: fillRow(filled), y: 480_000 / filled },
      { x: fillRow(4478), y: 500_000 / 4478 },
      { x: fillRow(4478), y: 505_000 / 4478 },
      { x: fillRow(4478 * 0.97), y: 470_000 / (4478 * 0.97) },
    ];
    const conjugate = learnRows(valueOf(fillBelief(prior)), rows)!;
    expectClose(model.belief.rate, conjugate.rate, 1e-12);
    expectClose(model.belief.mean[1]!, conjugate.mean[1]!, 1e-12);
  });

  it('the drawn quantiles are those of the Student t in closed form, to 3 % of its scale', () => {
    const exact = predictAt(model.belief, fillRow(4478))!;
    const grams = 4.478;
    for (const chance of [0.5, 0.8, 0.9, 0.95, 0.99]) {
      const { pouredG } = valueOf(fillAt(model, { ...troll, chance }));
      const wanted = grams * studentQuantile(chance, exact);
      expect(Math.abs(pouredG - wanted), `at ${chance}`).toBeLessThan(0.03 * grams * exact.scale);
    }
  });
});

/**
 * The same question by brute force: every loss, density and scatter of a fine grid, weighed by prior, rows and bounds; the share
 * of pours below y.
 */
function shareBelowByGrid(before: NormalInverseGamma, pours: readonly FillPour[], y: number): number {
  const liters = 4.478;
  const s0 = Math.sqrt(before.rate / before.shape);
  let total = 0;
  let below = 0;
  for (let s = 0.35 * s0; s < 3 * s0; s += 0.04 * s0) {
    const s2 = s * s;
    const ofScatter = s2 ** (-before.shape - 1) * Math.exp(-before.rate / s2) * s;
    const dSd = s / Math.sqrt(before.precision[1]![1]!);
    const lSd = s / Math.sqrt(before.precision[0]![0]!);
    for (let i = -40; i <= 40; i += 1) {
      const density = before.mean[1]! + (i / 10) * dSd;
      for (let j = -8; j <= 8; j += 1) {
        const loss = before.mean[0]! + (j / 2) * lSd;
        let weight = ofScatter * Math.exp(-((i / 10) ** 2) / 2 - (j / 2) ** 2 / 2);
        for (const pour of pours) {
          const l = liters * (1 - (pour.shortShare ?? 0));
          const z = ((pour.pouredG - (pour.trimG ?? 0)) / l - density - loss / l) / s;
          weight *= pour.outcome === 'full' ? normalCdf(z) : Math.exp((-z * z) / 2) / s;
        }
        total += weight;
        below += weight * normalCdf((y / liters - density - loss / liters) / s);
      }
    }
  }
  return below / total;
}

describe('bounds', () => {
  it.each<[string, FillPour[]]>([
    ['capped pours near the least', [full(500), full(490), full(510)]],
    ['a short pour among capped ones', [short(470, 0.03), full(520), full(505), full(540)]],
  ])('$0: quantiles as by brute force', (_name, pours) => {
    const model = valueOf(learnFill(prior, pours));
    const before = valueOf(fillBelief(prior));
    const { leastG } = valueOf(fillAt(model, { ...troll, chance: 0.9 }));
    for (const [y, share] of [
      [leastG.low, 0.05],
      [leastG.value, 0.5],
      [leastG.high, 0.95],
    ] as const) {
      expect(Math.abs(shareBelowByGrid(before, pours, y) - share), `at ${share}`).toBeLessThan(0.012);
    }
  });

  it('a full pour that was not weighed after its overflow is a bound, too', () => {
    const model = valueOf(learnFill(prior, [full(500), full(490), { ...full(480), outcome: 'overflowed' }]));
    expect(model).toMatchObject({ exact: 0, bounds: 3 });
  });

  it('thirty overpacked capped pours do not raise the least mass', () => {
    const least = (pours: FillPour[]): number =>
      valueOf(fillAt(valueOf(learnFill(prior, pours)), { ...troll, chance: 0.95 })).leastG.value;
    const thirty = Array.from({ length: 30 }, (_, i) => full(640 + 5 * i));
    expect(Math.abs(least(thirty) / least([]) - 1)).toBeLessThan(0.005);
    expect(least(Array.from({ length: 10 }, () => full(480)))).toBeLessThan(0.97 * least([]));
  });

  it('pours that cannot be of this foam are told of', () => {
    const half = [full(240), full(250), full(245)];
    expect(valueOf(learnFill(prior, half)).atOdds).toBe(true);
    const twice = [short(1000, 0.02), short(980, 0.02), short(1010, 0.01)];
    expect(valueOf(learnFill(prior, twice)).atOdds).toBe(true);
    expect(valueOf(learnFill(prior, [full(500), full(490), full(510)])).atOdds).toBe(false);
  });

  it.each([-4, -1.5, 0, 0.3, 2, 7])('the fast normal distribution at %d is good to 7.5e-8', (z) =>
    expect(Math.abs(shareBelow(z) - normalCdf(z))).toBeLessThan(7.5e-8),
  );

  it('its logarithm goes on where the number itself ends (-804.608442 at -40, to 1e-6: Mills ratio)', () => {
    expectClose(logShareBelow(-10), Math.log(7.619853024160527e-24), 1e-9);
    expectClose(logShareBelow(-40), -804.608442, 1e-6);
    const absurd = valueOf(learnFill(prior, [full(5), full(5), full(5), full(5)]));
    expect(absurd.atOdds).toBe(true);
    expect(Number.isFinite(valueOf(fillAt(absurd, { ...troll, chance: 0.9 })).pouredG)).toBe(true);
  });

  it.each([
    ['pouredG', { ...full(Number.NaN) }],
    ['shortShare', { ...short(480, 1.2) }],
    ['cavityCm3', { ...full(480), cavityCm3: -1 }],
  ])('refuses a pour by the name of %s', (input, pour) => {
    expect(problemOf(learnFill(prior, [pour])).values.input).toBe(input);
  });

  it('refuses a chance of 1', () => {
    const model = valueOf(learnFill(prior, []));
    expect(problemOf(fillAt(model, { ...troll, chance: 1 })).values.input).toBe('fillChance');
  });
});
