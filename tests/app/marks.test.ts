import { describe, expect, it } from 'vitest';
import { batchMarks } from '../../src/app/batch/marks';
import { measureMarks } from '../../src/app/measure/marks';
import { pourNow, sizeNow } from '../../src/app/ticket/now';
import type { Ticket } from '../../src/app/ticket/state';
import { cardOf } from '../../src/app/ticket/wishes';
import { poured, settle, step, type } from './pageEngine';

describe('marks of Batch', () => {
  const marksOf = (ticket: Ticket) => batchMarks(ticket, cardOf(ticket));

  it('are open while the grams are not current', () => {
    const { ticket } = poured();
    expect(marksOf(ticket).ready).not.toBe('open');
    const others = Object.entries(marksOf(step(ticket, ...type('tape', '210')))).filter(
      ([key]) => key !== 'foam',
    );
    expect(new Set(others.map(([, mark]) => mark))).toEqual(new Set(['open']));
  });

  it.each(['0.9', '3'])('stop at the pack when it is refused: %s', (text) => {
    const { ticket, desk } = poured();
    const refused = settle(step(ticket, ...type('pack', text)), desk);
    expect(pourNow(refused).problem?.code).toBe('PACK_REFUSED');
    expect([marksOf(refused).pack, marksOf(refused).weigh]).toEqual(['stop', 'stop']);
  });

  it('stop at the weighing when the pack says stop', () => {
    const { ticket, desk } = poured();
    const packed = settle(step(ticket, ...type('pack', '2.4')), desk);
    expect([marksOf(packed).pack, marksOf(packed).weigh]).toEqual(['stop', 'stop']);
  });

  it('stop at the foam when it would be no foam', () => {
    const { ticket, desk } = poured();
    const dense = settle(step(ticket, { do: 'type', field: 'freeRise', text: '60' }), desk);
    expect(pourNow(dense).problem?.code).toBe('NOT_A_FOAM');
    expect(marksOf(dense).foam).toBe('stop');
  });

  it('tell of a short fill by how likely it is, and that no cup was tested today', () => {
    const { ticket, desk } = poured();
    expect(marksOf(ticket).short).toBe('unknown');
    const thin = settle(step(ticket, ...type('pack', '1.02')), desk);
    expect(['look', 'stop']).toContain(marksOf(thin).short);
    expect(marksOf(step(thin, ...type('pack', '1.5'))).short).toBe('open');
  });

  it('want a look at a sample ratio the other way round, until the card has another name', () => {
    const { ticket, desk } = poured();
    const tested = step(ticket, { do: 'foam', foam: { from: 'cup-test' } }, ...type('pack', '1.3'));
    const turned = settle(step(tested, ...type('partsA', '55'), ...type('partsB', '100')), desk);
    for (const question of ['foam', 'weigh', 'ready'] as const)
      expect(['look', 'stop']).toContain(marksOf(turned)[question]);
    const own = settle(step(turned, { do: 'foam', foam: { name: 'My own foam' } }), desk);
    expect(marksOf(own).foam).toBe('fine');
  });
});

describe('marks of Measure', () => {
  it('look at a cut that takes nothing, and at one that takes more than it leaves', () => {
    const { ticket, desk } = poured();
    const byUnit = step(ticket, { do: 'fileUnit', unit: 'mm' }, { do: 'cut', cut: { by: 'height' } });
    const cutAt = (text: string, keep: 'above' | 'below'): Ticket =>
      settle(step(byUnit, ...type('cutHeight', text), { do: 'keep', keep }), desk);
    expect(measureMarks(cutAt('20 mm', 'above'))[3]).toBe('fine');
    expect(measureMarks(cutAt('150 mm', 'above'))[3]).toBe('look');
    expect(measureMarks(cutAt('500 mm', 'below'))[3]).toBe('look');
  });

  it('say no better of the volume than of the scan', () => {
    const { ticket } = poured();
    const { answer: sized } = sizeNow(ticket);
    const withHole = {
      ...sized!,
      size: { ...sized!.size, findings: [{ code: 'NOT_CLOSED', status: 'stop', values: {} } as const] },
    };
    const marks = measureMarks({ ...ticket, size: { ...ticket.size, answer: withHole } });
    // Of the scan's soundness, and of the volume, which stands last.
    expect([marks[4], marks.at(-1)]).toEqual(['stop', 'stop']);
  });

  it('look at a field that waits for its meaning', () => {
    const { ticket } = poured();
    expect(measureMarks(step(ticket, ...type('tape', '1,250')))[2]).toBe('look');
  });
});
