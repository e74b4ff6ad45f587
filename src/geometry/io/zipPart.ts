import { Inflate } from 'fflate';
import { Refusal } from './refusal';
import { corrupt, packedPart, type ZipEntry } from './zipDirectory';

/** A part that unpacks to more is not begun: ten million triangles, the most that is read, take less. Chosen here. */
const PART_LIMIT = 2 ** 30;

/** Packed more than this many times, and large, is a trap and no mesh: text of numbers packs 5 to 20 times. Chosen here. */
const RATIO_LIMIT = 200;
const RATIO_FREE_BYTES = 2 ** 24;

/** Packed bytes handed over at a time: at most about a thousand times as many come out before the count is looked at. */
const CHUNK_BYTES = 4096;

/**
 * Unpacks one part, piece by piece: nothing is held, and it stops at the first byte more than the archive claims.
 * Throws a Refusal: UNSAFE_ARCHIVE, TOO_LARGE, CORRUPT_ARCHIVE, UNSUPPORTED_FORMAT.
 */
export function unpackPart(bytes: Uint8Array, entry: ZipEntry, take: (chunk: Uint8Array) => void): void {
  const packed = packedPart(bytes, entry);
  refuseAhead(entry);
  let out = 0;
  let crc = -1;
  const check = (chunk: Uint8Array): void => {
    out += chunk.length;
    if (out > entry.bytes) throw new Refusal('UNSAFE_ARCHIVE', { part: 'more', bytes: entry.bytes });
    crc = crcOf(crc, chunk);
    take(chunk);
  };
  if (entry.method === 0)
    for (let at = 0; at < packed.length; at += 65_536) check(packed.subarray(at, at + 65_536));
  else inflate(packed, check);
  if (out !== entry.bytes) throw corrupt('a part ends early');
  if ((crc ^ -1) >>> 0 !== entry.crc) throw corrupt('the checksum of a part is wrong');
}

function refuseAhead({ isEncrypted, method, bytes, packedBytes }: ZipEntry): void {
  if (isEncrypted) throw new Refusal('UNSUPPORTED_FORMAT', { part: 'packed', how: 'encrypted' });
  if (method !== 0 && method !== 8)
    throw new Refusal('UNSUPPORTED_FORMAT', { part: 'packed', how: `packed by method ${method}` });
  if (bytes > PART_LIMIT) throw new Refusal('TOO_LARGE', { part: 'bytes', count: bytes, limit: PART_LIMIT });
  if (bytes > RATIO_FREE_BYTES && bytes > RATIO_LIMIT * packedBytes)
    throw new Refusal('UNSAFE_ARCHIVE', {
      part: 'ratio',
      ratio: Math.round(bytes / packedBytes),
      limit: RATIO_LIMIT,
    });
}

function inflate(packed: Uint8Array, take: (chunk: Uint8Array) => void): void {
  const inflating = new Inflate((chunk) => take(chunk));
  try {
    for (let at = 0; at < packed.length; at += CHUNK_BYTES)
      inflating.push(packed.subarray(at, at + CHUNK_BYTES), at + CHUNK_BYTES >= packed.length);
  } catch (e) {
    // The library throws errors of its own, with a number for their kind.
    if (e instanceof Error && 'code' in e && typeof e.code === 'number')
      throw corrupt('a part cannot be unpacked');
    throw e;
  }
}

/** CRC-32 as zip files use it (polynomial 0xEDB88320; APPNOTE 4.4.7, from memory). Starts at -1 and is turned over at the end. */
function crcOf(start: number, chunk: Uint8Array): number {
  let crc = start;
  for (const byte of chunk) crc = CRC_TABLE[(crc ^ byte) & 255]! ^ (crc >>> 8);
  return crc;
}

const CRC_TABLE = Int32Array.from({ length: 256 }, (_, start) => {
  let crc = start;
  for (let bit = 0; bit < 8; bit++) crc = (crc & 1) === 0 ? crc >>> 1 : (crc >>> 1) ^ 0xedb88320;
  return crc;
});
