import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readShop } from '../../src/job/shop';
import { lcg } from '../support/lcg';
import { problemOf, valueOf } from '../support/outcome';
import { BACKUPS } from './backups';
import { seedOf } from './target';

const SEED = 20261130;
const folder = new URL('found/', import.meta.url);
const textOf = (file: string): string => readFileSync(new URL(file, folder), 'utf8');

it(`150 mutants of backups, seed ${SEED}, are refused in words or kept to the last record`, async () => {
  const answers = { read: 0, refused: 0 };
  for (let n = 0; n < 150; n++) {
    const { answer, fault } = await BACKUPS.check(BACKUPS.make(lcg(seedOf(SEED, n))));
    expect(fault, `seed ${SEED}, backup ${n}`).toBeUndefined();
    answers[answer]++;
  }
  expect(Math.min(answers.read, answers.refused)).toBeGreaterThan(10);
});

const REFUSED: readonly [string, RegExp][] = [
  ['name-that-is-a-number.backup', /its name is not a text/],
  ['silicones-that-are-no-list.backup', /its silicones are not a list/],
  ['stock-that-is-a-text.backup', /its stock is not a list/],
  ['settings-that-are-a-list.backup', /a list stands where an object should/],
  ['two-foams-in-one-pair-of-braces.backup', /called "name" twice/],
  ['schema-with-a-toString-of-its-own.backup', /its schema is \[\{"toString":0\}\]/],
  ['number-beyond-any.backup', /a number too large/],
];

it.each(REFUSED)('%s is refused: %s', (file, why) => {
  const problem = problemOf(readShop(textOf(file), file));
  expect([problem.code, String(problem.values.why)]).toEqual(['SHOP_FILE', expect.stringMatching(why)]);
});

it('what a scale or a ratio has more than this version knows stays', () => {
  const { scale } = valueOf(readShop(textOf('more-about-the-scale.backup'), 'x'));
  expect(scale).toEqual({ stepG: 1, tareG: 12 });
  const { foams } = valueOf(readShop(textOf('more-about-a-ratio.backup'), 'x'));
  expect(foams[0]!.ratio).toEqual({ a: 100, b: 55, by: 'mass', note: 'by weight' });
});

it.each(readdirSync(folder).filter((file) => file.endsWith('.backup')))(
  '%s loses nothing and changes nothing silently',
  async (file) => {
    expect((await BACKUPS.check(textOf(file))).fault).toBeUndefined();
  },
);
