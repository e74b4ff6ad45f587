import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/job/piece';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { emptyShop, readShop, type Shop } from '../../src/job/shop';
import { shopLines } from '../../src/job/shopText';
import { backupOf, bringIn, replaceBy, wipe } from '../../src/store/backup';
import { fromBase64, toBase64 } from '../../src/store/base64';
import { pack, unpack } from '../../src/store/gzip';
import type { Store } from '../../src/store/store';
import { lcg } from '../support/lcg';
import { valueOf } from '../support/outcome';
import { openedStores } from '../support/openedStores';

const piece = (id: string, more: Partial<Piece> = {}): Piece => ({
  id,
  name: `Piece ${id}`,
  code: id.toUpperCase(),
  begunOn: '2026-01-01',
  sculpt: { fields: { tape: { text: '290', unit: 'mm' } }, choices: {}, scan: `scan-${id}` },
  molds: { m: { no: 1, fields: {}, choices: {} } },
  castings: { c: { no: 1, mold: 'm', fields: {}, choices: {} } },
  hand: { mold: 'm', casting: 'c' },
  ...more,
});

const shop = openedStores();

const random = lcg(20261129);
const noise = (length: number): ArrayBuffer =>
  Uint8Array.from({ length }, () => Math.floor(256 * random())).buffer;

/** Two pieces with their scans, the cards of the sample shop, and settings. */
async function filled(): Promise<{ store: Store; files: Record<string, ArrayBuffer> }> {
  const store = shop();
  const files = { 'scan-b': noise(100_000), 'scan-a': noise(3) };
  for (const [id, file] of Object.entries(files))
    await store.keepScan({
      id,
      name: `${id}.stl`,
      bytes: file.byteLength,
      packed: await pack(file.slice(0)),
    });
  await store.addPiece(piece('b'));
  await store.addPiece(piece('a'));
  const { pieces: _pieces, scans: _scans, ...core } = SAMPLE_SHOP;
  await store.changeCore(() => ({ ...core, settings: { units: { tape: 'in' } } }));
  return { store, files };
}

const bytesOf = async (store: Store): Promise<string> => (await backupOf(store.database)).text();
const readBack = (text: string): Shop => valueOf(readShop(text, 'backup.json'));
const shopIn = async (store: Store): Promise<Shop> => readBack(await bytesOf(store));

describe('a backup', () => {
  it('brought back after all was forgotten gives the same bytes again, and the scans as they came', async () => {
    const { store, files } = await filled();
    await store.noteBackup('2026-11-29');
    const before = await bytesOf(store);
    await wipe(store.database);
    expect(await bytesOf(store)).toBe(await bytesOf(shop()));
    await replaceBy(store.database, readBack(before));
    expect(await bytesOf(store)).toBe(before);
    for (const [id, file] of Object.entries(files)) {
      const scan = await store.scan(id);
      expect(scan?.bytes).toBe(file.byteLength);
      expect(new Uint8Array(await unpack(scan!.packed, scan!.bytes))).toEqual(new Uint8Array(file));
    }
  });

  it('on another device gives the same bytes, in whatever order it was filled', async () => {
    const { store } = await filled();
    const before = await bytesOf(store);
    const other = shop();
    await replaceBy(other.database, readBack(before));
    expect(await bytesOf(other)).toBe(before);
    const beside = shop();
    await bringIn(beside.database, readBack(before));
    expect(await bytesOf(beside)).toBe(before);
  });

  it('has neither what was deleted nor scans that no piece names nor the day of the last backup', async () => {
    const { store } = await filled();
    const before = await bytesOf(store);
    await store.addPiece(piece('gone', { sculpt: { fields: {}, choices: {}, scan: 'x' } }));
    await store.deletePiece('gone');
    await store.keepScan({ id: 'x', name: 'x.stl', bytes: 1, packed: await pack(noise(1)) });
    await store.noteBackup('2026-11-29');
    expect(await bytesOf(store)).toBe(before);
  });

  it('is joined from pieces: no string of it is longer than one scan and its name', async () => {
    const { store } = await filled();
    const kept = await shopIn(store);
    const longest = Math.max(...[...shopLines(kept)].map(({ length }) => length));
    expect(longest).toBeLessThan(Math.max(...Object.values(kept.scans).map(({ data }) => data.length)) + 200);
    expect((await backupOf(store.database)).type).toBe('application/json');
  });
});

describe('a backup in the place of what is here', () => {
  it('is all of it or nothing: one that cannot be kept leaves everything as it was', async () => {
    const { store } = await filled();
    const before = await bytesOf(store);
    const twice = { ...emptyShop(), pieces: { a: piece('a'), b: piece('a') } };
    await expect(replaceBy(store.database, twice)).rejects.toThrow();
    expect(await bytesOf(store)).toBe(before);
  });

  it('whose scans are broken leaves everything as it was', async () => {
    const { store } = await filled();
    const before = await bytesOf(store);
    const broken: Shop = {
      ...emptyShop(),
      scans: { s: { name: 's', bytes: 1, packing: 'gzip', data: '*' } },
    };
    await expect(Promise.resolve().then(() => replaceBy(store.database, broken))).rejects.toThrow();
    expect(await bytesOf(store)).toBe(before);
  });

  it('empties the bin: what was deleted before belongs to what is gone', async () => {
    const { store } = await filled();
    await store.deletePiece('a');
    await replaceBy(store.database, emptyShop());
    await store.restorePiece('a');
    expect(Object.keys((await shopIn(store)).pieces)).toEqual([]);
  });
});

describe('a backup beside what is here', () => {
  it('changes nothing that stands here: pieces by their id, cards by their name, stock of those cards', async () => {
    const { store } = await filled();
    const before = await shopIn(store);
    const [light] = SAMPLE_SHOP.foams;
    const came = await bringIn(store.database, {
      ...SAMPLE_SHOP,
      name: 'Another shop',
      foams: [
        { ...light!, freeRiseKgM3: 50 },
        { ...light!, name: 'Theirs' },
      ],
      silicones: [],
      stock: [
        { card: 'Sample Foam Light', aKg: 100 },
        { card: 'Theirs', aKg: 1, bKg: 1 },
      ],
      scale: { stepG: 0.1 },
      pieces: { a: piece('a', { name: 'Other a' }), c: piece('c', { sculpt: { fields: {}, choices: {} } }) },
      scans: {},
    });
    const after = await shopIn(store);
    expect(after.pieces).toEqual({
      ...before.pieces,
      c: piece('c', { sculpt: { fields: {}, choices: {} } }),
    });
    expect(after.foams).toEqual([...before.foams, { ...light!, name: 'Theirs' }]);
    expect(after.stock).toEqual([...before.stock, { card: 'Theirs', aKg: 1, bKg: 1 }]);
    expect([after.name, after.scale, after.settings]).toEqual([before.name, before.scale, before.settings]);
    expect(came).toEqual({
      pieces: 1,
      cards: 1,
      rows: 0,
      left: ['Other a', 'Sample Foam Light', 'the scale'],
    });
  });

  it('fills what is blank here: name, scale, settings, and what a later version keeps', async () => {
    const store = shop();
    const settings = { altitude: { text: '1500', unit: 'm' } };
    const came = await bringIn(store.database, {
      ...emptyShop(),
      name: 'Ours',
      scale: { stepG: 1 },
      settings,
      book: [{ no: 1 }],
    });
    expect(await shopIn(store)).toMatchObject({
      name: 'Ours',
      scale: { stepG: 1 },
      settings,
      book: [{ no: 1 }],
    });
    expect(came).toEqual({ pieces: 0, cards: 0, rows: 1, left: [] });
  });

  it('twice is once: the second time everything is left', async () => {
    const { store } = await filled();
    const text = await bytesOf(store);
    const came = await bringIn(store.database, readBack(text));
    expect(came).toMatchObject({ pieces: 0, cards: 0 });
    expect(came.left).toHaveLength(2 + 3 + 2);
    expect(await bytesOf(store)).toBe(text);
  });
});

describe('what is swept at the next start', () => {
  it('is old: a piece deleted just now and its scan, and a scan that nobody has named yet, stay', async () => {
    const { store } = await filled();
    await store.keepScan({ id: 'new', name: 'new.stl', bytes: 1, packed: await pack(noise(1)) });
    await store.deletePiece('b');
    await store.sweep(60_000);
    expect(await store.scan('new')).toBeDefined();
    await store.restorePiece('b');
    expect(await store.piece('b')).toEqual(piece('b'));
    expect(await store.scan('scan-b')).toBeDefined();
  });
});

it('the day of the last backup is told to whoever watches', async () => {
  const store = shop();
  let last: string | undefined;
  const stop = store.watch(
    ({ lastBackup }) => (last = lastBackup),
    () => undefined,
  );
  await store.noteBackup('2026-11-29');
  await expect.poll(() => last).toBe('2026-11-29');
  stop();
});

it('base64 of Buffer and ours are the same, at every length around a chunk (seed 20261129)', () => {
  for (const length of [0, 1, 2, 3, 4, 24575, 24576, 24577, 50_000]) {
    const bytes = new Uint8Array(noise(length));
    expect(toBase64(bytes)).toBe(Buffer.from(bytes).toString('base64'));
    expect(fromBase64(toBase64(bytes))).toEqual(bytes);
  }
});
