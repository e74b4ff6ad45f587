// Zip archives by hand, so that every field of them can be wrong (PKWARE, "APPNOTE.TXT - .ZIP File Format Specification", from memory).
// Packed parts come from fflate, whose bytes are the same everywhere.
import { Buffer } from 'node:buffer';
import { deflateSync } from 'fflate';

const FULL = 0xffffffff;

/**
 * parts: [{ name, text, packed?, bytes? (claimed), crc?, flags?, method? }]
 *
 * @param wide sizes and places as 64 bits, in their own records
 */
export function zip(parts, { wide = false } = {}) {
  const files = [];
  const directory = [];
  let at = 0;
  for (const part of parts) {
    const plain = Buffer.from(part.text);
    const packed = part.packed ? Buffer.from(deflateSync(plain)) : plain;
    const { bytes = plain.length, crc = crcOf(plain), flags = 0, method = part.packed ? 8 : 0 } = part;
    const name = Buffer.from(part.name);
    const extra = wide ? wideExtra([bytes, packed.length, at]) : Buffer.alloc(0);
    const sizes = wide ? [FULL, FULL] : [packed.length, bytes];
    const shared = [u16(flags), u16(method), u32(0), u32(crc), ...sizes.map(u32), u16(name.length)];
    const local = [u32(0x04034b50), u16(wide ? 45 : 20), ...shared];
    const own = wide ? wideExtra([bytes, packed.length]) : Buffer.alloc(0);
    const file = Buffer.concat([...local, u16(own.length), name, own, packed]);
    directory.push(
      Buffer.concat([
        ...[u32(0x02014b50), u16(20), u16(wide ? 45 : 20), ...shared, u16(extra.length), u16(0)],
        ...[u16(0), u16(0), u32(0), u32(wide ? FULL : at), name, extra],
      ]),
    );
    files.push(file);
    at += file.length;
  }
  const listed = Buffer.concat(directory);
  const end64 = wide ? endOf64(parts.length, listed.length, at) : Buffer.alloc(0);
  const counts = wide ? [0xffff, 0xffff] : [parts.length, parts.length];
  const end = [
    u32(0x06054b50),
    u16(0),
    u16(0),
    ...counts.map(u16),
    u32(wide ? FULL : listed.length),
    u32(wide ? FULL : at),
    u16(0),
  ];
  return Buffer.concat([...files, listed, end64, ...end]);
}

const wideExtra = (numbers) => Buffer.concat([u16(1), u16(8 * numbers.length), ...numbers.map(u64)]);

function endOf64(count, size, at) {
  const record = [
    u32(0x06064b50),
    u64(44),
    u16(45),
    u16(45),
    u32(0),
    u32(0),
    u64(count),
    u64(count),
    u64(size),
    u64(at),
  ];
  const locator = [u32(0x07064b50), u32(0), u64(at + size), u32(1)];
  return Buffer.concat([...record, ...locator]);
}

const u16 = (x) => fill(2, (b) => b.writeUInt16LE(x));
const u32 = (x) => fill(4, (b) => b.writeUInt32LE(x));
const u64 = (x) => fill(8, (b) => b.writeBigUInt64LE(BigInt(x)));

function fill(size, write) {
  const bytes = Buffer.alloc(size);
  write(bytes);
  return bytes;
}

/** CRC-32, bit by bit. */
function crcOf(bytes) {
  let crc = -1;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (0xedb88320 & -(crc & 1));
  }
  return ~crc >>> 0;
}
