// A Chromium of its own group of processes with a profile that outlives it, so that all of it can be killed at once and started again.
import { spawn } from 'node:child_process';
import { chromium } from '@playwright/test';

const FLAGS = [
  '--headless',
  '--window-size=1280,900',
  '--remote-debugging-port=0',
  '--no-sandbox',
  '--no-first-run',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-breakpad',
  '--disable-extensions',
  '--disable-sync',
  '--enable-logging=stderr',
];

/** Starts it; ends what it has started where it does not come up. */
export async function startBrowser(executablePath, profile) {
  const child = spawn(executablePath, [...FLAGS, `--user-data-dir=${profile}`, 'about:blank'], {
    // The leader of a group: its number, negative, means all of it.
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const log = { said: '' };
  child.stderr.on('data', (chunk) => (log.said += chunk));
  const gone = new Promise((resolve) => child.once('exit', resolve));
  const kill = async () => {
    try {
      process.kill(-child.pid, 'SIGKILL');
    } catch (fault) {
      if (fault.code !== 'ESRCH') throw fault;
    }
    await gone;
  };
  try {
    const browser = await chromium.connectOverCDP(await addressOf(child, gone, log));
    const [context] = browser.contexts();
    const page = context.pages()[0] ?? (await context.newPage());
    return { page, kill, hasThrownAway: () => THROWN_AWAY.test(log.said) };
  } catch (fault) {
    await kill();
    throw fault;
  }
}

/** What Chromium says where it found its own files damaged, and has begun a new database in the place of all it kept for the page. */
const THROWN_AWAY = /recovering from a corrupted \(and deleted\) database/;

/** Chromium says on which port it listens. */
function addressOf(child, gone, log) {
  return new Promise((resolve, reject) => {
    child.stderr.on('data', () => {
      const address = /DevTools listening on (ws:\S+)/.exec(log.said)?.[1];
      if (address !== undefined) resolve(address);
    });
    void gone.then(() => reject(new Error(`Chromium ended before it listened: ${log.said.slice(-500)}`)));
  });
}
