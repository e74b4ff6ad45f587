import { describe, expect, it } from 'vitest';
import { finding, WARMTH_CODES } from '../../../src/problem';
import { say } from '../../../src/words/say';
import { WARMTH_CAUTIONS, WARMTH_INPUT_WORDS } from '../../../src/words/warmthWords';
import {
  moldTemperatureBand,
  openWarmCastingBand,
  WARMTH_BOUNDS,
  WARMTH_RULES,
  warmWall,
} from '../../../src/yield';
import type { Rule } from '../../../src/yield';
import { problemOf, valueOf } from '../../support/outcome';

const fahrenheit = (f: number): number => (f - 32) / 1.8;
const bandAt = (tempC: number): string => valueOf(moldTemperatureBand(tempC)).band;

describe('bands of the mold temperature (common practice, no source)', () => {
  it('85 to 90 F (29.4 to 32.2 C) lies in the fine band, 60 F (15.6 C) does not', () => {
    for (let f = 85; f <= 90; f += 1) {
      expect(valueOf(moldTemperatureBand(fahrenheit(f)))).toEqual({ band: 'fine', findings: [] });
    }
    const cold = valueOf(moldTemperatureBand(fahrenheit(60)));
    expect(cold.band).toBe('cold');
    expect(cold.findings[0]).toMatchObject({ code: 'MOLD_TEMP_COLD', status: 'look' });
  });

  it('a cold mold is told to rise less and leave uneven places', () => {
    expect(say(valueOf(moldTemperatureBand(15)).findings[0]!).text).toMatch(
      /rises less and leaves uneven places/,
    );
  });

  it.each([
    [19.9, 'cold', 'look'],
    [20, 'cool', 'look'],
    [26.9, 'cool', 'look'],
    [27, 'fine', undefined],
    [45, 'fine', undefined],
    [45.1, 'warm', 'look'],
    [50, 'warm', 'look'],
    [50.1, 'hot', 'look'],
    [60, 'hot', 'look'],
    [60.1, 'too hot', 'stop'],
  ])('%d C is %s', (tempC, band, status) => {
    expect(bandAt(tempC)).toBe(band);
    expect(valueOf(moldTemperatureBand(tempC)).findings[0]?.status).toBe(status);
  });

  it('a mold nobody measured is unknown, not fine', () => {
    const { band, findings } = valueOf(moldTemperatureBand(undefined));
    expect(band).toBe('unknown');
    expect(findings[0]).toMatchObject({ code: 'MOLD_TEMP_UNKNOWN', status: 'unknown' });
  });

  it.each([Number.NaN, 500, -273])('refuses %d C', (tempC) => {
    expect(problemOf(moldTemperatureBand(tempC)).values.input).toBe('moldTempC');
  });
});

describe('opening a casting that is still warm (common practice, no source)', () => {
  it('30 min lies inside the common band; a card without a time is unknown, whatever is common', () => {
    const { cardMin, commonMin, findings } = valueOf(openWarmCastingBand({}));
    expect(commonMin.low).toBeLessThanOrEqual(30);
    expect(commonMin.high).toBeGreaterThanOrEqual(30);
    expect(cardMin).toBeUndefined();
    expect(findings[0]).toMatchObject({ code: 'OPEN_TIME_UNKNOWN', status: 'unknown' });
    expect(say(findings[0]!).text).toMatch(/unknown.*20 to 60 min/);
  });

  it("the card's own time stands, and a time of nothing is refused", () => {
    expect(valueOf(openWarmCastingBand({ openMin: 90 }))).toMatchObject({ cardMin: 90, findings: [] });
    expect(problemOf(openWarmCastingBand({ openMin: 0 })).values.input).toBe('openMin');
  });
});

describe('words and figures of heat', () => {
  /** Values as the functions give them; more keys than one code needs do no harm. */
  const VALUES = {
    startTempC: 20,
    airTempC: 30,
    targetTempC: 40,
    biot: 0.26,
    limit: 0.1,
    lumpedMin: 40,
    exactMin: 47,
    surfaceTempC: 55,
    lookC: 50,
    stopC: 60,
    withMin: 101,
    withoutMin: 46.6,
    tempC: 15.6,
    low: 27,
    high: 45,
  };

  it.each(WARMTH_CODES)('%s says what, by how much and what to do, without a hole', (code) => {
    const { text, hint } = say(finding(code, 'look', VALUES));
    for (const words of [text, hint]) {
      expect(words.length).toBeGreaterThan(20);
      expect(words).not.toMatch(/undefined|NaN|null|\[object|an unknown amount/);
    }
    expect(text).toMatch(/\d/);
  });

  it('an air too cool is told with all three temperatures', () => {
    const problem = problemOf(
      warmWall({
        wallMm: 8,
        sides: 1,
        surroundings: 'still box',
        airTempC: 38.5,
        startTempC: 20,
        targetTempC: 40,
      }),
    );
    expect(say(problem).text).toMatch(/From 20 °C .* to 40 °C in air of 38\.5 °C/);
  });

  it('the caution of the heat gun: empty mold only, away from solvent, release and wax; and measure, then touch', () => {
    expect(WARMTH_CAUTIONS['heat-gun'].what).toMatch(
      /Only on an empty, dry mold, and away from solvent, release and wax/,
    );
    const { what, from } = WARMTH_CAUTIONS['measure-then-touch'];
    expect(what).toMatch(/Measure, then touch.*44 °C.*51 °C.*60 °C/);
    expect(from).toMatch(/from memory, not verified.*ISO 13732-1.*ASTM C1055/);
  });

  it.each(Object.keys(WARMTH_BOUNDS))('the input %s has words', (input) => {
    const words = WARMTH_INPUT_WORDS[input as keyof typeof WARMTH_INPUT_WORDS];
    expect(words).toMatch(/^[A-Z][A-Za-z ]+$/);
  });

  it.each(Object.entries<Rule>(WARMTH_RULES))(
    '%s has a source, and its value lies in its range',
    (_name, rule) => {
      expect(rule.from.length).toBeGreaterThan(10);
      expect(rule.from).toMatch(/source|memory|derived|chosen|assumed|Cengel|textbooks|Cryogenics/);
      expect(rule.low ?? rule.value).toBeLessThanOrEqual(rule.value);
      expect(rule.high ?? rule.value).toBeGreaterThanOrEqual(rule.value);
    },
  );
});
