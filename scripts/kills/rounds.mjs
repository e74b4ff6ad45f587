// Two ways to be at work when the browser is killed. Each knows what must be there at the next start.

/** More steps than a browser does before it is killed. */
const STEPS_AHEAD = 400;

/** Every write of the store, one after the other, on the page of the Shelf. What stands afterwards must be what one of the steps left. */
export function storeRounds({ url, script, oracle }) {
  let kept = 0;
  let begun = 0;
  return {
    name: 'store',
    /** Opens the page, looks at what is there, and says which step it is. */
    async look(page) {
      await page.goto(url);
      await page.getByRole('heading', { level: 1, name: 'What have we got?' }).waitFor({ state: 'attached' });
      await page.evaluate(script);
      const found = await page.evaluate(async () => {
        globalThis.store = globalThis.kills.openStore('risewright');
        return globalThis.kills.digestOf(globalThis.store);
      });
      for (let steps = kept; steps <= kept + STEPS_AHEAD; steps++) {
        if ((await oracle.digestAfter(steps)) !== found) continue;
        const more = steps - kept;
        const told = `${steps} steps, ${more} more than were told as kept; killed at: ${begun > kept ? oracle.stepName(kept) : 'between two steps'}`;
        kept = begun = steps;
        return told;
      }
      const near = [kept, kept + 1, kept + 2].map((steps) => oracle.digestAfter(steps));
      throw new Error(
        `no step from ${kept} on has left what stands there:\n${found}\nbut:\n${(await Promise.all(near)).join('\n')}`,
      );
    },
    /** Begins to write and does not end. */
    work(page) {
      page.on('console', (message) => {
        const [word, no] = message.text().split(' ');
        if (word === 'begun') begun = Number(no) + 1;
        if (word === 'kept') kept = Number(no) + 1;
      });
      return page.evaluate(
        async ({ from, steps }) => {
          for (let no = from; no < from + steps; no++) {
            console.log(`begun ${no}`);
            await globalThis.kills.doStep(globalThis.store, no);
            console.log(`kept ${no}`);
          }
        },
        { from: kept, steps: STEPS_AHEAD },
      );
    },
  };
}

/** Two boxes of a ticket typed in turn, as fast as the page takes it. */
export function typingRounds({ url }) {
  let place;
  const kept = { no: 0 };
  /** The last turn of which both boxes stand there. */
  let whole = 0;
  return {
    name: 'typing',
    async look(page) {
      await page.goto(place ?? url);
      if (place === undefined) {
        await page.getByRole('button', { name: 'New piece', exact: true }).click();
        await page.getByRole('navigation', { name: 'Ticket' }).getByRole('link', { name: 'Batch' }).click();
        await page.getByLabel('Name on the card', { exact: true }).waitFor();
        place = page.url();
        return 'a new piece';
      }
      const [name, riser] = await Promise.all(
        ['Name on the card', 'Residue in the cup'].map(async (label) => {
          const box = page.getByLabel(label, { exact: true });
          await box.waitFor();
          return Number((await box.inputValue()).replace('foam ', ''));
        }),
      );
      // The name is typed first, then the other: both are of one turn, or the name is one ahead.
      if (name !== riser && name !== riser + 1)
        throw new Error(`the boxes say ${name} and ${riser}: of no one moment`);
      if (name < kept.no)
        throw new Error(`the boxes say ${name} and ${riser}, and ${kept.no} was told as kept`);
      const told = `typed up to ${name}, ${name - kept.no} more than were told as kept`;
      kept.no = name;
      whole = riser;
      return told;
    },
    work(page) {
      page.on('console', (message) => {
        const [word, no] = message.text().split(' ');
        if (word === 'kept') kept.no = Math.max(kept.no, Number(no));
      });
      return page.evaluate(async (from) => {
        const boxOf = (label) =>
          [...globalThis.document.querySelectorAll('label')].find(
            ({ textContent }) => textContent.trim() === label,
          ).control;
        const set = Object.getOwnPropertyDescriptor(globalThis.HTMLInputElement.prototype, 'value').set;
        const type = (label, text) => {
          const box = boxOf(label);
          set.call(box, text);
          box.dispatchEvent(new globalThis.Event('input', { bubbles: true }));
        };
        const pause = (ms) => new Promise((over) => globalThis.setTimeout(over, ms));
        for (let no = from + 1; ; no++) {
          type('Name on the card', `foam ${no}`);
          await pause(no % 3);
          type('Residue in the cup', String(no));
          await pause(no % 5);
          if (no % 4 !== 0) continue;
          while (!globalThis.document.body.innerText.includes('All is kept.')) await pause(2);
          console.log(`kept ${no}`);
        }
      }, whole);
    },
  };
}
