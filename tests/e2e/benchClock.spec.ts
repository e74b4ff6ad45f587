import type { BrowserContext, Page } from '@playwright/test';
import { APART_MS, button, clock, expectRight, title, toBench } from './benchPage';
import { expect, hasBrowser, pourTroll, test } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.slow();
test.use({ viewport: { width: 390, height: 844 } });

const HOUR_MS = 3_600_000;

interface Shifted {
  shift: { wall: number; mono: number };
}

/** The clocks of the device, to be set by the test, in a browser that keeps no screen awake. */
async function withClocks(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    const [day, ran] = [Date.now.bind(Date), performance.now.bind(performance)];
    const shift = { wall: 0, mono: 0 };
    Object.assign(globalThis, { shift });
    Date.now = () => day() + shift.wall;
    performance.now = () => ran() + shift.mono;
    Object.defineProperty(navigator, 'wakeLock', { value: undefined });
  });
}

const shiftBy = (page: Page, by: { wall: number; mono: number }): Promise<void> =>
  page.evaluate((to) => {
    const { shift } = globalThis as unknown as Shifted;
    shift.wall += to.wall;
    shift.mono += to.mono;
  }, by);

async function start(page: Page): Promise<number> {
  await pourTroll(page, { times: true });
  await toBench(page);
  await expect(button(page, 'I am mixing')).toBeVisible();
  const pressedAt = Date.now();
  await button(page, 'I am mixing').click();
  await expect(title(page)).toHaveText('Mixing');
  return pressedAt;
}

test('the clock is right after freezing, a clock that was set, a reload, a closed tab, in two tabs and in another time zone', async ({
  page,
  context,
  browser,
  baseURL,
}) => {
  await withClocks(context);
  const pressedAt = await start(page);
  await expect(page.getByText('this device may dim')).toBeVisible();

  // Frozen, with both clocks of the device ten minutes on.
  const cdp = await context.newCDPSession(page);
  await cdp.send('Page.setWebLifecycleState', { state: 'frozen' });
  await new Promise((over) => setTimeout(over, 1500));
  await cdp.send('Page.setWebLifecycleState', { state: 'active' });
  await expectRight(page, pressedAt);
  await shiftBy(page, { wall: 600_000, mono: 600_000 });
  await expectRight(page, pressedAt, 600_000);
  await expect(page.locator('.clocktold')).toBeEmpty();

  // Set back by an hour: it runs on, and says so.
  await shiftBy(page, { wall: -HOUR_MS, mono: 0 });
  await expect(page.getByText('The device’s clock was set back by 60 min.')).toBeVisible();
  await expectRight(page, pressedAt, 600_000);
  await button(page, 'Fold away').click();

  // Set ahead, or slept: not guessed.
  await shiftBy(page, { wall: HOUR_MS, mono: 0 });
  await expect(page.getByText('that cannot be told from here')).toBeVisible();
  await expectRight(page, pressedAt, 600_000);
  await page.getByRole('button', { name: /: the clock was set$/ }).click();
  await expect(page.locator('.clocktold')).toBeEmpty();
  await expectRight(page, pressedAt, 600_000);
  await page.waitForTimeout(APART_MS);
  await shiftBy(page, { wall: HOUR_MS, mono: 0 });
  await page.getByRole('button', { name: /: it slept, by the time of day$/ }).click();
  await expect(clock(page)).toHaveText(/^1:1\d:\d\d$/);

  // Hidden and asleep: the time of day is taken, and the other can be.
  await page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await shiftBy(page, { wall: 300_000, mono: 0 });
  await page.evaluate(() => {
    Reflect.deleteProperty(document, 'visibilityState');
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await expect(page.getByText('While this page was hidden, the time of day ran 5 min ahead')).toBeVisible();
  await expectRight(page, pressedAt, 600_000 + HOUR_MS + 300_000);
  await page.waitForTimeout(APART_MS);
  await page.getByRole('button', { name: /: the clock was set$/ }).click();
  await expectRight(page, pressedAt, 600_000 + HOUR_MS);

  // Undone and started anew, so that no page below needs the shifted clocks.
  await page.waitForTimeout(APART_MS);
  await button(page, 'Undo “I am mixing”').click();
  await shiftBy(page, { wall: -HOUR_MS - 900_000, mono: 0 });
  await page.waitForTimeout(APART_MS);
  const again = Date.now();
  await button(page, 'I am mixing').click();
  await expectRight(page, again);

  await page.reload();
  await expectRight(page, again);
  const other = await context.newPage();
  await other.goto(page.url());
  await expectRight(other, again);
  await button(other, 'Poured').click();
  await expect(title(page)).toHaveText('Close it');
  await page.close();
  await other.close();
  const anew = await context.newPage();
  await anew.goto(page.url());
  await expect(title(anew)).toHaveText('Close it');
  await expectRight(anew, again);

  // Another time zone changes the printed times of day alone.
  const began = await anew.getByText(/mixed at/).innerText();
  const state = await context.storageState({ indexedDB: true });
  const far = await browser.newContext({
    baseURL: baseURL!,
    serviceWorkers: 'block',
    storageState: state,
    timezoneId: 'Asia/Kathmandu',
  });
  const there = await far.newPage();
  await there.goto(page.url());
  await expectRight(there, again);
  const utc = /(\d\d):(\d\d):(\d\d)/.exec(began)!;
  const local = new Date(Date.UTC(2026, 0, 1, Number(utc[1]), Number(utc[2]), Number(utc[3])) + 345 * 60_000);
  await expect(there.getByText(`mixed at ${local.toISOString().slice(11, 19)}`)).toBeVisible();
  await far.close();
});
