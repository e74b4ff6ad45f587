import { Dexie, type Table, type Transaction } from 'dexie';
import { isRecord } from '../job/json';
import { readPhoto } from '../job/photo';
import type { Piece } from '../job/piece';
import type { Shop } from '../job/shop';
import { fromBase64 } from './base64';

/** All of a shop but its pieces, scans and photos: one small record. */
export type ShopCore = Omit<Shop, 'pieces' | 'scans' | 'photos'>;

/** A scan's file, packed by gzip. */
export interface PackedScan {
  id: string;
  name: string;
  bytes: number;
  packed: Uint8Array<ArrayBuffer>;
}

/** A photo's file. As bytes: some browsers lose a Blob that is kept. */
export interface KeptPhoto {
  id: string;
  type: string;
  bytes: Uint8Array<ArrayBuffer>;
}

/** When it came here, in milliseconds of the clock: what is young may still be in use by another tab. */
interface Dated {
  at?: number;
}

/** A piece that was deleted and can still be put back. */
export interface Binned extends Dated {
  id: string;
  piece: Piece;
}

/** What holds for this browser only and is in no backup. */
export interface Local {
  key: 'lastBackup';
  value: string;
}

export interface Database {
  dexie: Dexie;
  pieces: Table<Piece, string>;
  bin: Table<Binned, string>;
  scans: Table<PackedScan & Dated, string>;
  photos: Table<KeptPhoto & Dated, string>;
  shop: Table<ShopCore & { key: 'shop' }, string>;
  local: Table<Local, string>;
}

/**
 * The browser's database of one shop. A write is over when it is on the disk, not before. A schema that was released is never
 * changed: a new one gets a version of its own below it.
 */
export function openDatabase(name: string): Database {
  const dexie = new Dexie(name, { chromeTransactionDurability: 'strict' });
  dexie.version(1).stores({ pieces: 'id', bin: 'id', scans: 'id', shop: 'key', local: 'key' });
  dexie.version(2).stores({ photos: 'id' }).upgrade(photosApart);
  dexie.on('ready', () => mustBeOurs(dexie), true);
  // Another page deletes it, or lays it out anew: this one gives way for good. Dexie by itself would open it again, empty or not its own any more.
  dexie.on('versionchange', () => {
    dexie.close();
    return false;
  });
  return {
    dexie,
    pieces: dexie.table('pieces'),
    bin: dexie.table('bin'),
    scans: dexie.table('scans'),
    photos: dexie.table('photos'),
    shop: dexie.table('shop'),
    local: dexie.table('local'),
  };
}

/** Dexie opens what a later version has laid out as well; this one does not know what may be written there, so it writes nothing. */
function mustBeOurs(dexie: Dexie): void {
  // Dexie counts in tenths.
  const found = dexie.backendDB().version / 10;
  if (found > dexie.verno)
    throw new DOMException(
      `it is of version ${found}, and this one knows up to ${dexie.verno}`,
      'VersionError',
    );
}

/** Version 1 knew no photos: what a backup of a later one had of them it carried along among all else. */
async function photosApart(change: Transaction): Promise<void> {
  const shops = change.table<Record<string, unknown>>('shop');
  for (const { photos, ...core } of await shops.toArray()) {
    if (!isRecord(photos)) continue;
    for (const [id, json] of Object.entries(photos)) {
      const photo = readPhoto(json);
      if (typeof photo === 'string') continue;
      await change.table<KeptPhoto>('photos').put({ id, type: photo.type, bytes: fromBase64(photo.data) });
    }
    await shops.put(core);
  }
}
