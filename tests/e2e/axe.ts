import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** WCAG 2.2, levels A and AA, by the names that axe has for its parts. */
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/**
 * What axe finds against WCAG 2.2 AA in the page as it stands, a line a rule: its name and the elements. In the page itself, which has
 * no frames: by itself axe opens another page to sum up those of all frames. The elements that pass are not written down.
 */
export async function axeFindings(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .options({ resultTypes: ['violations'] })
    .withTags(WCAG)
    .setLegacyMode()
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}
