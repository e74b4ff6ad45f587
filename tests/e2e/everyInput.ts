import type { Page } from '@playwright/test';
import { ask, box, expect, soFar, type Step } from './ticket';

/** One thing that is said, as one step to take back, and how the button calls it. */
export interface Saying {
  step: Step;
  calls: string;
  say: (page: Page) => Promise<unknown>;
}

/** Every kind of input, in the order of the ticket. What is of one kind stands in one row. */
export const ROWS: readonly (readonly Saying[])[] = [
  [
    saying('Measure', 'another scan', async (page) => {
      await page.getByRole('button', { name: 'Quay Troll head' }).click();
      await expect(ask(page, 'What did you scan?')).toContainText('quay-troll-scan.stl');
    }),
  ],
  [saying('Measure', 'the way up', (page) => page.getByRole('radio', { name: '+y', exact: true }).check())],
  [
    typed('Measure', 'the taped length', 'Taped height', '11.45'),
    saying('Measure', 'the taped length', (page) => box(page, 'Unit of the taped length').selectOption('in')),
  ],
  [saying('Measure', 'the cut', (page) => box(page, 'Slide the plane up or down').fill('12'))],
  [saying('Measure', 'the cut', (page) => press(page, 'Cut at the typed height'))],
  [saying('Mold', 'the mold', (page) => page.getByRole('radio', { name: 'Brushed skin' }).check())],
  [saying('Mold', 'what is known of it', (page) => box(page, 'Cure').selectOption('addition'))],
  [
    typed('Mold', 'the skin thickness', 'Skin thickness', '7.5'),
    typed('Mold', 'the kits', 'Kits it is sold in, with prices', '1.1 kg=30, 5.5 kg=130'),
    letters('Mold', 'the mold', 'Name on the silicone card', 'Sample'),
  ],
  [
    saying('Mold', 'the mold', async (page) => {
      await page.getByText('How it is mixed').click();
      await page.getByRole('checkbox', { name: 'Degassed under vacuum' }).check();
    }),
  ],
  [
    saying('Mold', 'the vents', (page) => press(page, 'Add a vent')),
    typed('Mold', 'the z of vent 1', 'z of vent 1', '-12.5'),
  ],
  [
    letters('Batch', 'the foam card', 'Name on the card', 'Sample Foam Light'),
    typed('Batch', 'the free rise', 'Free-rise density', '6'),
    typed('Batch', 'the parts of A', /Parts of A/, '100'),
    typed('Batch', 'the parts of B', /Parts of B/, '55'),
  ],
  [
    saying('Batch', 'the foam card', (page) =>
      page.getByRole('radio', { name: 'cup test of today' }).check(),
    ),
  ],
  [saying('Batch', 'the pack factor', (page) => page.getByRole('radio', { name: 'Pack 1.45' }).check())],
  [
    saying('Batch', 'the color', (page) => press(page, 'Add a color')),
    letters('Batch', 'the color', 'Name of color 1', 'moss'),
    typed('Batch', 'the share of color 1', 'Share of color 1', '1.5'),
  ],
  [
    saying('Batch', 'what is known of the pour', (page) => box(page, 'Mixed by').selectOption({ index: 1 })),
    typed('Batch', 'the B in the cup', /in the cup, as read/, '207'),
  ],
];

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();

function saying(step: Step, calls: string, say: Saying['say']): Saying {
  return { step, calls, say };
}

function typed(step: Step, calls: string, label: string | RegExp, text: string): Saying {
  return { step, calls, say: (page) => page.getByLabel(label, { exact: true }).fill(text) };
}

/** Key by key, which is one step all the same. */
function letters(step: Step, calls: string, label: string, text: string): Saying {
  return { step, calls, say: (page) => box(page, label).pressSequentially(text) };
}

/** What stands on the screen: every box and choice of it, and volume and grams in the head; the silicone only where it is waited for. */
export async function standing(page: Page, { silicone = false } = {}): Promise<string[]> {
  await expect(page.locator('section.q').first()).toBeVisible();
  await expect(soFar(page)).not.toContainText(silicone ? '…' : 'working out');
  const boxes = await page.evaluate(() => {
    const stands = (e: HTMLInputElement | HTMLSelectElement): string => {
      const name = e.getAttribute('aria-label') ?? e.labels?.[0]?.textContent ?? '';
      const isTick = e instanceof HTMLInputElement && /checkbox|radio/.test(e.type);
      return `${name}: ${isTick ? String(e.checked) : e.value}`;
    };
    return [
      ...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>(
        'section.q :is(input:not([type=file]), select)',
      ),
    ].map(stands);
  });
  const head = await soFar(page).innerText();
  const parts = silicone ? await page.locator('[data-part]').allInnerTexts() : [];
  return [
    ...boxes.filter((one) => one !== AS_PICTURE_COMES),
    silicone ? head : withoutSilicone(head),
    ...parts,
  ];
}

/** Offered once the picture is there, which nothing waits for. */
const AS_PICTURE_COMES = 'two points on the picture: false';

export const withoutSilicone = (head: string): string => head.replace(/\S+ kg of silicone/, '').trim();

export const expectKept = (page: Page): Promise<void> => expect(page.getByText('All is kept.')).toBeVisible();

/** What is on the disk of the only piece, read without any code of the page, but what the engine found out and the name it got with its scan. */
export async function onDisk(page: Page): Promise<unknown> {
  await expectKept(page);
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('risewright');
        opening.onerror = () => reject(new Error('no database'));
        opening.onsuccess = () => {
          const asked = opening.result.transaction('pieces').objectStore('pieces').getAll();
          asked.onsuccess = () => {
            opening.result.close();
            const [{ name: _name, code: _code, ...said }] = asked.result as [Record<string, unknown>];
            const text = JSON.stringify(said, (key, value: unknown) => (key === 'seen' ? undefined : value));
            resolve(JSON.parse(text));
          };
        };
      }),
  );
}
