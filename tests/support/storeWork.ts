import type { PourRow } from '../../src/job/book';
import { withRow } from '../../src/job/book/changeRows';
import { fnv1a64 } from '../../src/job/fnv';
import type { Piece } from '../../src/job/piece';
import { emptyShop, type Shop } from '../../src/job/shop';
import { bringIn, replaceBy } from '../../src/store/backup';
import { toBase64 } from '../../src/store/base64';
import { newId } from '../../src/store/newId';
import type { Store } from '../../src/store/store';
import { lcg } from './lcg';

/*
 * What a shop does with its store, step by step: each step is one write, as the page makes them, and what it writes follows from
 * the number of the step alone. So two stores that were given the same steps hold the same, and a store that was stopped in the
 * middle holds what it held after one step or another. Runs in Node and, bundled, in a page.
 */

type Step = (store: Store, round: number) => Promise<unknown>;

const SCAN_BYTES = 120_000;
const PHOTO_BYTES = 40_000;

const noise = (seed: number, length: number): Uint8Array<ArrayBuffer> => {
  const random = lcg(seed);
  return Uint8Array.from({ length }, () => Math.floor(256 * random()));
};

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

/** A row of the book as a weigh-back writes it. */
const row = (id: string, photo: string): PourRow => ({ kind: 'pour', id, no: 1, skin: 3, photo });

/** The ids of this round's photos are random in life; here they follow from the round. */
function seeded<T>(round: number, work: () => T): T {
  const random = lcg(round);
  const real = crypto.getRandomValues.bind(crypto);
  crypto.getRandomValues = <A>(all: A): A => {
    if (all instanceof Uint8Array) for (let i = 0; i < all.length; i++) all[i] = Math.floor(256 * random());
    return all;
  };
  try {
    return work();
  } finally {
    crypto.getRandomValues = real;
  }
}

/** Types a text into a box of the round's piece, as the ticket keeps it. */
const typed =
  (text: string): Step =>
  async (store, round) => {
    const base = (await store.piece(`a${round}`))!;
    const mine = { ...base, sculpt: { ...base.sculpt, fields: { tape: { text, unit: 'mm' } } } };
    return store.savePiece(base, mine);
  };

/** A shop as a backup has it, with a piece, its scan, a photo and a row. */
function brought(round: number, name: string): Shop {
  const id = `${name}${round}`;
  return {
    ...emptyShop(),
    name: `Shop ${id}`,
    pieces: { [id]: piece(id, { sculpt: { fields: {}, choices: {}, scan: `s-${id}` } }) },
    scans: {
      [`s-${id}`]: { name: 'b.stl', bytes: 9, packing: 'gzip', data: toBase64(noise(round, SCAN_BYTES)) },
    },
    photos: { [`ph-${id}`]: { type: 'image/jpeg', data: toBase64(noise(round + 1, PHOTO_BYTES)) } },
    book: [row(`row-${id}`, `ph-${id}`)],
  };
}

const STEPS: readonly (readonly [name: string, Step])[] = [
  ['a new piece', (store, round) => store.addPiece(piece(`a${round}`))],
  [
    'the file of its scan',
    (store, round) =>
      store.keepScan({ id: `s${round}`, name: 'a.stl', bytes: 9, packed: noise(round, SCAN_BYTES) }),
  ],
  [
    'the piece names its scan',
    async (store, round) => {
      const base = (await store.piece(`a${round}`))!;
      return store.savePiece(base, { ...base, sculpt: { ...base.sculpt, scan: `s${round}` } });
    },
  ],
  ['a letter typed', typed('2')],
  ['another letter', typed('29')],
  ['and another', typed('291')],
  [
    'a photo',
    (store, round) =>
      seeded(round, () => store.keepPhoto({ type: 'image/png', bytes: noise(round, PHOTO_BYTES) })),
  ],
  [
    'the row that names it',
    (store, round) =>
      store.changeBook((book) =>
        withRow(
          book,
          row(
            `row${round}`,
            seeded(round, () => newId()),
          ),
        ),
      ),
  ],
  [
    'the name of the shop',
    (store, round) => store.changeCore((core) => ({ ...core, name: `Ours ${round}` })),
  ],
  [
    'stock',
    (store, round) =>
      store.changeCore((core) => ({ ...core, stock: [...core.stock, { card: `Foam ${round}`, aKg: 2 }] })),
  ],
  ['a second piece', (store, round) => store.addPiece(piece(`b${round}`))],
  ['which goes into the bin', (store, round) => store.deletePiece(`b${round}`)],
  ['and is taken back', (store, round) => store.restorePiece(`b${round}`)],
  ['and goes again', (store, round) => store.deletePiece(`b${round}`)],
  ['what was deleted is swept', (store) => store.sweep()],
  ['a backup beside what is here', (store, round) => bringIn(store.database, brought(round, 'beside'))],
  ['the day of a backup', (store, round) => store.noteBackup(`day ${round}`)],
  ['a backup in the place of all', (store, round) => replaceBy(store.database, brought(round, 'instead'))],
];

/** Steps of one round; the next round begins with what this one left. */
export const STEPS_A_ROUND = STEPS.length;

export const stepName = (no: number): string => STEPS[no % STEPS_A_ROUND]![0];

/** Does the step of that number, counted from 0. Throws what the store throws. */
export async function doStep(store: Store, no: number): Promise<void> {
  await STEPS[no % STEPS_A_ROUND]![1](store, Math.floor(no / STEPS_A_ROUND));
}

/** All that the store holds, to the byte, save when it came there, as a short text a table: the same for the same contents. */
export async function digestOf({ database }: Store): Promise<string> {
  const { dexie, pieces, bin, scans, photos, shop, local } = database;
  const tables = [pieces, bin, scans, photos, shop, local];
  const all = await dexie.transaction('r', tables, () =>
    Promise.all(tables.map((table) => table.toArray() as Promise<object[]>)),
  );
  return all.map((rows, i) => `${tables[i]!.name} ${rows.length}: ${digest(rows)}`).join(', ');
}

const digest = (rows: object[]): string =>
  fnv1a64(
    JSON.stringify(rows, (key, value: unknown) =>
      key === 'at' ? undefined : value instanceof Uint8Array ? fnv1a64(toBase64(value)) : value,
    ),
  );
