import type { Table } from 'dexie';
import { mergeBooks } from '../job/book/mergeBooks';
import { isSame } from '../job/json';
import type { Shop } from '../job/shop';
import { shopLines } from '../job/shopText';
import { photosOfBook, photosOfPiece } from '../job/photo';
import type { Piece } from '../job/piece';
import type { SavedScan } from '../job/scan';
import type { StockRow } from '../job/stockRow';
import { fromBase64, toBase64 } from './base64';
import type { Database, KeptPhoto, PackedScan, ShopCore } from './database';
import { contentsOf, coreOf, type Contents } from './store';

/** All that is kept of a shop, as one file: pieces, scans, cards, the book with its photos, settings. The same shop gives the same bytes. */
export async function backupOf(database: Database): Promise<Blob> {
  return fileOf(shopFrom(await contentsOf(database)));
}

const fileOf = (shop: Shop): Blob => new Blob([...shopLines(shop)], { type: 'application/json' });

/** The shop of these contents. A scan or a photo that nothing names is not in it. */
function shopFrom({ core, pieces, scans, photos }: Contents): Shop {
  const named = namedBy({ core, pieces });
  const pictures = photos.filter(({ id }) => named.photos.has(id));
  return {
    ...core,
    pieces: Object.fromEntries(pieces.map((piece) => [piece.id, piece])),
    scans: Object.fromEntries(
      scans.filter(({ id }) => named.scans.has(id)).map((scan) => [scan.id, savedScan(scan)]),
    ),
    // A shop without any has the same file as before there were photos.
    ...(pictures.length === 0
      ? {}
      : {
          photos: Object.fromEntries(
            pictures.map(({ id, type, bytes }) => [id, { type, data: toBase64(bytes) }]),
          ),
        }),
  };
}

const namedBy = ({ core, pieces }: Pick<Contents, 'core' | 'pieces'>) => ({
  scans: new Set(pieces.flatMap(({ sculpt }) => sculpt.scan ?? [])),
  photos: new Set([...photosOfBook(core.book), ...pieces.flatMap(photosOfPiece)]),
});

/** What a page holds that is not kept: its pieces stand in the place of those on the disk, and so does all else of the shop where it is told. */
export type Held = Omit<Contents, 'core'> & { core?: ShopCore };

/**
 * A backup of what is on the disk, where that can be read, and of what a page holds beside it. `missing`: scans and photos that the shop names
 * and that neither has. Throws what the disk throws, where the page knows nothing of the shop without it.
 */
export async function backupWith(
  disk: () => Promise<Contents>,
  held: Held,
): Promise<{ file: Blob; missing: number }> {
  const found = await disk().catch((fault: unknown) => {
    if (held.core === undefined) throw fault;
    return { core: held.core, pieces: [], scans: [], photos: [] };
  });
  const all: Contents = {
    core: held.core ?? found.core,
    pieces: over(found.pieces, held.pieces),
    scans: over(found.scans, held.scans),
    photos: over(found.photos, held.photos),
  };
  const named = namedBy(all);
  const has = new Set([...all.scans, ...all.photos].map(({ id }) => id));
  const missing = [...named.scans, ...named.photos].filter((id) => !has.has(id)).length;
  return { file: fileOf(shopFrom(all)), missing };
}

const over = <T extends { id: string }>(below: readonly T[], above: readonly T[]): T[] => [
  ...new Map([...below, ...above].map((one) => [one.id, one])).values(),
];

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
  /** Pieces, cards and scans by their names, rows of the book, and other parts of the shop, that stand here already and were left as they are. */
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
    for (const table of [pieces, bin, photos, shop]) await emptied(table);
    await pieces.bulkAdd(brought.pieces);
    await photos.bulkAdd(brought.photos ?? []);
    if (brought.scans !== undefined) {
      await emptied(scans);
      await scans.bulkAdd(brought.scans);
    }
    await shop.put({ ...brought.core, key: 'shop' });
  });
}

/**
 * Takes every record out of a table, one by one. Of browsers killed while they emptied tables by `clear` one in fifty found a checksum of its own
 * files wrong at a later start and threw the database away; none of a hundred and more that emptied them so (Chromium 150, `npm run kills`).
 */
async function emptied(table: Pick<Table<object, string>, 'toCollection' | 'bulkDelete'>): Promise<void> {
  await table.bulkDelete(await table.toCollection().primaryKeys());
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
    const files = await addNew(scans, packed, isSameScan);
    const seen = await addNew(photos, pictures, (one, kept) => sameBytes(one.bytes, kept.bytes));
    const mine = await coreOf(database);
    const { book, added, left } = mergeBooks(mine.book, shop.book);
    const [knownFoams, foams] = split(shop.foams, named(mine.foams));
    const [knownSilicones, silicones] = split(shop.silicones, named(mine.silicones));
    const cards = new Set([...foams, ...silicones].map(({ name }) => name));
    const hasCard = ({ card }: StockRow): boolean =>
      named([...mine.foams, ...mine.silicones])({ name: card });
    const { pieces: _pieces, scans: _scans, photos: _photos, ...theirs } = shop;
    await core.put({
      // What is here wins, key by key; what a later version keeps there comes along too.
      ...theirs,
      ...mine,
      name: mine.name === '' ? shop.name : mine.name,
      foams: [...mine.foams, ...foams],
      silicones: [...mine.silicones, ...silicones],
      // Stock of a card that was here already may be the same lot: it is not counted twice.
      stock: [
        ...mine.stock,
        ...shop.stock.filter((row) => !hasCard(row) && !mine.stock.some((here) => isSame(here, row))),
      ],
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
        ...files.map(({ name }) => `scan "${name}"`),
        ...seen.map(() => 'a photo'),
        ...Object.keys(theirs)
          .filter((key) => !KNOWN.includes(key) && differs(mine, theirs, key))
          .map((key) => `"${key}" of a later version`),
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

/** What a shop of this version has, beside pieces, scans and photos. */
const KNOWN: readonly string[] = [
  'schema',
  'name',
  'foams',
  'silicones',
  'stock',
  'scale',
  'settings',
  'book',
];

function differs(mine: object, theirs: object, key: string): boolean {
  const [here, there] = [mine, theirs].map((core) => (core as Record<string, unknown>)[key]);
  return here !== undefined && !isSame(here, there);
}

/** Adds those whose id is not here yet; gives those that are something else here under theirs. */
async function addNew<T extends { id: string }>(
  table: Table<T, string>,
  all: readonly T[],
  isAlike: (one: T, kept: T) => boolean,
): Promise<T[]> {
  const known = new Set(await table.toCollection().primaryKeys());
  const [here, fresh] = split(all, ({ id }) => known.has(id));
  await table.bulkAdd(fresh);
  const other: T[] = [];
  for (const one of here) {
    const kept = await table.get(one.id);
    if (kept !== undefined && !isAlike(one, kept)) other.push(one);
  }
  return other;
}

const isSameScan = (one: PackedScan, kept: PackedScan): boolean =>
  one.name === kept.name && one.bytes === kept.bytes && sameBytes(one.packed, kept.packed);

const sameBytes = (one: Uint8Array, other: Uint8Array): boolean =>
  one.length === other.length && one.every((byte, k) => byte === other[k]);

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
    for (const table of all) await emptied(table);
  });
}
