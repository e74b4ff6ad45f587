import { describe, expect, it } from 'vitest';
import { pourNow, sizeNow } from '../../src/app/ticket/now';
import { readyKeyOf, readyNow } from '../../src/app/ticket/ready';
import { newTicket, type Ticket } from '../../src/app/ticket/state';
import { stopsQuestion } from '../../src/app/words/readyWords';
import { wordsOf } from '../../src/app/ticket/words';
import { openBox, poured, settle, step, type } from './pageEngine';

type Actions = Parameters<typeof step>[1][];

const said = (ticket: Ticket): Ticket =>
  step(ticket, { do: 'pouring', pouring: { readyFor: readyKeyOf(ticket)! } });

const { ticket, desk } = poured();
const ready = said(ticket);
const after = (...actions: Actions) => readyNow(settle(step(ready, ...actions), desk));

describe('ready to pour', () => {
  it('is nobody’s word until it is said, and then holds for what stands', () => {
    expect(readyNow(ticket)).toBe('not said');
    expect(readyNow(ready)).toBe('ready');
  });

  it.each<[string, Actions]>([
    ['the tape, on Measure', type('tape', '210')],
    ['the unit of the tape', [{ do: 'unit', field: 'tape', unit: 'in' }]],
    ['the shrink, on Mold', type('measuredShrink', '0.5 %')],
    ['the volume to pour for', [{ do: 'molding', molding: { pourBy: 'cavity' } }]],
    ['the pack', type('pack', '1.4')],
    ['a confirmed pack: what was assumed is the user’s now', type('pack', '1.3')],
    ['the residue', type('residue', '24 g')],
    ['the temperature of the mold', type('moldTemp', '31 C')],
    ['the color', type('color.0.share', '2')],
    ['what is known of the mold', [{ do: 'pourFact', fact: 'moldWater', value: 'confirmed dry' }]],
    ['where the density is from', [{ do: 'foam', foam: { from: 'cup-test' } }]],
  ])('is no longer so after a change of %s', (_, actions) => {
    expect(after(...actions)).toBe('changed');
  });

  it('comes back by itself when the change is undone', () => {
    expect(after(...type('pack', '1.4'), { do: 'undo' })).toBe('ready');
    expect(after(...type('residue', '24 g'), ...type('residue', ''))).toBe('ready');
  });

  it('does not mind another way of typing the same', () => {
    const packed = said(settle(step(ticket, ...type('pack', '1.4')), desk));
    expect(readyNow(settle(step(packed, ...type('pack', '1.40')), desk))).toBe('ready');
  });

  it('does not mind what is weighed at the bench, nor another day', () => {
    expect(after(...type('bInCup', '100 g'))).toBe('ready');
    expect(readyNow({ ...ready, today: '2031-01-01' })).toBe('ready');
  });

  it('is changed at once, before anything is worked out anew', () => {
    expect(readyNow(step(ready, ...type('tape', '210')))).toBe('changed');
    expect(readyNow(step(ready, ...type('pack', '1.4')))).toBe('changed');
    expect(readyNow(step(ready, ...type('pack', 'much')))).toBe('changed');
  });

  it('is as it was when the page was closed and opened: from the words alone, while and after the scan is measured again', () => {
    const again = openedAnew(ready);
    expect(sizeNow(again).state).toBe('working');
    expect(readyNow(again)).toBe('ready');
    expect(readyNow(step(again, ...type('tape', '210')))).toBe('changed');
    const settled = settle(again, desk);
    expect(pourNow(settled).state).toBe('answered');
    expect(readyNow(settled)).toBe('ready');
  });

  it('is forgotten with its scan', () => {
    expect(readyNow(settle(openBox(ready, desk, 'b.stl'), desk))).toBe('not said');
  });

  it('makes no sense of another text', () => {
    for (const readyFor of ['yes', '{}', '{"told":1}', '[]', 'null'])
      expect(readyNow(step(ticket, { do: 'pouring', pouring: { readyFor } }))).toBe('changed');
  });

  /** The same words on a ticket that has no answers yet, of a scan that is counted anew. */
  function openedAnew(from: Ticket): Ticket {
    const kept = wordsOf(from);
    const scan = { ...from.scan!, no: 7 };
    return { ...newTicket(), ...kept, scan, attempt: 3 };
  }
});

describe('what says Stop', () => {
  it('is asked about first, in words', () => {
    expect(stopsQuestion(0, false)).toBeUndefined();
    expect(stopsQuestion(1, false)).toBe('One check says Stop. Ready all the same?');
    expect(stopsQuestion(2, true)).toBe('Two checks say Stop. Measure says Stop. Ready all the same?');
    expect(stopsQuestion(12, false)).toBe('12 checks say Stop. Ready all the same?');
  });
});
