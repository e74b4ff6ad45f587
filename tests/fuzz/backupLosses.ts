import type { PackedScan } from '../../src/store/database';

/** What of a backup is not there after it was brought in: told from the JSON of both alone. */

export type Json = Record<string, unknown>;

/** The same content is the same text, whatever the order of keys and whatever they are called. */
export function textOf(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(textOf).join()}]`;
  if (typeof value === 'number' && !Number.isFinite(value)) return `number ${value}`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? '';
  const keys = Object.keys(value).sort();
  return `{${keys.map((key) => `${JSON.stringify(key)}:${textOf((value as Json)[key])}`).join()}}`;
}

const same = (one: unknown, other: unknown): boolean => textOf(one) === textOf(other);

const recordOf = (value: unknown): Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Json) : {};
const listOf = (value: unknown): Json[] => (Array.isArray(value) ? (value as Json[]) : []);
const own = (record: Json, key: string): unknown => (Object.hasOwn(record, key) ? record[key] : undefined);

/** Names that a card of an older file has, and what stands there now. */
const OLD: Readonly<Record<string, string>> = {
  densityGCm3: 'densityKgM3',
  linearShrink: 'linearShrinkShare',
  kitsKg: 'kits',
};

/** Is all of the card there? What was brought up to the present form counts. */
function cardLoss(card: Json, now: Json | undefined): string | undefined {
  if (now === undefined) return `card ${String(card.name)}`;
  for (const key of Object.keys(card)) {
    if (same(card[key], own(now, key))) continue;
    const name = own(OLD, key) as string | undefined;
    if (name !== undefined) {
      if (own(now, name) === undefined) return `${key} of ${String(card.name)}`;
    } else if (key === 'kits') {
      if (listOf(card.kits).length !== listOf(now.kits).length) return `kits of ${String(card.name)}`;
    } else if (key === 'ratio' && recordOf(card.ratio).by === 'volume' && recordOf(now.ratio).by === 'mass')
      continue;
    else if (!same(card[key], own(now, key))) return `${key} of ${String(card.name)}`;
  }
  return undefined;
}

const cardNamed = (shop: Json, kind: string, name: unknown): Json | undefined =>
  listOf(shop[kind]).find((card) => card.name === name);

const bytesOf = (scan: unknown): string =>
  Buffer.from(String(recordOf(scan).data), 'base64').toString('base64');
const isScanThere = (scans: readonly PackedScan[], id: string, wanted: unknown): boolean => {
  const { name, bytes } = recordOf(wanted);
  const there = scans.find((one) => one.id === id);
  return (
    there !== undefined &&
    there.name === name &&
    there.bytes === bytes &&
    Buffer.from(there.packed).toString('base64') === bytesOf(wanted)
  );
};

const APART = ['schema', 'foams', 'silicones', 'pieces', 'scans', 'photos'];

/** In the place of all: everything of the file is there, unchanged. */
export function losses(wanted: Json, now: Json, scans: readonly PackedScan[]): string | undefined {
  for (const kind of ['foams', 'silicones'])
    for (const card of listOf(own(wanted, kind))) {
      const loss = cardLoss(card, cardNamed(now, kind, card.name));
      if (loss !== undefined) return loss;
    }
  const pieces = recordOf(now.pieces);
  for (const [id, one] of Object.entries(recordOf(wanted.pieces)))
    if (!same(one, own(pieces, id))) return `piece ${id}`;
  for (const [id, one] of Object.entries(recordOf(wanted.scans)))
    if (!isScanThere(scans, id, one)) return `scan ${id}`;
  const photos = recordOf(now.photos);
  const named = textOf([wanted.book, wanted.pieces]);
  for (const [id, one] of Object.entries(recordOf(wanted.photos)))
    if (named.includes(`"photo":${JSON.stringify(id)}`) && bytesOf(one) !== bytesOf(own(photos, id)))
      return `photo ${id}`;
  for (const key of Object.keys(wanted))
    if (!APART.includes(key) && !same(wanted[key], own(now, key))) return `key ${key}`;
  return ['foams', 'silicones', 'pieces', 'scans', 'photos'].find((key) => isOddKind(wanted, now, key));
}

/** A part of another kind than it should be, which is gone. */
const isOddKind = (wanted: Json, now: Json, key: string): boolean =>
  own(wanted, key) !== undefined && Array.isArray(wanted[key]) !== Array.isArray(now[key] ?? {});

interface Beside {
  before: Json;
  wanted: Json;
  after: Json;
  left: readonly string[];
  scans: readonly PackedScan[];
}

/** Beside what is here: nothing here is changed, and everything of the file came or is named as left. */
export function lossesBeside({ before, wanted, after, left, scans }: Beside): string | undefined {
  const isLeft = (name: unknown): boolean => left.includes(String(name));
  for (const kind of ['foams', 'silicones', 'stock'])
    for (const card of listOf(before[kind]))
      if (!listOf(after[kind]).some((one) => same(one, card))) return `mine of ${kind}`;
  for (const key of Object.keys(before))
    if (
      !['foams', 'silicones', 'stock', 'pieces', 'scans', 'photos', 'book'].includes(key) &&
      !same(before[key], own(after, key))
    )
      return `mine: ${key}`;
  for (const entry of listOf(before.book))
    if (!listOf(after.book).some((one) => same(one, entry))) return 'mine of the book';
  for (const key of ['pieces', 'scans', 'photos'])
    for (const [id, one] of Object.entries(recordOf(before[key])))
      if (!same(one, own(recordOf(after[key]), id))) return `mine of ${key}: ${id}`;
  for (const [id, one] of Object.entries(recordOf(wanted.pieces)))
    if (!same(one, own(recordOf(after.pieces), id)) && !isLeft(recordOf(one).name)) return `piece ${id}`;
  for (const [id, one] of Object.entries(recordOf(wanted.scans)))
    if (!isScanThere(scans, id, one) && !isLeft(`scan "${String(recordOf(one).name)}"`)) return `scan ${id}`;
  for (const kind of ['foams', 'silicones'])
    for (const card of listOf(own(wanted, kind)))
      if (cardLoss(card, cardNamed(after, kind, card.name)) !== undefined && !isLeft(card.name))
        return `card ${String(card.name)}`;
  const mine = [...listOf(before.foams), ...listOf(before.silicones)].map(({ name }) => name);
  for (const row of listOf(own(wanted, 'stock')))
    if (!mine.includes(row.card) && !listOf(after.stock).some((one) => same(one, row)))
      return `stock of ${String(row.card)}`;
  const isBookLeft = left.some((words) => words.includes('Book'));
  for (const entry of Array.isArray(wanted.book) ? listOf(wanted.book) : [])
    if (!listOf(after.book).some((one) => same(one, entry)) && !isBookLeft)
      return `entry ${textOf(entry).slice(0, 60)} of the book`;
  return Object.keys(wanted).find(
    (key) =>
      ![...APART, 'stock', 'book', 'name', 'scale', 'settings'].includes(key) &&
      !same(wanted[key], own(after, key)) &&
      !isLeft(`"${key}" of a later version`),
  );
}
