import { good } from '../../problem';
import { Refusal, refusing } from './refusal';

/** One part of a zip archive as its directory lists it. The name is a key to look up, never a path that is opened. */
export interface ZipEntry {
  name: string;
  isEncrypted: boolean;
  /** 0 stored, 8 deflated; nothing else is read. */
  method: number;
  crc: number;
  packedBytes: number;
  /** As the archive claims; the reader stops where more comes out. */
  bytes: number;
  /** Where its own header starts. */
  at: number;
}

/** Marks and sizes of the records (PKWARE, "APPNOTE.TXT - .ZIP File Format Specification", 4.3; from memory). */
const LOCAL = { mark: 0x04034b50, bytes: 30 };
const CENTRAL = { mark: 0x02014b50, bytes: 46 };
const END = { mark: 0x06054b50, bytes: 22 };
const END_64 = { mark: 0x06064b50, bytes: 56 };
const LOCATOR_64 = { mark: 0x07064b50, bytes: 20 };
const FULL_16 = 0xffff;
const FULL_32 = 0xffffffff;

/** More parts than this are refused: a package of one scan has a handful. Chosen here. */
const ENTRY_LIMIT = 10_000;

export function startsLikeZip(bytes: Uint8Array): boolean {
  const mark = bytes.length < END.bytes ? 0 : viewOf(bytes).getUint32(0, true);
  return mark === LOCAL.mark || mark === END.mark;
}

/** Every entry, by the directory at the end. Throws a Refusal: NOT_A_MESH, CORRUPT_ARCHIVE, UNSAFE_ARCHIVE, TOO_LARGE. */
export function zipDirectory(bytes: Uint8Array): ZipEntry[] {
  if (!startsLikeZip(bytes))
    throw new Refusal('NOT_A_MESH', { what: 'something other than a 3MF archive' }, { byte: 0 });
  const view = viewOf(bytes);
  const { count, at: first } = directoryPlace(view);
  if (count > ENTRY_LIMIT) throw new Refusal('TOO_LARGE', { part: 'entries', count, limit: ENTRY_LIMIT });
  const entries: ZipEntry[] = [];
  const names = new Set<string>();
  for (let at = first; entries.length < count;) {
    if (at + CENTRAL.bytes > bytes.length || view.getUint32(at, true) !== CENTRAL.mark)
      throw corrupt('its directory is broken', at);
    const [nameBytes, extraBytes, noteBytes] = [28, 30, 32].map((k) => view.getUint16(at + k, true)) as [
      number,
      number,
      number,
    ];
    const next = at + CENTRAL.bytes + nameBytes + extraBytes + noteBytes;
    if (next > bytes.length) throw corrupt('its directory is cut off', at);
    const name = new TextDecoder().decode(bytes.subarray(at + CENTRAL.bytes, at + CENTRAL.bytes + nameBytes));
    const key = partKey(name);
    if (names.has(key)) throw new Refusal('UNSAFE_ARCHIVE', { part: 'twice' }, { byte: at });
    names.add(key);
    entries.push(entryAt(view, at, name, at + CENTRAL.bytes + nameBytes, extraBytes));
    at = next;
  }
  return entries;
}

/** Names of parts are compared without case and without the slash in front (ECMA-376 part 2, 6.2.2 and 6.3, from memory). */
export const partKey = (name: string): string => name.replace(/^\/+/, '').toLowerCase();

/** Is it an archive with a 3D model in it? */
export function holdsModel(bytes: Uint8Array): boolean {
  if (!startsLikeZip(bytes)) return false;
  const entries = refusing(() => good(zipDirectory(bytes)));
  return entries.ok && entries.value.some(({ name }) => name.toLowerCase().endsWith('.model'));
}

/** Where the packed bytes of an entry lie. Throws a Refusal: CORRUPT_ARCHIVE. */
export function packedPart(bytes: Uint8Array, { at, packedBytes }: ZipEntry): Uint8Array {
  const view = viewOf(bytes);
  if (at + LOCAL.bytes > bytes.length || view.getUint32(at, true) !== LOCAL.mark)
    throw corrupt('a part is not where its directory says', Math.min(at, bytes.length));
  const start = at + LOCAL.bytes + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  if (start + packedBytes > bytes.length) throw corrupt('a part is cut off', at);
  return bytes.subarray(start, start + packedBytes);
}

const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

export const corrupt = (why: string, byte?: number): Refusal =>
  new Refusal('CORRUPT_ARCHIVE', { why }, byte === undefined ? undefined : { byte });

function directoryPlace(view: DataView): { count: number; at: number } {
  const length = view.byteLength;
  // The record at the end may carry a remark of up to 65 535 bytes.
  for (let at = length - END.bytes; at >= Math.max(0, length - END.bytes - FULL_16); at--) {
    if (view.getUint32(at, true) !== END.mark || at + END.bytes + view.getUint16(at + 20, true) !== length)
      continue;
    const [count, first] = [view.getUint16(at + 10, true), view.getUint32(at + 16, true)];
    if (count === 0) throw corrupt('nothing is in it', 0);
    return count === FULL_16 || first === FULL_32
      ? place64(view, at - LOCATOR_64.bytes)
      : { count, at: first };
  }
  throw corrupt('its directory is missing, so its end is cut off', length);
}

function place64(view: DataView, locator: number): { count: number; at: number } {
  if (locator < 0 || view.getUint32(locator, true) !== LOCATOR_64.mark)
    throw corrupt('its directory is broken');
  const at = wide(view, locator + 8);
  if (at + END_64.bytes > view.byteLength || view.getUint32(at, true) !== END_64.mark)
    throw corrupt('its directory is broken');
  return { count: wide(view, at + 32), at: wide(view, at + 48) };
}

/** A number of 64 bits; beyond 2^53 it lies outside of any file. */
const wide = (view: DataView, at: number): number => {
  const value = view.getBigUint64(at, true);
  return value > BigInt(Number.MAX_SAFE_INTEGER) ? Number.MAX_SAFE_INTEGER : Number(value);
};

function entryAt(view: DataView, at: number, name: string, extraAt: number, extraBytes: number): ZipEntry {
  const wides = wideFields(view, extraAt, extraBytes);
  const field = (offset: number): number => {
    const value = view.getUint32(at + offset, true);
    if (value !== FULL_32) return value;
    const next = wides.shift();
    if (next === undefined) throw corrupt('its directory is broken', at);
    return next;
  };
  const bytes = field(24);
  const packedBytes = field(20);
  return {
    name,
    isEncrypted: (view.getUint16(at + 8, true) & 1) !== 0,
    method: view.getUint16(at + 10, true),
    crc: view.getUint32(at + 16, true),
    bytes,
    packedBytes,
    at: field(42),
  };
}

/** Sizes of 64 bits of an entry, in the order size, packed size, place; only those that did not fit stand there. */
function wideFields(view: DataView, from: number, bytes: number): number[] {
  const end = from + bytes;
  for (let at = from; at + 4 <= end;) {
    const [id, size] = [view.getUint16(at, true), view.getUint16(at + 2, true)];
    if (id === 1) {
      const fields: number[] = [];
      for (let k = at + 4; k + 8 <= Math.min(end, at + 4 + size); k += 8) fields.push(wide(view, k));
      return fields;
    }
    at += 4 + size;
  }
  return [];
}
