import { liveQuery, type Table } from 'dexie';
import { isSame } from '../job/json';
import { merge } from '../job/merge';
import { photosOfBook, photosOfPiece } from '../job/photo';
import type { Piece } from '../job/piece';
import { emptyShop } from '../job/shop';
import type { Outcome } from '../problem';
import { openDatabase, type Database, type KeptPhoto, type PackedScan, type ShopCore } from './database';
import { newId } from './newId';

/** What a page sees of a shop: its pieces in the order they were begun, and all else. */
export interface ShopView {
  core: ShopCore;
  pieces: Piece[];
  /** The day of the last backup from this browser. */
  lastBackup: string | undefined;
}

export interface ShopStore {
  readonly name: string;
  /** Over once it can be used. Throws why it cannot; all else opens it by itself. */
  open: () => Promise<void>;
  /** Where it is kept: by the browser, or by this page alone as long as it is open. */
  readonly keeps: 'disk' | 'page';
  /** Told at once, and again whenever this page or another has changed something. Returns how to stop. */
  watch(listener: (view: ShopView) => void, onFault: (fault: unknown) => void): () => void;
  piece(id: string): Promise<Piece | undefined>;
  /** A new piece, or one brought in. */
  addPiece(piece: Piece): Promise<void>;
  /**
   * Keeps what changed in `mine` since `base`, on top of what another page has kept meanwhile; gives what stands now.
   * Undefined: the piece is no longer there, and was not brought back.
   */
  savePiece(base: Piece, mine: Piece): Promise<Piece | undefined>;
  /** Into the bin, from where `restorePiece` takes it. */
  deletePiece(id: string): Promise<void>;
  restorePiece(id: string): Promise<void>;
  changeCore(change: (core: ShopCore) => ShopCore): Promise<void>;
  /** Reads the book, changes and keeps it in one step; where the change is refused nothing is kept. */
  changeBook(change: (book: unknown) => Outcome<unknown[]>): Promise<Outcome<unknown[]>>;
  keepScan(scan: PackedScan): Promise<void>;
  scan(id: string): Promise<PackedScan | undefined>;
  /** Keeps a photo, and gives the id to name it by: in a row of the book, or at a weigh-back. */
  keepPhoto(photo: Omit<KeptPhoto, 'id'>): Promise<string>;
  photo(id: string): Promise<Blob | undefined>;
  /**
   * Forgets for good what was deleted, scans that no piece names, and photos that neither a row nor a weigh-back names. What is younger stays: another tab may be about to name
   * it, or to put it back.
   */
  sweep(olderThanMs?: number): Promise<void>;
  /** The day of a backup, as YYYY-MM-DD. */
  noteBackup(day: string): Promise<void>;
  /** All that is kept, at one moment. */
  contents: () => Promise<Contents>;
  /** None where it is kept by the page alone. */
  readonly database?: Database | undefined;
  close(): void;
}

/** A shop that is kept by the browser. */
export type Store = ShopStore & { readonly database: Database };

/** What a shop holds, as it is kept. */
export interface Contents {
  core: ShopCore;
  pieces: readonly Piece[];
  scans: readonly PackedScan[];
  photos: readonly KeptPhoto[];
}

export const emptyCore = (): ShopCore => {
  const { pieces, scans, photos, ...core } = emptyShop();
  return core;
};

export function openStore(name: string): Store {
  const database = openDatabase(name);
  const { dexie, pieces, bin, scans, photos, shop, local } = database;

  async function view(): Promise<ShopView> {
    const [core, all, lastBackup] = await Promise.all([
      coreOf(database),
      pieces.toArray(),
      local.get('lastBackup'),
    ]);
    return { core, pieces: all.sort(byAge), lastBackup: lastBackup?.value };
  }

  return {
    name,
    keeps: 'disk',
    open: async () => void (await dexie.open()),
    database,
    watch(listener, onFault) {
      const watching = liveQuery(view).subscribe({ next: listener, error: onFault });
      return () => watching.unsubscribe();
    },
    piece: (id) => pieces.get(id),
    addPiece: async (piece) => void (await pieces.add(piece)),
    savePiece: (base, mine) =>
      dexie.transaction('rw', pieces, async () => {
        const theirs = await pieces.get(base.id);
        if (theirs === undefined) return undefined;
        const merged = merge({ base, mine, theirs });
        if (!isSame(merged, theirs)) await pieces.put(merged);
        return merged;
      }),
    deletePiece: (id) =>
      dexie.transaction('rw', pieces, bin, async () => {
        const piece = await pieces.get(id);
        if (piece === undefined) return;
        await bin.put({ id, piece, at: Date.now() });
        await pieces.delete(id);
      }),
    restorePiece: (id) =>
      dexie.transaction('rw', pieces, bin, async () => {
        const binned = await bin.get(id);
        if (binned === undefined) return;
        await pieces.put(binned.piece);
        await bin.delete(id);
      }),
    changeCore: (change) => changeCore(database, change),
    async changeBook(change) {
      let changed: Outcome<unknown[]> | undefined;
      await changeCore(database, (core) => {
        changed = change(core.book);
        return changed.ok ? { ...core, book: changed.value } : core;
      });
      return changed!;
    },
    keepScan: async (scan) => void (await scans.put({ ...scan, at: Date.now() })),
    scan: (id) => scans.get(id),
    async keepPhoto(photo) {
      const id = newId();
      await photos.add({ ...photo, id, at: Date.now() });
      return id;
    },
    async photo(id) {
      const kept = await photos.get(id);
      return kept === undefined ? undefined : new Blob([kept.bytes], { type: kept.type });
    },
    sweep: (olderThanMs = 0) => {
      const last = Date.now() - olderThanMs;
      const isOld = ({ at = 0 }: { at?: number }): boolean => at <= last;
      return dexie.transaction('rw', [pieces, bin, scans, photos, shop], async () => {
        await bin.filter(isOld).delete();
        const binned = (await bin.toArray()).map(({ piece }) => piece);
        const all = [...(await pieces.toArray()), ...binned];
        const { book } = await coreOf(database);
        await sweepUnnamed(scans, new Set(all.map(({ sculpt }) => sculpt.scan)), isOld);
        await sweepUnnamed(photos, new Set([...photosOfBook(book), ...all.flatMap(photosOfPiece)]), isOld);
      });
    },
    noteBackup: async (day) => void (await local.put({ key: 'lastBackup', value: day })),
    contents: () => contentsOf(database),
    close: () => dexie.close(),
  };
}

/** Forgets what is old and not named. By their names: a scan is as large as its file, and reading them all would hold up the page. */
async function sweepUnnamed<T extends { at?: number }>(
  table: Table<T, string>,
  named: ReadonlySet<string | undefined>,
  isOld: (one: { at?: number }) => boolean,
): Promise<void> {
  const unnamed = (await table.toCollection().primaryKeys()).filter((id) => !named.has(id));
  for (const id of unnamed) if (isOld((await table.get(id)) ?? {})) await table.delete(id);
}

/** A photo whose row goes counts as new again: whoever takes that back finds it. */
function changeCore(database: Database, change: (core: ShopCore) => ShopCore): Promise<void> {
  const { dexie, shop, photos } = database;
  return dexie.transaction('rw', shop, photos, async () => {
    const before = await coreOf(database);
    const after = change(before);
    await shop.put({ ...after, key: 'shop' });
    const named = new Set(photosOfBook(after.book));
    for (const id of photosOfBook(before.book))
      if (!named.has(id)) await photos.update(id, { at: Date.now() });
  });
}

export async function coreOf({ shop }: Database): Promise<ShopCore> {
  const kept = await shop.get('shop');
  if (kept === undefined) return emptyCore();
  const { key: _key, ...core } = kept;
  return core;
}

/** All that is kept, at one moment. */
export function contentsOf(database: Database): Promise<Contents> {
  const { dexie, pieces, scans, photos, shop } = database;
  return dexie.transaction('r', pieces, scans, photos, shop, async () => ({
    core: await coreOf(database),
    pieces: await pieces.toArray(),
    scans: await scans.toArray(),
    photos: await photos.toArray(),
  }));
}

export const byAge = (one: Piece, other: Piece): number =>
  one.begunOn.localeCompare(other.begunOn) ||
  (one.begunAtMs ?? 0) - (other.begunAtMs ?? 0) ||
  one.id.localeCompare(other.id);
