/**
 * node tests/corpus/generate.mjs          writes the corpus into tests/corpus/files
 * node tests/corpus/generate.mjs --check  compares it with what is there; exit 1 names what differs
 *
 * Every file is named for what is odd about it; manifest.json says what must come of it. Volumes are closed formulas of the shapes.
 */
import { Buffer } from 'node:buffer';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { OBJ } from './generator/obj.mjs';
import { PLY } from './generator/ply.mjs';
import { STL } from './generator/stl.mjs';
import { THREEMF } from './generator/threemf.mjs';

const folder = join(dirname(fileURLToPath(import.meta.url)), 'files');
const made = [...STL, ...OBJ, ...PLY, ...THREEMF];
const items = made.map(({ file, expect }) => `  ${JSON.stringify({ file, expect })}`).join(',\n');
const files = [...made, { file: 'manifest.json', bytes: Buffer.from(`{ "items": [\n${items}\n] }\n`) }];

const names = new Set(files.map(({ file }) => file));
if (names.size < files.length) throw new Error('two files of one name');
const there = existsSync(folder) ? readdirSync(folder) : [];
const strays = there.filter((file) => !names.has(file));

if (process.argv[2] === '--check') {
  const differing = files
    .filter(({ file, bytes }) => !there.includes(file) || !readFileSync(join(folder, file)).equals(bytes))
    .map(({ file }) => file);
  for (const file of [...differing, ...strays])
    console.error(`differs, is missing or should not be there: ${file}`);
  process.exitCode = differing.length + strays.length > 0 ? 1 : 0;
} else {
  mkdirSync(folder, { recursive: true });
  for (const file of strays) rmSync(join(folder, file));
  for (const { file, bytes } of files) writeFileSync(join(folder, file), bytes);
  const total = files.reduce((sum, { bytes }) => sum + bytes.length, 0);
  console.log(`${files.length} files, ${total} bytes`);
}
