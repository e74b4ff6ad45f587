// npm run trace [-- --triangles 4000000]: opens a scan of a million triangles in the built page, has it computed, drawn and kept, turns its picture, loads
// the page again, and looks in the browser's own trace for what held up the page: the longest tasks of its main thread, with what they were, and how
// many frames a second the picture turned with. Fails when a task is longer than the page may be. To be run on a machine with nothing else to do: time that other programs take counts as well; `cpu` is what the page itself took.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { withBuiltPage } from './browser.mjs';

const asked = process.argv.indexOf('--triangles');
const triangles = asked < 0 ? 1_000_000 : Number(process.argv[asked + 1]);

/** The page answers within this; while a picture is handed to the graphics, within the second. */
const MOST_MS = 100;
const MOST_DRAWING_MS = 200;
const SHOWN = 8;
/** Keeping the scan goes on when its volume is there, and so do the molds. */
const AFTER_MS = 8000;
const TURN_MS = 6000;
const CATEGORIES = [
  'devtools.timeline',
  'disabled-by-default-devtools.timeline',
  'toplevel',
  'v8',
  '__metadata',
];

const folder = mkdtempSync(join(tmpdir(), 'risewright-trace-'));
const file = join(folder, 'pebble.stl');
const across = Math.round(Math.sqrt(triangles));
writeFileSync(file, pebble(across, Math.round(triangles / (2 * across)) + 1));
try {
  await withBuiltPage(({ browser, url }) => run(browser, url));
} finally {
  rmSync(folder, { recursive: true });
}

async function run(browser, url) {
  const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
  page.setDefaultTimeout(180_000);
  const traced = async (what, work) => {
    await browser.startTracing(page, { categories: CATEGORIES });
    await work();
    await page
      .getByText(/cm³, 19 times in 20/)
      .first()
      .waitFor();
    await page.locator('.card canvas').waitFor();
    await page.waitForTimeout(AFTER_MS);
    report(what, JSON.parse((await browser.stopTracing()).toString()).traceEvents);
  };
  await page.goto(url);
  await page.getByRole('button', { name: 'New piece', exact: true }).click();
  await page.getByLabel('Choose a scan').waitFor({ state: 'attached' });
  await page.waitForTimeout(3000);
  await traced('Opened, computed and kept', async () => {
    await page.getByLabel('Choose a scan').setInputFiles(file);
    await page.getByRole('radio', { name: '+z' }).check();
    await page.getByRole('radio', { name: 'Name the unit' }).check();
    await page.getByRole('radio', { name: 'a millimeter' }).check();
  });
  await turn(page);
  await traced('Loaded again, with the scan as it was kept', () => page.reload());
}

/** Drags the picture round for some seconds. */
async function turn(page) {
  const stage = page.locator('.card [data-picture]');
  await stage.scrollIntoViewIfNeeded();
  const { x, y, width, height } = await stage.boundingBox();
  const [cx, cy] = [x + width / 2, y + height / 2];
  await page.mouse.move(cx, cy);
  await page.mouse.down();
  await page.evaluate(() => {
    globalThis.turned = { frames: 0, begunMs: performance.now() };
    const next = () => {
      globalThis.turned.frames++;
      globalThis.requestAnimationFrame(next);
    };
    globalThis.requestAnimationFrame(next);
  });
  const endMs = Date.now() + TURN_MS;
  for (let i = 0; Date.now() < endMs; i++)
    await page.mouse.move(cx + (width / 3) * Math.sin(i / 20), cy + (height / 8) * Math.cos(i / 15));
  await page.mouse.up();
  const perS = await page.evaluate(
    () => (1000 * globalThis.turned.frames) / (performance.now() - globalThis.turned.begunMs),
  );
  console.log(`Turned: ${perS.toFixed(0)} frames a second.`);
}

function report(what, events) {
  const tasks = tasksOf(events);
  const over = tasks.filter(({ dur }) => dur > 1000 * MOST_DRAWING_MS);
  const longest = [...tasks].sort((a, b) => b.dur - a.dur).slice(0, SHOWN);
  console.log(
    `${what}: ${tasks.length} tasks of the main thread, ${tasks.filter(({ dur }) => dur > 1000 * MOST_MS).length} over ${MOST_MS} ms, ${over.length} over ${MOST_DRAWING_MS} ms. The longest:`,
  );
  for (const task of longest)
    console.log(`${ms(task.dur).padStart(6)} ms (cpu ${ms(task.tdur ?? 0)}) ${partsOf(events, task)}`);
  if (tasks.length === 0 || over.length > 0) process.exitCode = 1;
}

/** Tasks of the thread that runs the page, the outermost of each. */
function tasksOf(events) {
  const frames = events.find(({ name }) => name === 'TracingStartedInBrowser')?.args.data.frames ?? [];
  const shown = frames.find(({ url }) => url.startsWith('http'));
  const main = events.find(
    ({ name, args, pid }) =>
      name === 'thread_name' &&
      args.name === 'CrRendererMain' &&
      (shown === undefined || pid === shown.processId),
  );
  const runs = events
    .filter(({ pid, tid, ph }) => pid === main.pid && tid === main.tid && ph === 'X')
    .filter(({ name }) => name === 'RunTask' || name === 'ThreadControllerImpl::RunTask')
    .sort((a, b) => a.ts - b.ts || b.dur - a.dur);
  const outer = [];
  let end = 0;
  for (const run of runs) {
    if (run.ts + run.dur <= end) continue;
    end = run.ts + run.dur;
    outer.push(run);
  }
  return outer;
}

/** What a task was at, longest first, without what only wraps it. */
function partsOf(events, { pid, tid, ts, dur }) {
  const parts = events
    .filter(
      (e) => e.ph === 'X' && e.pid === pid && e.tid === tid && e.ts >= ts && e.ts + (e.dur ?? 0) <= ts + dur,
    )
    .filter(({ name, dur: part }) => !name.endsWith('RunTask') && part > 5000)
    .sort((a, b) => b.dur - a.dur)
    .slice(0, 6)
    .map(({ name, dur: part, args }) => {
      const { functionName = '', url, fileName, lineNumber, columnNumber } = args?.data ?? {};
      const script = (url ?? fileName ?? '').split('/').pop();
      return `${name}${script === '' ? '' : ` ${functionName}@${script}:${lineNumber}:${columnNumber}`} ${ms(part)}`;
    });
  return parts.join(', ');
}

function ms(us) {
  return (us / 1000).toFixed(0);
}

/** A pebble with waves on it, as a binary STL in mm: 2 * across * (down - 1) triangles, by formula. */
function pebble(across, down) {
  const bytes = Buffer.alloc(84 + 50 * 2 * across * (down - 1));
  bytes.write('a pebble, by formula');
  let count = 0;
  let at = 84;
  const point = (i, j) => {
    const theta = (Math.PI * j) / down;
    const phi = (2 * Math.PI * (i % across)) / across;
    const r = 90 + 4 * Math.sin(6 * theta) * Math.sin(5 * phi);
    return [
      r * Math.sin(theta) * Math.cos(phi),
      0.8 * r * Math.sin(theta) * Math.sin(phi),
      1.2 * r * Math.cos(theta),
    ];
  };
  const facet = (...corners) => {
    at += 12;
    for (const corner of corners) for (const x of corner) at = bytes.writeFloatLE(x, at);
    at += 2;
    count++;
  };
  for (let i = 0; i < across; i++) {
    facet(point(0, 0), point(i, 1), point(i + 1, 1));
    for (let j = 1; j < down - 1; j++) {
      facet(point(i, j), point(i, j + 1), point(i + 1, j + 1));
      facet(point(i, j), point(i + 1, j + 1), point(i + 1, j));
    }
    facet(point(i, down - 1), point(0, down), point(i + 1, down - 1));
  }
  bytes.writeUInt32LE(count, 80);
  return bytes;
}
