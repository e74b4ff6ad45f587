import { test as base, expect, type Locator, type Page } from '@playwright/test';
import { existsSync } from 'node:fs';
import { chromiumPath } from '../../scripts/chromium.mjs';

/** What goes wrong in a page: an error in its console, a fault in its scripts, a request to elsewhere. Fills as it goes on. */
export function watch(page: Page, baseURL: string): string[] {
  const heard: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') heard.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (fault) => heard.push(`fault: ${fault.message}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(baseURL) && !url.startsWith('data:') && !url.startsWith(`blob:${baseURL}`)) {
      heard.push(`request: ${url}`);
    }
  });
  return heard;
}

/** The page, watched: what goes wrong in it fails the test. */
export const test = base.extend<{ watched: string[] }>({
  watched: [
    async ({ page, baseURL }, use) => {
      const heard = watch(page, baseURL!);
      await use(heard);
      expect(heard).toEqual([]);
    },
    { auto: true },
  ],
});

export const hasBrowser = chromiumPath(process.env, existsSync) !== undefined;

export const trollScan = 'sample-meshes/quay-troll-scan.stl';

export type Step = 'Measure' | 'Mold' | 'Batch';

/** Fresh from the Shelf: a piece of which nothing is known. */
export async function newPiece(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'New piece', exact: true }).click();
  await expect(titleOf(page)).toHaveText('Measure');
  await expect(titleOf(page)).toBeFocused();
}

const titleOf = (page: Page): Locator => page.getByRole('heading', { level: 1 });

/** The step in the ticket's rail. */
export const railLink = (page: Page, step: Step): Locator =>
  page.getByRole('navigation', { name: 'Ticket' }).getByRole('link', { name: step });

/** To a screen of the piece by the rail, without loading the page again; there already: nothing. */
export async function toStep(page: Page, step: Step): Promise<void> {
  await expect(titleOf(page)).toHaveText(/^(Measure|Mold|Batch)$/);
  if ((await titleOf(page).innerText()) === step) return;
  await railLink(page, step).click();
  await expect(titleOf(page)).toHaveText(step);
  await expect(titleOf(page)).toBeFocused();
}

/** A question of the screen. */
export const ask = (page: Page, name: string): Locator =>
  page.getByRole('main').getByRole('region', { name, exact: true });

export const box = (page: Page, label: string): Locator => page.getByLabel(label, { exact: true });

export async function openTroll(page: Page): Promise<void> {
  await newPiece(page);
  await page.getByRole('button', { name: 'Quay Troll head' }).click();
  await page.getByRole('radio', { name: '+y' }).check();
}

/** On Measure, from where it stays to be seen what it does. */
export async function tape(page: Page, text: string): Promise<void> {
  await toStep(page, 'Measure');
  await page.getByLabel('Taped height').fill(text);
}

/** On Batch: the card of an invented foam as its data sheet would have it, with its times where they are needed. */
export async function useLightFoam(page: Page, { times = false } = {}): Promise<void> {
  await toStep(page, 'Batch');
  await box(page, 'Name on the card').fill('Sample Foam Light');
  await box(page, 'Free-rise density').fill('6.0');
  await page.getByLabel(/Parts of A/).fill('100');
  await page.getByLabel(/Parts of B/).fill('55');
  await page.getByLabel(/Density of part A/).fill('1.10');
  await page.getByLabel(/Density of part B/).fill('1.20');
  if (!times) return;
  await box(page, 'Cream time').fill('40');
  await box(page, 'May be opened after, data sheet').fill('25');
}

/** On Mold: the card of an invented silicone. */
export async function useSilicone(page: Page): Promise<void> {
  await toStep(page, 'Mold');
  await box(page, 'Name on the silicone card').fill('Sample Silicone 25');
  await box(page, 'Cure').selectOption('condensation');
  await box(page, 'Density of the mix').fill('1.18');
  await box(page, 'Parts of base, by weight').fill('10');
  await box(page, 'Parts of catalyst, by weight').fill('1');
  await box(page, 'Pot life').fill('25');
  await box(page, 'Kits it is sold in, with prices').fill('1.1 kg=30, 5.5 kg=130');
  await box(page, 'Linear shrink, data sheet').fill('0.2');
}

/** From a cold start to grams: y up, the tape's height, the light sample foam. Ends on Batch. */
export async function pourTroll(page: Page, { times = false } = {}): Promise<void> {
  await openTroll(page);
  await tape(page, '290.85');
  await useLightFoam(page, { times });
  await gramsOf(page, 'A');
}

/** The volume in the question of Measure that answers for it, cm3. Goes there. */
export async function volumeCm3(page: Page): Promise<number> {
  await toStep(page, 'Measure');
  const section = ask(page, 'What volume do we pour for?');
  await expect(section).toContainText('19 times in 20');
  await expect(section).toHaveAttribute('aria-busy', 'false');
  return numberIn(await section.locator('.fig').innerText());
}

/** The big figure of a part on Batch, g. Goes there. */
export async function gramsOf(page: Page, part: 'A' | 'B'): Promise<number> {
  await toStep(page, 'Batch');
  const section = ask(page, 'What do we weigh?');
  await expect(section).toHaveAttribute('aria-busy', 'false');
  return numberIn(await section.locator(`[data-part="${part}"]`).innerText());
}

/** What it has come to, in the head of every screen of a ticket. */
export const soFar = (page: Page): Locator => page.locator('.sofar');

/** The grams of all cups in the head, on whatever screen. */
export async function soFarGrams(page: Page): Promise<{ a: number; b: number }> {
  await expect(soFar(page)).not.toContainText('working out');
  const [a, b] = await soFar(page).locator('.pair strong').allInnerTexts();
  return { a: numberIn(a!), b: numberIn(b!) };
}

export function numberIn(text: string): number {
  const match = /\d[\d\u202f]*(\.\d+)?/.exec(text);
  if (match === null) throw new Error(`numberIn: expected a number, got ${text}`);
  return Number(match[0].replaceAll('\u202f', ''));
}

export { expect };
