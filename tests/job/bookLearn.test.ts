import { describe, expect, it } from 'vitest';
import { learnBook, type BookRow, type LearnedFoam, type PourRow } from '../../src/job/book';
import { cavityOf } from '../../src/job/book/evidence';
import { SAMPLE_BOOK, SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { learnResidue, waterGPerCm3 } from '../../src/yield';
import { expectClose } from '../support/close';
import { valueOf } from '../support/outcome';

const learned = learnBook(SAMPLE_ROWS, SAMPLE_SHOP);
const light = learned.foams.find(({ foam }) => foam === 'Sample Foam Light')!;
const firm = learned.foams.find(({ foam }) => foam === 'Sample Foam Firm')!;
const kgM3 = (of: LearnedFoam): number => of.freeRise!.freeRiseKgM3.value;

const changed = (no: number, more: Partial<PourRow>): BookRow[] =>
  SAMPLE_ROWS.map((row) => (row.kind === 'pour' && row.no === no ? { ...row, ...more } : row));

describe('what the sample book teaches', () => {
  it('residue: the line of the twelve pours', () => {
    expect(learned.residue).toEqual(valueOf(learnResidue(SAMPLE_BOOK)));
    expect(learned.residue).toMatchObject({ way: 'line', pours: 12 });
  });

  it('free rise from cups and the short pour, above the card; full pours are bounds', () => {
    expect(light.freeRise).toMatchObject({ cups: 2, shortPours: 1, bounds: 5 });
    expect(light.freeRise!.freeRiseKgM3.low).toBeGreaterThan(SAMPLE_SHOP.foams[0]!.freeRiseKgM3);
    // 53.4 and 50.3 g in a cup of 500 g of water at 20 C: 106.6 and 100.4.
    expectClose(kgM3(light), 103.3, 0.015);
    // Pour 12 has no casting to go by until it is answered: five of six.
    expect(firm.freeRise).toMatchObject({ cups: 1, shortPours: 0, bounds: 5 });
  });

  it('fill: what filled the troll, of the water fill; a full pour is no exact row', () => {
    expect(light.fill).toMatchObject({ from: 'learned', pours: 6, exact: 1, bounds: 5, atOdds: false });
    const troll = light.batches.find(({ piece }) => piece === '1-troll')!;
    expectClose(troll.cavityCm3, 4470 / waterGPerCm3(20), 1e-9);
    // 489 g filled all but 121 cm3; 24 g stayed in the cup.
    expectClose(troll.leastMixedG.value, 489 / (1 - 121 / 4478) + 24, 0.02);
    expect(troll.mixedG).toBeGreaterThan(troll.leastMixedG.value);
  });

  it('mold, opening and room moved together; pour 7 against 5 shows that pack alone is not enough', () => {
    const { groups, samePack } = learned.confounding;
    expect(groups).toEqual([['moldC', 'opening', 'roomC']]);
    expect(samePack).toMatchObject([{ good: 5, bad: 7, packFactor: 1.3 }]);
  });

  it('one change for the next pour, of the foam of the last', () => {
    expect(learned.next).toMatchObject({
      foam: 'Sample Foam Firm',
      asks: [],
      change: { factor: 'moldC', why: 'tell-apart', basePour: 5 },
    });
    const ofLight = learnBook(SAMPLE_ROWS, SAMPLE_SHOP, { foam: 'Sample Foam Light' });
    expect(ofLight.next?.foam).toBe('Sample Foam Light');
    expect(ofLight.foams.map(({ foam }) => foam)).toEqual(['Sample Foam Light']);
  });
});

describe('what is not learned from', () => {
  it('a field that is asked about: 230 g and 400 g teach the same, 214 g teaches one bound more', () => {
    const wrong = learnBook(changed(12, { castingG: 400 }), SAMPLE_SHOP);
    expect(wrong.foams).toEqual(learned.foams);
    const right = learnBook(changed(12, { castingG: 214 }), SAMPLE_SHOP);
    expect(right.foams.find(({ foam }) => foam === firm.foam)!.freeRise!.bounds).toBe(6);
  });

  it('a pour of which nobody said whether it filled, and a short one without its void', () => {
    const { filled: _filled, ...untold } = SAMPLE_BOOK[0]!;
    const { voidCm3: _void, ...unmeasured } = SAMPLE_BOOK[0]!;
    for (const row of [untold, unmeasured]) {
      const rows = [row as BookRow, ...SAMPLE_ROWS.slice(1)];
      const without = learnBook(rows, SAMPLE_SHOP).foams.find(({ foam }) => foam === light.foam)!;
      if (row === untold) expect(without.freeRise).toMatchObject({ shortPours: 0, bounds: 5 });
      expect(without.fill).toMatchObject({ pours: 5, exact: 0, bounds: 5 });
    }
  });

  it('a row out of all bounds: it is told by its number, and the others still teach', () => {
    const odd = learnBook(changed(3, { residueG: 9e9, mixedG: 9e9, aG: 4e9, bG: 5e9 }), SAMPLE_SHOP);
    expect(odd.residue.pours).toBe(11);
    expect(odd.leftOut.map(({ no, of }) => [no, of])).toContainEqual([3, 'residue']);
  });

  it('an empty book teaches nothing and says so', () => {
    const nothing = learnBook([], SAMPLE_SHOP);
    expect(nothing).toMatchObject({
      pours: [],
      foams: [],
      leftOut: [],
      residue: { way: 'default', pours: 0 },
    });
    expect(nothing.next).toBeUndefined();
  });
});

describe('the cavity of a pour', () => {
  const fill = (more: object): BookRow => ({ kind: 'fill', id: 'f', waterG: 1000, waterTempC: 20, ...more });
  const liter = 1000 / waterGPerCm3(20);
  it('is that of the newest fill by its day, wherever it stands in the book', () => {
    const fills = [
      fill({ piece: 'p', day: '2026-11-20' }),
      fill({ id: 'g', piece: 'p', day: '2025-03-01', waterG: 900 }),
      fill({ id: 'h', piece: 'p', waterG: 800 }),
    ];
    expectClose(cavityOf({ piece: 'p' }, fills)!, liter, 1e-9);
    expectClose(cavityOf({ piece: 'p' }, fills.slice(1))!, 0.9 * liter, 1e-9);
    const sameDay = [fills[0]!, fill({ id: 'i', piece: 'p', day: '2026-11-20', waterG: 950 })];
    expectClose(cavityOf({ piece: 'p' }, sameDay)!, 0.95 * liter, 1e-9);
  });

  it.each<[string, Partial<PourRow>, object, number | undefined]>([
    ['the water fill of its piece', { piece: 'p' }, { piece: 'p' }, liter],
    ['that of its mold, whatever the piece', { piece: 'p', mold: 'm' }, { piece: 'q', mold: 'm' }, liter],
    [
      'not that of another mold of the piece',
      { piece: 'p', mold: 'm' },
      { piece: 'p', mold: 'n' },
      undefined,
    ],
    ['as planned where there is none', { piece: 'p', cavityCm3: 7 }, { piece: 'q' }, 7],
    ['water before the plan', { piece: 'p', cavityCm3: 7 }, { piece: 'p' }, liter],
    ['unknown', {}, {}, undefined],
  ])('%s', (_, row, more, cm3) => {
    expect(cavityOf(row, [fill(more)])).toBe(cm3);
  });
});
