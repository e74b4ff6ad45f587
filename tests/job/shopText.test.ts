import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/job/piece';
import { readShop, type Shop } from '../../src/job/shop';
import { shopText } from '../../src/job/shopText';
import { SAMPLE_BOOK } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { call } from '../support/cliCall';
import { lcg } from '../support/lcg';
import { problemOf, valueOf } from '../support/outcome';

const piece = (id: string): Piece => ({
  id,
  name: `Piece ${id}`,
  code: 'P',
  begunOn: '2026-01-01',
  sculpt: { fields: { tape: { unit: 'mm', text: '290.85' } }, choices: {}, scan: 's' },
  molds: { m: { no: 1, fields: {}, choices: {} } },
  castings: { c: { no: 1, mold: 'm', fields: {}, choices: { foam: { name: 'X', by: 'mass' } } } },
  hand: { mold: 'm', casting: 'c' },
});

const FULL: Shop = {
  ...SAMPLE_SHOP,
  settings: { units: { tape: 'in' }, altitude: { text: '1500', unit: 'm' } },
  book: SAMPLE_BOOK,
  pieces: { b: piece('b'), a: piece('a') },
  scans: { s: { name: 'troll.stl', bytes: 3, packing: 'gzip', data: 'AAAA' } },
};

/** The same content with the keys of every object in another order. */
function shuffled<T>(value: T, random: () => number): T {
  if (Array.isArray(value)) return value.map((one: unknown) => shuffled(one, random)) as T;
  if (typeof value !== 'object' || value === null) return value;
  const keys = Object.keys(value).sort(() => random() - 0.5);
  return Object.fromEntries(
    keys.map((key) => [key, shuffled((value as Record<string, unknown>)[key], random)]),
  ) as T;
}

describe('the text of a shop', () => {
  it('has its keys in a fixed order, one line each, and one a piece or a scan', () => {
    const lines = shopText(FULL).split('\n');
    const keys = lines.map((line) => /^"(\w+)":/.exec(line)?.[1]).filter((key) => key !== undefined);
    expect(keys).toEqual([
      'schema',
      'name',
      'scale',
      'settings',
      'foams',
      'silicones',
      'stock',
      'pieces',
      'a',
      'b',
      'book',
      'scans',
      's',
    ]);
    expect(lines.at(-1)).toBe('');
  });

  it('is the same whatever the order of keys in memory (seed 20261129, 50 orders)', () => {
    const random = lcg(20261129);
    const text = shopText(FULL);
    for (let i = 0; i < 50; i++) expect(shopText(shuffled(FULL, random))).toBe(text);
  });

  it('has no time in it: written twice it is the same', () => {
    expect(shopText(FULL)).toBe(shopText(structuredClone(FULL)));
  });

  it('read and written again it is the same text, with a key of a later version', () => {
    const later = { ...FULL, presses: [{ bar: 2 }], pieces: { a: { ...piece('a'), mood: 'grim' } } } as Shop;
    const text = shopText(later);
    expect(text).toContain('"mood":"grim"');
    expect(text).toContain('"presses":[{"bar":2}]');
    expect(shopText(valueOf(readShop(text, 'shop.json')))).toBe(text);
  });

  it('is JSON that any reader takes, an empty shop as well', () => {
    expect(JSON.parse(shopText(FULL))).toEqual(JSON.parse(JSON.stringify(FULL)));
    const empty: Shop = { ...SAMPLE_SHOP, pieces: {}, scans: {} };
    expect(JSON.parse(shopText(empty))).toEqual(JSON.parse(JSON.stringify(empty)));
  });
});

describe('every schema ever released opens', () => {
  const files = ['shop-1.json'];
  it.each(files)('%s, as the command line of its day wrote it', (file) => {
    const shop = valueOf(readShop(readFileSync(`tests/job/files/${file}`, 'utf8'), file));
    expect(shop.schema).toBe('risewright/shop@2');
    expect(shop.foams.map(({ name, ratio }) => [name, ratio])).toEqual([
      ['Sample Foam Light', { a: 100, b: 55, by: 'mass' }],
      ['Sample Foam Firm', { a: 38, b: 100, by: 'mass' }],
    ]);
    expect(shop.silicones[0]).toMatchObject({
      name: 'Sample Silicone 25',
      densityKgM3: 1180,
      potLifeMin: 25,
    });
    expect(shop.stock[0]).toEqual({
      card: 'Sample Foam Light',
      lot: 'L-07',
      aKg: 2,
      bKg: 1.1,
      openedMonths: 9,
    });
    expect(shop.scale).toEqual({ stepG: 1, maxG: 5000 });
    expect([shop.pieces, shop.scans]).toEqual([{}, {}]);
  });
});

describe('a backup that is broken is refused in words, whole', () => {
  const refusedWhy = (text: string): string => {
    const { code, values } = problemOf(readShop(text, 'b.json'));
    return `${code} ${String(values.why ?? values.field)}`;
  };
  const broken = (change: (json: Record<string, never>) => void): string => {
    const json = JSON.parse(shopText(FULL)) as Record<string, never>;
    change(json);
    return refusedWhy(JSON.stringify(json));
  };
  it.each<[string, (json: Record<string, never>) => void, RegExp]>([
    ['a newer schema', (s) => Object.assign(s, { schema: 'risewright/shop@3' }), /newer Risewright/],
    ['another file', (s) => Object.assign(s, { schema: 'risewright/size@1' }), /^SHOP_FILE its schema is/],
    [
      'a piece without molds',
      (s) => delete (s.pieces as never as Record<string, Partial<Piece>>).a!.molds,
      /piece "a"/,
    ],
    [
      'a casting of a mold that is not there',
      (s) => Object.assign((s.pieces as never as Record<string, Piece>).a!.castings.c!, { mold: 'gone' }),
      /piece "a": .*a casting is of a mold that is not there/,
    ],
    [
      'a hand on nothing',
      (s) =>
        Object.assign((s.pieces as never as Record<string, Piece>).a!, { hand: { mold: 'm', casting: 'x' } }),
      /in hand is not there/,
    ],
    [
      'a piece under another id',
      (s) => Object.assign((s.pieces as never as Record<string, Piece>).a!, { id: 'z' }),
      /piece "a" has another id inside/,
    ],
    [
      'a scan that is no base64',
      (s) => Object.assign((s.scans as never as Record<string, object>).s!, { data: 'AAA*' }),
      /scan "s": .*is not base64/,
    ],
    [
      'a scan packed otherwise',
      (s) => Object.assign((s.scans as never as Record<string, object>).s!, { packing: 'zip' }),
      /scan "s": packing/,
    ],
    ['pieces in a list', (s) => Object.assign(s, { pieces: [] }), /its pieces are not an object/],
    [
      'a field that is a number',
      (s) => Object.assign((s.pieces as never as Record<string, Piece>).a!.sculpt.fields, { tape: 290 }),
      /piece "a"/,
    ],
    [
      'settings in words',
      (s) => Object.assign(s, { settings: { altitude: 'high' } }),
      /settings.altitude|altitude/,
    ],
    [
      'a lot opened on no day',
      (s) => Object.assign(s, { stock: [{ card: 'X', openedOn: '2026-02-30' }] }),
      /opened on/,
    ],
  ])('%s', (_, change, why) => {
    expect(broken(change)).toMatch(why);
  });

  it('cut short anywhere it is no JSON, and says so (seed 4, 40 places)', () => {
    const random = lcg(4);
    const text = shopText(FULL).trimEnd();
    for (let i = 0; i < 40; i++) {
      const short = text.slice(0, 1 + Math.floor(random() * (text.length - 2)));
      expect(refusedWhy(short)).toMatch(/^SHOP_FILE it is not JSON/);
    }
  });
});

describe('the file of the app', () => {
  it('is one for the command line: its cards pour a batch', () => {
    const desk = { files: { 'backup.json': shopText(FULL) } };
    const said = call(
      [
        'batch',
        '--shop',
        'backup.json',
        '--foam',
        'Sample Foam Light',
        '--volume',
        '4.478 L',
        '--pack',
        '1.25',
        '--json',
      ],
      desk,
    );
    expect(said.exit).toBe(0);
    const plain = call(
      [
        'batch',
        '--shop',
        's.json',
        '--foam',
        'Sample Foam Light',
        '--volume',
        '4.478 L',
        '--pack',
        '1.25',
        '--json',
      ],
      { files: { 's.json': JSON.stringify(SAMPLE_SHOP) } },
    );
    const resultOf = (out: string): unknown => (JSON.parse(out) as { result: unknown }).result;
    expect(resultOf(said.out)).toEqual(resultOf(plain.out));
  });
});
