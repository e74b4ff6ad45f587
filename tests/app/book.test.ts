import { describe, expect, it } from 'vitest';
import { askedOf } from '../../src/app/book/answers';
import { baseOf } from '../../src/app/book/baseOf';
import { labelSide, placedDots } from '../../src/app/book/dotChart';
import { listIn } from '../../src/app/book/listIn';
import { againstSheet, lotRows } from '../../src/app/book/lotRows';
import { bookMark } from '../../src/app/book/mark';
import { moldLives } from '../../src/app/book/moldLife';
import { planNext } from '../../src/app/book/planNext';
import { residueChart } from '../../src/app/book/residueChart';
import { pieceOf, rowsById } from '../../src/app/book/rowsById';
import { plannedRun, type RunFacts } from '../../src/app/book/runAsk';
import { skinPlot, skinPours } from '../../src/app/book/skinPlotOf';
import { weighedCups } from '../../src/app/cup/weighedCups';
import { samplePieces } from '../../src/app/shelf/samplePieces';
import { wordsOfPiece } from '../../src/app/ticket/record';
import { taughtWords } from '../../src/app/words/bookLearned';
import { headline, outcomes, shortHeadline } from '../../src/app/words/bookNext';
import { runAnswer } from '../../src/app/words/bookRun';
import { bookCsv, checkedPours, learnBook, type BookRow, type CheckedPour } from '../../src/job/book';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { buyWords, stockWords } from '../../src/words/runWords';
import { massRatio, residueAt } from '../../src/yield';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';

const pieces = samplePieces('2026-11-30');
const troll = pieces[0]!;
const core = { ...SAMPLE_SHOP, book: SAMPLE_ROWS };
const pours = checkedPours(SAMPLE_ROWS, SAMPLE_SHOP);
const learned = learnBook(SAMPLE_ROWS, SAMPLE_SHOP);
const ofTroll = learnBook(SAMPLE_ROWS, SAMPLE_SHOP, { foam: 'Sample Foam Light', piece: '1-troll' });

const asked = (pour: CheckedPour) => askedOf(pour, pours, { stepG: 1, isBalanceOff: false });

describe('what the pours have taught, in short', () => {
  it('counts pours only where something was learned of them', () => {
    const short = (count: number) => taughtWords(learnBook(SAMPLE_ROWS.slice(0, count), SAMPLE_SHOP).residue);
    expect(short(0)).toBe('Nothing yet');
    expect(short(2)).toBe('cannot tell yet: 2 of 3 pours');
    expect(short(3)).toBe('Learned from 3 pours');
  });
});

describe('questions about the pours of the sample shop', () => {
  it('one alone: pour 12, with 214 g offered and where it comes from', () => {
    expect(pours.flatMap((pour) => asked(pour).map(() => pour.no))).toEqual([12]);
    const [question] = asked(pours[11]!);
    expect(question!.answers.map(({ words }) => words)).toEqual([
      'It was 214 g',
      'Keep 230 g and learn nothing from it',
    ]);
    expect(question!.answers.map(({ change }) => change)).toEqual([
      { castingG: 214 },
      { keptAsTyped: ['castingG'] },
    ]);
    expect(question!.because).toContain('0.78 % of what was poured in 5 other pours of Sample Foam Firm');
  });

  it.each<[string, Partial<CheckedPour['row']>, string, object]>([
    ['ounces', { mixedG: 8.71 }, 'It was 246.924 g', { mixedG: 8.71 * 28.349523125 }],
    ['Fahrenheit', { moldC: 98.6 }, 'It was 37\u00a0°C', { moldC: 37 }],
    ['a sum', { mixedG: 274 }, 'It was 247 g', { mixedG: 247 }],
    ['A and B', { aG: 179, bG: 68 }, 'A was 68 g and B 179 g', { aG: 68, bG: 179 }],
  ])('%s: the other meaning is a button, and what it writes is that', (_, more, words, change) => {
    const row = { ...pours[4]!.row, ...more };
    const [question] = asked(checkedPours([row], SAMPLE_SHOP)[0]!);
    expect(question!.answers[0]!.words).toBe(words);
    for (const [field, value] of Object.entries(change))
      expectClose(question!.answers[0]!.change[field as 'mixedG']!, value as number, 1e-9);
  });

  it('the rail: a look for the hand, fine for the others, open for a piece without a pour', () => {
    const mark = (id: string) => bookMark({ id }, core);
    expect(['1-troll', '2-hand', '3-rock', '4-eel', 'none'].map(mark)).toEqual([
      'fine',
      'look',
      'fine',
      'fine',
      'open',
    ]);
  });
});

describe('what the pours taught', () => {
  it('residue: twelve rings, both axes from 0, and a straight line through them', () => {
    const { chart, sheet, count } = residueChart(learned);
    expect(count).toBe(12);
    expect([chart.x.domain[0], chart.y.domain[0]]).toEqual([0, 0]);
    expect(chart.line!.from).toEqual([218, residueAt(learned.residue, 218).value]);
    expect(chart.line!.to[0]).toBe(1379);
    expect(sheet.rows).toHaveLength(12);
  });

  it('along the life of the molds: of none can it be told yet', () => {
    const lives = moldLives(pours, pieces);
    expect(lives.map(({ name }) => name)).toHaveLength(4);
    expect(lives.every(({ drift }) => drift.verdict === 'cannot-tell')).toBe(true);
    const ofMold = lives.find(({ key }) => key.startsWith('1-troll'))!;
    expect(ofMold.rows.map(({ no, place }) => [no, place])).toEqual([
      [1, 1],
      [2, 2],
      [3, 3],
      [11, 4],
    ]);
    expectClose(ofMold.rows[1]!.foundShare, (26 + 501 + 21) / 551, 1e-12);
    // The trim of pour 9 was not weighed: pour 10 is the second of the rock all the same.
    expect(lives.find(({ key }) => key.startsWith('3-rock'))!.rows.map(({ place }) => place)).toEqual([2]);
  });
});

describe('what to change next', () => {
  it('the troll: only the mold, from pour 2, the pack as it was there', () => {
    const change = ofTroll.next!.change!;
    expect(headline(change, baseOf(ofTroll, change)).replaceAll('\u00a0', ' ')).toBe(
      'Only the mold temperature: 29 °C instead of 35 °C, pack still 1.25',
    );
    expect(shortHeadline(change)).toContain('29');
    expect(outcomes(change)[0]!.then).toContain('pack factor, opening and room temperature did the work');
  });

  it('plan this pour: the next casting has the pack and the wanted mold as typed, and keeps the foam', () => {
    const change = ofTroll.next!.change!;
    const planned = planNext(troll, change, baseOf(ofTroll, change));
    expect(planned.castings[planned.hand.casting]!.no).toBe(14);
    const { words } = wordsOfPiece(planned);
    expect(words.fields.pack.text).toBe('1.25');
    expect(words.fields.warmTarget).toMatchObject({ text: '29', unit: 'C' });
    // What the mold has is measured on the day.
    expect(words.fields.moldTemp.text).toBe('');
    expect(words.fields.pourRoom.text).toBe('');
    expect(words.foam.name).toBe('Sample Foam Light');
    expect(Object.keys(troll.castings)).not.toContain(planned.hand.casting);
  });

  it('another change leaves the mold to the day; a plug is said as one', () => {
    const change = { ...ofTroll.next!.change!, factor: 'opening' as const, from: 0, to: 1 };
    const { words } = wordsOfPiece(planNext(troll, change, baseOf(ofTroll, change)));
    expect(words.fields.warmTarget.text).toBe('');
    expect(words.pouring.facts.openingOpen).toBe('no');
  });

  it('the plot: every pour as its skin, bold from 3, and a ring where the next would land', () => {
    const all = skinPours(learned, undefined);
    expect(all).toHaveLength(12);
    const change = ofTroll.next!.change!;
    const { chart, sheet } = skinPlot(
      skinPours(ofTroll, 'Sample Foam Light'),
      change,
      baseOf(ofTroll, change),
    );
    expect(chart.dots.map(({ text, isStrong }) => `${text}${isStrong === true ? '!' : ''}`)).toEqual([
      '1',
      '3!',
      '3!',
      '1',
      '3!',
      '3!',
    ]);
    expect(chart.ring).toMatchObject({ x: 29, y: 1.25 });
    expect(sheet.rows.at(-1)!.slice(0, 4)).toEqual(['next', 'Sample Foam Light', 1.25, 29]);
  });

  it('numerals on one spot are moved apart, rings are not', () => {
    const toPx = { x: (value: number) => value, y: (value: number) => value };
    const three = [0, 0, 0].map(() => ({ x: 50, y: 50, text: '3' }));
    expect(placedDots(three, toPx).map(({ movedPx }) => movedPx)).toEqual([0, 13, 26]);
    expect(
      placedDots(
        [
          { x: 50, y: 50 },
          { x: 50, y: 50 },
        ],
        toPx,
      ).map(({ movedPx }) => movedPx),
    ).toEqual([0, 0]);
  });

  it('the words of the ring lie on no numeral and within the frame', () => {
    const ring = { xPx: 200, yPx: 100, widthPx: 100 };
    expect(labelSide(ring, [], [50, 500]).anchor).toBe('start');
    expect(labelSide(ring, [{ xPx: 260, yPx: 102 }], [50, 500])).toMatchObject({ anchor: 'end', dy: 0 });
    expect(labelSide(ring, [{ xPx: 260, yPx: 102 }], [150, 500])).toMatchObject({ anchor: 'middle' });
  });
});

describe('lots and cups', () => {
  it('a cup of 500 g of water at 20 C: 53.4 g are 106.6 kg/m3, 11 % over the sheet', () => {
    const { freeRiseKgM3, cups } = valueOf(weighedCups({ waterG: 500, waterTempC: 20, foamsG: [53.4] }));
    const { value, low, high } = freeRiseKgM3;
    expectClose(cups[0]!.cupCm3, 500.9, 1e-4);
    expectClose(value, 106.6, 1e-3);
    expect([low < value, high > value]).toEqual([true, true]);
    expect(againstSheet(value, 96.11)).toMatchObject({ mark: 'look' });
    expect(againstSheet(100.4, 96.11).mark).toBe('fine');
  });

  it('three tests, and the lots of the shelf that none was made of', () => {
    const lots = lotRows(SAMPLE_ROWS, core, undefined, '2026-11-30');
    expect(lots.map(({ mark }) => mark)).toEqual(['look', 'fine', 'fine', 'look', 'unknown']);
    expect(lots[3]!.name).toBe('Sample Foam Light, lot L-07');
    const tested = SAMPLE_ROWS.map((row) =>
      row.id === 'cup-1' ? { ...row, lot: 'L-07' } : row,
    ) as BookRow[];
    expect(lotRows(tested, core, ['Sample Foam Light'], '2026-11-30')).toHaveLength(2);
  });
});

describe('ten more trolls', () => {
  const card = SAMPLE_SHOP.foams[0]!;
  const facts: RunFacts = {
    card,
    ratio: valueOf(massRatio(card.ratio, card.partDensities)),
    stepG: 1,
    stock: [{ aKg: 2, bKg: 1.1 }],
    kits: [{ massKg: 2 }],
    molds: 1,
    openMin: 25,
  };

  it('588 g each on 2 molds: the stock stops after 5, B first, and two kits are to be bought', () => {
    const run = plannedRun({ castings: 10, molds: 2, mixedG: 588 }, facts);
    const { plan, casting } = valueOf(run!);
    expect(casting).toMatchObject({ partAG: 379, partBG: 209 });
    expect(runAnswer(plan)).toBe('No: 5 of 11');
    expect(plan.stock.runsOut.map(({ afterCasting }) => afterCasting)).toEqual([5, 5]);
    expect(stockWords(plan)).toMatch(/^lasts for 5 of 11 castings: [AB] runs out after casting 5/);
    expect(buyWords(plan)).toMatch(/^2 kits of 2 kg/);
  });

  it.each([2.5, -3, 0])(
    '%d of them are refused at their box, before it is known what one takes',
    (castings) => {
      const refused = plannedRun({ castings }, facts);
      expect(problemOf(refused!).values).toMatchObject({ input: 'castings', value: castings });
    },
  );

  it('nothing is said before it is known how many, and what one takes', () => {
    expect(plannedRun({ mixedG: 588 }, facts)).toBeUndefined();
    expect(plannedRun({ castings: 10 }, facts)).toBeUndefined();
    const uncounted = valueOf(plannedRun({ castings: 10, mixedG: 588 }, { ...facts, stock: [] })!);
    expect(runAnswer(uncounted.plan)).toBe('Not known: the stock is not counted');
  });
});

describe('lists', () => {
  const wish = { columns: {}, kind: undefined };

  it('the list of the book itself: all there already, nothing doubled', () => {
    const list = listIn(bookCsv(SAMPLE_ROWS), wish, SAMPLE_ROWS);
    if ('problem' in list) throw new Error(list.problem.code);
    expect(list.sorted).toMatchObject({ fresh: [], there: 17 });
    expect(list.heads.every(({ field }) => field !== undefined)).toBe(true);
  });

  it('columns by hand, in ounces; a row that cannot be read is told with its place', () => {
    const text = 'Piece;Total;Left;Skin\nTroll;18 1/2;0.9;3\nTroll;heavy;0.9;3\n';
    const unknown = listIn(text, wish, []);
    if ('problem' in unknown) throw new Error(unknown.problem.code);
    expect(unknown.heads.map(({ field }) => field)).toEqual(['piece', undefined, undefined, 'skin']);
    const columns = {
      Total: { field: 'mixedG', unit: 'oz' },
      Left: { field: 'residueG', unit: 'oz' },
    } as const;
    const list = listIn(text, { columns, kind: undefined }, []);
    if ('problem' in list) throw new Error(list.problem.code);
    expect(list.sorted.fresh).toHaveLength(1);
    expect(list.leftOut).toBe(1);
    expect(list.troubles[0]!.values).toMatchObject({ row: 3, column: 2, cell: 'heavy' });
    expectClose((list.sorted.fresh[0] as { mixedG: number }).mixedG, 18.5 * 28.349523125, 1e-9);
  });

  it('the same row twice in a list is written once, and told', () => {
    const list = listIn('Kind,Skin\npour,3\npour,3\n', wish, []);
    expect('problem' in list ? list.problem.code : list.sorted).toMatchObject({ there: 0, twice: 1 });
  });

  it('no list at all is told with why', () => {
    expect(listIn('Dear all,\nhello\n', wish, [])).toMatchObject({ problem: { code: 'BOOK_LIST_BROKEN' } });
  });

  it('a piece by its code or name is the piece; two of one name are neither', () => {
    const rows = rowsById([{ kind: 'pour', id: 'x', piece: 'troll' }], pieces);
    expect(rows[0]).toMatchObject({ piece: '1-troll' });
    expect(pieceOf('Lamp Eel', pieces)?.id).toBe('4-eel');
    expect(pieceOf('troll', [...pieces, { ...pieces[0]!, id: 'other' }])).toBeUndefined();
  });
});
