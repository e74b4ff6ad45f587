import { describe, expect, it } from 'vitest';
import { CHECKS, runCheck, type CheckFacts } from '../../src/checks';
import type { CheckCode, Problem, Status } from '../../src/problem';
import { say } from '../../src/words/say';
import { openingBand, slitLengthMm, stretchNeeded } from '../../src/yield';
import { valueOf } from '../support/outcome';

const ask = (code: CheckCode, facts: CheckFacts): Problem =>
  runCheck(
    CHECKS.find((check) => check.code === code)!,
    facts,
  );
const statusOf = (code: CheckCode, facts: CheckFacts): Status => ask(code, facts).status;
const textOf = (problem: Problem): string => {
  const { text, hint } = say(problem);
  return `${text} ${hint}`;
};

describe('the width of the opening', () => {
  /** A section of 200 x 155 mm, an ellipse, 0.165 m2 of surface, a liter in 15 s. */
  const band = valueOf(
    openingBand({
      sectionCm2: (Math.PI * 20 * 15.5) / 4,
      castingCm2: 1650,
      pour: {
        liquidCm3: 1000,
        withinS: 15,
        mixPaS: 1,
        liquidKgM3: 1070,
        sprueLengthMm: 50,
        headMm: 30,
        vented: true,
      },
    }),
  );
  const chosen = (openingMm: number): CheckFacts => ({
    openingMm,
    openingLeastMm: band.leastMm,
    openingMostMm: band.mostMm,
    openingShare: openingMm ** 2 / (200 * 155),
  });

  it('20 mm do not pour in time, 20.3 to 39.3 mm are fine, 45 mm a look, 56 mm over a tenth of the section a stop', () => {
    expect([20, 20.3, 39.3, 45, 55.6, 56].map((mm) => statusOf('OPENING_SIZE', chosen(mm)))).toEqual([
      'stop',
      'fine',
      'fine',
      'look',
      'look',
      'stop',
    ]);
  });

  it('limits are told rounded to the safe side: what is shown as enough is enough', () => {
    const { text } = say(ask('OPENING_SIZE', chosen(25)));
    const [, leastMm, mostMm] = /from (\S+) mm on and is within the (\S+) mm/.exec(text)!;
    for (const mm of [leastMm, mostMm]) expect(statusOf('OPENING_SIZE', chosen(Number(mm)))).toBe('fine');
  });

  it('too wide is told to cost skin, and a constriction to help it, as common practice without a source', () => {
    for (const mm of [25, 45, 60])
      expect(textOf(ask('OPENING_SIZE', chosen(mm)))).toMatch(
        /worse skin; a slight constriction while it rises gives a better one \(common practice, no source\)/,
      );
  });

  it('while nobody knows how long the pour takes it is not checked, and that it is too wide is told all the same', () => {
    const open = ask('OPENING_SIZE', { ...chosen(45), openingLeastMm: undefined });
    expect(open).toMatchObject({ status: 'unknown', values: { missing: 'openingLeastMm' } });
    expect(textOf(open)).toMatch(/Not checked: .*45 mm is wider than the 39\.3 mm advised/);
    const within = ask('OPENING_SIZE', { ...chosen(25), openingLeastMm: undefined });
    expect(textOf(within)).toMatch(/At most 39\.3 mm are advised/);
  });
});

describe('air and liquid', () => {
  it('a sphere of 50 mm with its lip 30 degrees off keeps a cap of 6.73 cm3: a look with a vent, a stop without one', () => {
    const h = 50 * (1 - Math.cos(Math.PI / 6));
    const trappedCm3 = (Math.PI * h * h * (150 - h)) / 3 / 1000;
    expect(statusOf('AIR_TRAPPED', { trappedCm3, trapLeftCm3: 0 })).toBe('look');
    expect(statusOf('AIR_TRAPPED', { trappedCm3, trapLeftCm3: trappedCm3 })).toBe('stop');
    expect(textOf(ask('AIR_TRAPPED', { trappedCm3, trapLeftCm3: 0 }))).toMatch(/6\.73 cm³ .* none stays/);
  });

  it('under 0.2 cm3 is fine; after the vents under 0.2 and up to 1 cm3 are a look, more is a stop', () => {
    expect(statusOf('AIR_TRAPPED', { trappedCm3: 0.19 })).toBe('fine');
    const left = (trapLeftCm3: number): string =>
      String(ask('AIR_TRAPPED', { trappedCm3: 5, trapLeftCm3 }).values.because);
    expect([0.19, 0.2, 1, 1.01].map(left)).toEqual([
      'vents cure it',
      'some stays',
      'some stays',
      'much stays',
    ]);
  });

  it('whatever it answers, it says that level filling is a lower bound for foam', () => {
    const answers: CheckFacts[] = [
      { trappedCm3: 0.1 },
      { trappedCm3: 5 },
      { trappedCm3: 5, trapLeftCm3: 0 },
      { trappedCm3: 5, trapLeftCm3: 0.5 },
      { trappedCm3: 5, trapLeftCm3: 4 },
    ];
    for (const facts of answers)
      expect(textOf(ask('AIR_TRAPPED', facts))).toMatch(/lower bound: foam rises as a dome/);
  });

  it('liquid up to the brim stays, one more runs out, and how much is told', () => {
    expect(statusOf('LIQUID_STAYS', { pouredLiquidCm3: 900, holdCm3: 900 })).toBe('fine');
    const out = ask('LIQUID_STAYS', { pouredLiquidCm3: 900, holdCm3: 650 });
    expect(out.status).toBe('stop');
    expect(textOf(out)).toMatch(/250 cm³ run out before they foam. Do not pour/);
  });

  it('a level ceiling larger than a fingertip is a look that says to tilt', () => {
    expect([0, 1, 1.1].map((flatCeilingCm2) => statusOf('FLAT_CEILING', { flatCeilingCm2 }))).toEqual([
      'fine',
      'fine',
      'look',
    ]);
    expect(textOf(ask('FLAT_CEILING', { flatCeilingCm2: 40 }))).toMatch(/10° .*40 cm².*Tilt the mold/);
  });
});

describe('what comes out of the mold', () => {
  it('foam: under 6 mm a stop, under 10 mm a look; rubber between two parts: under 3 mm a stop', () => {
    const casting = (castingThinnestMm: number): Status => statusOf('THIN_CASTING', { castingThinnestMm });
    expect([5.9, 6, 9.9, 10].map(casting)).toEqual(['stop', 'look', 'look', 'fine']);
    const rubber = (rubberThinnestMm: number): Status => statusOf('THIN_RUBBER', { rubberThinnestMm });
    expect([2.9, 3].map(rubber)).toEqual(['stop', 'fine']);
  });

  it('as wide as gaps are looked for: none was found, and no thickness of rubber is told', () => {
    const text = (rubberThinnestMm: number): string => say(ask('THIN_RUBBER', { rubberThinnestMm })).text;
    expect(statusOf('THIN_RUBBER', { rubberThinnestMm: 20 })).toBe('fine');
    expect(text(20)).toBe('No gap between two parts of the casting narrower than 20 mm was found.');
    expect(text(19.9)).toMatch(/thinnest rubber .* is 19\.9 mm/);
  });

  it('no part that was measured is slender: that is said, not "0 times as long"', () => {
    const { text } = say(ask('SLENDER', { slenderness: 0 }));
    expect(text).toMatch(/^No part is slender: none .* over 5 times/);
    expect(text).not.toMatch(/ 0 times/);
  });

  it('a part five times as long as it is thick is still sturdy', () => {
    expect([5, 5.1].map((slenderness) => statusOf('SLENDER', { slenderness }))).toEqual(['fine', 'look']);
  });

  it('thin ears and fingers are said to be freed before the pull', () => {
    const thin = [
      ask('THIN_CASTING', { castingThinnestMm: 4 }),
      ask('THIN_CASTING', { castingThinnestMm: 8 }),
      ask('SLENDER', { slenderness: 8 }),
    ];
    for (const one of thin)
      expect(textOf(one)).toMatch(/hin ears, fins and fingers are freed before the pull/);
    const thick = [
      ask('THIN_CASTING', { castingThinnestMm: 40 }),
      ask('SLENDER', { slenderness: 1 }),
      ask('DEMOLD_STRETCH', { demoldStretch: -0.1 }),
      ask('DEMOLD_STRETCH', { demoldStretch: 0.5, elongationAtBreak: 3 }),
    ];
    for (const one of thick) expect(textOf(one)).not.toMatch(/hin ears/);
  });

  it('no way out was found: it asks for a flat end or rubber that stays on; with the stretch known, for the rubber alone', () => {
    expect(say(ask('DEMOLD_STRETCH', {})).hint).toMatch(/flat end .*rubber around the opening stays on/);
    expect(say(ask('DEMOLD_STRETCH', { demoldStretch: 0.55 })).hint).toBe(
      'Enter: elongation at break, 20 to 1500 %, as the data sheet of the silicone says.',
    );
  });

  it('a bulb of r 40 on a neck of r 15: fine in soft rubber, a slit in common rubber, a stop in stiff rubber', () => {
    const passage = { widestMm: 251.33, tightestMm: 94.25, squash: 0 };
    const demoldStretch = valueOf(stretchNeeded(passage));
    const slitMm = valueOf(slitLengthMm({ ...passage, allow: 1 }));
    const rubber = (elongationAtBreak: number): Problem =>
      ask('DEMOLD_STRETCH', { demoldStretch, elongationAtBreak, slitMm });
    expect([6.8, 3, 1.4].map((one) => rubber(one).status)).toEqual(['fine', 'look', 'stop']);
    // (251.33 / 2 - 94.25) / 2 = 15.7 mm.
    expect(textOf(rubber(3))).toMatch(/167 % .* 100 % .* 300 % .*Slit the rubber for 15\.8 mm/);
  });

  it('a casting that needs no stretch is fine whatever the rubber is; just a third of the break is fine', () => {
    expect(statusOf('DEMOLD_STRETCH', { demoldStretch: 0 })).toBe('fine');
    expect(statusOf('DEMOLD_STRETCH', { demoldStretch: 0.7, elongationAtBreak: 2.1 })).toBe('fine');
    expect(statusOf('DEMOLD_STRETCH', { demoldStretch: 0.71, elongationAtBreak: 2.1 })).toBe('look');
    expect(ask('DEMOLD_STRETCH', { demoldStretch: 0.5 })).toMatchObject({
      status: 'unknown',
      values: { missing: 'elongationAtBreak, slitMm' },
    });
  });
});
