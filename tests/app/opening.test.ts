import { describe, expect, it } from 'vitest';
import { openingMark } from '../../src/app/opening/openingMark';
import { asksOf } from '../../src/app/ticket/asks';
import { textOf, type FieldName } from '../../src/app/ticket/fields';
import { ventFields } from '../../src/app/ticket/madeFields';
import { bestUpNow, moldNow, openingNow, pourNow, searchKeyOf, sizeNow } from '../../src/app/ticket/now';
import { fieldOfOpening } from '../../src/app/ticket/openingBounds';
import { halfPlaces, openingAskOf, unreadForOpening } from '../../src/app/ticket/openingWishes';
import { newTicket, type Ticket } from '../../src/app/ticket/state';
import { announceOpening } from '../../src/app/words/announceOpening';
import { fillSentence } from '../../src/app/words/openingPhrases';
import { upWords } from '../../src/app/words/openingWays';
import type { Desk } from '../../src/worker/answer';
import { expectClose } from '../support/close';
import { openBox, poured, settle, step, still, type } from './pageEngine';

const wanted = { do: 'wantOpening' } as const;

/** The box of 100 x 100 x 200 mm, poured base up, with its opening and way out worked out: once, a ticket is never changed. */
const opened = (): { ticket: Ticket; desk: Desk } => (once ??= open());
let once: { ticket: Ticket; desk: Desk } | undefined;

function open(): { ticket: Ticket; desk: Desk } {
  const { ticket, desk } = poured();
  return { ticket: settle(step(ticket, wanted), desk), desk };
}

const vent = (row: number, axis: number): FieldName => ventFields(row)[axis]!;

describe('opening and way out on the page', () => {
  it('are not worked out until someone comes to look: it takes seconds', () => {
    const { ticket } = poured();
    expect(openingNow(ticket)).toEqual({ state: 'open' });
    expect(asksOf(ticket).map(({ job }) => job)).not.toContain('opening');
    expect(asksOf(step(ticket, wanted)).map(({ job }) => job)).toContain('opening');
  });

  it('take the free rise of Batch: the liquid is pack times free rise times cavity over the density of the mix', () => {
    const { ticket } = opened();
    const { opening } = openingNow(ticket).answer!;
    // 6 lb/ft3 are 96.11 kg/m3, pack 1.3 as assumed, 2000 cm3; A 1.10 and B 1.20 g/mL, 100:55 by mass.
    const mixKgM3 = 155 / (100 / 1100 + 55 / 1200);
    expectClose(opening.liquidCm3!, (1.3 * 96.11076 * 2000) / mixKgM3, 1e-5, 'liquid');
  });

  it('take the time that the cream time of Batch leaves, until one is typed', () => {
    const { ticket } = poured();
    const left = openingAskOf(ticket)!.pour!.withinS!;
    expect(left).toBeGreaterThan(0);
    expect(left).toBeLessThan(40);
    expect(openingAskOf(step(ticket, ...type('pourWithin', '25')))!.pour!.withinS).toBe(25);
    expect(openingAskOf(step(ticket, ...type('cream', '')))!.pour).not.toHaveProperty('withinS');
  });

  it('fill a box without a pocket, base up, where the base is chosen for the opening', () => {
    const plan = openingNow(opened().ticket).answer!;
    expect(plan.opening.placedBy).toBe('base');
    expect(fillSentence(plan)).toBe('No air pockets, base up');
    expect(announceOpening(opened().ticket)).toMatch(/^No air pockets, base up; /);
  });

  it('are nothing from the first keystroke in a field of theirs on, while volume and grams stay', () => {
    const { ticket } = opened();
    const typed = step(ticket, ...type('openWide', '30'));
    expect(openingNow(typed)).toEqual({ state: 'working' });
    expect(announceOpening(typed)).toBe('');
    expect(openingMark(typed)).toBe('open');
    expect([sizeNow(typed).state, pourNow(typed).state]).toEqual(['answered', 'answered']);
  });

  it('stay, and are not asked anew, while something else is typed', () => {
    const { ticket } = opened();
    for (const other of ['siliconeWaste', 'priceA', 'mold.block.wallMm'] as const) {
      const typed = step(ticket, ...type(other, '8'), still);
      expect(openingNow(typed).answer, other).toBe(openingNow(ticket).answer);
      expect(
        asksOf(typed).map(({ job }) => job),
        other,
      ).not.toContain('opening');
    }
  });

  it('go with the size and with the scan', () => {
    const { ticket, desk } = opened();
    expect(openingNow(step(ticket, ...type('tape', '210'))).state).toBe('working');
    const said = step(
      ticket,
      ...type('openX', '3'),
      { do: 'addVents', atMm: [[1, 2, 3]] },
      { do: 'pourWay', way: 'back' },
    );
    const again = openBox(step(said, ...type('breakStretch', '400')), desk);
    expect(again.venting).toEqual(newTicket().venting);
    expect([again.fields.openX.text, textOf(again.fields, vent(0, 0)).text]).toEqual(['', '']);
    // The rubber is the shop's own.
    expect(again.fields.breakStretch.text).toBe('400');
  });

  it('are asked again after a cancel, once they are wanted again', () => {
    const { ticket } = opened();
    const asked = step(ticket, ...type('openWide', '31'), still);
    const { key } = asksOf(asked).find(({ job }) => job === 'opening')!;
    const cancelled = step(asked, { do: 'start', job: 'opening', key }, { do: 'cancel' });
    expect(openingNow(cancelled)).toEqual({ state: 'cancelled' });
    expect(cancelled.fields.openWide.text).toBe('31');
    expect(asksOf(cancelled).map(({ job }) => job)).not.toContain('opening');
    expect(asksOf(step(cancelled, wanted)).map(({ job }) => job)).toContain('opening');
  });
});

describe('what is said of opening and vents', () => {
  it('is told to the engine in mm, shares and directions, and nothing else', () => {
    const ticket = step(
      newTicket(),
      ...type('openWide', '1 in'),
      ...type('openX', '-12,5'),
      ...type('openY', '0'),
      ...type('openZ', '140 mm'),
      ...type('mixViscosity', '900 cP'),
      ...type('breakStretch', '450'),
      ...type('ventWide', '3'),
      { do: 'addVents', atMm: [[1.26, -2, 3]] },
      { do: 'pourWay', way: 'right' },
    );
    expect(openingAskOf(ticket)).toEqual({
      opening: { atMm: [-12.5, 0, 140], diameterMm: 25.4 },
      pour: { mixPaS: 0.9 },
      pourUp: [1, 0, 0],
      vents: [[1.3, -2, 3]],
      ventMm: 3,
      rubber: { elongationAtBreak: 4.5 },
    });
  });

  it('has the base that was chosen for the mold', () => {
    const closed = step(newTicket(), { do: 'moldPick', field: 'mold.block.base', value: 'closed' });
    expect(openingAskOf(closed)!.base).toBe('closed');
  });

  it.each(['-3', '0', 'wide', '1,250'])('is not worked out with an opening of %s mm', (text) => {
    const { ticket } = opened();
    const typed = step(ticket, ...type('openWide', text), still);
    expect(openingNow(typed)).toEqual({ state: 'unread', field: 'openWide' });
    expect(['stop', 'look']).toContain(openingMark(typed));
    expect(typed.fields.openWide.text).toBe(text);
  });

  it.each([
    ['openWide', '400'],
    ['ventWide', '0.05'],
    ['mixViscosity', '5000'],
    ['pourWithin', '0.01'],
    ['breakStretch', '3'],
  ] as const)('is refused at the box: %s of %s', (field, text) => {
    const { ticket } = opened();
    const typed = step(ticket, ...type(field, text), still);
    const { problem } = openingNow(typed);
    expect(problem?.code).toBe('INPUT_OUT_OF_BOUNDS');
    expect(fieldOfOpening(problem!)).toBe(field);
    expect(asksOf(typed).map(({ job }) => job)).not.toContain('opening');
    expect(openingMark(typed)).toBe('stop');
  });

  it('does not guess the rest of a place', () => {
    const half = step(newTicket(), ...type('openX', '3'));
    expect(halfPlaces(half)).toEqual(['openY', 'openZ']);
    expect(unreadForOpening(half)).toBe('openY');
    expect(openingAskOf(half)).toBeUndefined();
  });
});

describe('rows of vents', () => {
  const three = step(newTicket(), {
    do: 'addVents',
    atMm: [
      [1, 1, 1],
      [2, 2, 2],
      [3, 3, 3],
    ],
  });
  const firsts = (ticket: Ticket): string[] =>
    Array.from({ length: ticket.venting.rows }, (_, row) => textOf(ticket.fields, vent(row, 0)).text);

  it('close up when one is taken out', () => {
    const two = step(three, { do: 'dropVent', row: 1 });
    expect(firsts(two)).toEqual(['1', '3']);
    expect(textOf(two.fields, vent(2, 0)).text).toBe('');
  });

  it('fill up a row that was left blank, and keep what was typed', () => {
    const blank = step(three, { do: 'addVents', atMm: [undefined] });
    expect(firsts(blank)).toEqual(['1', '2', '3', '']);
    expect(firsts(step(blank, { do: 'addVents', atMm: [[4, 4, 4]] }))).toEqual(['1', '2', '3', '4']);
    const typed = step(blank, ...type(vent(3, 0), '7,'), { do: 'addVents', atMm: [[4, 4, 4]] });
    expect(firsts(typed)).toEqual(['1', '2', '3', '7,', '4']);
  });

  it('that are blank are no vents', () => {
    expect(openingAskOf(step(newTicket(), { do: 'addVents', atMm: [undefined] }))!.vents).toBeUndefined();
  });
});

describe('the best way up', () => {
  const search = (ticket: Ticket): Ticket => step(ticket, { do: 'searchUp', on: searchKeyOf(ticket)! });

  it('is looked for only when asked, and leaves what is worked out already', () => {
    const { ticket } = opened();
    expect(bestUpNow(ticket)).toEqual({ state: 'open' });
    const sought = search(ticket);
    expect(asksOf(sought).map(({ job }) => job)).toContain('bestUp');
    expect(openingNow(sought).answer).toBe(openingNow(ticket).answer);
  });

  it('is found, stays when it is taken, and goes with the opening it was found for', () => {
    const { ticket, desk } = opened();
    const found = settle(search(ticket), desk);
    const [best] = bestUpNow(found).answer!;
    // A box has no pocket with a face up: nothing can be better.
    expect(best!.trappedCm3.value).toBe(0);
    const taken = step(found, { do: 'takeUp', up: best!.up });
    expect(openingAskOf(taken)!.pourUp).toEqual(best!.up);
    expect(bestUpNow(taken).answer).toBe(bestUpNow(found).answer);
    const wider = step(found, ...type('openWide', '40'));
    expect(bestUpNow(wider)).toEqual({ state: 'open' });
    expect(asksOf(step(wider, still)).map(({ job }) => job)).not.toContain('bestUp');
  });

  it('is looked for again after a cancel', () => {
    const { ticket } = opened();
    const sought = search(ticket);
    const { key } = asksOf(sought).find(({ job }) => job === 'bestUp')!;
    const cancelled = step(sought, { do: 'start', job: 'bestUp', key }, { do: 'cancel' });
    expect(bestUpNow(cancelled)).toEqual({ state: 'cancelled' });
    expect(asksOf(search(cancelled)).map(({ job }) => job)).toContain('bestUp');
    expect(moldNow(cancelled).state).toBe(moldNow(ticket).state);
  });
});

describe('a way up in words', () => {
  it.each([
    [[0, 0, 1], 'as it stands'],
    [[0, 0, -1], 'base up'],
    // Its face is toward +y, so its right is +x.
    [[2, 0, 0], 'right side up'],
    [[-1, 0, 0], 'left side up'],
    [[0, Math.sin(Math.PI / 9), -Math.cos(Math.PI / 9)], 'base up, tipped 20° so that the front comes up'],
  ] as const)('%j is %s', (up, words) => {
    expect(upWords(up)).toBe(words);
  });
});
