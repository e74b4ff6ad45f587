import { describe, expect, it } from 'vitest';
import { CHECKS, runCheck } from '../../src/checks';
import type { CheckFacts } from '../../src/checks';
import { finding, type CheckCode } from '../../src/problem';
import { CHECK_WORDS } from '../../src/words/checkWords';
import { say } from '../../src/words/say';
import { everyCase } from '../support/everyCase';

const words = (code: CheckCode, facts: CheckFacts): string => {
  const { text, hint } = say(
    runCheck(
      CHECKS.find((check) => check.code === code)!,
      facts,
    ),
  );
  return `${text} ${hint}`;
};

describe('each check in words', () => {
  it.each(CHECKS)('$code: every answer it can give, and every question, is a whole sentence', (check) => {
    const seen = new Set<string>();
    for (const facts of everyCase(check)) {
      const problem = runCheck(check, facts);
      const { text, hint } = say(problem);
      seen.add(`${problem.status}: ${problem.values.because}`);
      for (const sentence of [text, hint]) {
        expect(sentence).not.toMatch(/undefined|NaN|null|Infinity|\[object|an unknown amount| {2}|\.\./);
        expect(sentence).toMatch(/^[A-Z].*\.$/);
      }
      if (problem.status === 'unknown') expect(text).toMatch(/^Not checked: /);
    }
    const statuses = new Set([...seen].map((one) => one.split(':')[0]));
    expect([...statuses].sort()).toEqual([...Object.keys(check.examples), 'unknown'].sort());
  });

  it('a fact that nobody gave is asked for in plain words', () => {
    expect(words('CURE_INHIBITION', { sculptSurface: 'wax' })).toMatch(
      /^Not checked: which silicone cure it is\. Enter: silicone cure, condensation or addition/,
    );
    expect(words('GLOVES', {})).toMatch(/^Not checked: which silicone cure it is; which gloves are worn\./);
  });

  it('sulfur under addition cure is told while the coat is still unknown', () => {
    expect(words('CURE_INHIBITION', { siliconeCure: 'addition', sculptSurface: 'sulfur clay' })).toMatch(
      /^Not checked: whether a barrier coat .* Sulfur stops addition cure on sulfur clay\./,
    );
  });

  it('a stop says by how much and what to do now', () => {
    const coat: CheckFacts = {
      siliconeCure: 'addition',
      sculptSurface: 'sulfur clay',
      barrierCoat: true,
      barrierDryMin: 20,
    };
    expect(words('CURE_INHIBITION', coat)).toMatch(/20 of 30 min.*another 10 min/);
    const old: CheckFacts = { siliconeOpenedOn: '2024-03-10', today: '2025-06-10', patchTested: false };
    expect(words('SHELF_LIFE', old)).toMatch(
      /15 months ago, 3 months past the limit of 12 months.*patch test/,
    );
    expect(words('PIGMENT', { pigmentKind: 'other', pigmentShare: 0.08 })).toMatch(/8 %.*5 %.*2 %/);
  });

  it('a day that does not exist is given back as it was typed', () => {
    expect(words('SHELF_LIFE', { siliconeOpenedOn: '2025-02-29', today: '2025-06-10' })).toMatch(
      /"2025-02-29" cannot be used.*Enter: silicone opened, a day such as/,
    );
  });

  it('a case that no check knows is a mistake of ours and throws', () => {
    expect(() => say(finding('GLOVES', 'look', { because: 'mittens' }))).toThrow(/expected a case/);
    expect(Object.keys(CHECK_WORDS)).toHaveLength(CHECKS.length);
  });
});
