import type { Locator, Page } from '@playwright/test';
import { expect } from './ticket';

/** Longer than a bounce. */
export const APART_MS = 800;

export const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });
export const title = (page: Page): Locator => page.getByRole('heading', { level: 1 });
export const clock = (page: Page): Locator => page.getByRole('timer');

/** From the rail of the ticket. */
export async function toBench(page: Page): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Ticket' })
    .getByRole('link', { name: /^Bench/ })
    .click();
  await expect(title(page)).toHaveText('Ready?');
}

/** Seconds on the counting clock. */
async function shownS(page: Page): Promise<number> {
  const shown = await clock(page).innerText();
  return shown.split(':').reduce((s, part) => 60 * s + Number(part), 0);
}

/** The clock shows what has passed since the press, as the test's own clock has it. `extraMs`: what was added on purpose. */
export async function expectRight(page: Page, pressedAt: number, extraMs = 0): Promise<void> {
  await expect(clock(page)).toBeVisible();
  await expect(async () => {
    const s = await shownS(page);
    const realS = (Date.now() - pressedAt + extraMs) / 1000;
    expect(Math.abs(s - realS)).toBeLessThan(1.6);
  }).toPass({ timeout: 5000 });
}
