import { describe, expect, it } from 'vitest';
import { bad, good } from '../../src/problem';
import { KG_M3_PER_LB_FT3 } from '../../src/units';
import { ticketReducer, type Action } from '../../src/app/ticket/reducer';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { newTicket, type Ticket } from '../../src/app/ticket/state';
import { pourKeyOf, sizeKeyOf } from '../../src/app/ticket/now';
import { cardOf, sizeWishOf } from '../../src/app/ticket/wishes';
import type { Opened } from '../../src/worker/protocol';
import type { FoamCard } from '../../src/yield';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';

const sourceOf = (name: string) => ({ name, bytes: () => Promise.resolve(new ArrayBuffer(0)) });
const LOOK = { columns: 1, rows: 1, runs: [0, 0, 1] };
const OPENED: Opened = {
  format: 'stl',
  triangles: 12,
  findings: [],
  boundsUnits: { min: [0, 0, 0], max: [1, 1, 1] },
  looks: { '+x': LOOK, '-x': LOOK, '+y': LOOK, '-y': LOOK, '+z': LOOK, '-z': LOOK },
};
const openedAs = (name: string): Action => ({
  do: 'opened',
  source: sourceOf(name),
  ended: { how: 'answered', answer: good(OPENED) },
});
const after = (...actions: Action[]): Ticket => actions.reduce(ticketReducer, newTicket());
const [light, firm] = SAMPLE_SHOP.foams as [FoamCard, FoamCard];

describe('what the engine is asked', () => {
  it('says nothing of a tape or a way up that nobody confirmed', () => {
    expect(sizeWishOf(after(openedAs('a.stl')))).toEqual({});
  });

  it('takes a bare number in the unit beside the box and a typed unit before it', () => {
    const inInches = after(
      { do: 'unit', field: 'tape', unit: 'in' },
      { do: 'type', field: 'tape', text: '10' },
    );
    expect(sizeWishOf(inInches)?.taped).toEqual({ along: 'tall', lengthMm: 254 });
    expect(
      sizeWishOf(ticketReducer(inInches, { do: 'type', field: 'tape', text: '10 mm' }))?.taped?.lengthMm,
    ).toBe(10);
  });

  it('asks nothing while a number has two meanings, until one is picked, and forgets the pick on typing', () => {
    const asked = after({ do: 'type', field: 'tape', text: '1,250' });
    expect(sizeWishOf(asked)).toBeUndefined();
    const picked = ticketReducer(asked, { do: 'pick', field: 'tape', text: '1250 mm', value: 1250 });
    expect(sizeWishOf(picked)?.taped?.lengthMm).toBe(1250);
    expect(sizeWishOf(ticketReducer(picked, { do: 'type', field: 'tape', text: '1,250' }))).toBeUndefined();
  });

  it('does not mix the two ways of saying the scale', () => {
    const both = after({ do: 'type', field: 'tape', text: '290' }, { do: 'fileUnit', unit: 'in' });
    expect(sizeWishOf(both)).toEqual({ fileUnit: 'in' });
    expect(sizeWishOf(ticketReducer(both, { do: 'scaleWay', way: 'tape' }))?.taped?.lengthMm).toBe(290);
  });
});

describe('the foam card', () => {
  it('reads the sample card as the shop has it: 6 lb/ft3, A:B 100:55 by weight', () => {
    const card = valueOf(cardOf(after({ do: 'card', card: light }))!);
    expectClose(card.freeRiseKgM3, 6 * KG_M3_PER_LB_FT3, 1e-12, 'free rise');
    expect(card.ratio).toEqual({ a: 100, b: 55, by: 'mass' });
  });

  it('wants both densities for a ratio by volume', () => {
    const byVolume = after({ do: 'card', card: firm }, { do: 'foam', foam: { by: 'volume' } });
    expect(problemOf(cardOf(byVolume)!).code).toBe('PART_DENSITIES_NEEDED');
  });

  it('is no card while a figure is missing or waits for its meaning', () => {
    expect(cardOf(newTicket())).toBeUndefined();
    expect(
      cardOf(after({ do: 'card', card: light }, { do: 'type', field: 'densityA', text: '1,100' })),
    ).toBeUndefined();
  });
});

describe('a new scan', () => {
  const typed: Action[] = [
    openedAs('a.stl'),
    { do: 'up', axis: '+y' },
    { do: 'type', field: 'tape', text: '290' },
    { do: 'card', card: light },
  ];

  it('keeps all that was said when the file cannot be read', () => {
    const before = after(...typed);
    const refused = ticketReducer(ticketReducer(before, { do: 'opening', source: sourceOf('b.stl') }), {
      do: 'opened',
      source: sourceOf('b.stl'),
      ended: { how: 'answered', answer: bad('EMPTY_FILE') },
    });
    expect(refused.scan?.source.name).toBe('a.stl');
    expect(sizeWishOf(refused)).toEqual(sizeWishOf(before));
    expect(refused.reading.problem?.code).toBe('EMPTY_FILE');
  });

  /*
   * Not under the same name either: an export with another unit, way up or zero often keeps its name, two folders can hold a
   * scan.stl each, and the old tape on the new mesh would give grams that look right. Taping again is cheap, a wrong pour is not.
   */
  it.each(['b.stl', 'a.stl'])(
    'called %s takes neither tape nor way up nor cut from the last, but keeps the foam',
    (name) => {
      const cut: Action[] = [
        { do: 'type', field: 'cutHeight', text: '20' },
        { do: 'cut', cut: { by: 'height' } },
        { do: 'fileUnit', unit: 'in' },
      ];
      const last = after(...typed, ...cut);
      const next = ticketReducer(last, openedAs(name));
      expect(sizeWishOf(next)).toEqual({});
      expect([next.fields.tape.text, next.fields.cutHeight.text]).toEqual(['', '']);
      expect(cardOf(next)?.ok).toBe(true);
      expect(sizeKeyOf(next)).not.toBe(sizeKeyOf(ticketReducer(next, openedAs(name))));
    },
  );

  it('asks again for what a file that could not be read had stopped', () => {
    const running = ticketReducer(after(...typed), { do: 'start', job: 'size', key: 'k' });
    const refused = ticketReducer(ticketReducer(running, { do: 'opening', source: sourceOf('b.stl') }), {
      do: 'opened',
      source: sourceOf('b.stl'),
      ended: { how: 'answered', answer: bad('EMPTY_FILE') },
    });
    expect(refused.attempt).toBe(running.attempt + 1);
  });
});

it('asks for no grams before there is a volume', () => {
  expect(pourKeyOf(after({ do: 'card', card: light }))).toBeUndefined();
});
