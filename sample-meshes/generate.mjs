/**
 * node sample-meshes/generate.mjs [OUTDIR]   writes all sample files (default: this folder)
 * node sample-meshes/generate.mjs --check    compares them with this folder; exit 1 names what differs
 * node sample-meshes/generate.mjs --fine DIR writes the finer versions that are too large to keep
 * node sample-meshes/generate.mjs --refine   the volumes of the sculpts on three grids each; writes nothing
 */
import { Buffer } from 'node:buffer';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { cleanEel, finVolume } from './generator/lamp-eel.mjs';
import { soundHand, unionFigures } from './generator/lighthouse-hand.mjs';
import { area, extents, volume } from './generator/measure.mjs';
import { joined } from './generator/mesh-ops.mjs';
import { cleanTroll } from './generator/quay-troll.mjs';
import { FINE_SAMPLES, SAMPLES } from './generator/samples.mjs';
import { cleanRock } from './generator/singing-rock.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const [word, folder] = process.argv.slice(2);

if (word === '--refine') refineAll();
else if (word === '--fine' && folder === undefined) fail('--fine needs a folder to write into');
else if (word === '--fine') write(makeFiles(FINE_SAMPLES, 'truth-fine.json'), folder);
else if (word === '--check') process.exitCode = check(makeFiles(SAMPLES, 'truth.json'));
else write(makeFiles(SAMPLES, 'truth.json'), word ?? here);

function makeFiles(makers, truthFile) {
  const samples = makers.flatMap((make) => make());
  const truth = `[\n${samples.map((s) => `  ${JSON.stringify(s.truth)}`).join(',\n')}\n]\n`;
  return [...samples, { file: truthFile, bytes: Buffer.from(truth) }];
}

function fail(why) {
  console.error(why);
  process.exitCode = 2;
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

function refineAll() {
  refine('troll', [7, 3.5, 1.75], (hMm) => figuresOf(cleanTroll(hMm)));
  refine('hand', [9, 4.5, 2.25], (hMm) => {
    const { hand, thumb } = soundHand(hMm);
    const { clean_volume_mm3, area_mm2 } = unionFigures(hand, thumb);
    return { ...figuresOf(joined([hand, thumb])), volumeMm3: clean_volume_mm3, areaMm2: area_mm2 };
  });
  refine('rock', [9, 6, 4], (hMm) => figuresOf(cleanRock(hMm)));
  refine('eel', [11, 5.5, 2.75], (hMm) => figuresOf(cleanEel(hMm)));
  for (const latticeMm of [1.6, 0.8, 0.4]) console.log({ latticeMm, finVolumeMm3: finVolume(latticeMm) });
}

function figuresOf(mesh) {
  const { triangles } = mesh;
  return {
    triangles: triangles.length / 3,
    volumeMm3: volume(mesh),
    areaMm2: area(mesh),
    extentsMm: extents(mesh),
  };
}

// Vertices lie on the surface, so the error falls with h^2, and the last two grids tell the limit.
function refine(name, gridsMm, make) {
  const rows = gridsMm.map((hMm) => ({ hMm, ...make(hMm) }));
  for (const row of rows) console.log(name, row);
  const [before, last] = rows.slice(-2);
  const gain = 1 / ((before.hMm / last.hMm) ** 2 - 1);
  const limit = (key) => last[key] + gain * (last[key] - before[key]);
  console.log(name, { limitVolumeMm3: limit('volumeMm3'), limitAreaMm2: limit('areaMm2') });
}
