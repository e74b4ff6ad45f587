import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { pack, unpack } from '../../src/store/gzip';

/** Packed by Node's own zlib, not by ours. */
const packed = (bytes: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(gzipSync(bytes));
const bytes = Uint8Array.from({ length: 5000 }, (_, n) => (n * n) % 251);

describe('a file that is kept packed', () => {
  it('comes back as it was, packed by us or by another', async () => {
    for (const one of [await pack(bytes.slice().buffer), packed(bytes)])
      expect(new Uint8Array(await unpack(one, bytes.length))).toEqual(bytes);
    expect((await unpack(packed(new Uint8Array()), 0)).byteLength).toBe(0);
  });

  it('is refused where it is more or less than was said, or none at all', async () => {
    await expect(unpack(packed(bytes), 4999)).rejects.toThrow('more than its 4999 bytes');
    await expect(unpack(packed(bytes), 5001)).rejects.toThrow('to 5000 bytes, not to its 5001');
    await expect(unpack(packed(bytes).slice(0, 200), bytes.length)).rejects.toThrow();
    await expect(unpack(bytes.slice(), bytes.length)).rejects.toThrow();
  });

  it('that is small and unpacks to a gigabyte is stopped at what it said, and one that says so is not begun', async () => {
    // A gigabyte of nothing: members of gzip that follow each other are one file (RFC 1952, 2.2).
    const megabytes = packed(new Uint8Array(2 ** 24));
    const trap = new Uint8Array(64 * megabytes.length);
    for (let n = 0; n < 64; n++) trap.set(megabytes, n * megabytes.length);
    await expect(unpack(trap, 1000)).rejects.toThrow('more than its 1000 bytes');
    await expect(unpack(trap, 2 ** 40)).rejects.toThrow('larger than any scan');
  });
});
