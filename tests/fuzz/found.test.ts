import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readScan } from '../../src/geometry';
import type { Code } from '../../src/problem';
import { readQuantity } from '../../src/units';
import { problemOf, valueOf } from '../support/outcome';
import { verdictOnFile } from './parsers';

/** Files made by mutation that were once read wrong without a word, or refused though they are good: made as small as they go. */
const folder = new URL('found/', import.meta.url);
const bytesOf = (file: string): Uint8Array => new Uint8Array(readFileSync(new URL(file, folder)));
const read = (file: string): ReturnType<typeof readScan> => readScan({ bytes: bytesOf(file), name: file });

const REFUSED: readonly [string, Code][] = [
  ['word-of-the-grammar-in-a-normal.stl', 'SYNTAX'],
  ['word-behind-endsolid-and-a-blank.stl', 'SYNTAX'],
  ['color-torn-off-its-vertex.obj', 'SYNTAX'],
  ['shell-of-unknown-statements.obj', 'SYNTAX'],
  ['x-listed-twice.ply', 'SYNTAX'],
  ['two-formats.ply', 'SYNTAX'],
  ['count-with-a-point.ply', 'BAD_NUMBER'],
  ['fraction-in-a-whole-number.ply', 'BAD_NUMBER'],
  ['letters-in-a-value-that-is-not-used.ply', 'BAD_NUMBER'],
  ['unit-with-an-undeclared-prefix.3mf', 'SYNTAX'],
  ['unit-with-a-colon-in-front.3mf', 'SYNTAX'],
  ['triangle-outside-of-its-list.3mf', 'SYNTAX'],
  ['two-lists-of-resources.3mf', 'SYNTAX'],
  ['relation-with-a-slip-in-its-name.3mf', 'NOT_A_MESH'],
  ['object-of-an-unknown-type.3mf', 'SYNTAX'],
  ['transform-beyond-any-number.3mf', 'COORD_RANGE'],
];

const WARNED: readonly [string, Code][] = [
  ['another-file-called-in.obj', 'UNSUPPORTED_FEATURE'],
  ['transform-with-a-slip-in-its-name.3mf', 'IGNORED_ELEMENTS'],
  ['item-with-a-slip-in-its-name.3mf', 'IGNORED_ELEMENTS'],
  ['relations-without-their-namespace.3mf', 'BAD_REFERENCE'],
];

const GOOD: readonly [string, number][] = [
  ['name-with-the-word-solid.stl', 12],
  ['two-solids-named-with-the-word-solid.stl', 24],
  ['name-of-no-number-in-a-normal.ply', 12],
  ['header-with-lf-behind-a-first-line-with-crlf.ply', 12],
];

describe('a mutant that was once taken wrong', () => {
  it.each(REFUSED)('%s is refused: %s', (file, code) => expect(problemOf(read(file)).code).toBe(code));

  it.each(WARNED)('%s is read with a warning: %s', (file, code) => {
    const found = valueOf(read(file)).findings.find((one) => one.code === code);
    expect(found?.status).toMatch(/^(look|stop)$/);
  });

  it.each(GOOD)('%s is good: %i triangles', (file, triangles) => {
    const scan = valueOf(read(file));
    expect([scan.trianglesRead, scan.findings]).toEqual([triangles, []]);
  });

  it('the first corner of a PLY loses no digit to the end of the line before it', () => {
    const { positions } = valueOf(read('header-with-lf-behind-a-first-line-with-crlf.ply')).mesh;
    expect([...positions.subarray(0, 3)]).toEqual([10, 0, 0]);
  });

  const files = readdirSync(folder).filter((file) => /\.(stl|obj|ply|3mf)$/.test(file));
  it('each has its place in a list above', () => {
    expect([...REFUSED, ...WARNED, ...GOOD].map(([file]) => file).sort()).toEqual(files.sort());
  });

  it.each(files)('%s passes all that the fuzz asks', (file) => {
    expect(verdictOnFile(bytesOf(file), file).fault).toBeUndefined();
  });
});

describe('a typed number that was once taken wrong', () => {
  it('no factor of 0 is offered for a zero of another script, or with an exponent', () => {
    for (const kind of ['overpack', 'packFactor'] as const)
      for (const text of ['\u0966', '0e0', '\u0966 %']) expect(readQuantity(text, kind).kind).toBe('error');
  });

  it('less than an ounce of liquid is not printed as none', () => {
    const read = readQuantity('1.25 cm3', 'volume');
    expect(read.kind === 'one' && read.readback).toBe('1.3 cm³ (0.042 fl oz)');
  });
});
