import { describe, expect, it } from 'vitest';
import { good } from '../../../src/problem';
import { refusing } from '../../../src/geometry/io/refusal';
import { holdsModel, packedPart, zipDirectory } from '../../../src/geometry/io/zipDirectory';
import { problemOf, valueOf } from '../../support/outcome';
import { archive, modelText } from '../../support/threemfFiles';

/** Archives of fflate, with single fields written over: places by PKWARE, APPNOTE.TXT, 4.3 (from memory). */

const sound = archive(modelText());
const END_BYTES = 22;

function changed(change: (view: DataView, end: number, first: number) => void): Uint8Array {
  const bytes = sound.slice();
  const view = new DataView(bytes.buffer);
  const end = bytes.length - END_BYTES;
  change(view, end, view.getUint32(end + 16, true));
  return bytes;
}
const listed = (bytes: Uint8Array) => refusing(() => good(zipDirectory(bytes)));

describe('the directory of an archive', () => {
  it('lists what fflate packed, and each part lies where it says', () => {
    const entries = valueOf(listed(sound));
    expect(entries.map(({ name }) => name)).toEqual(['_rels/.rels', '3D/3dmodel.model']);
    for (const entry of entries) expect(packedPart(sound, entry)).toHaveLength(entry.packedBytes);
    expect(holdsModel(sound)).toBe(true);
  });

  it.each<[string, Parameters<typeof changed>[0], string, RegExp | undefined]>([
    ['of 10 001 parts', (view, end) => view.setUint16(end + 10, 10_001, true), 'TOO_LARGE', undefined],
    ['of none', (view, end) => view.setUint16(end + 10, 0, true), 'CORRUPT_ARCHIVE', /nothing is in it/],
    [
      'of one part more than there are',
      (view, end) => view.setUint16(end + 10, 3, true),
      'CORRUPT_ARCHIVE',
      /broken/,
    ],
    [
      'that lies beyond the end',
      (view, end) => view.setUint32(end + 16, 1e9, true),
      'CORRUPT_ARCHIVE',
      /broken/,
    ],
    [
      'with a name that runs out of it',
      (view, _, first) => view.setUint16(first + 28, 60_000, true),
      'CORRUPT_ARCHIVE',
      /cut off/,
    ],
    [
      'of 64 bits without its record',
      (view, end) => view.setUint16(end + 10, 0xffff, true),
      'CORRUPT_ARCHIVE',
      /broken/,
    ],
    [
      'with a size of 64 bits that is not there',
      (view, _, first) => view.setUint32(first + 24, 0xffffffff, true),
      'CORRUPT_ARCHIVE',
      /broken/,
    ],
    [
      'whose end is missing',
      (view, end) => view.setUint32(end, 0, true),
      'CORRUPT_ARCHIVE',
      /its end is cut off/,
    ],
  ])('%s is refused', (_, change, code, why) => {
    const problem = problemOf(listed(changed(change)));
    expect(problem.code).toBe(code);
    if (why !== undefined) expect(problem.values.why).toMatch(why);
    expect(holdsModel(changed(change))).toBe(false);
  });

  it('64 bits beside a record that is none', () => {
    // A locator of the right mark, whose record lies in the middle of a part, and one that lies beyond 2^53.
    for (const place of [40n, 2n ** 60n]) {
      const bytes = new Uint8Array(sound.length + 20);
      const end = sound.length - END_BYTES;
      bytes.set(sound.subarray(0, end));
      bytes.set(sound.subarray(end), end + 20);
      const view = new DataView(bytes.buffer);
      view.setUint32(end, 0x07064b50, true);
      view.setBigUint64(end + 8, place, true);
      view.setUint16(end + 20 + 10, 0xffff, true);
      expect(problemOf(listed(bytes)).values.why).toMatch(/its directory is broken/);
    }
  });

  it('a part that is not where its directory says, or runs past the end', () => {
    const [entry] = valueOf(listed(sound));
    const part = (more: object) => refusing(() => good(packedPart(sound, { ...entry!, ...more })));
    expect(problemOf(part({ at: entry!.at + 1 })).values.why).toMatch(/not where its directory says/);
    expect(problemOf(part({ at: sound.length })).values.why).toMatch(/not where its directory says/);
    expect(problemOf(part({ packedBytes: sound.length })).values.why).toMatch(/cut off/);
  });
});
