import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/job/piece';
import { newId } from '../../src/store/newId';
import { pack, unpack } from '../../src/store/gzip';
import { storeProblem } from '../../src/store/fault';
import { Dexie } from 'dexie';
import { openedStores } from '../support/openedStores';

const piece = (id: string, more: Partial<Piece> = {}): Piece => ({
  id,
  name: `Piece ${id}`,
  code: id.toUpperCase(),
  begunOn: '2026-01-01',
  sculpt: { fields: { tape: { text: '290', unit: 'mm' } }, choices: {} },
  molds: { m: { no: 1, fields: {}, choices: {} } },
  castings: { c: { no: 1, mold: 'm', fields: {}, choices: {} } },
  hand: { mold: 'm', casting: 'c' },
  ...more,
});

const shop = openedStores();

describe('the store', () => {
  it('merges what two pages change at once: neither change is lost', async () => {
    const name = newId();
    const [one, other] = [shop(name), shop(name)];
    const base = piece('a');
    await one.addPiece(base);
    await one.savePiece(base, { ...base, name: 'Renamed' });
    const typed = { ...base, sculpt: { ...base.sculpt, fields: { tape: { text: '291', unit: 'mm' } } } };
    const merged = await other.savePiece(base, typed);
    expect(merged).toEqual({ ...typed, name: 'Renamed' });
    expect(await one.piece('a')).toEqual(merged);
  });

  it('does not bring a deleted piece back by a late change, and restores it from the bin', async () => {
    const store = shop();
    await store.addPiece(piece('a'));
    await store.deletePiece('a');
    expect(await store.savePiece(piece('a'), { ...piece('a'), name: 'Late' })).toBeUndefined();
    expect(await store.piece('a')).toBeUndefined();
    await store.restorePiece('a');
    expect(await store.piece('a')).toEqual(piece('a'));
  });

  it('sweeps what was deleted for good, and scans that no piece names; what is named stays', async () => {
    const store = shop();
    const packed = await pack(new Uint8Array([1, 2, 3]).buffer);
    for (const id of ['mine', 'other']) await store.keepScan({ id, name: `${id}.stl`, bytes: 3, packed });
    await store.addPiece(piece('a', { sculpt: { fields: {}, choices: {}, scan: 'mine' } }));
    await store.addPiece(piece('b', { sculpt: { fields: {}, choices: {}, scan: 'other' } }));
    await store.deletePiece('b');
    await store.sweep();
    await store.restorePiece('b');
    expect(await store.piece('b')).toBeUndefined();
    expect(await store.scan('other')).toBeUndefined();
    expect((await store.scan('mine'))?.name).toBe('mine.stl');
  });

  it('tells watchers of changes, its own and those of another page', async () => {
    const name = newId();
    const [one, other] = [shop(name), shop(name)];
    const seen: string[][] = [];
    const stop = one.watch(
      ({ pieces }) => seen.push(pieces.map((p) => p.id)),
      () => undefined,
    );
    await one.addPiece(piece('a'));
    await expect.poll(() => seen.at(-1)).toEqual(['a']);
    await other.addPiece(piece('b'));
    await expect.poll(() => seen.at(-1)).toEqual(['a', 'b']);
    stop();
  });

  it('keeps cards and settings in one record, changed whole', async () => {
    const store = shop();
    await store.changeCore((core) => ({ ...core, name: 'Ours' }));
    await Promise.all([
      store.changeCore((core) => ({ ...core, stock: [...core.stock, { card: 'A' }] })),
      store.changeCore((core) => ({ ...core, stock: [...core.stock, { card: 'B' }] })),
    ]);
    let cards: string[] = [];
    const stop = store.watch(
      ({ core }) => (cards = core.stock.map(({ card }) => card)),
      () => undefined,
    );
    await expect.poll(() => [...cards].sort()).toEqual(['A', 'B']);
    stop();
  });
});

describe('packing', () => {
  it('gives the same bytes back, none as well', async () => {
    for (const length of [0, 1, 100_000]) {
      const bytes = Uint8Array.from({ length }, (_, i) => (i * 7919) % 251);
      const back = new Uint8Array(await unpack(await pack(bytes.slice().buffer), bytes.length));
      expect(back).toEqual(bytes);
    }
  });

  it('is gzip: 1f 8b 08 first (RFC 1952, 2.3.1)', async () => {
    const packed = await pack(new Uint8Array([5]).buffer);
    expect([...packed.subarray(0, 3)]).toEqual([0x1f, 0x8b, 8]);
  });
});

describe('why something is not kept', () => {
  const inner = (name: string): Error => Object.assign(new Error('inside'), { name });
  it.each([
    ['QuotaExceededError', 'STORE_FULL'],
    ['VersionError', 'STORE_NEWER'],
    ['DatabaseClosedError', 'STORE_LOST'],
    ['MissingAPIError', 'STORE_REFUSED'],
    ['SecurityError', 'STORE_REFUSED'],
    ['DataError', 'STORE_FAILED'],
  ])('%s is %s, also within another fault', (name, code) => {
    expect(storeProblem(inner(name)).code).toBe(code);
    expect(storeProblem(new Dexie.AbortError('gone', inner(name) as never)).code).toBe(code);
  });

  it('is told of anything that is thrown', () => {
    expect(storeProblem('plain')).toMatchObject({ code: 'STORE_FAILED', values: { why: 'plain' } });
  });
});
