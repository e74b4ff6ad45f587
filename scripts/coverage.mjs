// npm run coverage [-- what vitest takes]: the branches that the unit tests take of the rooms that reckon, a line a room, and below it
// what is left, by kind. `--from FILE` counts an earlier run's coverage-final.json instead of running the tests.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { root } from './setup.mjs';

const ROOMS = ['geometry', 'yield', 'plan', 'job'];

/** What a branch that no test takes is for; the first that fits its line. */
const KINDS = [
  [
    'passes on a refusal of the room below',
    /\.ok\b.*return|return .*\.ok \?|\.ok === false|bad\('STOPPED'\)/,
  ],
  ['a fault of ours that throws', /throw /],
  ['an option left out', /=== undefined\s*\? \{\}|!== undefined \?/],
  ['a limit of size', /LIMIT|tooMany|MOST_/],
  ['a divisor or a list that is empty', /\|\| 1\b|\?\? 0\b|length === 0|=== 0 \?|> 0 \?/],
];

const OTHER = 'anything else';

const args = process.argv.slice(2);
const at = args.indexOf('--from');
const file = at < 0 ? join(root, 'coverage', 'coverage-final.json') : args[at + 1];
if (at < 0) {
  const { status } = spawnSync(
    process.execPath,
    ['node_modules/vitest/vitest.mjs', 'run', '--coverage', ...args],
    // What the tests say goes to stderr: the counts alone can be kept in a file.
    { cwd: root, stdio: ['ignore', 2, 2] },
  );
  if (status !== 0) {
    console.error('A test failed, see above; what was counted stands all the same.');
    process.exitCode = 1;
  }
}

const found = Object.values(JSON.parse(readFileSync(file, 'utf8'))).map((one) => ({
  path: relative(root, one.path).replaceAll(sep, '/'),
  branches: Object.entries(one.b).flatMap(([id, taken]) =>
    taken.map((times, n) => ({ times, line: lineOf(one.branchMap[id], n) })),
  ),
}));

for (const room of ROOMS) {
  const files = found.filter(({ path }) => path.startsWith(`src/${room}/`));
  if (files.length === 0) continue;
  const all = files.flatMap(({ path, branches }) => {
    const lines = readFileSync(join(root, path), 'utf8').split('\n');
    return branches.map((branch) => ({ ...branch, text: lines[branch.line - 1] ?? '' }));
  });
  const left = all.filter(({ times }) => times === 0);
  const share = (100 * (all.length - left.length)) / all.length;
  console.log(`${room}: ${all.length - left.length} of ${all.length} branches taken, ${share.toFixed(1)} %`);
  for (const kind of [...KINDS.map(([kind]) => kind), OTHER]) {
    const count = left.filter(({ text }) => kindOf(text) === kind).length;
    if (count > 0) console.log(`  ${String(count).padStart(3)} left: ${kind}`);
  }
}

/** Of an `else` that is not written, the line of its `if`. */
function lineOf({ locations, loc }, n) {
  return locations[n]?.start?.line ?? loc.start.line;
}

function kindOf(text) {
  return KINDS.find(([, pattern]) => pattern.test(text))?.[0] ?? OTHER;
}
