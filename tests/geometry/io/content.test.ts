import { describe, expect, it } from 'vitest';
import { divergenceVolume, readScan, SCAN_BYTES_LIMIT, SCAN_FORMATS } from '../../../src/geometry';
import { TRIANGLE_LIMIT } from '../../../src/geometry/io/scanFile';
import { write3mf } from '../../../src/geometry/io/write3mf';
import { say } from '../../../src/words/say';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';
import { box } from '../../support/shapes';
import { utf16 } from '../../support/threemfFiles';
import { objText, stlBytes, stlText, textBytes } from '../../support/writeMesh';

const BOX = box([40, 30, 20]);
const plyText = (): string => {
  const [points, facets] = [objText(BOX).match(/^v .*/gm)!, objText(BOX).match(/^f .*/gm)!];
  return [
    'ply\nformat ascii 1.0',
    `element vertex ${points.length}\nproperty float x\nproperty float y\nproperty float z`,
    `element face ${facets.length}\nproperty list uchar int vertex_indices\nend_header`,
    ...points.map((line) => line.slice(2)),
    ...facets.map(
      (line) =>
        `3 ${line
          .slice(2)
          .split(' ')
          .map((n) => Number(n) - 1)
          .join(' ')}`,
    ),
  ].join('\n');
};

/** Files by what they hold. */
const HELD: Record<string, Uint8Array[]> = {
  stl: [stlBytes(BOX), textBytes(stlText(BOX))],
  obj: [textBytes(objText(BOX)), textBytes(`# a scan\nmtllib scan.mtl\n${objText(BOX)}`)],
  ply: [textBytes(plyText())],
  '3mf': [write3mf(BOX)],
};

describe('what a file holds decides, and a wrong ending is said', () => {
  const cases = SCAN_FORMATS.flatMap((said) =>
    SCAN_FORMATS.flatMap((is) => HELD[is.key]!.map((bytes, i) => ({ said, is, bytes, i }))),
  );
  it.each(cases)('$is.title $i called .$said.key', ({ said, is, bytes }) => {
    const scan = valueOf(readScan({ bytes, name: `scan.${said.key}` }));
    expect(scan.format).toBe(is.key);
    expectClose(divergenceVolume(scan.mesh), 24_000, 1e-12);
    const wrong = scan.findings.filter(({ code }) => code === 'WRONG_FORMAT');
    expect(wrong.map(({ values }) => values)).toEqual(
      said === is ? [] : [{ said: said.title, is: is.title }],
    );
    if (said !== is) expect(say(wrong[0]!).text).toContain(`called ${said.title} but holds ${is.title}`);
  });
});

describe('a file of more than 537 MB', () => {
  it('is refused by its size alone', () => {
    const problem = problemOf(readScan({ bytes: new Uint8Array(SCAN_BYTES_LIMIT + 1), name: 'scan.stl' }));
    expect(problem).toMatchObject({ code: 'TOO_LARGE', values: { part: 'file', limit: SCAN_BYTES_LIMIT } });
    expect(say(problem).text).toBe('The file has 536.9 MB; 536.9 MB is the most.');
    expect(say(problem).hint).toContain('binary STL');
  });

  it('as many triangles as are read fit in as binary STL', () => {
    expect(84 + 50 * TRIANGLE_LIMIT).toBeLessThanOrEqual(SCAN_BYTES_LIMIT);
  });
});

describe('text in UTF-16 is read, and said', () => {
  it.each([
    ['stl', stlText(BOX, 'Tête')],
    ['obj', `# Tête\n${objText(BOX)}`],
    ['ply', plyText()],
  ])('%s', (key, text) => {
    for (const little of [true, false]) {
      const scan = valueOf(readScan({ bytes: utf16(text, little), name: `scan.${key}` }));
      expectClose(divergenceVolume(scan.mesh), 24_000, 1e-12);
      expect(scan.findings).toEqual([{ code: 'ENCODING', status: 'fine', values: { encoding: 'UTF-16' } }]);
    }
  });

  it('an error in it has the line of the text', () => {
    const text = objText(BOX).replace('v 40 30 20', 'v 40 30 x');
    const line = text.slice(0, text.indexOf('x')).split('\n').length;
    expect(problemOf(readScan({ bytes: utf16(text, true), name: 'scan.obj' }))).toMatchObject({
      code: 'BAD_NUMBER',
      at: { line },
    });
  });
});
