import { describe, expect, it } from 'vitest';
import type { Outcome, Problem } from '../../../src/problem';
import { say } from '../../../src/words/say';
import {
  cheapestKits,
  degasFindings,
  fillFindings,
  orderSilicone,
  planCoats,
  planMixes,
  sagFindings,
  SILICONE_BOUNDS,
  tubeFlowMlS,
} from '../../../src/yield';
import { problemOf, valueOf } from '../../support/outcome';

const ratio = { base: 10, catalyst: 1, by: 'mass' as const };
const one = (findings: Problem[]): Problem => findings[0]!;
const mixes = (change: object): Outcome<{ findings: Problem[] }> =>
  planMixes({
    totalG: 500,
    ratio,
    stepG: 1,
    densityKgM3: 1100,
    potLifeMin: 20,
    method: 'brush',
    degassed: true,
    ...change,
  });
const funnel = { densityKgM3: 1100, viscosityPaS: 20, diameterMm: 10 };

const PROBLEMS: [Problem['code'], () => Problem, RegExp][] = [
  [
    'MIX_BELOW_SCALE',
    () => {
      const volumeCm3 = { value: 50, low: 50, high: 50 };
      return one(
        valueOf(orderSilicone({ volumeCm3, densityKgM3: 1100, ratio, method: 'pour', scaleStepG: 1 }))
          .findings,
      );
    },
    /The smallest mix is 220 g/,
  ],
  [
    'POT_LIFE_TOO_SHORT',
    () => problemOf(mixes({ potLifeMin: 8 })),
    /8 min, and mixing takes 4 min, degassing 5 min/,
  ],
  ['MIXES_TOO_MANY', () => problemOf(mixes({ totalG: 5e6 })), /more than 200 mixes. The pot life sets/],
  [
    'COATS_DO_NOT_FIT',
    () => problemOf(planCoats({ skinMm: 0.5 })),
    /0.5 mm is thinner than its first coat of 0.75 mm/,
  ],
  ['COAT_SAGS', () => one(sagFindings({ coatMm: 1.5, staysMm: 0.393 })), /1.5 mm .* 0.39 mm/],
  ['DEGAS_WEAK', () => one(degasFindings(9.9)), /9.9 kPa absolute/],
  [
    'FILL_TOO_SLOW',
    () => one(valueOf(fillFindings({ ...funnel, volumeCm3: 1000, leftMin: 15 }))),
    /10 mm the rubber takes 130 min/,
  ],
  [
    'FLOW_NOT_LAMINAR',
    () => problemOf(tubeFlowMlS({ ...funnel, diameterMm: 50, viscosityPaS: 0.01 })),
    /Reynolds/,
  ],
  ['KITS_NONE', () => problemOf(cheapestKits([], 3.21)), /3.21 kg: the card has no kits/],
  ['KITS_UNPRICED', () => one(valueOf(cheapestKits([{ massKg: 1 }], 3)).findings), /1 of 1 kit has no price/],
];

describe('what is wrong with the silicone is said whole', () => {
  it.each(PROBLEMS)('%s', (code, make, wanted) => {
    const problem = make();
    expect(problem.code).toBe(code);
    const { text, hint } = say(problem);
    expect(text).toMatch(wanted);
    for (const words of [text, hint]) {
      expect(words).not.toMatch(/undefined|NaN|null|\[object|unknown amount/);
      expect(words.length).toBeGreaterThan(20);
    }
  });

  it('a number out of bounds is named by its words at the bench, not by its name in the program', () => {
    for (const input of Object.keys(SILICONE_BOUNDS)) {
      const problem: Problem = {
        code: 'INPUT_NOT_A_NUMBER',
        status: 'stop',
        values: { input, value: 'NaN' },
      };
      expect(say(problem).text.startsWith(input), input).toBe(false);
    }
    expect(say(problemOf(mixes({ potLifeMin: 0 }))).text).toBe(
      'Pot life is 0 min, which is not within 0.5 to 2\u202f880 min.',
    );
  });

  it('the tube it advises is wide enough, never rounded down', () => {
    const slow = one(valueOf(fillFindings({ ...funnel, volumeCm3: 1000, leftMin: 15 })));
    const advised = Number(/tube of ([\d.]+) mm or wider/.exec(say(slow).hint)![1]);
    expect(advised).toBeGreaterThanOrEqual(Number(slow.values.leastTubeMm));
  });
});
