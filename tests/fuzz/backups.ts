import 'fake-indexeddb/auto';
import { gzipSync } from 'node:zlib';
import type { Piece } from '../../src/job/piece';
import { SAMPLE_BOOK } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { readShop, type Shop } from '../../src/job/shop';
import { shopText } from '../../src/job/shopText';
import { backupOf, bringIn, replaceBy } from '../../src/store/backup';
import { openStore } from '../../src/store/store';
import { hasWords, say } from '../../src/words/say';
import { losses, lossesBeside, type Json } from './backupLosses';
import { mutateJson } from './jsonMutants';
import { mutateBytes, mutateText } from './mutate';
import { pick, type Target, type Verdict } from './target';

const piece = (id: string, more: Partial<Piece> = {}): Piece => ({
  id,
  name: `Piece ${id}`,
  code: id.toUpperCase(),
  begunOn: '2026-01-01',
  begunAtMs: 1_767_225_600_000,
  sculpt: {
    fields: { tape: { text: '290', unit: 'mm', picked: 290 } },
    choices: { up: '+y' },
    scan: `scan-${id}`,
  },
  molds: {
    m: {
      no: 1,
      fields: { wall: { text: '8', unit: 'mm' } },
      choices: { type: 'skin', list: [1, null, true] },
    },
  },
  castings: {
    c: { no: 1, mold: 'm', fields: {}, choices: {}, after: 'b' },
    d: { no: 2, mold: 'm', fields: {}, choices: {} },
  },
  hand: { mold: 'm', casting: 'c' },
  ...more,
});

const scan = (text: string): Shop['scans'][string] => ({
  name: `${text}.stl`,
  bytes: text.length,
  packing: 'gzip',
  data: gzipSync(text).toString('base64'),
});

/** A shop with something of every kind in it, what a later version may add among it. */
const FULL = {
  ...SAMPLE_SHOP,
  settings: { units: { tape: 'in' }, altitude: { text: '1500', unit: 'm' } },
  book: [...SAMPLE_BOOK.slice(0, 3), { kind: 'later', id: 'x' }, { ...SAMPLE_BOOK[3], photo: 'photo-a' }],
  pieces: { a: piece('a'), b: piece('b', { sculpt: { fields: {}, choices: {} } }) },
  scans: { 'scan-a': scan('one'), 'scan-b': scan('another scan') },
  photos: { 'photo-a': { type: 'image/png', data: 'iVBORw0KGgo=' } },
  later: { list: [1, 2, { three: 3 }] },
} as Shop;

/** The first version, as it was released. */
const FIRST = JSON.stringify({
  schema: 'risewright/shop@1',
  name: 'Old shop',
  foams: SAMPLE_SHOP.foams,
  silicones: [
    {
      name: 'Old',
      densityGCm3: 1.18,
      ratio: { base: 10, catalyst: 1, by: 'mass' },
      potLifeMin: 25,
      linearShrink: 0.002,
      kitsKg: [1.1, 5.5],
    },
  ],
  stock: [{ card: 'Old', baseKg: 6, catalystKg: 0.6 }],
  scale: { stepG: 1, maxG: 5000 },
});

const SEEDS = [shopText(FULL), shopText(FULL), shopText({ ...SAMPLE_SHOP, book: SAMPLE_BOOK }), FIRST];

/** What stands here before a backup is brought in beside it: some of the same, some of its own. */
const HERE = {
  ...FULL,
  name: 'Here',
  pieces: {
    a: piece('a', { name: 'Mine' }),
    own: piece('own', { sculpt: { fields: {}, choices: {}, scan: 'scan-own' } }),
  },
  scans: { 'scan-a': scan('one'), 'scan-own': scan('my own') },
  later: { list: [] },
} as Shop;

export const BACKUPS: Target<string> = {
  name: 'backup',
  make: (random) => {
    const seed = pick(random, SEEDS);
    if (random() < 0.65) return mutateJson(seed, random);
    const mutate = random() < 0.5 ? mutateText : mutateBytes;
    const bytes = mutate(
      new TextEncoder().encode(seed),
      random,
      new TextEncoder().encode(pick(random, SEEDS)),
    );
    return new TextDecoder().decode(bytes);
  },
  check: verdictOn,
  fileOf: (text) => ({ ending: 'json', bytes: new TextEncoder().encode(text) }),
};

const stores = { place: openStore('fuzz-place'), beside: openStore('fuzz-beside') };
const textIn = async (store: keyof typeof stores): Promise<string> =>
  (await backupOf(stores[store].database)).text();

/** What every object inherits, as it was before the first mutant. */
const INHERITED = [Object.prototype, Array.prototype].map((proto) => Reflect.ownKeys(proto).length).join();

async function verdictOn(text: string): Promise<Verdict> {
  const verdict = await restored(text);
  const now = [Object.prototype, Array.prototype].map((proto) => Reflect.ownKeys(proto).length).join();
  return now === INHERITED ? verdict : { ...verdict, fault: 'an object inherits something new' };
}

const namesIn = (value: unknown): number =>
  typeof value !== 'object' || value === null
    ? 0
    : Object.values(value).reduce<number>(
        (sum, one) => sum + namesIn(one),
        Array.isArray(value) ? 0 : Object.keys(value).length,
      );

async function restored(text: string): Promise<Verdict> {
  const shop = readShop(text, 'backup.json');
  if (!shop.ok) {
    const words = say(shop.problem);
    const isSaid = hasWords(shop.problem.code) && words.text !== '' && words.hint !== '';
    return isSaid ? { answer: 'refused' } : { answer: 'refused', fault: `${shop.problem.code} is not said` };
  }
  const wanted = JSON.parse(text) as Json;
  const written = [...text.matchAll(/"(?:[^"\\]|\\.)*"(\s*:)?/g)].filter(
    ([, colon]) => colon !== undefined,
  ).length;
  if (written !== namesIn(wanted))
    return { answer: 'read', fault: 'one name stands for two, and one is lost' };
  await replaceBy(stores.place.database, shop.value);
  const lost = losses(
    wanted,
    JSON.parse(await textIn('place')) as Json,
    await stores.place.database.scans.toArray(),
  );
  if (lost !== undefined) return { answer: 'read', fault: `in the place of all: ${lost}` };
  await replaceBy(stores.beside.database, HERE);
  const before = JSON.parse(await textIn('beside')) as Json;
  const came = await bringIn(stores.beside.database, shop.value);
  const after = JSON.parse(await textIn('beside')) as Json;
  const kept = await stores.beside.database.scans.toArray();
  const lostBeside = lossesBeside({ before, wanted, after, left: came.left, scans: kept });
  return lostBeside === undefined
    ? { answer: 'read' }
    : { answer: 'read', fault: `beside what is here: ${lostBeside}` };
}
