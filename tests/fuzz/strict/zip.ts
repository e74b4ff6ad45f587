import { constants, crc32, inflateRawSync } from 'node:zlib';
import { refuse } from './shape';

/**
 * Parts of a zip archive by its directory (PKWARE, "APPNOTE.TXT - .ZIP File Format Specification", 4.3; from memory): stored or deflated,
 * one disk, no 64-bit sizes, every name once. Gives how to unpack a part, by its name in lower case without a slash in front.
 */
export function strictZip(bytes: Uint8Array): Map<string, () => Buffer> {
  const file = Buffer.from(bytes);
  const [count, first] = ending(file);
  const parts = new Map<string, () => Buffer>();
  let at = first;
  for (let k = 0; k < count; k++) {
    if (at + 46 > file.length || file.readUInt32LE(at) !== 0x02014b50) refuse('directory');
    const [flags, method, crc, packed, size] = [
      file.readUInt16LE(at + 8),
      file.readUInt16LE(at + 10),
      file.readUInt32LE(at + 16),
      file.readUInt32LE(at + 20),
      file.readUInt32LE(at + 24),
    ];
    const [nameBytes, extra, remark, local] = [
      file.readUInt16LE(at + 28),
      file.readUInt16LE(at + 30),
      file.readUInt16LE(at + 32),
      file.readUInt32LE(at + 42),
    ];
    const name = file.toString('utf8', at + 46, at + 46 + nameBytes);
    at += 46 + nameBytes + extra + remark;
    if (at > file.length) refuse('directory cut off');
    const key = name.replace(/^\/+/, '').toLowerCase();
    if (parts.has(key)) refuse('a name twice');
    parts.set(key, () => {
      if ((flags & 1) !== 0 || (method !== 0 && method !== 8)) refuse('packed in another way');
      if (local + 30 > file.length || file.readUInt32LE(local) !== 0x04034b50) refuse('part not there');
      const start = local + 30 + file.readUInt16LE(local + 26) + file.readUInt16LE(local + 28);
      if (start + packed > file.length) refuse('part cut off');
      const data = unpacked(file.subarray(start, start + packed), method, size);
      if (data.length !== size || crc32(data) !== crc) refuse('part broken');
      return data;
    });
  }
  return parts;
}

function unpacked(data: Buffer, method: number, size: number): Buffer {
  if (method === 0) return data;
  if (size > 2 ** 26) refuse('part too large for a test');
  try {
    // A stream without its end mark gives what it has: size and checksum say whether that is all.
    return inflateRawSync(data, { maxOutputLength: size + 1, finishFlush: constants.Z_SYNC_FLUSH });
  } catch {
    return refuse('no deflate');
  }
}

/** Count and place of the directory: the record that ends where the file ends. */
function ending(file: Buffer): [count: number, at: number] {
  for (let at = file.length - 22; at >= Math.max(0, file.length - 65557); at--) {
    if (file.readUInt32LE(at) !== 0x06054b50 || at + 22 + file.readUInt16LE(at + 20) !== file.length)
      continue;
    const count = file.readUInt16LE(at + 10);
    if (count === 0 || count === 0xffff) refuse('empty, or of 64 bits');
    return [count, file.readUInt32LE(at + 16)];
  }
  return refuse('no end of a directory');
}
