// npm run fuzz -- [--minutes N] [--seed S] [--only NAME] [--at MUTANT]: bundles tests/fuzz and runs its rooms one after the other, each in a
// process of its own. The minutes are shared among the rooms. What fails is kept in fuzz-found/.
import { fork } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { clearInterval, setInterval } from 'node:timers';
import { parseArgs } from 'node:util';
import { root } from './setup.mjs';
import { bundleProgram } from './sources.mjs';

const ROOMS = ['stl-binary', 'stl-ascii', 'obj', 'ply', '3mf', 'backup', 'numbers', 'cli'];

/** Longest time for one mutant, ms. */
const HANG_MS = 10_000;

const { values } = parseArgs({
  options: {
    minutes: { type: 'string', default: '5' },
    seed: { type: 'string', default: String(Date.now() % 1e9) },
    only: { type: 'string' },
    at: { type: 'string' },
  },
});
const minutes = Number(values.minutes);
const seed = Number(values.seed);
const rooms = values.only === undefined ? ROOMS : values.only.split(',');
const unknown = rooms.find((room) => !ROOMS.includes(room));
if (
  unknown !== undefined ||
  !(minutes > 0) ||
  !Number.isSafeInteger(seed) ||
  (values.at !== undefined && rooms.length !== 1)
) {
  console.error(
    `fuzz: expected --minutes above 0, a whole --seed, --only of ${ROOMS.join(', ')}, and --at with one of them.`,
  );
  process.exit(2);
}
console.log(`seed ${seed}`);

// Not under version control.
const bundle = join(root, 'node_modules/.cache/risewright-fuzz/main.mjs');
const found = join(root, 'fuzz-found');
await bundleProgram('tests/fuzz/main.ts', bundle);

const results = [];
for (const room of rooms) results.push(await fuzz(room));
table(results);
process.exitCode = results.some(({ failures }) => failures > 0) ? 1 : 0;

/** Runs one room to its end; a process that dies or hangs is a failure, and the room goes on behind that mutant. */
async function fuzz(room) {
  const started = Date.now();
  const until = started + (60_000 * minutes) / rooms.length;
  const first = values.at === undefined ? 0 : Number(values.at);
  const last = values.at === undefined ? Number.MAX_SAFE_INTEGER : first + 1;
  const sum = { room, mutants: 0, read: 0, refused: 0, failures: 0, peakBytes: 0, notes: {} };
  for (let from = first; from < last && Date.now() < until;) {
    const ended = await runFrom(room, { from, last, until, sum });
    Object.assign(sum, added(sum, ended.count));
    for (const [note, times] of Object.entries(ended.notes)) sum.notes[note] = (sum.notes[note] ?? 0) + times;
    sum.peakBytes = Math.max(sum.peakBytes, ended.peakBytes);
    if (ended.fault === undefined) break;
    sum.failures++;
    kept(room, ended.begun, ended.fault);
    if (sum.failures >= 20) break;
    from = ended.begun + 1;
  }
  sum.seconds = (Date.now() - started) / 1000;
  progress(room, sum, '\n');
  return sum;
}

function runFrom(room, { from, last, until, sum }) {
  return new Promise((resolve) => {
    const child = fork(bundle, [room, seed, from, last, until, found].map(String), { cwd: root });
    let [begun, lastWord, fault, toldAt] = [undefined, Date.now(), undefined, 0];
    let told = { count: { mutants: 0, read: 0, refused: 0, failures: 0 }, notes: {}, peakBytes: 0 };
    child.on('message', (word) => {
      lastWord = Date.now();
      if (word.begun !== undefined) begun = word.begun;
      else told = word;
      if (word.count === undefined || Date.now() - toldAt < 5000) return;
      toldAt = Date.now();
      progress(room, added(sum, told.count), process.stdout.isTTY ? '\r' : '\n');
    });
    const watch = setInterval(() => {
      if (Date.now() - lastWord < HANG_MS) return;
      fault = `no answer within ${HANG_MS / 1000} s`;
      child.kill('SIGKILL');
    }, 500);
    child.on('exit', (code, signal) => {
      clearInterval(watch);
      if (code !== 0 && begun === undefined)
        throw new Error(`fuzz: expected ${room} to start, got exit ${code}`);
      if (code !== 0) fault ??= `the process ended: ${signal ?? `exit ${code}`}`;
      resolve({ ...told, begun, fault });
    });
  });
}

function added(sum, count) {
  return Object.fromEntries(Object.keys(count).map((key) => [key, sum[key] + count[key]]));
}

function kept(room, mutant, fault) {
  const again = `npm run fuzz -- --only ${room} --seed ${seed} --at ${mutant}`;
  mkdirSync(found, { recursive: true });
  writeFileSync(
    `${found}/${room}-${seed}-${mutant}.txt`,
    `${fault}\n\nSeed ${seed}, mutant ${mutant}. Again: ${again}\n`,
  );
  console.error(`${room} ${mutant}: ${fault}\n  ${again}`);
}

function progress(room, { mutants, refused, failures }, end) {
  process.stdout.write(
    `${room.padEnd(11)} ${mutants} mutants, ${refused} refused, ${failures} failures${end}`,
  );
}

function table(all) {
  const line = (cells) => cells.map((cell, k) => (k === 0 ? cell.padEnd(11) : cell.padStart(10))).join(' ');
  console.log(`\n${line(['', 'mutants', 'per second', 'refused', 'read', 'failures', 'peak MB'])}`);
  for (const { room, mutants, seconds, refused, read, failures, peakBytes } of all)
    console.log(
      line(
        [
          room,
          mutants,
          Math.round(mutants / seconds),
          refused,
          read,
          failures,
          Math.round(peakBytes / 1e6),
        ].map(String),
      ),
    );
  for (const { room, notes } of all)
    for (const [note, times] of Object.entries(notes).sort((a, b) => b[1] - a[1]))
      console.log(`${room}: ${times} x ${note}`);
}
