import { describe, expect, it } from 'vitest';
import { sheetOf } from '../../src/job/foamSheet';
import { foamNamed, readShop, siliconeNamed, stockOf } from '../../src/job/shop';
import type { Shop } from '../../src/job/shop';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { cheapestKits, needBeyondStock } from '../../src/yield';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';

/** As the first release wrote it: bare kit sizes, g/cm3. */
const RELEASED = {
  schema: 'risewright/shop@1',
  name: 'Old shop',
  foams: [],
  silicones: [
    {
      name: 'Old Silicone',
      densityGCm3: 1.18,
      ratio: { base: 10, catalyst: 1, by: 'mass' },
      potLifeMin: 25,
      linearShrink: 0.002,
      kitsKg: [1.1, 5.5],
    },
  ],
  stock: [
    { card: 'Some Foam', lot: 'L-07', aKg: 2, bKg: 1.1, openedMonths: 9 },
    { card: 'Old Silicone', baseKg: 6, catalystKg: 0.6 },
  ],
  scale: { stepG: 1, maxG: 5000 },
};
const open = (json: unknown): Shop => valueOf(readShop(JSON.stringify(json), 'shop.json'));
const refused = (change: object): string => {
  const problem = problemOf(readShop(JSON.stringify({ ...RELEASED, ...change }), 'shop.json'));
  return `${problem.code} ${String(problem.values.why ?? problem.values.field)}`;
};

describe('a shop file', () => {
  it('of the first release opens, its silicone a card and its stock rows', () => {
    const shop = open(RELEASED);
    expect(valueOf(siliconeNamed(shop, 'Old Silicone'))).toMatchObject({
      densityKgM3: 1180,
      linearShrinkShare: 0.002,
      kits: [{ massKg: 1.1 }, { massKg: 5.5 }],
    });
    expect(stockOf(shop, 'Old Silicone')).toEqual([{ card: 'Old Silicone', baseKg: 6, catalystKg: 0.6 }]);
    expect(stockOf(shop, 'Some Foam')[0]).toMatchObject({ lot: 'L-07', openedMonths: 9 });
    expect(stockOf(shop, 'Nothing of it')).toEqual([]);
  });

  it('without silicones and stock opens with none', () => {
    expect(open({ schema: RELEASED.schema, foams: [] })).toMatchObject({ silicones: [], stock: [] });
  });

  it('written and read again is the same, and nothing that a later version added is lost', () => {
    const later = {
      ...RELEASED,
      book: [{ poured: 1 }],
      silicones: [{ ...RELEASED.silicones[0], color: 'blue' }],
      stock: [{ card: 'Plaster', bagKg: 25 }],
    };
    const shop = open(later);
    expect(shop).toMatchObject({
      book: [{ poured: 1 }],
      silicones: [{ color: 'blue' }],
      stock: [{ card: 'Plaster', bagKg: 25 }],
    });
    expect(open(shop)).toEqual(shop);
  });

  it('a card nobody has is answered with those there are', () => {
    const problem = problemOf(siliconeNamed(open(RELEASED), 'old silicone'));
    expect(problem).toMatchObject({ code: 'CARD_UNKNOWN', values: { known: '"Old Silicone"' } });
    expect(problemOf(foamNamed(open(RELEASED), 'Old Silicone')).code).toBe('CARD_UNKNOWN');
  });
});

describe('a shop file that is wrong says where', () => {
  const [silicone] = RELEASED.silicones;
  it.each([
    [
      'a silicone without pot life',
      { silicones: [{ ...silicone, potLifeMin: 0 }] },
      /^SILICONE_CARD_FIELD potLifeMin/,
    ],
    ['a silicone that is a text', { silicones: ['blue'] }, /^SILICONE_CARD_FIELD card/],
    [
      'two silicones of one name',
      { silicones: [silicone, silicone] },
      /two silicone cards are called "Old Silicone"/,
    ],
    ['stock that is a number', { stock: [5] }, /row 1 of its stock is not an object/],
    ['stock of nothing', { stock: [{ baseKg: 1 }] }, /row 1 of its stock names no card/],
    ['stock below nothing', { stock: [{ card: 'X', baseKg: -1 }] }, /baseKg of "X"/],
    ['stock in words', { stock: [{ card: 'X', aKg: 'two' }] }, /aKg of "X"/],
    ['a lot that is a number', { stock: [{ card: 'X', lot: 7 }] }, /lot of "X"/],
    ['a newer schema', { schema: 'risewright/shop@9' }, /^SHOP_FILE its schema/],
    ['a schema that is no text', { schema: { is: 2 } }, /^SHOP_FILE its schema is {"is":2}, not risewright/],
    ['no schema', { schema: undefined }, /^SHOP_FILE its schema is missing, not risewright/],
    ['another program', { schema: 'other/shop@1' }, /^SHOP_FILE its schema is other\/shop@1, not risewright/],
    ['a name that is a number', { name: 5 }, /^SHOP_FILE its name is not a text/],
    ['a foam that is none', { foams: [{ name: 'F' }] }, /^FOAM_CARD_FIELD freeRiseKgM3/],
    ['silicones in an object', { silicones: {} }, /^SHOP_FILE its silicones are not a list/],
    ['stock in an object', { stock: {} }, /^SHOP_FILE its stock is not a list/],
    ['pieces in a list', { pieces: [] }, /^SHOP_FILE its pieces are not an object/],
    ['a photo that is none', { photos: { p: 7 } }, /^SHOP_FILE photo "p": /],
    ['a scale without a step', { scale: { maxG: 5000 } }, /^SHOP_FILE its scale has no step in grams/],
    ['a scale of step 0', { scale: { stepG: 0 } }, /^SHOP_FILE its scale has no step in grams/],
    ['a scale that is a number', { scale: 1 }, /^SHOP_FILE its scale has no step in grams/],
    ['a scale that takes nothing', { scale: { stepG: 1, maxG: 0 } }, /^SHOP_FILE the most its scale takes/],
    ['a scale in words', { scale: { stepG: 1, maxG: '5 kg' } }, /^SHOP_FILE the most its scale takes/],
    ['no foams', { foams: 5 }, /^SHOP_FILE it has no list of foams/],
  ])('%s', (_, change, wanted) => {
    expect(refused(change)).toMatch(wanted);
  });

  it('that says one thing twice', () => {
    const twice = '{"schema":"risewright/shop@1","foams":[],"name":"a","name":"b"}';
    expect(problemOf(readShop(twice, 'x.json')).values.why).toBe('something in it is called "name" twice');
  });

  it('that is no JSON', () => {
    expect(problemOf(readShop('{', 'x.json')).code).toBe('SHOP_FILE');
    expect(problemOf(readShop('[]', 'x.json')).code).toBe('SHOP_FILE');
  });
});

it('a scale without its most is a scale, and keeps what a later version says of it', () => {
  expect(open({ ...RELEASED, scale: { stepG: 0.1, later: 'x' } }).scale).toEqual({ stepG: 0.1, later: 'x' });
});

describe('what of a data sheet stands on a card', () => {
  const card = {
    name: 'F',
    freeRiseKgM3: 96,
    freeRiseFrom: 'data-sheet',
    ratio: { a: 100, b: 55, by: 'mass' },
  };
  const sheet = (more: object): object => sheetOf({ ...card, ...more } as Shop['foams'][number]);

  it('the figures that are numbers', () => {
    expect(sheet({ timesAtC: 23, ncoShare: '0.3', waterShare: Infinity, aPerKg: 9 })).toEqual({
      timesAtC: 23,
      aPerKg: 9,
    });
    expect(sheet({})).toEqual({});
  });

  it('and the kits that weigh something and do not cost less than nothing', () => {
    const kits = [{ massKg: 2 }, { massKg: 5, price: 0 }, { massKg: 8, price: 70 }];
    const none = [
      null,
      'kit',
      { massKg: 0 },
      { massKg: '2' },
      { massKg: 2, price: -1 },
      { massKg: 2, price: 'x' },
    ];
    expect(sheet({ kits: [...kits, ...none, { massKg: Infinity }] })).toEqual({ kits });
    expect(sheet({ kits: none })).toEqual({});
    expect(sheet({ kits: 'two' })).toEqual({});
  });
});

describe('the sample shop', () => {
  it('is itself a shop file', () => {
    expect(open(SAMPLE_SHOP)).toEqual(SAMPLE_SHOP);
  });

  it('has 6.6 kg of silicone on the shelf; for 10 kg it buys 3.4 kg in four small kits or one large, whichever costs less', () => {
    const shop = open(SAMPLE_SHOP);
    const card = valueOf(siliconeNamed(shop, 'Sample Silicone 25'));
    const stock = stockOf(shop, card.name);
    const { needKg } = valueOf(needBeyondStock({ mixedKg: 10, ratio: card.ratio, stock }));
    expectClose(needKg, 3.4, 1e-9);
    const [small, large] = card.kits.map(({ price }) => price!);
    expect(valueOf(cheapestKits(card.kits, needKg)).price).toBe(Math.min(4 * small!, large!));
  });
});
