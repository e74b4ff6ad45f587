import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { idOf } from '../../scripts/app/buildStamp';

const folders: string[] = [];
afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true })));

function built(files: [name: string, text: string][]): string {
  const folder = mkdtempSync(join(tmpdir(), 'risewright-build-'));
  folders.push(folder);
  for (const [name, text] of files) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}

const FILES: [string, string][] = [
  ['index.html', '<p>page</p>'],
  ['assets/a.js', 'one'],
  ['assets/b.js', 'two'],
];

it('equal files make an equal name, wherever and in whatever order they were written', () => {
  const id = idOf(built(FILES));
  expect(id).toMatch(/^[0-9a-f]{8}$/);
  expect(idOf(built([...FILES].reverse()))).toBe(id);
});

it.each<[string, [string, string][]]>([
  ['another content', [FILES[0]!, FILES[1]!, ['assets/b.js', 'three']]],
  ['another name', [FILES[0]!, FILES[1]!, ['assets/c.js', 'two']]],
  ['a file more', [...FILES, ['icons/i.svg', '']]],
  ['two files that swapped what is in them', [FILES[0]!, ['assets/a.js', 'two'], ['assets/b.js', 'one']]],
  ['an end that moved to the next file', [FILES[0]!, ['assets/a.js', 'onet'], ['assets/b.js', 'wo']]],
])('%s makes another', (_, files) => expect(idOf(built(files))).not.toBe(idOf(built(FILES))));
