// npm run pack:try: packs what is built, installs the package into an empty folder without network and without install scripts, and tries there what
// it promises: it brings nothing else along, the command line answers, the library works with what comes beside it, and its types are found.
import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { npm, root } from './setup.mjs';

/** What a program of someone else does with the library. Strict, and no type of it may be any. */
const USE = `import { readFileSync } from 'node:fs';
import { makeSolid, planPour, readScan, say, sizeScan, type Outcome, type Size } from 'risewright';
const name = 'node_modules/risewright/sample-meshes/torus-r50-r12.stl';
const scan = readScan({ bytes: readFileSync(name), name });
const size: Outcome<Size> = scan.ok ? sizeScan(scan.value, { fileUnit: 'mm' }) : scan;
if (!size.ok) throw new Error(say(size.problem).text);
const foam = { freeRiseKgM3: { value: 96, from: 'data-sheet' }, ratio: { a: 100, b: 55, by: 'mass' } } as const;
const pour = planPour({ cavity: { size: size.value }, ...foam });
console.log(pour.ok ? \`A \${pour.value.batch.partAG} g, B \${pour.value.batch.partBG} g\` : say(pour.problem).text);
const corners = [0, 1, 2, 3, 4, 5, 6, 7].flatMap((n) => [n & 1, (n >> 1) & 1, n >> 2]);
const faces = [0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5];
const box = await makeSolid({ positions: Float64Array.from(corners), triangles: Int32Array.from(faces) });
console.log(box.ok ? String(box.value.volumeMm3) : say(box.problem).text);
// @ts-expect-error The library tells its types: a wrong one is an error.
export const wrong = () => planPour({ cavity: 5 });
`;

const folder = mkdtempSync(join(tmpdir(), 'risewright-pack-'));
const elsewhere = join(folder, 'elsewhere');
try {
  tryPackage();
} finally {
  rmSync(folder, { recursive: true, force: true });
}

function tryPackage() {
  mkdirSync(elsewhere);
  expect('npm pack', npm(['pack', '--ignore-scripts', '--silent', '--pack-destination', folder]) === 0);
  const file = readdirSync(folder).find((name) => name.endsWith('.tgz'));
  writeFileSync(join(elsewhere, 'package.json'), '{"private":true,"type":"module"}\n');
  const quietly = ['--offline', '--ignore-scripts', '--no-audit', '--no-fund', '--silent'];
  expect(
    'it installs without network',
    npm(['install', ...quietly, join(folder, file)], { cwd: elsewhere }) === 0,
  );

  const modules = readdirSync(join(elsewhere, 'node_modules')).filter((name) => !name.startsWith('.'));
  expect('it brings no other package along', modules.join() === 'risewright');
  const own = join(elsewhere, 'node_modules', 'risewright');
  for (const part of ['LICENSE', 'README.md', 'dist/THIRD_PARTY_LICENSES.txt'])
    expect(`${part} is in it`, existsSync(join(own, part)));
  expect('the page is not in it', !existsSync(join(own, 'dist', 'app')));
  const { scripts, dependencies } = JSON.parse(readFileSync(join(own, 'package.json'), 'utf8'));
  expect(
    'nothing of it runs when it is installed',
    !['preinstall', 'install', 'postinstall'].some((name) => name in scripts),
  );
  expect('it depends on nothing', dependencies === undefined);

  expect('its command is linked', existsSync(join(elsewhere, 'node_modules', '.bin', 'risewright')));
  const scan = join(own, 'sample-meshes', 'sphere-r50.stl');
  const program = join(own, 'dist', 'cli', 'risewright.js');
  const size = run([program, 'size', scan, '--file-unit', 'mm', '--json']);
  // 4/3 pi 50^3 mm3 is 523.6 cm3; facets of a ball lie within it, here by at most half a percent.
  const cm3 = JSON.parse(size).result.volume_cm3;
  expect(`its command sizes a ball of 523.6 cm3 (${cm3})`, cm3 > 521 && cm3 < 523.6);

  writeFileSync(join(elsewhere, 'use.mts'), USE);
  const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
  const node = ['--typeRoots', join(root, 'node_modules', '@types'), '--types', 'node'];
  const strict = ['--strict', '--target', 'es2023', '--lib', 'es2023', ...node];
  // Node's own way of finding modules is the strictest; what it finds, bundlers find.
  run([tsc, ...strict, '--module', 'nodenext', 'use.mts']);
  console.log('ok: its types are found');
  const [grams, boxMm3] = run(['use.mjs']).trim().split('\n');
  expect(`its library weighs A and B (${grams})`, /^A \d+ g, B \d+ g$/.test(grams));
  expect(`its library makes solids (a box of 1 mm, ${boxMm3} mm3)`, boxMm3 === '1');
}

function run(args) {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: elsewhere, encoding: 'utf8' });
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}\n${stdout}\n${stderr}`);
  return stdout;
}

function expect(what, is) {
  if (!is) throw new Error(`Not so: ${what}`);
  console.log(`ok: ${what}`);
}
