import { describe, expect, it } from 'vitest';
import { finding, POUR_CODES } from '../../../src/problem';
import type { Outcome, Problem } from '../../../src/problem';
import type { PourCode } from '../../../src/problem';
import { say } from '../../../src/words/say';
import {
  comparePacks,
  coreLift,
  exotherm,
  fillRate,
  hollowCavityCm3,
  leastSprueMm,
  planCups,
  planStraps,
  POUR_BOUNDS,
  POUR_RULES,
  pourFlow,
  pourWindow,
  pressureWithMouth,
  scaleColor,
  stationAir,
  waterCapKPa,
} from '../../../src/yield';
import type { Rule } from '../../../src/yield';
import { t1 } from '../../support/batchInputs';
import { problemOf, valueOf } from '../../support/outcome';

const only = (outcome: Outcome<{ findings: Problem[] }>): Problem => {
  const [first] = valueOf(outcome).findings;
  if (first === undefined) throw new Error('expected a finding');
  return first;
};

const ratio = { a: 52, b: 100, by: 'mass' } as const;
const cups = { inMoldG: 935, residueG: 30, ratio, stepG: 1, liquidKgM3: 1070 };
const tube = { sprueLengthMm: 50, headMm: 30, mixPaS: 1, liquidKgM3: 1070, vented: true };
const core = { coreCm3: 2000, liquidKgM3: 1070, moldedKgM3: 200 };
const red = { name: 'red', share: 0.01, of: 'B' } as const;

/** Each out of the code that makes it, so that its values are the real ones. */
const PROBLEMS: Readonly<Record<PourCode, () => Problem>> = {
  INPUT_NOT_WHOLE: () => problemOf(fillRate({ poured: 2.5, filled: 1 })),
  PACK_LEVELS: () => problemOf(comparePacks(t1, { from: 1, to: 2, step: 0.01 })),
  LIQUID_OVER_CAVITY: () =>
    problemOf(
      waterCapKPa({ mixedG: 1000, waterShare: 0.005, gasTempK: 380, cavityCm3: 500, liquidKgM3: 1070 }),
    ),
  STRAPS_TOO_MANY: () => problemOf(planStraps(1e6, { strapN: 10 })),
  AIR_PRESSURE_UNLIKELY: () => only(stationAir({ stationKPa: 101, altitudeM: 1500 })),
  POUR_WINDOW_NONE: () => problemOf(pourWindow({ creamS: 25 })),
  CORE_HOT: () => {
    const hot = valueOf(exotherm({ ratio, ncoShare: 0.25, waterShare: 0.004, startC: 60 }));
    if (!hot.known) throw new Error('expected a known exotherm');
    return hot.findings[0]!;
  },
  CUPS_TOO_MANY: () => problemOf(planCups(cups, { cupCm3: 60 })),
  CUPS_TOGETHER: () => only(planCups(cups, { cupCm3: 1500, mixers: 2 })),
  CUPS_OVER_HANDS: () => only(planCups(cups, { cupCm3: 1500 })),
  CUPS_NOT_CHECKED: () => only(planCups(cups)),
  COLOR_NAMED_TWICE: () => problemOf(scaleColor({ colors: [red, red], partAG: 100, partBG: 200 })),
  CORE_FILLS_MOLD: () => problemOf(hollowCavityCm3({ outerCm3: { value: 100 }, coreCm3: { value: 120 } })),
  CORE_FLOATS: () => only(coreLift({ ...core, coreG: 450, gaugeKPa: 25, neckCm2: 20 })),
  CORE_MASS_UNKNOWN: () => only(coreLift(core)),
  NO_HEAD: () => problemOf(pourFlow({ ...tube, sprueMm: 25, headMm: 0, sprueLengthMm: 0 })),
  OPENING_NONE: () => problemOf(leastSprueMm({ ...tube, liquidCm3: 1e7, withinS: 0.1 })),
  OPENING_FLOW_FAST: () => only(pourFlow({ ...tube, sprueMm: 30, mixPaS: 0.001 })),
  PACK_LOST_AT_MOUTH: () => only(pressureWithMouth({ idealKPa: 37.7, mouthKPa: 3.4 })),
};

describe('what the pour has to say', () => {
  it.each([...POUR_CODES])('%s says what is wrong, by how much, and what to do now', (code) => {
    const problem = PROBLEMS[code]();
    expect(problem.code).toBe(code);
    const { text, hint } = say(problem);
    for (const words of [text, hint]) {
      expect(words).toMatch(/^[A-Z].*\.$/s);
      expect(words).not.toMatch(/undefined|NaN|null|Infinity|\[object|an unknown amount|\.\.|\s\s/);
    }
    if (code !== 'CUPS_NOT_CHECKED' && code !== 'COLOR_NAMED_TWICE') expect(text).toMatch(/\d/);
  });

  it('a core that floats is told in newtons, neck included', () => {
    expect(say(PROBLEMS.CORE_FLOATS()).text).toMatch(/17 N by the liquid mix, and out at its neck with 50 N/);
  });

  it('more cups than hands asks for helpers, and says why', () => {
    const { text, hint } = say(PROBLEMS.CUPS_OVER_HANDS());
    expect(text).toMatch(/2 cups .* 1 person mixes: the first cup creams before the last is poured/);
    expect(hint).toMatch(/helper/);
  });

  it('no window: never by mixing less than the data sheet wants', () => {
    expect(say(PROBLEMS.POUR_WINDOW_NONE()).hint).toMatch(/Do not shorten the mixing/);
  });

  it.each([...Object.keys(POUR_BOUNDS), 'packFrom', 'packTo', 'measuredPackFactor'])(
    'the input %s is named in words, not by its key',
    (input) => {
      const values = { input, value: -1, low: 0, high: 1, unit: '' };
      const { text } = say(finding('INPUT_OUT_OF_BOUNDS', 'stop', values));
      expect(text.startsWith(input)).toBe(false);
      expect(text).toMatch(/^[A-Z][A-Za-z0-9 ,.-]+ is \u22121/);
    },
  );
});

describe('every default of the pour', () => {
  it.each(Object.entries<Rule>(POUR_RULES))(
    '%s says where it comes from and lies within its range',
    (_, rule) => {
      expect(rule.from).toMatch(
        /common practice, no source|from memory, not verified|chosen here|assumption|engineering choice|MoDeNa|SI of 2019|ideal gas law|room of 20 °C|finer scale|cooling is reckoned/,
      );
      expect(rule.value).toBeGreaterThanOrEqual(rule.low ?? rule.value);
      expect(rule.value).toBeLessThanOrEqual(rule.high ?? rule.value);
    },
  );

  it('and every bound of what is typed has its low below its high', () => {
    for (const [name, { low, high }] of Object.entries(POUR_BOUNDS)) expect(low, name).toBeLessThan(high);
  });
});
