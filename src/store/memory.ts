import { isSame } from '../job/json';
import { merge } from '../job/merge';
import type { Piece } from '../job/piece';
import type { Outcome } from '../problem';
import type { KeptPhoto, PackedScan, ShopCore } from './database';
import { newId } from './newId';
import { byAge, emptyCore, type ShopStore, type ShopView } from './store';

/**
 * A shop in the memory of the page, for where the browser keeps nothing: it works as any other and is gone with the page. What is deleted
 * stays in its bin as long.
 */
export function openMemory(name: string): ShopStore {
  const pieces = new Map<string, Piece>();
  const bin = new Map<string, Piece>();
  const scans = new Map<string, PackedScan>();
  const photos = new Map<string, KeptPhoto>();
  const watchers = new Set<(view: ShopView) => void>();
  let core = emptyCore();
  let lastBackup: string | undefined;

  const view = (): ShopView => ({ core, pieces: [...pieces.values()].sort(byAge), lastBackup });
  /** In a later turn, as a store on the disk does: whoever changed something is answered first. */
  const tell = (): void =>
    watchers.forEach((watcher) => setTimeout(() => watchers.has(watcher) && watcher(view())));
  const changed = <T>(answer: T): Promise<T> => {
    tell();
    return Promise.resolve(answer);
  };
  const move = (id: string, from: Map<string, Piece>, to: Map<string, Piece>): Promise<void> => {
    const piece = from.get(id);
    if (piece === undefined) return Promise.resolve();
    from.delete(id);
    to.set(id, piece);
    return changed(undefined);
  };
  const changeCore = (change: (core: ShopCore) => ShopCore): Promise<void> => {
    core = change(core);
    return changed(undefined);
  };

  return {
    name,
    keeps: 'page',
    open: () => Promise.resolve(),
    watch(listener) {
      const watcher = (seen: ShopView): void => listener(seen);
      watchers.add(watcher);
      setTimeout(() => watchers.has(watcher) && watcher(view()));
      return () => watchers.delete(watcher);
    },
    piece: (id) => Promise.resolve(pieces.get(id)),
    addPiece(piece) {
      pieces.set(piece.id, piece);
      return changed(undefined);
    },
    savePiece(base, mine) {
      const theirs = pieces.get(base.id);
      if (theirs === undefined) return Promise.resolve(undefined);
      const merged = merge({ base, mine, theirs });
      if (isSame(merged, theirs)) return Promise.resolve(merged);
      pieces.set(base.id, merged);
      return changed(merged);
    },
    deletePiece: (id) => move(id, pieces, bin),
    restorePiece: (id) => move(id, bin, pieces),
    changeCore,
    async changeBook(change) {
      let outcome: Outcome<unknown[]> | undefined;
      await changeCore((before) => {
        outcome = change(before.book);
        return outcome.ok ? { ...before, book: outcome.value } : before;
      });
      return outcome!;
    },
    keepScan(scan) {
      scans.set(scan.id, scan);
      return Promise.resolve();
    },
    scan: (id) => Promise.resolve(scans.get(id)),
    keepPhoto(photo) {
      const id = newId();
      photos.set(id, { ...photo, id });
      return Promise.resolve(id);
    },
    photo(id) {
      const kept = photos.get(id);
      return Promise.resolve(kept === undefined ? undefined : new Blob([kept.bytes], { type: kept.type }));
    },
    sweep: () => Promise.resolve(),
    noteBackup(day) {
      lastBackup = day;
      return changed(undefined);
    },
    contents: () =>
      Promise.resolve({
        core,
        pieces: [...pieces.values()],
        scans: [...scans.values()],
        photos: [...photos.values()],
      }),
    close: () => watchers.clear(),
  };
}
