import { describe, expect, it } from 'vitest';
import { BOOK_CODES, finding } from '../../src/problem';
import { learnBook } from '../../src/job/book';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import {
  fillLearnedWords,
  freeRiseLearnedWords,
  goodOnlyWords,
  movedTogetherWords,
  nextPourWords,
  residueLearnedWords,
  samePackWords,
} from '../../src/words/bookWords';
import { say } from '../../src/words/say';
import { learnResidue } from '../../src/yield';
import { valueOf } from '../support/outcome';

const { residue, foams, confounding, next } = learnBook(SAMPLE_ROWS, SAMPLE_SHOP);
const light = foams[0]!;

describe('what the book teaches, in words', () => {
  it('residue: a line, a mean, or that it takes three', () => {
    expect(residueLearnedWords(residue)).toBe(
      '14 g stay in the cup and 2 g more for every 100 g mixed: a straight line through 12 pours; a single pour lies about 3.1 g off.',
    );
    const alike = [24, 25, 26].map((residueG) => ({ mixedG: 500, residueG }));
    expect(residueLearnedWords(valueOf(learnResidue(alike)))).toMatch(/^25 g stay in the cup, from 3 pours/);
    expect(residueLearnedWords(valueOf(learnResidue([])))).toMatch(/takes three to learn from/);
  });

  it('free rise: from what, and how it lies to its card', () => {
    const words = (cardKgM3?: number): string =>
      freeRiseLearnedWords(light.foam, light.freeRise!, cardKgM3, 'metric');
    expect(words(96.1)).toContain('from 2 cups and 1 short pour: above its card, 96.1 kg/m³.');
    expect(words(120)).toContain('below its card');
    expect(words(103)).toContain('its card, 103.0 kg/m³, lies within.');
    expect(words()).not.toContain('card');
    expect(words()).toContain('5 full pours count as upper ends only');
  });

  it('fill: the least and what to mix, the chance as times in 20', () => {
    const troll = light.batches[0]!;
    expect(fillLearnedWords('The troll', troll)).toMatch(
      /^The troll is just filled by 523 g mixed, 494 to 551 g; mix 551 g and it fills 19 times in 20\.$/,
    );
  });

  it('what moved together, and what shows that pack alone is not enough', () => {
    expect(movedTogetherWords(confounding)).toEqual([
      'Mold temperature, opening and room temperature: they moved together, so the log cannot say which one did it.',
    ]);
    expect(movedTogetherWords({ ...confounding, groups: [['moldC', 'opening']] })[0]).toContain(
      ': the two moved',
    );
    expect(movedTogetherWords({ ...confounding, verdict: 'too-few', pours: 1 })[0]).toMatch(
      /^1 pour in the book/,
    );
    expect(samePackWords(confounding.samePack[0]!)).toMatch(
      /^Pack alone is not enough: pour 7 and pour 5 were both packed 1\.30, and only 5 came out good\./,
    );
    expect(goodOnlyWords(confounding.goodOnlyWith!, 'metric')).toContain(
      'packed 1.25 or more, a mold of 35 °C or warmer and a plug',
    );
  });

  it('one thing to change, with its reason; what is to be answered first stands by itself', () => {
    const [change, ...more] = nextPourWords(next!, 'metric');
    expect(more).toEqual([]);
    expect(change).toMatch(
      /^Change one next time: pour as pour 5, but mold temperature 27 °C instead of 35 °C\./,
    );
    expect(change).toContain('That tells mold temperature from opening and room temperature.');
    const plug = {
      factor: 'opening',
      from: 0,
      to: 1,
      why: 'opening-open',
      basePour: 7,
      fromPours: [7],
    } as const;
    expect(
      nextPourWords({ asks: ['vents', 'cup-test'], change: { ...plug, fromPours: [7] } }, 'both'),
    ).toEqual([
      'Change one next time: pour as pour 7, but opening plugged instead of open. An open mouth lets the pack out.',
      expect.stringMatching(/^First: .*vents/),
      expect.stringMatching(/^First: .*cup/),
    ]);
  });
});

describe('what is asked about in the book', () => {
  const values = {
    no: 12,
    field: 'castingG',
    typed: 230,
    instead: 216,
    mixedG: 247,
    foundG: 261,
    missingG: -14,
    entry: 3,
    of: 'residue',
    why: 'it is odd.',
    row: 2,
    id: 'pour-1',
    line: 4,
    head: 'Weather',
  };
  it.each(BOOK_CODES)('%s: a sentence and a hint without holes', (code) => {
    for (const more of [
      {},
      { isPoured: 1 },
      { missingG: 14 },
      { column: 3, cell: '1,250', wanted: 'a day' },
    ]) {
      const { text, hint } = say(finding(code, 'look', { ...values, ...more }));
      for (const words of [text, hint]) {
        expect(words).toMatch(/[.?]$/);
        expect(words).not.toMatch(/undefined|NaN|null|unknown amount|please|!/);
      }
    }
  });

  it('a casting that is what was poured is asked about as that', () => {
    const over = (isPoured: number): string =>
      say(finding('BOOK_CASTING_OVER', 'look', { ...values, isPoured })).hint;
    expect(over(1)).toContain('just what was poured');
    expect(over(0)).not.toContain('just what was poured');
  });

  it('a cell is told by row, column and head', () => {
    const cell = { row: 3, column: 2, head: 'Mixed, g', cell: 'much', why: 'It is no number.' };
    expect(say(finding('BOOK_CELL_UNREAD', 'stop', cell)).text).toBe(
      'Row 3, column 2 (Mixed, g): "much" was not taken. It is no number.',
    );
  });
});
