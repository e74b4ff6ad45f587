import { expect, it } from 'vitest';
import { fnv1a64 } from '../../src/job/fnv';

/** Published test vectors of FNV-1a, 64 bits (draft-eastlake-fnv, appendix C; from memory). */
it.each([
  ['', 'cbf29ce484222325'],
  ['a', 'af63dc4c8601ec8c'],
  ['b', 'af63df4c8601f1a5'],
  ['foobar', '85944171f73967e8'],
])('FNV-1a of "%s" is %s', (text, hash) => {
  expect(fnv1a64(text)).toBe(hash);
});

it('counts bytes of UTF-8: the same as the definition with big integers', () => {
  const text = 'Trölls höhe 290,85 mm — ½ 頭';
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text))
    hash = ((hash ^ BigInt(byte)) * 0x100000001b3n) & 0xffffffffffffffffn;
  expect(fnv1a64(text)).toBe(hash.toString(16).padStart(16, '0'));
});
