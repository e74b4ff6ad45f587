import { describe, expect, it } from 'vitest';
import { readPiece } from '../../src/job/piece';
import { FIELD_NAMES, specOf } from '../../src/app/ticket/fields';
import { homeOf } from '../../src/app/ticket/homeOf';
import { newPiece } from '../../src/app/ticket/newPiece';
import { nextCasting, nextMold } from '../../src/app/ticket/nextCasting';
import { pieceWith, wordsOfPiece } from '../../src/app/ticket/record';
import { ticketReducer, type Action } from '../../src/app/ticket/reducer';
import { newTicket, type Ticket } from '../../src/app/ticket/state';
import { newWords, wordsOf, type Words } from '../../src/app/ticket/words';
import { emptyCore } from '../../src/store';
import { good } from '../../src/problem';

const blank = () => newPiece({ name: 'Quay Troll', today: '2026-01-01', core: emptyCore() });
const sourceOf = (id: string) => ({
  id,
  name: `${id}.stl`,
  bytes: () => Promise.resolve(new ArrayBuffer(0)),
});
const openedAs = (id: string): Action => ({
  do: 'opened',
  source: sourceOf(id),
  ended: {
    how: 'answered',
    answer: good({
      format: 'stl',
      triangles: 12,
      findings: [],
      boundsUnits: { min: [0, 0, 0], max: [1, 1, 1] },
      looks: [],
    }),
  } as never,
});
const step = (ticket: Ticket, ...actions: Action[]): Ticket => actions.reduce(ticketReducer, ticket);

/** Something said of everything. */
const SAID: Action[] = [
  openedAs('scan1'),
  { do: 'up', axis: '+y' },
  { do: 'along', along: 'wide' },
  { do: 'cut', cut: { by: 'floor', atUnits: 12.5 } },
  { do: 'type', field: 'tape', text: '11 3/8 in' },
  { do: 'pick', field: 'cutHeight', text: '1250 mm', value: 1250 },
  { do: 'unit', field: 'freeRise', unit: 'kg/m3' },
  { do: 'foam', foam: { name: 'Ours', from: 'cup-test', by: 'volume' } },
  { do: 'molding', molding: { type: 'skin', degassed: true, jacket: 'plaster', pourBy: 'cavity' } },
  { do: 'kits', text: '1.1 kg=30' },
  { do: 'moldPick', field: 'mold.block.pull', value: '+x' },
  { do: 'fact', fact: 'gloves', value: 'nitrile' },
  { do: 'pouring', pouring: { sides: '2', surroundings: 'still' as never } },
  { do: 'past', text: '1.15 short' },
  { do: 'pourFact', fact: 'plugHeld', value: 'yes' },
  { do: 'color', row: 0, color: { name: 'ochre' } },
  { do: 'takeUp', up: [0, 0.6, 0.8] },
  { do: 'addVents', atMm: [[1, 2, 3]] },
  { do: 'keep', keep: 'below' },
  { do: 'fileUnit', unit: 'in' },
];

describe('a ticket as it is kept', () => {
  it('is the same when it is taken up again, whatever was said', () => {
    const ticket = step(newTicket(), ...SAID);
    const piece = pieceWith(blank(), wordsOf(ticket));
    const file: unknown = JSON.parse(JSON.stringify(piece));
    expect(readPiece(file)).toEqual(piece);
    const { words, unread } = wordsOfPiece(piece);
    expect(unread).toEqual([]);
    expect(words).toEqual({ ...wordsOf(ticket), scanId: 'scan1' });
  });

  it('keeps every box there is, in the sculpt, the mold or the casting', () => {
    const words = newWords();
    const fields: Words['fields'] = { ...words.fields };
    for (const [i, name] of FIELD_NAMES.entries())
      Object.assign(fields, { [name]: { text: `${i}`, unit: specOf(name).units.at(-1) ?? '' } });
    const piece = pieceWith(blank(), { ...words, fields });
    expect(wordsOfPiece(piece).words.fields).toEqual(fields);
    const homes = FIELD_NAMES.map(homeOf);
    for (const home of ['sculpt', 'mold', 'casting']) expect(homes).toContain(home);
  });

  it('says nothing of what nobody said', () => {
    const piece = pieceWith(blank(), newWords());
    expect(piece.sculpt).toEqual({ fields: {}, choices: {} });
    expect(Object.values(piece.molds)).toEqual([{ no: 1, fields: {}, choices: {} }]);
  });

  it('keeps what this version cannot read, names it, and leaves it blank', () => {
    const piece = blank();
    const odd = {
      ...piece,
      sculpt: {
        fields: { tape: { text: '10', unit: 'mm' }, girth: { text: '5' } },
        choices: { up: { axis: '+w', confirmed: true }, lean: 3 },
      },
    };
    const { words, unread } = wordsOfPiece(odd);
    expect(unread).toEqual(['girth', 'up', 'lean']);
    expect(words.up).toEqual(newWords().up);
    expect(words.fields.tape.text).toBe('10');
    expect(pieceWith(odd, words)).toEqual(odd);
    // Said anew, it is no longer unread.
    const said = pieceWith(odd, { ...words, up: { axis: '+x', confirmed: true } });
    expect(said.sculpt.choices).toEqual({ up: { axis: '+x', confirmed: true }, lean: 3 });
  });

  it('fills in what a version before did not have', () => {
    const piece = blank();
    const mold = { ...piece.molds[piece.hand.mold]!, choices: { molding: { type: 'skin' } } };
    const { words, unread } = wordsOfPiece({ ...piece, molds: { [piece.hand.mold]: mold } });
    expect(unread).toEqual([]);
    expect(words.molding).toEqual({ ...newWords().molding, type: 'skin' });
  });
});

describe('the next casting and the next mold', () => {
  const first = pieceWith(
    blank(),
    wordsOf(
      step(
        newTicket(),
        ...SAID,
        { do: 'type', field: 'pack', text: '1.25' },
        { do: 'type', field: 'moldTemp', text: '35' },
      ),
    ),
  );

  it('of a casting take what was said, but not the temperatures and checks of its day', () => {
    const next = nextCasting(first, first.hand.casting);
    expect(next.hand.casting).not.toBe(first.hand.casting);
    const { words } = wordsOfPiece(next);
    expect(words.fields.pack.text).toBe('1.25');
    expect(words.fields.moldTemp.text).toBe('');
    expect(words.pouring.facts).toEqual({});
    expect(words.pouring.past).toBe('1.15 short');
    expect(next.castings[next.hand.casting]).toMatchObject({
      no: 2,
      mold: first.hand.mold,
      after: first.hand.casting,
    });
    expect(next.castings[first.hand.casting]).toEqual(first.castings[first.hand.casting]);
  });

  it('of a mold begin with the one in hand, and leave that one alone', () => {
    const next = nextMold(first);
    expect(wordsOfPiece(next).words.molding.type).toBe('skin');
    expect(next.molds[next.hand.mold]!.no).toBe(2);
    expect(next.castings[next.hand.casting]!.mold).toBe(next.hand.mold);
    expect(next.molds[first.hand.mold]).toEqual(first.molds[first.hand.mold]);
    expect(readPiece(next)).toEqual(next);
  });
});

describe('undo', () => {
  it('goes back step by step to the blank ticket and forward again to the last', () => {
    const full = step(newTicket(), ...SAID);
    const states = [wordsOf(newTicket())];
    SAID.reduce((ticket, action) => {
      const next = ticketReducer(ticket, action);
      states.push(wordsOf(next));
      return next;
    }, newTicket());
    let now = full;
    for (let i = states.length - 2; i >= 0; i--) {
      now = ticketReducer(now, { do: 'undo' });
      expect(wordsOf(now), `after ${states.length - 1 - i} undos`).toEqual(states[i]);
    }
    expect(ticketReducer(now, { do: 'undo' })).toBe(now);
    for (let i = 1; i < states.length; i++) now = ticketReducer(now, { do: 'redo' });
    expect(wordsOf(now)).toEqual(wordsOf(full));
  });

  it('takes a word typed letter by letter back in one, and apart where the box was left between', () => {
    const typed = step(
      newTicket(),
      ...['2', '29', '290'].map((text): Action => ({ do: 'type', field: 'tape', text })),
      { do: 'pause' },
      { do: 'type', field: 'tape', text: '291' },
    );
    const once = ticketReducer(typed, { do: 'undo' });
    expect(once.fields.tape.text).toBe('290');
    expect(ticketReducer(once, { do: 'undo' }).fields.tape.text).toBe('');
  });

  it('brings the scan of before back, to be read again, and what was said of it', () => {
    const other = step(
      newTicket(),
      openedAs('first'),
      { do: 'type', field: 'tape', text: '290' },
      openedAs('second'),
    );
    expect(other.fields.tape.text).toBe('');
    const back = ticketReducer(other, { do: 'undo' });
    expect(back).toMatchObject({ scanId: 'first', scan: undefined });
    expect(back.fields.tape.text).toBe('290');
  });

  it('takes back what was done here only: what another tab said since stays', () => {
    const piece = blank();
    const mine = step(newTicket(), { do: 'load', piece }, { do: 'type', field: 'pack', text: '1.2' });
    const theirs = step(mine, { do: 'type', field: 'tape', text: '290' });
    const adopted = ticketReducer(mine, { do: 'adopt', piece: pieceWith(piece, wordsOf(theirs)) });
    const back = ticketReducer(adopted, { do: 'undo' });
    expect(back.fields.pack.text).toBe('');
    expect(back.fields.tape.text).toBe('290');
  });

  it('forgets what could be done again once something else is said', () => {
    const back = step(newTicket(), { do: 'type', field: 'pack', text: '1.2' }, { do: 'undo' });
    expect(back.history.future).toHaveLength(1);
    expect(step(back, { do: 'keep', keep: 'below' }).history.future).toHaveLength(0);
  });
});

describe('what another tab has said', () => {
  it('comes in, and what is typed here and not kept yet stays', () => {
    const piece = blank();
    const here = step(newTicket(), { do: 'load', piece }, { do: 'type', field: 'pack', text: '1.3' });
    const there = pieceWith(piece, wordsOf(step(newTicket(), { do: 'up', axis: '+y' })));
    const both = ticketReducer(here, { do: 'adopt', piece: there });
    expect(both.up.axis).toBe('+y');
    expect(both.fields.pack.text).toBe('1.3');
    expect(both.base).toBe(there);
  });

  it('of another scan lets go what was worked out on this one', () => {
    const piece = blank();
    const here = step(newTicket(), { do: 'load', piece }, openedAs('a'));
    const kept = ticketReducer(here, { do: 'adopt', piece: pieceWith(piece, wordsOf(here)) });
    expect(kept.scan).toBe(here.scan);
    const other = pieceWith(piece, { ...wordsOf(here), scanId: 'b' });
    expect(ticketReducer(kept, { do: 'adopt', piece: other })).toMatchObject({
      scan: undefined,
      scanId: 'b',
      size: { state: 'idle' },
    });
  });
});

describe('a kept piece taken up', () => {
  it('keeps the scan that is open where it is of the same, and nothing to undo of before', () => {
    const here = step(newTicket(), openedAs('a'), { do: 'type', field: 'pack', text: '1.3' });
    const of = (scanId: string) => pieceWith(blank(), { ...newWords(), scanId });
    const same = ticketReducer(here, { do: 'load', piece: of('a') });
    expect(same.scan).toBe(here.scan);
    expect(same.history.past).toEqual([]);
    expect(ticketReducer(here, { do: 'load', piece: of('b') }).scan).toBeUndefined();
  });
});
