import type { Locator, Page } from '@playwright/test';
import { expect } from './ticket';

export const title = (page: Page): Locator => page.getByRole('heading', { level: 1 });
export const row = (page: Page, name: string): Locator =>
  page.getByRole('listitem').filter({ has: page.getByRole('heading', { name, exact: true }) });

export async function toShelf(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Back to the Shelf' }).click();
  await expect(title(page)).toHaveText('What have we got?');
}

export async function sampleShop(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Try the sample shop' }).click();
  await expect(row(page, 'Lamp Eel')).toContainText('cm³', { timeout: 60_000 });
}
