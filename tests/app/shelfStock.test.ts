import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { castingKey, withSeenCasting } from '../../src/job/seen';
import { stockTotals } from '../../src/job/stockTotals';
import { CHECK_FIGURES } from '../../src/checks/figures';
import { enoughFor } from '../../src/app/shelf/enoughFor';
import { lotAge } from '../../src/app/shelf/lotAge';
import { stockBoxes } from '../../src/app/shelf/stockBoxes';
import { stockLeft } from '../../src/app/shelf/stockOf';
import { newPiece } from '../../src/app/ticket/newPiece';
import { emptyCore } from '../../src/store';
import { expectClose } from '../support/close';
import { lcg } from '../support/lcg';

const { pieces: _pieces, scans: _scans, ...SAMPLE } = SAMPLE_SHOP;
beforeAll(() => void vi.stubGlobal('__APP_VERSION__', 'of the test'));
afterAll(() => void vi.unstubAllGlobals());

describe('boxes of kits', () => {
  it.each<[string, number, number[], [number, number][]]>([
    ['one full kit', 2, [2], [[2, 2]]],
    [
      'a kit that is opened',
      3.1,
      [2],
      [
        [2, 2],
        [2, 1.1],
      ],
    ],
    [
      'the smaller kit that holds the rest',
      6,
      [1, 5],
      [
        [5, 5],
        [1, 1],
      ],
    ],
    ['one large kit before many small ones', 4.9, [1, 5], [[5, 4.9]]],
    ['nothing left', 0, [2], []],
    ['no kit on the card', 3.1, [], [[3.1, 3.1]]],
    ['a hundred kits', 200, [2], [[200, 200]]],
  ])('%s', (_, leftKg, sizes, boxes) => {
    const drawn = stockBoxes(leftKg, sizes);
    expect(drawn).toHaveLength(boxes.length);
    drawn.forEach((box, i) => {
      expectClose(box.holdsKg, boxes[i]![0], 1e-9);
      expectClose(box.leftKg, boxes[i]![1], 1e-9);
    });
  });

  it('hold what is left, none more than it can, all but the last full (seed 3, 500 stocks)', () => {
    const random = lcg(3);
    for (let i = 0; i < 500; i++) {
      const sizes = [0.5 + random(), 2 + 3 * random()];
      const leftKg = 20 * random();
      const boxes = stockBoxes(leftKg, sizes);
      expectClose(
        boxes.reduce((sum, box) => sum + box.leftKg, 0),
        leftKg,
        1e-5,
      );
      for (const box of boxes) expect(box.leftKg).toBeLessThanOrEqual(box.holdsKg);
      for (const box of boxes.slice(0, -1)) expect(box.leftKg).toBe(box.holdsKg);
    }
  });
});

describe('the stock of the sample shop', () => {
  const [light, firm, silicone] = stockLeft(SAMPLE);

  it('is counted by the part: a kit of 2 kg at 100:55 holds 1.290 kg of A and 0.710 kg of B', () => {
    const [a, b] = light!.parts;
    expect([a!.leftKg, b!.leftKg]).toEqual([2, 1.1]);
    expectClose(a!.boxes[0]!.holdsKg, 200 / 155, 1e-12);
    expectClose(b!.boxes[0]!.holdsKg, 110 / 155, 1e-12);
    expect(a!.boxes).toHaveLength(2);
  });

  it('has the silicone of one kit of 5.5 and one of 1.1 kg, both full', () => {
    const [base] = silicone!.parts;
    expect(base!.boxes.map(({ holdsKg, leftKg }) => [holdsKg, leftKg])).toEqual([
      [5, 5],
      [1, 1],
    ]);
    expect([light!.kind, firm!.kind, silicone!.kind]).toEqual(['foam', 'foam', 'silicone']);
  });

  it('adds lots up, and a part that nobody counted is not zero', () => {
    const stock = [
      { card: 'X', aKg: 1 },
      { card: 'X', aKg: 0.5, bKg: 0 },
      { card: 'Y', aKg: 9 },
    ];
    expect(stockTotals(stock, 'X')).toEqual({ aKg: 1.5, bKg: 0 });
    expect(stockTotals([{ card: 'X', aKg: 1 }], 'X')).toEqual({ aKg: 1 });
  });

  it('shows a name in the stock that no card goes by', () => {
    expect(stockLeft({ ...emptyCore(), stock: [{ card: 'Old', bKg: 2 }] })).toMatchObject([
      { card: 'Old', kind: 'unknown', parts: [{ part: 'bKg', leftKg: 2 }] },
    ]);
  });
});

describe('what is left is enough', () => {
  const piece = newPiece({ name: 'Troll', today: '2026-01-01', core: emptyCore() });
  const { casting } = piece.hand;
  const withFoam = {
    ...piece,
    castings: {
      [casting]: { ...piece.castings[casting]!, choices: { foam: { name: 'Sample Foam Light' } } },
    },
  };
  const seen = {
    on: castingKey(withFoam, casting, 'of the test'),
    day: '2026-01-01',
    packFactor: 1.25,
    partAG: 379,
    partBG: 209,
    totalG: 588,
    stepG: 1,
  };
  const [light] = stockLeft(SAMPLE);

  it('for five trolls of 379 g of A and 209 g of B: 2000 g and 1100 g, the scarcer part counts', () => {
    expect(enoughFor(light!, [withSeenCasting(withFoam, casting, seen)])).toBe('5 of TROLL-1');
    const short = {
      ...light!,
      parts: light!.parts.map((p) => ({ ...p, leftKg: p.part === 'bKg' ? 0.6 : 9 })),
    };
    expect(enoughFor(short, [withSeenCasting(withFoam, casting, seen)])).toBe('2 of TROLL-1');
  });

  it('is not said of grams that no longer hold, of another foam, or with a part not counted', () => {
    const stale = withSeenCasting(withFoam, casting, { ...seen, on: 'before' });
    expect(enoughFor(light!, [stale])).toBeUndefined();
    expect(enoughFor(stockLeft(SAMPLE)[1]!, [withSeenCasting(withFoam, casting, seen)])).toBeUndefined();
    expect(
      enoughFor({ ...light!, parts: [light!.parts[0]!] }, [withSeenCasting(withFoam, casting, seen)]),
    ).toBeUndefined();
  });
});

describe('the age of a lot', () => {
  const look = CHECK_FIGURES.foamOpenedLook.value;
  const stop = CHECK_FIGURES.foamOpenedStop.value;
  it.each([
    [{ openedMonths: look - 1 }, 'fine'],
    [{ openedMonths: look }, 'look'],
    [{ openedMonths: stop - 1 }, 'look'],
    [{ openedMonths: stop }, 'stop'],
    [{ openedOn: '2026-11-01' }, 'fine'],
    [{ openedOn: '2025-12-29', openedMonths: 0 }, 'look'],
    [{ openedOn: '2025-11-29' }, 'stop'],
    [{ openedOn: '2026-11-30' }, 'unknown'],
    [{}, 'unknown'],
  ])('opened %o is %s', (row, mark) => {
    expect(lotAge({ card: 'X', ...row }, 'foam', '2026-11-29').mark).toBe(mark);
  });

  it('names the lot, how old it is, and what to do', () => {
    expect(lotAge({ card: 'X', lot: 'L-07', openedMonths: 9 }, 'foam', '2026-11-29').words).toBe(
      'Lot L-07 was opened 9 months ago. Cup-test it before it is poured.',
    );
    expect(lotAge({ card: 'X', openedMonths: 14 }, 'silicone', '2026-11-29').words).toContain(
      'past 12 months',
    );
  });
});
