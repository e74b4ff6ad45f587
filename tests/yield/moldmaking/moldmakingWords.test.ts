import { describe, expect, it } from 'vitest';
import { finding } from '../../../src/problem';
import type { Problem } from '../../../src/problem';
import { say } from '../../../src/words/say';
import {
  boxWall,
  floatCheck,
  moldWeight,
  MOLDMAKING_BOUNDS,
  settleShrink,
  WALL_MATERIALS,
} from '../../../src/yield';
import { valueOf } from '../../support/outcome';

/** Every finding of mold making, as the functions give them. */
const FOUND: readonly Problem[] = [
  ...WALL_MATERIALS.flatMap(
    (material) =>
      valueOf(boxWall({ rubberHeightMm: 200, wallWidthMm: 400, wallMm: 6, siliconeKgM3: 1150, material }))
        .findings,
  ),
  ...valueOf(floatCheck({ siliconeKgM3: 1150, submergedCm3: 1000, sculptMassG: 300 })).findings,
  ...valueOf(floatCheck({ siliconeKgM3: 1150, submergedCm3: 1000 })).findings,
  ...valueOf(moldWeight({ siliconeG: 9000, jacketDryG: 9000 })).findings,
  ...valueOf(settleShrink({ cure: 'addition' })).findings,
  ...valueOf(settleShrink({ cure: 'condensation' })).findings,
];

describe('what mold making has to say', () => {
  it.each(FOUND.map((problem) => [problem.code, problem.status, problem] as const))(
    '%s (%s) says what, by how much and what to do, without a hole',
    (_code, _status, problem) => {
      const { text, hint } = say(problem);
      for (const words of [text, hint]) {
        expect(words.length).toBeGreaterThan(20);
        expect(words).not.toMatch(/undefined|NaN|null|\[object|an unknown amount|To be written/);
      }
      expect(text).toMatch(/\d/);
    },
  );

  it('a sculpt that floats is told in newtons and in kilograms, and how to hold it', () => {
    const { text, hint } = say(FOUND.find(({ code }) => code === 'SCULPT_FLOATS')!);
    expect(text).toContain('8.34 N');
    expect(text).toContain('0.85 kg');
    expect(hint).toMatch(/Screw it to the base board.*1\.7 kg/);
  });

  it('a heavy mold asks for two persons', () => {
    expect(say(FOUND.find(({ code }) => code === 'LIFT_HEAVY')!).hint).toMatch(/Two persons/);
  });

  it('for condensation cure it says why sources disagree; for addition cure there is no need', () => {
    const [addition, condensation] = FOUND.filter(({ code }) => code === 'SHRINK_ASSUMED').map(
      (problem) => say(problem).text,
    );
    expect(condensation).toMatch(/some mean length and some volume.*different ages/);
    expect(addition).not.toMatch(/disagree/);
  });

  it.each(Object.keys(MOLDMAKING_BOUNDS))('the input %s is named in words, not by its key', (input) => {
    const text = say(
      finding('INPUT_OUT_OF_BOUNDS', 'stop', { input, value: -1, low: 0, high: 1, unit: '' }),
    ).text;
    expect(text.startsWith(input)).toBe(false);
    expect(text).toMatch(/^[A-Z][A-Za-z0-9 ,.]+ is \u22121/);
  });
});
