import { describe, expect, it } from 'vitest';
import { CHECKS, CHECK_FIGURES, NOT_YET, runCheck, runChecks } from '../../src/checks';
import type { Check, CheckFacts, FactName } from '../../src/checks';
import { CHECK_CODES, type CheckCode, type Problem, type Status } from '../../src/problem';
import { RULES } from '../../src/yield';
import { expectClose } from '../support/close';
import { everyCase, samplesOf } from '../support/everyCase';

const namesIn = (text: number | string | undefined): string[] =>
  String(text ?? '')
    .split(', ')
    .filter((name) => name !== '');

const without = (facts: CheckFacts, name: FactName): CheckFacts =>
  Object.fromEntries(Object.entries(facts).filter(([key]) => key !== name));

function ask(code: CheckCode, facts: CheckFacts): Problem {
  const check = CHECKS.find((one) => one.code === code);
  if (check === undefined) throw new Error(`no check ${code}`);
  return runCheck(check, facts);
}
const statusOf = (code: CheckCode, facts: CheckFacts): Status => ask(code, facts).status;

/** These never answer before they have heard all of their facts: one fact missing can turn any answer. */
const WAITING: readonly CheckCode[] = ['GLOVES', 'SCALE_STEP', 'CUP_ROOM', 'STRAP_LOAD', 'LIQUID_STAYS'];
const waitsForAll = ({ code, facts }: Check): boolean => facts.length === 1 || WAITING.includes(code);

const EXAMPLES = CHECKS.flatMap((check) =>
  Object.entries(check.examples).map(([status, facts]) => ({ check, code: check.code, status, facts })),
);

describe('each check by its own examples', () => {
  it.each(CHECKS)('$code has one for fine and one for what is not', ({ examples }) => {
    expect(Object.keys(examples)).toContain('fine');
    expect(Object.keys(examples).length).toBeGreaterThanOrEqual(2);
  });

  it.each(EXAMPLES)('$code: $status', ({ check, status, facts }) => {
    expect(runCheck(check, facts).status).toBe(status);
  });

  it.each(EXAMPLES)(
    '$code, $status: any one fact of it left out is asked for by name',
    ({ check, facts }) => {
      for (const name of Object.keys(facts) as FactName[]) {
        const { status, values } = runCheck(check, without(facts, name));
        expect(status, name).toBe('unknown');
        expect(namesIn(values.missing)).toContain(name);
      }
    },
  );
});

describe('what every check keeps to', () => {
  it('each code has one check, and says where it is known from', () => {
    expect(CHECKS.map(({ code }) => code).sort()).toEqual([...CHECK_CODES].sort());
    for (const { code, source, title } of CHECKS) {
      expect(source.length, code).toBeGreaterThan(10);
      expect(title, code).toMatch(/\?$/);
    }
  });

  it('a mold asks for what touches the silicone, a pour for what foam needs, an opening for its own, and mold and pour for the pigment', () => {
    const codes = (moment: 'mold' | 'opening' | 'pour'): CheckCode[] =>
      runChecks({}, moment).map(({ code }) => code as CheckCode);
    const both = codes('mold').filter((code) => codes('pour').includes(code));
    expect(both).toEqual(['PIGMENT']);
    expect(codes('opening')).toEqual([
      'OPENING_SIZE',
      'LIQUID_STAYS',
      'AIR_TRAPPED',
      'FLAT_CEILING',
      'THIN_CASTING',
      'SLENDER',
      'THIN_RUBBER',
      'DEMOLD_STRETCH',
    ]);
    expect(codes('mold')).toEqual([
      'CURE_INHIBITION',
      'GLOVES',
      'THICK_CONDENSATION',
      'SHELF_LIFE',
      'MOLD_LIFE',
      'PIGMENT',
      'RELEASE_FOR_PAINT',
      'PAINT_FLEX',
    ]);
  });

  it('with nothing told, every check says so and none is fine', () => {
    const answers = [...runChecks({}, 'mold'), ...runChecks({}, 'opening'), ...runChecks({}, 'pour')];
    expect(new Set(answers.map(({ code }) => code)).size).toBe(CHECK_CODES.length);
    for (const { code, status, values } of answers) {
      expect(status, code).toBe('unknown');
      expect(namesIn(values.missing).length, code).toBeGreaterThan(0);
    }
  });

  it.each(CHECKS)(
    '$code: an answer given while a fact is missing stands whatever that fact turns out to be',
    (check) => {
      let tried = 0;
      for (const facts of everyCase(check)) {
        const { status } = runCheck(check, facts);
        if (status === 'unknown') continue;
        for (const name of check.facts.filter((one) => facts[one] === undefined))
          for (const value of samplesOf(name)) {
            const told = runCheck(check, { ...facts, [name]: value });
            expect(told.status, JSON.stringify({ ...facts, [name]: value })).toBe(status);
            tried += 1;
          }
      }
      expect(tried > 0).toBe(!waitsForAll(check));
    },
  );

  it.each(CHECKS)('$code: what it asks for is missing, and once all is told it answers', (check) => {
    for (const facts of everyCase(check)) {
      const { status, values } = runCheck(check, facts);
      const untold = check.facts.filter((name) => facts[name] === undefined);
      if (status !== 'unknown') continue;
      const missing = namesIn(values.missing);
      expect(missing.length, JSON.stringify(facts)).toBeGreaterThan(0);
      for (const name of missing) expect(untold).toContain(name);
    }
  });

  it.each(CHECKS)('$code: all that it says it may ask for, it does ask for', (check) => {
    const asked = new Set(
      everyCase(check).flatMap((facts) => namesIn(runCheck(check, facts).values.missing)),
    );
    expect([...asked].sort()).toEqual([...check.facts].sort());
  });

  it('each answer carries where it is known from', () => {
    for (const check of CHECKS)
      for (const facts of everyCase(check))
        expect(String(runCheck(check, facts).values.source).length).toBeGreaterThan(10);
  });
});

describe('the silicone on the sculpt', () => {
  const dry = CHECK_FIGURES.barrierDry.value;
  const sulfur: CheckFacts = { siliconeCure: 'addition', sculptSurface: 'sulfur clay' };

  it('sulfur clay under addition cure: bare is a stop, behind a dry coat a look, with coat and patch test fine', () => {
    expect(statusOf('CURE_INHIBITION', { ...sulfur, barrierCoat: false, patchTested: false })).toBe('stop');
    const coated = { ...sulfur, barrierCoat: true, barrierDryMin: dry };
    expect(statusOf('CURE_INHIBITION', { ...coated, patchTested: false })).toBe('look');
    expect(statusOf('CURE_INHIBITION', { ...coated, patchTested: true })).toBe('fine');
  });

  it('a coat one minute short of its time is a stop, patch test or not', () => {
    for (const patchTested of [true, false, undefined])
      expect(
        statusOf('CURE_INHIBITION', { ...sulfur, barrierCoat: true, barrierDryMin: dry - 1, patchTested }),
      ).toBe('stop');
  });

  it('the same sulfur clay is no trouble to condensation cure, and it says that this is why', () => {
    const answer = ask('CURE_INHIBITION', { siliconeCure: 'condensation', sculptSurface: 'sulfur clay' });
    expect(answer.status).toBe('fine');
    expect(answer.values).toMatchObject({ because: 'harmless', cure: 'condensation' });
  });

  it('tin and platinum silicone over each other: a stop either way', () => {
    const bare = { barrierCoat: false, patchTested: false };
    expect(
      statusOf('CURE_INHIBITION', {
        ...bare,
        siliconeCure: 'addition',
        sculptSurface: 'condensation silicone',
      }),
    ).toBe('stop');
    expect(
      statusOf('CURE_INHIBITION', {
        ...bare,
        siliconeCure: 'condensation',
        sculptSurface: 'addition silicone',
      }),
    ).toBe('stop');
  });

  it('silicone over its own kind cures and bonds: never simply fine', () => {
    for (const cure of ['addition', 'condensation'] as const)
      expect(ask('CURE_INHIBITION', { siliconeCure: cure, sculptSurface: `${cure} silicone` })).toMatchObject(
        {
          status: 'look',
          values: { because: 'silicone on silicone' },
        },
      );
  });

  it('while the coat is not known, what is at stake is told all the same', () => {
    expect(ask('CURE_INHIBITION', sulfur)).toMatchObject({
      status: 'unknown',
      values: { missing: 'barrierCoat, patchTested', by: 'sulfur', surface: 'sulfur clay' },
    });
  });

  it('latex gloves: a stop beside addition cure, a look beside condensation cure', () => {
    expect(statusOf('GLOVES', { siliconeCure: 'addition', gloves: 'latex' })).toBe('stop');
    expect(statusOf('GLOVES', { siliconeCure: 'condensation', gloves: 'latex' })).toBe('look');
  });

  it('a thick place only matters to condensation cure; just at the limit is still fine', () => {
    const limit = CHECK_FIGURES.thickSection.value;
    expect(statusOf('THICK_CONDENSATION', { siliconeCure: 'condensation', thickestMm: limit })).toBe('fine');
    expect(ask('THICK_CONDENSATION', { siliconeCure: 'condensation', thickestMm: limit + 5 })).toMatchObject({
      status: 'look',
      values: { overMm: 5 },
    });
    expect(statusOf('THICK_CONDENSATION', { siliconeCure: 'addition' })).toBe('fine');
  });
});

describe('age, by the calendar', () => {
  const opened = (siliconeOpenedOn: string, today: string): Problem =>
    ask('SHELF_LIFE', { siliconeOpenedOn, today, patchTested: false });

  it('opened half a year less a day ago is fine, half a year is a look, a year is a stop', () => {
    expect(opened('2025-01-15', '2025-07-14').status).toBe('fine');
    expect(opened('2025-01-15', '2025-07-15').status).toBe('look');
    expect(opened('2025-01-15', '2026-01-14').status).toBe('look');
    expect(opened('2025-01-15', '2026-01-15').status).toBe('stop');
  });

  it('over a year, a patch test that cured leaves a look', () => {
    const facts = { siliconeOpenedOn: '2023-01-15', today: '2025-01-15' };
    expect(statusOf('SHELF_LIFE', { ...facts, patchTested: true })).toBe('look');
    expect(statusOf('SHELF_LIFE', facts)).toBe('unknown');
  });

  it('the last day of August and the last of February are six months apart, leap year or not', () => {
    expect(opened('2024-08-31', '2025-02-28').values.months).toBe(6);
    expect(opened('2024-08-31', '2025-02-27').values.months).toBe(5);
    expect(opened('2023-08-31', '2024-02-28').values.months).toBe(5);
    expect(opened('2023-08-31', '2024-02-29').values.months).toBe(6);
  });

  it('a mold of condensation cure: fine in its first year, a look after it, worded otherwise after five', () => {
    const aged = (moldMadeOn: string): Problem =>
      ask('MOLD_LIFE', { siliconeCure: 'condensation', moldMadeOn, today: '2025-06-10' });
    expect(aged('2024-06-11').status).toBe('fine');
    expect(aged('2024-06-10')).toMatchObject({ status: 'look', values: { because: 'aging' } });
    expect(aged('2020-06-10')).toMatchObject({ status: 'look', values: { because: 'past the usual' } });
    expect(statusOf('MOLD_LIFE', { siliconeCure: 'condensation', moldMadeOn: NOT_YET })).toBe('fine');
  });
});

describe('foam, pigment and paint', () => {
  it('silicone, oil or water in the pigment is a stop at any amount, even before the amount is known', () => {
    for (const pigmentKind of ['silicone based', 'oil color', 'water based'] as const)
      for (const pigmentShare of [undefined, 0.0001, 0.5])
        expect(statusOf('PIGMENT', { pigmentKind, pigmentShare })).toBe('stop');
  });

  it('paste: fine up to 2 %, a look over it, a stop over 5 %', () => {
    const paste = (pigmentShare: number): Status =>
      statusOf('PIGMENT', { pigmentKind: 'paste in polyol or plasticizer', pigmentShare });
    expect([0.02, 0.0201, 0.05, 0.0501].map(paste)).toEqual(['fine', 'look', 'look', 'stop']);
  });

  it('the gas of a gram of water is what the ideal gas law gives at 25 C (CODATA 2018 gas constant)', () => {
    const litersPerMol = (8.314462618 * 298.15) / RULES.standardPressure.value;
    // The figure is kept to three digits.
    expectClose(CHECK_FIGURES.waterGas.value, litersPerMol / 18.01528, 2e-3);
  });

  it('paint: no matter to a casting that stays bare', () => {
    for (const code of ['RELEASE_FOR_PAINT', 'PAINT_FLEX'] as const)
      expect(ask(code, { willPaint: false })).toMatchObject({
        status: 'fine',
        values: { because: 'no paint' },
      });
  });
});
