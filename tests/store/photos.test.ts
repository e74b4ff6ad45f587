import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import { describe, expect, it } from 'vitest';
import type { BookRow, PourRow } from '../../src/job/book';
import { placeOfRow, withRow, withoutRow } from '../../src/job/book/changeRows';
import type { Piece } from '../../src/job/piece';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { emptyShop, readShop, type Shop } from '../../src/job/shop';
import { shopText } from '../../src/job/shopText';
import { backupOf, bringIn, putInstead, replaceBy, wipe } from '../../src/store/backup';
import { newId } from '../../src/store/newId';
import type { Store } from '../../src/store/store';
import { call } from '../support/cliCall';
import { lcg } from '../support/lcg';
import { problemOf, valueOf } from '../support/outcome';
import { openedStores } from '../support/openedStores';

const shop = openedStores();

const random = lcg(20261130);
const noise = (length: number): Uint8Array<ArrayBuffer> =>
  Uint8Array.from({ length }, () => Math.floor(256 * random()));
const pour = (id: string, more: Partial<PourRow> = {}): PourRow => ({ kind: 'pour', id, no: 1, ...more });
const piece = (photo: string): Piece =>
  ({
    id: 'a',
    name: 'A',
    code: 'A',
    begunOn: '2026-01-01',
    sculpt: { fields: {}, choices: {} },
    molds: { m: { no: 1, fields: {}, choices: {} } },
    castings: { c: { no: 1, mold: 'm', fields: {}, choices: {}, weigh: { boxes: {}, photo } } },
    hand: { mold: 'm', casting: 'c' },
  }) as Piece;

const bytesOf = async (store: Store): Promise<string> => (await backupOf(store.database)).text();
const readBack = (text: string): Shop => valueOf(readShop(text, 'backup.json'));
const photoIn = async (store: Store, id: string): Promise<Uint8Array | undefined> => {
  const photo = await store.photo(id);
  return photo === undefined ? undefined : new Uint8Array(await photo.arrayBuffer());
};

/** The sample shop with its book; its last pour has a photo, and so has a weigh-back that is not written yet. */
async function filled(): Promise<{ store: Store; written: string; begun: string; bytes: Uint8Array }> {
  const store = shop();
  const { pieces: _pieces, scans: _scans, ...core } = SAMPLE_SHOP;
  const bytes = noise(30_001);
  const written = await store.keepPhoto({ type: 'image/jpeg', bytes: bytes.slice() });
  const begun = await store.keepPhoto({ type: 'image/png', bytes: noise(5) });
  const book: BookRow[] = [...SAMPLE_ROWS, pour('last', { no: 13, photo: written })];
  await store.changeCore(() => ({ ...core, book }));
  await store.addPiece(piece(begun));
  return { store, written, begun, bytes };
}

describe('photos in a backup', () => {
  it('go round through file, restore and file byte for byte, beside the book', async () => {
    const { store, written, bytes } = await filled();
    const before = await bytesOf(store);
    await wipe(store.database);
    expect(await photoIn(store, written)).toBeUndefined();
    await replaceBy(store.database, readBack(before));
    expect(await bytesOf(store)).toBe(before);
    expect(await photoIn(store, written)).toEqual(bytes);
    expect((await store.photo(written))?.type).toBe('image/jpeg');
    const other = shop();
    await bringIn(other.database, readBack(before));
    expect(await bytesOf(other)).toBe(before);
  });

  it('are those that a row or a weigh-back names; without any the file is as it was before there were photos', async () => {
    const { store, written, begun } = await filled();
    await store.keepPhoto({ type: 'image/jpeg', bytes: noise(9) });
    expect(Object.keys(readBack(await bytesOf(store)).photos!).sort()).toEqual([written, begun].sort());
    expect(await bytesOf(shop())).not.toContain('photos');
    expect(readBack(shopText(emptyShop())).photos).toBeUndefined();
  });

  it('are read by the command line as part of the same file, and written back by it unharmed', async () => {
    const { store } = await filled();
    const text = await bytesOf(store);
    const files = { 'b.json': text };
    const listed = call(['book', 'list', '--book', 'b.json', '--json'], { files });
    expect(listed.exit).toBe(0);
    const { result } = JSON.parse(listed.out) as { result: { rows: unknown[]; unread: number } };
    expect([result.rows.length, result.unread]).toEqual([SAMPLE_ROWS.length + 1, 0]);
    const added = call(['book', 'add', '--book', 'b.json', '--mixed', '500 g'], { files });
    expect(added.exit).toBe(0);
    const after = readBack(added.files.get('b.json') as string);
    expect(after.photos).toEqual(readBack(text).photos);
    expect(after.book).toHaveLength(SAMPLE_ROWS.length + 2);
  });

  it.each<[string, unknown, RegExp]>([
    ['a list', [], /its photos are not an object/],
    [
      'of another kind',
      { x: { type: 'image/svg+xml', data: 'AAAA' } },
      /photo "x": type: is none of image\/jpeg/,
    ],
    ['broken', { x: { type: 'image/jpeg', data: 'AAA*' } }, /photo "x": data: is not base64/],
    ['empty', { x: { type: 'image/jpeg', data: '' } }, /photo "x": data: is empty/],
    ['without data', { x: { type: 'image/jpeg' } }, /photo "x": .*data/],
  ])('that are %s are refused in words, whole', (_, photos, why) => {
    const text = JSON.stringify({ ...emptyShop(), photos });
    expect(problemOf(readShop(text, 'b.json')).values.why).toMatch(why);
  });
});

describe('photos that nothing names', () => {
  it('are swept once they are old; those that a row, a weigh-back or a binned piece names stay', async () => {
    const { store, written, begun } = await filled();
    const loose = await store.keepPhoto({ type: 'image/jpeg', bytes: noise(9) });
    await store.sweep(60_000);
    expect(await store.photo(loose)).toBeDefined();
    await store.deletePiece('a');
    await store.sweep(60_000);
    expect(await store.photo(begun)).toBeDefined();
    await store.sweep();
    expect(await store.photo(loose)).toBeUndefined();
    expect(await store.photo(begun)).toBeUndefined();
    expect(await store.photo(written)).toBeDefined();
  });

  it('stay a day for whoever takes the change back, however old they are', async () => {
    const { store, written } = await filled();
    await store.database.photos.update(written, { at: 0 });
    const before = readBack(await bytesOf(store)).book;
    const row = (before as PourRow[]).at(-1)!;
    await store.changeBook((book) => withoutRow(book, 'last'));
    await store.sweep(60_000);
    expect(await store.photo(written)).toBeDefined();
    await store.changeBook((book) => withRow(book, row));
    expect(readBack(await bytesOf(store)).book).toEqual(before);
  });

  it('go with all else when the sample shop is put in its place', async () => {
    const { store, written } = await filled();
    const { pieces: _pieces, scans: _scans, ...core } = SAMPLE_SHOP;
    await putInstead(store.database, { core, pieces: [] });
    expect(await store.photo(written)).toBeUndefined();
  });
});

describe('a database of version 1', () => {
  it('opens with all that was in it, and with the photos that a later file had left there', async () => {
    const name = newId();
    const old = new Dexie(name);
    old.version(1).stores({ pieces: 'id', bin: 'id', scans: 'id', shop: 'key', local: 'key' });
    const { pieces: _pieces, scans: _scans, ...core } = SAMPLE_SHOP;
    await old.table('pieces').add(piece('begun'));
    await old.table('shop').add({
      ...core,
      key: 'shop',
      book: [pour('p', { photo: 'x' })],
      photos: { x: { type: 'image/jpeg', data: 'AQID' }, y: { type: 'image/gif', data: 'AQID' } },
    });
    old.close();
    const store = shop(name);
    expect(await store.piece('a')).toEqual(piece('begun'));
    expect(await photoIn(store, 'x')).toEqual(new Uint8Array([1, 2, 3]));
    const kept = readBack(await bytesOf(store));
    expect(kept.photos).toEqual({ x: { type: 'image/jpeg', data: 'AQID' } });
    expect(kept.foams).toEqual(SAMPLE_SHOP.foams);
    await store.changeCore((now) => ({ ...now, name: 'Ours' }));
    expect(Object.keys(readBack(await bytesOf(store)).photos!)).toEqual(['x']);
  });
});

describe('the book, changed in one step', () => {
  it('loses nothing where two change it at once', async () => {
    const name = newId();
    const [one, other] = [shop(name), shop(name)];
    await Promise.all([
      one.changeBook((book) => withRow(book, pour('a'))),
      other.changeBook((book) => withRow(book, pour('b'))),
    ]);
    const { book } = readBack(await bytesOf(one));
    expect((book as PourRow[]).map(({ id }) => id).sort()).toEqual(['a', 'b']);
  });

  it('is not changed where the change is refused', async () => {
    const store = shop();
    await store.changeCore((core) => ({ ...core, book: { later: true } }));
    const said = await store.changeBook((book) => withRow(book, pour('a')));
    expect(problemOf(said).code).toBe('BOOK_NOT_A_LIST');
    expect(readBack(await bytesOf(store)).book).toEqual({ later: true });
  });

  it('a row takes the place of its own, goes and comes back where it stood; entries that cannot be read stay', () => {
    const book = [pour('a'), { later: 1 }, { no: 3, piece: 'p' }, pour('b')];
    const changed = valueOf(withRow(book, pour('b', { skin: 4 })));
    expect(changed).toEqual([...book.slice(0, 3), pour('b', { skin: 4 })]);
    // Rows of the first form have neither kind nor id: they go by their number.
    expect(placeOfRow(book, 'pour-3')).toBe(2);
    expect(valueOf(withoutRow(book, 'pour-3'))).toEqual([book[0], book[1], book[3]]);
    const out = valueOf(withoutRow(book, 'a'));
    expect(valueOf(withRow(out, pour('a'), 0))).toEqual(book);
    expect(valueOf(withoutRow(book, 'none'))).toEqual(book);
    expect(valueOf(withRow(undefined, pour('a')))).toEqual([pour('a')]);
  });
});
