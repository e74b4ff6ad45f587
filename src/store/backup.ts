import { mergeBooks } from '../job/book/mergeBooks';
import type { Shop } from '../job/shop';
import { shopLines } from '../job/shopText';
import { photosOfBook, photosOfPiece } from '../job/photo';
import type { Piece } from '../job/piece';
import type { SavedScan } from '../job/scan';
import { fromBase64, toBase64 } from './base64';
import type { Database, KeptPhoto, PackedScan, ShopCore } from './database';
import { coreOf } from './store';

/** All that is kept of a shop, as one file: pieces, scans, cards, the book with its photos, settings. The same shop gives the same bytes. */
export async function backupOf(database: Database): Promise<Blob> {
  return new Blob([...shopLines(await shopOf(database))], { type: 'application/json' });
}

/** All that is kept, at one moment. What was deleted is not in it, nor a scan or a photo that nothing names. */
export async function shopOf(database: Database): Promise<Shop> {
  const { dexie, pieces, scans, photos, shop } = database;
  return dexie.transaction('r', pieces, scans, photos, shop, async () => {
    const all = await pieces.toArray();
    const named = new Set(all.map(({ sculpt }) => sculpt.scan));
    const kept = (await scans.toArray()).filter(({ id }) => named.has(id));
    const core = await coreOf(database);
    const pictures = await photosNamed(database, [...photosOfBook(core.book), ...all.flatMap(photosOfPiece)]);
    return {
      ...core,
      pieces: Object.fromEntries(all.map((piece) => [piece.id, piece])),
      scans: Object.fromEntries(kept.map((scan) => [scan.id, savedScan(scan)])),
      // A shop without any has the same file as before there were photos.
      ...(pictures.length === 0
        ? {}
        : {
            photos: Object.fromEntries(
              pictures.map(({ id, type, bytes }) => [id, { type, data: toBase64(bytes) }]),
            ),
          }),
    };
  });
}

const photosNamed = async ({ photos }: Database, ids: readonly string[]): Promise<KeptPhoto[]> =>
  (await photos.bulkGet([...new Set(ids)])).filter((photo) => photo !== undefined);

const savedScan = ({ name, bytes, packed }: PackedScan): SavedScan => ({
  name,
  bytes,
  packing: 'gzip',
  data: toBase64(packed),
});

/** What came of a backup that was brought in beside what was there. */
export interface BroughtIn {
  pieces: number;
  cards: number;
  /** Of the book. */
  rows: number;
  /** Pieces and cards by their names, rows of the book, and other parts of the shop, that stand here already and were left as they are. */
  left: string[];
}

/** Puts the shop in the place of all that is kept. All of it or nothing. */
export function replaceBy(database: Database, shop: Shop): Promise<void> {
  const { pieces, scans, photos, ...core } = shop;
  return putInstead(database, {
    core,
    pieces: Object.values(pieces),
    scans: packedScans(scans),
    photos: keptPhotos(photos),
  });
}

/** The same with scans that are packed already; without any, those that are kept stay. Photos that are here go. */
export async function putInstead(
  database: Database,
  brought: {
    core: ShopCore;
    pieces: readonly Piece[];
    scans?: readonly PackedScan[];
    photos?: readonly KeptPhoto[];
  },
): Promise<void> {
  const { dexie, pieces, bin, scans, photos, shop } = database;
  await dexie.transaction('rw', [pieces, bin, scans, photos, shop], async () => {
    await Promise.all([pieces.clear(), bin.clear(), photos.clear(), shop.clear()]);
    await pieces.bulkAdd(brought.pieces);
    await photos.bulkAdd(brought.photos ?? []);
    if (brought.scans !== undefined) {
      await scans.clear();
      await scans.bulkAdd(brought.scans);
    }
    await shop.put({ ...brought.core, key: 'shop' });
  });
}

/** Puts what the shop has and this one lacks beside what is kept. Nothing that stands here is changed. */
export async function bringIn(database: Database, shop: Shop): Promise<BroughtIn> {
  const { dexie, pieces, scans, photos, shop: core } = database;
  const packed = packedScans(shop.scans);
  const pictures = keptPhotos(shop.photos);
  return dexie.transaction('rw', [pieces, scans, photos, core], async () => {
    const here = new Set(await pieces.toCollection().primaryKeys());
    const [known, fresh] = split(Object.values(shop.pieces), ({ id }: Piece) => here.has(id));
    await pieces.bulkAdd(fresh);
    const files = new Set(await scans.toCollection().primaryKeys());
    await scans.bulkAdd(packed.filter(({ id }) => !files.has(id)));
    const seen = new Set(await photos.toCollection().primaryKeys());
    await photos.bulkAdd(pictures.filter(({ id }) => !seen.has(id)));
    const mine = await coreOf(database);
    const { book, added, left } = mergeBooks(mine.book, shop.book);
    const [knownFoams, foams] = split(shop.foams, named(mine.foams));
    const [knownSilicones, silicones] = split(shop.silicones, named(mine.silicones));
    const cards = new Set([...foams, ...silicones].map(({ name }) => name));
    const { pieces: _pieces, scans: _scans, photos: _photos, ...theirs } = shop;
    await core.put({
      // What is here wins, key by key; what a later version keeps there comes along too.
      ...theirs,
      ...mine,
      name: mine.name === '' ? shop.name : mine.name,
      foams: [...mine.foams, ...foams],
      silicones: [...mine.silicones, ...silicones],
      // Stock of a card that was here already may be the same lot: it is not counted twice.
      stock: [...mine.stock, ...shop.stock.filter(({ card }) => cards.has(card))],
      ...(book === undefined ? {} : { book }),
      key: 'shop',
    });
    return {
      pieces: fresh.length,
      cards: cards.size,
      rows: added,
      left: [
        ...[...known, ...knownFoams, ...knownSilicones].map(({ name }) => name),
        ...left,
        ...SINGLE.filter(([key]) => mine[key] !== undefined && theirs[key] !== undefined).map(
          ([, words]) => words,
        ),
      ],
    };
  });
}

/** Of these a shop has one. */
const SINGLE = [
  ['scale', 'the scale'],
  ['settings', 'the height above the sea and the units'],
] as const satisfies readonly (readonly [keyof ShopCore, string])[];

const packedScans = (scans: Shop['scans']): PackedScan[] =>
  Object.entries(scans).map(([id, { name, bytes, data }]) => ({ id, name, bytes, packed: fromBase64(data) }));

const keptPhotos = (photos: Shop['photos'] = {}): KeptPhoto[] =>
  Object.entries(photos).map(([id, { type, data }]) => ({ id, type, bytes: fromBase64(data) }));

function split<T>(all: readonly T[], is: (one: T) => boolean): [T[], T[]] {
  return [all.filter(is), all.filter((one) => !is(one))];
}

const named =
  (cards: readonly { name: string }[]) =>
  ({ name }: { name: string }): boolean =>
    cards.some((card) => card.name === name);

/** Forgets everything of this shop in this browser. */
export async function wipe(database: Database): Promise<void> {
  const { dexie, pieces, bin, scans, photos, shop, local } = database;
  const all = [pieces, bin, scans, photos, shop, local];
  await dexie.transaction('rw', all, async () => {
    await Promise.all(all.map((table) => table.clear()));
  });
}
