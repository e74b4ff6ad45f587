import { describe, expect, it } from 'vitest';
import { readLocalRun } from '../../src/app/bench/localRun';
import { call } from '../support/cliCall';
import { problemOf, valueOf } from '../support/outcome';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { readShop } from '../../src/job/shop';
import { say } from '../../src/words/say';

const BLANK = { fields: {}, choices: {} };
/** A shop with something of every kind in it. */
const SHOP = {
  ...SAMPLE_SHOP,
  book: SAMPLE_ROWS,
  settings: { altitude: { text: '400', unit: 'm' }, units: { tape: 'in' } },
  pieces: {
    p: {
      id: 'p',
      name: 'A piece',
      code: 'P',
      begunOn: '2026-11-30',
      sculpt: { ...BLANK, fields: { tape: { text: '10', unit: 'in' } } },
      molds: { m: { ...BLANK, no: 1 } },
      castings: { c: { ...BLANK, choices: { pouring: { facts: { 'Mold dry': 'yes' } } }, no: 1, mold: 'm' } },
      hand: { mold: 'm', casting: 'c' },
    },
  },
};
const TEXT = JSON.stringify(SHOP);

/** The file once for each object in it, with one more key there. */
function withKey(key: string): string[] {
  const added = `{${JSON.stringify(key)}:{"freeRiseKgM3":1,"isLeftOut":true},`;
  return [...TEXT.matchAll(/\{(?=")/g)].map(
    ({ index }) => TEXT.slice(0, index) + added + TEXT.slice(index + 1),
  );
}

describe('a key that every object has a meaning for', () => {
  it.each(['__proto__', 'constructor', 'prototype'])('%s is told, wherever it stands', (key) => {
    const files = withKey(key);
    expect(files.length).toBeGreaterThan(40);
    for (const file of files) {
      const problem = problemOf(readShop(file, 'shop.json'));
      expect(problem.code).toBe('SHOP_FILE');
      expect(say(problem).text).toContain(`a key called "${key}"`);
    }
    expect(({} as Record<string, unknown>).freeRiseKgM3).toBeUndefined();
    expect(({} as Record<string, unknown>).isLeftOut).toBeUndefined();
  });

  it('as a text it is a text: cards, pieces, lots and notes may be called so', () => {
    const named = TEXT.replaceAll('Sample Foam Light', '__proto__').replaceAll('A piece', 'constructor');
    const shop = valueOf(readShop(named, 'shop.json'));
    expect(shop.foams[0]!.name).toBe('__proto__');
    expect(shop.pieces.p!.name).toBe('constructor');
    const files = { 'shop.json': named };
    const poured = ['batch', '--volume', '4 L', '--foam', '__proto__', '--shop', 'shop.json', '--json'];
    expect(call(poured, { files }).exit).toBe(0);
  });

  it('other names that objects have are kept as they stand', () => {
    const [file] = withKey('toString');
    expect(Object.hasOwn(valueOf(readShop(file!, 'shop.json')), 'toString')).toBe(true);
  });
});

it('what the browser keeps of a pour is read from its own keys alone', () => {
  const run = { rev: 1, presses: [{ what: 'mixing', wallMs: 1, elapsedMs: 0 }] };
  expect(readLocalRun(JSON.stringify({ run }))).toEqual({ run });
  for (const key of ['__proto__', 'constructor', 'prototype'])
    expect(readLocalRun(`{${JSON.stringify(key)}:${JSON.stringify({ run })}}`)).toBeUndefined();
});

it('a file nested beyond all measure is told, and ends nothing', () => {
  const deep = `${'['.repeat(200_000)}${']'.repeat(200_000)}`;
  const file = `{"schema":"risewright/shop@2","foams":[],"book":${deep}}`;
  expect(say(problemOf(readShop(file, 'shop.json'))).text).toContain('nested more than 100 deep');
});

describe('on the command line', () => {
  it.each(['constructor', '__proto__', 'toString'])('a color by the share of %s is refused', (name) => {
    const given = ['--volume', '4 L', '--free-rise', '6 pcf', '--ratio', '100:55'];
    const { exit, notes } = call(['batch', ...given, '--color', `umber=1% of ${name}`]);
    expect(exit).toBe(2);
    expect(notes).toContain(`is a share of "${name}"`);
  });

  it('a shop with such a key is refused by its file', () => {
    const files = { 'shop.json': withKey('__proto__')[0]! };
    const { exit, notes } = call(['book', 'list', '--shop', 'shop.json'], { files });
    expect(exit).not.toBe(0);
    expect(notes).toContain('a key called "__proto__"');
    expect(notes).not.toContain('fault of ours');
  });
});
