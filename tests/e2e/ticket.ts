import { test as base, expect, type Page } from '@playwright/test';
import { existsSync } from 'node:fs';
import { chromiumPath } from './chromium';

/** The page, watched: an error in its console, a fault in its scripts or a request to elsewhere fails the test. */
export const test = base.extend<{ watched: string[] }>({
  watched: [
    async ({ page, baseURL }, use) => {
      const heard: string[] = [];
      page.on('console', (message) => {
        if (message.type() === 'error') heard.push(`console: ${message.text()}`);
      });
      page.on('pageerror', (fault) => heard.push(`fault: ${fault.message}`));
      page.on('request', (request) => {
        const url = request.url();
        if (!url.startsWith(baseURL!) && !url.startsWith('data:') && !url.startsWith(`blob:${baseURL!}`)) {
          heard.push(`request: ${url}`);
        }
      });
      await use(heard);
      expect(heard).toEqual([]);
    },
    { auto: true },
  ],
});

export const hasBrowser = chromiumPath(process.env, existsSync) !== undefined;

export const trollScan = 'sample-meshes/quay-troll-scan.stl';

export async function openTroll(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Quay Troll head' }).click();
  await page.getByRole('radio', { name: '+y' }).check();
}

/** From a cold start to grams: y up, the tape's height, the light sample foam. */
export async function pourTroll(page: Page): Promise<void> {
  await openTroll(page);
  await page.getByLabel('Taped height').fill('290.85');
  await page.getByRole('button', { name: 'Use Sample Foam Light' }).click();
  await gramsOf(page, 'A');
}

/** The volume in the section that answers for it, cm3. */
export async function volumeCm3(page: Page): Promise<number> {
  const section = page.getByRole('region', { name: 'What volume do we pour for?' });
  await expect(section).toContainText('19 times in 20');
  await expect(section).toHaveAttribute('aria-busy', 'false');
  return numberIn(await section.locator('.fig').innerText());
}

/** The big figure of a part, g. */
export async function gramsOf(page: Page, part: 'A' | 'B'): Promise<number> {
  const section = page.getByRole('region', { name: 'What do we weigh?' });
  await expect(section).toHaveAttribute('aria-busy', 'false');
  return numberIn(await section.locator(`[data-part="${part}"]`).innerText());
}

export function numberIn(text: string): number {
  const match = /\d[\d\u202f]*(\.\d+)?/.exec(text);
  if (match === null) throw new Error(`numberIn: expected a number, got ${text}`);
  return Number(match[0].replaceAll('\u202f', ''));
}

export { expect };
