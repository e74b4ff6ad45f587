// npm run kills [-- --times 200 --seed 1]: kills the whole browser at a random moment while the built page saves, starts it again, and looks whether
// every record is the one of before or the one of after, and the page opens. Ends with a line that counts; fails with the first that is neither.
// `--app FOLDER` takes another built page than dist/app.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { preview } from 'vite';
import { builtApp, installedChromium } from './browser.mjs';
import { startBrowser } from './kills/browser.mjs';
import { openOracle, scriptOfSteps } from './kills/oracle.mjs';
import { storeRounds, typingRounds } from './kills/rounds.mjs';
import { lcg } from './lcg.mjs';
import { root } from './setup.mjs';

/** Killed no later than this after the work began: some dozen writes. Chosen here. */
const LONGEST_MS = 500;

const option = (name, usual) => {
  const at = process.argv.indexOf(name);
  return at < 0 ? usual : process.argv[at + 1];
};
const times = Number(option('--times', '200'));
const seed = Number(option('--seed', String(Date.now() % 1_000_000)));
const app = resolve(root, option('--app', 'dist/app'));
if (!(times > 0) || !Number.isInteger(seed)) throw new Error('--times and --seed take whole numbers.');
console.log(`${times} kills, seed ${seed}`);

const random = lcg(seed);

const folder = mkdtempSync(join(tmpdir(), 'risewright-kills-'));
const server = await preview({
  configFile: `${root}/vite.config.ts`,
  logLevel: 'error',
  build: { outDir: builtApp(app) },
  preview: { host: '127.0.0.1', port: 4610, strictPort: false },
});
let isSound = false;
try {
  const url = `http://127.0.0.1:${server.httpServer.address().port}/`;
  const oracle = await openOracle();
  const script = await scriptOfSteps();
  const begin = [() => storeRounds({ url, script, oracle }), () => typingRounds({ url })];
  const ways = begin.map((way, no) => ({ ...way(), profile: join(folder, String(no)) }));
  let killed = 0;
  let thrownAway = 0;
  // One start more than kills for each way: what the last one left is looked at too.
  for (let no = 0; no < times + ways.length; no++) {
    const at = no % ways.length;
    const way = ways[at];
    const { page, kill, hasThrownAway } = await startBrowser(installedChromium(), way.profile);
    try {
      console.log(`${String(no + 1).padStart(4)} ${way.name}: ${await way.look(page)}`);
      if (killed === times) continue;
      const working = way.work(page).catch(() => undefined);
      await Promise.race([
        working,
        new Promise((over) => globalThis.setTimeout(over, LONGEST_MS * random())),
      ]);
      killed++;
    } catch (fault) {
      if (!hasThrownAway()) throw fault;
      // Nothing of ours: it found a checksum of its own files wrong. Then the page has to say so.
      await page.getByText('What was kept here is gone').waitFor();
      thrownAway++;
      ways[at] = { ...begin[at](), profile: `${way.profile}-${no}` };
      console.log(
        `${String(no + 1).padStart(4)} ${way.name}: Chromium threw its database away, and the page said so`,
      );
    } finally {
      await kill();
    }
  }
  isSound = true;
  console.log(
    `${killed} kills, ${thrownAway} times Chromium found its own files damaged and began a new database, which the page said; else every record was the one of before or the one of after, and the page opened`,
  );
} finally {
  await server.close();
  if (isSound) rmSync(folder, { recursive: true, maxRetries: 5 });
  else console.error(`The profiles as they were found stay in ${folder}`);
}
