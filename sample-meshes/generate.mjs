/**
 * node sample-meshes/generate.mjs [OUTDIR]   writes all sample files (default: this folder)
 * node sample-meshes/generate.mjs --check    compares them with this folder; exit 1 names what differs
 * node sample-meshes/generate.mjs --refine   the troll's volume on three grids; writes nothing
 */
import { Buffer } from 'node:buffer';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { area, extents, volume } from './generator/measure.mjs';
import { cleanTroll } from './generator/quay-troll.mjs';
import { SAMPLES } from './generator/samples.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const [word] = process.argv.slice(2);

if (word === '--refine') refine();
else if (word === '--check') process.exitCode = check(makeFiles());
else write(makeFiles(), word ?? here);

function makeFiles() {
  const samples = SAMPLES.flatMap((make) => make());
  const truth = `[\n${samples.map((s) => `  ${JSON.stringify(s.truth)}`).join(',\n')}\n]\n`;
  return [...samples, { file: 'truth.json', bytes: Buffer.from(truth) }];
}

function write(files, folder) {
  mkdirSync(folder, { recursive: true });
  for (const { file, bytes } of files) writeFileSync(join(folder, file), bytes);
  console.log(`${files.length} files written to ${folder}`);
}

function check(files) {
  const differing = files.filter(({ file, bytes }) => {
    const path = join(here, file);
    return !existsSync(path) || !readFileSync(path).equals(bytes);
  });
  for (const { file } of differing) console.error(`differs or is missing: ${file}`);
  if (differing.length === 0) console.log(`${files.length} files are as generated`);
  return differing.length === 0 ? 0 : 1;
}

// Vertices lie on the surface, so the error falls with h^2: the limit is the last plus a third of its gain.
function refine() {
  let before;
  for (const hMm of [7, 3.5, 1.75]) {
    const mesh = cleanTroll(hMm);
    const now = { volumeMm3: volume(mesh), areaMm2: area(mesh) };
    console.log({ hMm, triangles: mesh.triangles.length / 3, ...now, extentsMm: extents(mesh) });
    if (before) {
      const limit = (key) => now[key] + (now[key] - before[key]) / 3;
      console.log({ limitVolumeMm3: limit('volumeMm3'), limitAreaMm2: limit('areaMm2') });
    }
    before = now;
  }
}
