import { describe, expect, it } from 'vitest';
import { finding, OPENING_CODES, type OpeningCode, type Problem } from '../../src/problem';
import { say } from '../../src/words/say';

/** Values as the plan gives them. */
const VALUES: Readonly<Record<OpeningCode, Problem['values']>> = {
  OPENING_BAND_EMPTY: { leastMm: 20.04, mostMm: 20.03 },
  OPENING_OFF_SURFACE: { movedMm: 4.237 },
  OPENING_UNDERSIDE: { tiltDegrees: 132.4 },
  OPENING_NONE_FOUND: {},
  VENT_OFF_SURFACE: { n: 2, movedMm: 0.61 },
  TRAP_PINHOLE: { count: 3, volumeCm3: 0.2 },
  THICKNESS_NOT_MEASURED: {},
  SHEET_LOST: { count: 1, areaCm2: 12.5 },
  LOCKED_PIECE: { n: 1, neckMm: 94.25, bulbMm: 251.33, stretchShare: 17 / 15 },
  LIMB_CAUGHT: { part: 'hook', reachMm: 40.11 },
  PIECE_CUT_OFF: { count: 2, volumeCm3: 3.51 },
  DIRECTION_NONE: { text: '0,0,0' },
  VENT_NOT_REACHED: { count: 1, columnStepMm: 1 },
  VENT_UNDER_LIQUID: { count: 2 },
  OPENING_OVER_EDGE: { openingMm: 60, missedShare: 0.42 },
};

describe('what the plan finds where the mold is opened, vented and pulled off', () => {
  it.each([...OPENING_CODES])('%s says what, by how much, and what to do now', (code) => {
    const { text, hint } = say(finding(code, 'look', VALUES[code]));
    for (const words of [text, hint]) {
      expect(words).toMatch(/^[A-Z].*\.$/s);
      expect(words).not.toMatch(/undefined|NaN|null|Infinity|\[object|an unknown amount|\.\.|\s\s/);
    }
    expect(text).toMatch(/\d/);
  });

  it('a band that is empty by a hair never shows the same width twice', () => {
    const { text, hint } = say(finding('OPENING_BAND_EMPTY', 'look', VALUES.OPENING_BAND_EMPTY));
    expect(text).toMatch(/20\.1 mm are needed .* 20 mm are the most/);
    expect(hint).toMatch(/vented plug that is held down/);
  });

  it('one and several: sheets and small high spots agree with their number', () => {
    const text = (code: OpeningCode, count: number): string =>
      say(finding(code, 'look', { ...VALUES[code], count })).text;
    expect(text('SHEET_LOST', 1)).toMatch(/1 sheet without thickness, 12\.5 cm² in all: .* of it, and it is/);
    expect(text('SHEET_LOST', 2)).toMatch(/2 sheets without .* of them, and they are not/);
    expect(text('TRAP_PINHOLE', 1)).toMatch(/^Air stays in 1 small high spot, less than 0\.2 cm³ in each/);
    expect(text('TRAP_PINHOLE', 3)).toMatch(/in 3 small high spots, less/);
  });

  it('a locked part is told with both girths and the stretch', () => {
    expect(say(finding('LOCKED_PIECE', 'stop', VALUES.LOCKED_PIECE)).text).toMatch(
      /Part 1 .* 251 mm around behind a neck of 94\.3 mm.*110 %/,
    );
  });
});
