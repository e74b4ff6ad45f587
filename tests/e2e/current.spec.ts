import { binaryStl } from './solids';
import {
  ask,
  expect,
  gramsOf,
  hasBrowser,
  newPiece,
  pourTroll,
  soFar,
  soFarGrams,
  tape,
  test,
  toStep,
  trollScan,
  volumeCm3,
} from './ticket';
import type { Page } from '@playwright/test';

test.skip(!hasBrowser, 'no chromium was found');

/** What a person could read off the page in one frame. */
interface Frame {
  volume: string;
  grams: string;
  soFar: string;
  said: string;
  picture: string;
  busy: string[];
  working: string[];
}

/** Writes down every frame that differs from the one before, until it is asked for them. */
async function watchFrames(page: Page): Promise<() => Promise<Frame[]>> {
  await page.evaluate(() => {
    const frames: Frame[] = [];
    Object.assign(globalThis, { frames });
    const section = (ask: string): HTMLElement | undefined =>
      [...document.querySelectorAll<HTMLElement>('section.q')].find(
        (each) => each.querySelector('h2')?.textContent === ask,
      );
    const text = (element: Element | null | undefined): string => element?.textContent ?? '';
    const names = (of: (element: HTMLElement) => boolean): string[] =>
      [...document.querySelectorAll<HTMLElement>('section.q')]
        .filter(of)
        .map((each) => text(each.querySelector('h2')));
    const look = (): void => {
      frames.push({
        volume: text(section('What volume do we pour for?')?.querySelector('.ans')),
        grams: text(section('What do we weigh?')),
        soFar: text(document.querySelector('.sofar')),
        said: text(document.querySelector('p.sr[role=status]')),
        picture: text(document.querySelector('figure.card')),
        busy: names((each) => each.getAttribute('aria-busy') === 'true'),
        working: names((each) => text(each.querySelector('.ans')).startsWith('Working out')),
      });
      requestAnimationFrame(look);
    };
    look();
  });
  return async () => {
    const all = await page.evaluate(async () => {
      // The frame that is on its way counts too.
      for (let i = 0; i < 2; i++) await new Promise((drawn) => requestAnimationFrame(drawn));
      return (globalThis as unknown as { frames: Frame[] }).frames;
    });
    return all.filter((frame, i) => i === 0 || JSON.stringify(frame) !== JSON.stringify(all[i - 1]));
  };
}

interface Figures {
  cm3: number;
  a: number;
  b: number;
}

const plain = (text: string): string => text.replaceAll('\u202f', '');

/** From the first frame that differs on, none shows or says a figure of before. */
function expectNone(seen: readonly Frame[], { cm3, a, b }: Figures): void {
  // On a starved machine keystroke and answer may fall between two frames: then the first other frame shows the new figures.
  const changed = seen.findIndex(({ soFar }) => soFar !== seen[0]!.soFar);
  expect(changed).toBeGreaterThan(0);
  for (const frame of seen.slice(changed)) {
    const shown = [frame.volume, frame.grams, frame.soFar, frame.said].map(plain).join('|');
    for (const old of [cm3, a, b].map(String)) expect(shown.split(/\D/), shown).not.toContain(old);
  }
  for (const frame of seen)
    for (const ask of frame.working) expect(frame.busy, JSON.stringify(frame)).toContain(ask);
}

test('from the first keystroke on no frame of any screen shows a number of before, in ink or in speech', async ({
  page,
}) => {
  await pourTroll(page);
  const before = { cm3: await volumeCm3(page), ...(await soFarGrams(page)) };
  let frames = await watchFrames(page);
  await tape(page, '319.935');
  await expect(page.getByText('319.9 mm (12.60 in) tall', { exact: true })).toBeVisible();
  const after = { cm3: await volumeCm3(page), ...(await soFarGrams(page)) };
  expect(after.a).toBeGreaterThan(before.a);
  await expect(page.locator('section.q[aria-busy="true"]')).toHaveCount(0);
  let seen = await frames();
  expectNone(seen, before);
  const changed = seen.findIndex(({ volume }) => volume !== seen[0]!.volume);
  for (const { picture } of seen.slice(changed)) expect(picture).not.toContain('290.9 mm');
  // Volume, grams and head change together: in no frame does one of them belong to another tape.
  for (const { volume, soFar } of seen)
    expect(volume.startsWith('Working out')).toBe(/working out …/.test(soFar) && !/cm³/.test(soFar));
  expect(plain(seen.at(-1)!.said)).toContain(
    `quay-troll-scan.stl: Volume ${after.cm3} cubic centimeters. A ${after.a} grams`,
  );

  // Typed on Measure, and on to Batch at once: what stands there is of the new tape, or is being worked out.
  expect([await gramsOf(page, 'A'), await gramsOf(page, 'B')]).toEqual([after.a, after.b]);
  await toStep(page, 'Measure');
  frames = await watchFrames(page);
  await page.getByLabel('Taped height').fill('300');
  await toStep(page, 'Batch');
  expect(await gramsOf(page, 'A')).toBeLessThan(after.a);
  await expect(page.locator('section.q[aria-busy="true"]')).toHaveCount(0);
  seen = await frames();
  expectNone(seen, after);
  expect(seen.some(({ grams }) => grams !== '')).toBe(true);
  expect(seen.at(-1)!.busy).toEqual([]);
});

test('a pack that cannot be read, and one that is refused, take the grams away at once', async ({ page }) => {
  await pourTroll(page);
  const weigh = page.getByRole('region', { name: 'What do we weigh?' });
  const pack = page.getByRole('region', { name: 'How hard do we pack it?' });
  await page.getByLabel('Pack factor').fill('abc');
  await expect(weigh).toContainText('A field above cannot be read.');
  await expect(soFar(page)).toContainText('no grams');
  await page.getByLabel('Pack factor').fill('3');
  await expect(pack.getByText('Pack factor must be between')).toBeVisible();
  for (const section of [pack, weigh]) await expect(section.getByText('Stop', { exact: true })).toBeVisible();
  await expect(weigh.locator('[data-part]')).toHaveCount(0);
});

test('the ratio of a card the other way round is a check, until the card has a name of its own', async ({
  page,
}) => {
  await pourTroll(page);
  await page.getByRole('button', { name: 'Keep this card in the shop' }).click();
  await page.getByLabel(/Parts of A/).fill('50');
  await page.getByRole('button', { name: 'Put the card back' }).click();
  await expect(page.getByLabel(/Parts of A/)).toHaveValue('100');
  await page.getByLabel(/Parts of A/).fill('55');
  await page.getByLabel(/Parts of B/).fill('100');
  const row = page.getByRole('row').filter({ hasText: 'in the other order' });
  await expect(row).toContainText('Stop');
  await page.getByLabel('Name on the card').fill('Our own foam');
  await expect(row).toHaveCount(0);
  await expect(page.getByText('in the other order')).toHaveCount(0);
});

test('a second scan, of whatever name, brings nothing of the first', async ({ page }) => {
  await pourTroll(page);
  await toStep(page, 'Measure');
  await page.getByLabel(/Choose another scan/).setInputFiles(trollScan);
  await expect(page.getByRole('region', { name: 'Which way is up?' })).toContainText('+z of the file is up');
  await expect(page.getByLabel('Taped height')).toHaveValue('');
  await expect(soFar(page)).toHaveText(/no volume\s*no grams/);
  await toStep(page, 'Batch');
  await expect(ask(page, 'What do we weigh?')).toContainText('No grams yet');
  await expect(page.getByLabel('Parts of A')).toHaveValue('100');
});

test('a fault of ours is said as one, and a new try is had', async ({ page }) => {
  await page.addInitScript(() => {
    const Real = globalThis.Worker;
    let faults = 1;
    globalThis.Worker = class extends Real {
      override postMessage(
        message: { id: number; request?: { kind: string } },
        transfer: unknown = [],
      ): void {
        if (message.request?.kind === 'size' && faults-- > 0) {
          const data = { id: message.id, say: 'failed', message: 'expected X, got Y' };
          setTimeout(() => void this.onmessage?.({ data } as MessageEvent), 20);
          return;
        }
        super.postMessage(message, transfer as Transferable[]);
      }
    };
  });
  await newPiece(page);
  await page.getByRole('button', { name: 'Quay Troll head' }).click();
  const measure = page.getByRole('main');
  await expect(measure.getByText('A fault of ours: expected X, got Y. The file is untouched.')).toBeVisible();
  await expect(page.locator('p.sr[role=status]')).toContainText('A fault of ours');
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(measure.getByText('The file names no unit.')).toBeVisible();
  await expect(page.getByText('A fault of ours')).toHaveCount(0);
  await page.getByLabel('Taped height').fill('290.85');
  expect(await volumeCm3(page)).toBeGreaterThan(0);
});

test('a scan without a volume keeps its scale stated, and says why in its own question', async ({ page }) => {
  await newPiece(page);
  const buffer = binaryStl([[0, 0, 0, 90, 0, 0, 0, 90, 40]]);
  await page.getByLabel('Choose a scan').setInputFiles({ name: 'leaf.stl', mimeType: 'model/stl', buffer });
  await page.getByRole('radio', { name: 'Name the unit' }).check();
  await page.getByRole('radio', { name: 'an inch' }).check();
  const region = (name: string) => page.getByRole('region', { name });
  await expect(region('Is the scan sound?')).toContainText('No volume yet');
  await expect(region('Is the scan sound?').getByText('Stop', { exact: true })).toBeVisible();
  await expect(region('What volume do we pour for?')).toContainText('Question 5 says why.');
  await expect(region('How big is one unit in the file?')).toContainText('One unit is 25.4 mm');
});
