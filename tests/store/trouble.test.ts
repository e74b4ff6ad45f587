import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import { afterEach, describe, expect, it } from 'vitest';
import type { Piece } from '../../src/job/piece';
import { readShop } from '../../src/job/shop';
import {
  backupWith,
  openMemory,
  openStore,
  pack,
  storeProblem,
  type Held,
  type Store,
} from '../../src/store';
import { keepScanAside, readScanAside } from '../../src/store/scanAside';
import { newId } from '../../src/store/newId';
import { valueOf } from '../support/outcome';

const piece = (id: string, tape: string, scan?: string): Piece => ({
  id,
  name: `Piece ${id}`,
  code: id.toUpperCase(),
  begunOn: '2026-01-01',
  sculpt: {
    fields: { tape: { text: tape, unit: 'mm' } },
    choices: {},
    ...(scan === undefined ? {} : { scan }),
  },
  molds: { m: { no: 1, fields: {}, choices: {} } },
  castings: { c: { no: 1, mold: 'm', fields: {}, choices: {} } },
  hand: { mold: 'm', casting: 'c' },
});

let open: Store[] = [];
const shop = (name = newId()): Store => {
  const store = openStore(name);
  open.push(store);
  return store;
};
afterEach(() => {
  open.forEach((store) => store.close());
  open = [];
});

const scanOf = async (id: string) => ({
  id,
  name: `${id}.stl`,
  bytes: 3,
  packed: await pack(new Uint8Array([1, 2, 3]).buffer),
});
const nothing: Held = { pieces: [], scans: [], photos: [] };
const shopIn = async (file: Blob) => valueOf(readShop(await file.text(), 'backup.json'));

describe('a database of a later version', () => {
  it('is not written to, and said as such: Dexie alone would open it', async () => {
    const name = newId();
    const later = new Dexie(name);
    later
      .version(3)
      .stores({ pieces: 'id', bin: 'id', scans: 'id', shop: 'key', local: 'key', photos: 'id', more: 'id' });
    await later.table('pieces').add(piece('a', '290'));
    later.close();
    const store = shop(name);
    for (const work of [() => store.open(), () => store.addPiece(piece('b', '1')), () => store.piece('a')]) {
      const fault: unknown = await work().then(
        () => undefined,
        (thrown: unknown) => thrown,
      );
      expect(storeProblem(fault).code).toBe('STORE_NEWER');
    }
    const again = new Dexie(name);
    await again.open();
    expect(await again.table('pieces').toCollection().primaryKeys()).toEqual(['a']);
    again.close();
  });

  it('in a tab beside an older page: the old one gives way, keeps nothing more, and says so', async () => {
    const name = newId();
    const old = shop(name);
    await old.addPiece(piece('a', '290'));
    const later = new Dexie(name);
    later
      .version(3)
      .stores({ pieces: 'id', bin: 'id', scans: 'id', shop: 'key', local: 'key', photos: 'id', more: 'id' });
    await later.open();
    const fault: unknown = await old.savePiece(piece('a', '290'), piece('a', '291')).then(
      () => undefined,
      (thrown: unknown) => thrown,
    );
    expect(storeProblem(fault).code).toBe('STORE_LOST');
    expect(((await later.table('pieces').get('a')) as Piece).sculpt.fields.tape?.text).toBe('290');
    later.close();
  });
});

it('a database that is deleted under a page is not begun anew by it: nothing is taken for kept that is not', async () => {
  const name = newId();
  const store = shop(name);
  await store.addPiece(piece('a', '290'));
  const seen: number[] = [];
  store.watch(
    ({ pieces }) => seen.push(pieces.length),
    () => undefined,
  );
  await expect.poll(() => seen).toEqual([1]);
  await Dexie.delete(name);
  const fault: unknown = await store.savePiece(piece('a', '290'), piece('a', '291')).then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  expect(storeProblem(fault).code).toBe('STORE_LOST');
  expect(seen).toEqual([1]);
  expect(await Dexie.exists(name)).toBe(false);
});

describe('a backup of what the page holds', () => {
  it('has what stands on the ticket in the place of what is kept, and all else of the disk', async () => {
    const store = shop();
    await store.addPiece(piece('a', '290'));
    await store.addPiece(piece('b', '50', 'sb'));
    await store.keepScan(await scanOf('sb'));
    const held: Held = { ...nothing, pieces: [piece('a', '291', 'sa')], scans: [await scanOf('sa')] };
    const { file, missing } = await backupWith(store.contents, held);
    const { pieces, scans } = await shopIn(file);
    expect([pieces.a, pieces.b]).toEqual([piece('a', '291', 'sa'), piece('b', '50', 'sb')]);
    expect([Object.keys(scans).sort(), missing]).toEqual([['sa', 'sb'], 0]);
  });

  it('without anything held is that of the disk, to the byte', async () => {
    const store = shop();
    await store.addPiece(piece('a', '290'));
    const { backupOf } = await import('../../src/store/backup');
    const { file } = await backupWith(store.contents, nothing);
    expect(await file.text()).toBe(await (await backupOf(store.database)).text());
  });

  it('of a disk that was emptied or cannot be read has all that the page knows, and says what it has not', async () => {
    const { core } = await shop().contents();
    const held: Held = { ...nothing, core: { ...core, name: 'Ours' }, pieces: [piece('a', '291', 'gone')] };
    for (const disk of [shop().contents, () => Promise.reject(new Error('shut'))]) {
      const { file, missing } = await backupWith(disk, held);
      const found = await shopIn(file);
      expect([found.name, found.pieces.a, missing]).toEqual(['Ours', piece('a', '291', 'gone'), 1]);
    }
  });

  it('of a disk that cannot be read, of whose shop the page knows nothing, is refused rather than made of a part', async () => {
    const held: Held = { ...nothing, pieces: [piece('a', '291')] };
    await expect(backupWith(() => Promise.reject(new Error('shut')), held)).rejects.toThrow('shut');
  });
});

describe('a shop that the page alone keeps', () => {
  it('does what one on the disk does: the same steps give the same backup', async () => {
    const [disk, memory] = [shop(), openMemory('x')];
    for (const store of [disk, memory]) {
      await store.open();
      await store.addPiece(piece('a', '290'));
      await store.addPiece(piece('b', '50'));
      await store.savePiece(piece('a', '290'), { ...piece('a', '290'), name: 'Renamed' });
      await store.savePiece(piece('a', '290'), piece('a', '291', 's'));
      await store.keepScan(await scanOf('s'));
      await store.deletePiece('b');
      expect(await store.savePiece(piece('b', '50'), piece('b', '51'))).toBeUndefined();
      expect(await store.piece('b')).toBeUndefined();
      await store.restorePiece('b');
      await store.changeCore((core) => ({ ...core, name: 'Ours' }));
      const id = await store.keepPhoto({ type: 'image/png', bytes: new Uint8Array([9]) });
      expect(await (await store.photo(id))?.arrayBuffer()).toEqual(new Uint8Array([9]).buffer);
      const changed = await store.changeBook(() => ({ ok: true, value: [{ id: 'r', kind: 'pour', no: 1 }] }));
      expect(changed.ok).toBe(true);
      await store.sweep();
    }
    const files = await Promise.all(
      [disk, memory].map(async (store) => (await backupWith(store.contents, nothing)).file.text()),
    );
    expect(files[1]).toBe(files[0]);
    expect((await memory.piece('a'))?.name).toBe('Renamed');
  });

  it('tells whoever watches of every change, and not once they have stopped', async () => {
    const memory = openMemory('x');
    const seen: string[][] = [];
    const stop = memory.watch(
      ({ pieces, lastBackup = '' }) => seen.push([...pieces.map(({ id }) => id), lastBackup]),
      () => undefined,
    );
    await memory.addPiece(piece('a', '1'));
    await memory.noteBackup('2026-11-29');
    await expect.poll(() => seen.at(-1)).toEqual(['a', '2026-11-29']);
    stop();
    const { length } = seen;
    await memory.deletePiece('a');
    await new Promise((resolve) => setTimeout(resolve));
    expect(seen).toHaveLength(length);
  });

  it('has scans that are kept and read in its own thread', async () => {
    const memory = openMemory('x');
    const file = new Uint8Array([1, 2, 3]).buffer;
    expect(await keepScanAside(memory, { id: 's', name: 's.stl', file })).toBeUndefined();
    const found = await readScanAside(memory, 's');
    expect([found?.name, new Uint8Array(found!.file)]).toEqual(['s.stl', new Uint8Array([1, 2, 3])]);
    expect(await readScanAside(memory, 'none')).toBeUndefined();
  });
});
