import { describe, expect, it } from 'vitest';
import { effectWords, soundRows, type SoundRow } from '../../src/app/measure/soundRows';
import type { Ticket } from '../../src/app/ticket/state';
import { sizeWishOf } from '../../src/app/ticket/wishes';
import { finding } from '../../src/problem';
import { expectClose } from '../support/close';
import { joined, moved } from '../support/meshTools';
import { sampleBytes, truthOf } from '../support/samples';
import { box } from '../support/shapes';
import { measured, openScan, sizeOf, type OpenTicket } from '../support/ticketOf';
import { stlBytes } from '../support/writeMesh';

const rowsOf = (ticket: Ticket): SoundRow[] => soundRows(sizeOf(ticket), ticket);

/** Presses the verb of the row that says so. */
function pressed(open: OpenTicket, ticket: Ticket, label: string, which = 0): Ticket {
  const verbs = rowsOf(ticket).flatMap(({ verb }) => (verb?.label === label ? [verb] : []));
  const verb = verbs[which];
  if (verb === undefined) throw new Error(`pressed: expected the verb ${label}, got ${verbs.length}`);
  return measured({ ...open, ticket }, verb.word);
}

const cm3Of = (ticket: Ticket): number => sizeOf(ticket).volumeCm3.value;

describe('a verb where there is something to choose, and the one that takes it back', () => {
  it('a separate piece: 120 of 1120 cm3 out, and back in', () => {
    const open = openScan(
      'two.stl',
      stlBytes(joined(box([100, 100, 100]), moved(box([60, 50, 40]), [200, 0, 0]))),
    );
    const both = measured(open, { do: 'fileUnit', unit: 'mm' });
    expectClose(cm3Of(both), 1120, 1e-9);
    expect(rowsOf(both).map(({ no }) => no)).toEqual(['1', '1.1', '1.2']);
    expect(rowsOf(both)[2]).toMatchObject({
      text: 'Piece 2: 60 mm (2.36 in) wide, 50 mm (1.97 in) deep, 40 mm (1.57 in) tall',
      effect: 'holds 120 cm³',
    });
    const one = pressed(open, both, 'Leave out', 1);
    expectClose(cm3Of(one), 1000, 1e-9);
    expect(rowsOf(one)[0]).toMatchObject({ effect: '− 120 cm³', problem: { code: 'PIECE_LEFT_OUT' } });
    // With one left there is none to leave out.
    expect(rowsOf(one).some(({ verb }) => verb?.label === 'Leave out')).toBe(false);
    expectClose(cm3Of(pressed(open, one, 'Put back')), 1120, 1e-9);
  });

  it('the specks of the Quay Troll: in and out by exactly theirs', () => {
    const { speck_volume_mm3 } = truthOf('quay-troll-scan.stl');
    const open = openScan('quay-troll-scan.stl', sampleBytes('quay-troll-scan.stl'));
    const without = measured(open, { do: 'up', axis: '+y' }, { do: 'type', field: 'tape', text: '290.85' });
    expectClose(sizeOf(without).extentsMm[2], 290.85, 1e-9);
    const withThem = pressed(open, without, 'Put back');
    // By the tape, which the generator read to 0.05 mm: three times that in volume.
    expectClose(cm3Of(withThem) - cm3Of(without), speck_volume_mm3! / 1000, 3 * (0.05 / 290.85) + 1e-4);
    expectClose(cm3Of(pressed(open, withThem, 'Leave out')), cm3Of(without), 1e-12);
  });

  it('a hollow, filled and hollow again', () => {
    const file = 'box-with-void.stl';
    const open = openScan(file, sampleBytes(file));
    const hollow = measured(open, { do: 'fileUnit', unit: 'mm' });
    const full = pressed(open, hollow, 'Count it as full');
    // 60 x 50 x 40 and 30 x 20 x 10.
    expect([hollow, full].map((ticket) => Math.round(cm3Of(ticket)))).toEqual([114, 120]);
    expectClose(cm3Of(pressed(open, full, 'Take the hollow off')), 114, 1e-9);
  });

  it('a solid in a solid, taken for a hollow and back', () => {
    const open = openScan(
      'nest.stl',
      stlBytes(joined(box([60, 50, 40]), moved(box([30, 20, 10]), [10, 10, 10]))),
    );
    const solid = measured(open, { do: 'fileUnit', unit: 'mm' });
    const hollow = pressed(open, solid, 'Take it off as a hollow');
    expect([solid, hollow].map((ticket) => Math.round(cm3Of(ticket)))).toEqual([120, 114]);
    expectClose(cm3Of(pressed(open, hollow, 'Count it as solid')), 120, 1e-9);
  });

  it('a table: cut off and put back', () => {
    const file = 'singing-rock-scan.obj';
    const open = openScan(file, sampleBytes(file));
    const whole = measured(open, { do: 'up', axis: '+z' }, { do: 'fileUnit', unit: 'in' });
    const cut = pressed(open, whole, 'Cut it off');
    expectClose(cm3Of(cut), truthOf(file).clean_volume_mm3 / 1000, 0.002);
    expectClose(cm3Of(pressed(open, cut, 'Put back')), cm3Of(whole), 1e-12);
  });

  it('pieces that a cut has taken are told, and can be forgotten', () => {
    const open = openScan(
      'two.stl',
      stlBytes(joined(box([100, 100, 100]), moved(box([60, 50, 40]), [200, 0, 0]))),
    );
    const both = measured(open, { do: 'fileUnit', unit: 'mm' });
    const one = pressed(open, both, 'Leave out', 1);
    const cut = measured(
      { ...open, ticket: one },
      { do: 'type', field: 'cutHeight', text: '50' },
      { do: 'cut', cut: { by: 'height' } },
    );
    expectClose(cm3Of(cut), 500, 1e-9);
    expect(rowsOf(cut).some(({ problem }) => problem.code === 'PIECE_LOST')).toBe(true);
    const forgotten = pressed(open, cut, 'Forget it');
    expect(forgotten.measuring.pieces.leaveOut).toEqual([]);
    expect(rowsOf(forgotten).some(({ problem }) => problem.code === 'PIECE_LOST')).toBe(false);
  });
});

describe('every row has an effect, and every verb is the user\u2019s', () => {
  it.each([
    ['quay-troll-scan.stl', '+y', 'in'],
    ['lighthouse-hand-scan.stl', '+z', 'mm'],
    ['singing-rock-scan.obj', '+z', 'in'],
    ['lamp-eel-scan.stl', '+z', 'mm'],
    ['hollow-sphere-50-44.stl', '+z', 'mm'],
    ['twin-spheres-r40-d50.stl', '+z', 'mm'],
  ] as const)('%s', (file, axis, unit) => {
    const ticket = measured(openScan(file, sampleBytes(file)), { do: 'up', axis }, { do: 'fileUnit', unit });
    for (const { effect, text, where } of rowsOf(ticket)) {
      expect(effect, text).not.toBe('not told');
      expect(`${text} ${where}`).not.toMatch(/NaN|Infinity/);
    }
    expect(sizeWishOf(ticket)).not.toHaveProperty('pieces');
  });

  it('signs: what only widens the range has both, what is too small for a figure has none', () => {
    expect(effectWords(finding('NOT_CLOSED', 'fine', { part: 'holes', effectCm3: 27.78 }))).toBe(
      '± 27.78 cm³',
    );
    expect(effectWords(finding('CUT_AWAY', 'fine', { effectCm3: -7434 }))).toBe('− 7\u202f434 cm³');
    expect(effectWords(finding('PIECES_TAKEN', 'fine', { part: 'specks', effectCm3: 0.58 }))).toBe(
      '+ 0.58 cm³',
    );
    expect(effectWords(finding('PRECISION', 'fine', { effectCm3: 1e-6 }))).toBe('under 0.001 cm³');
    expect(effectWords(finding('NON_MANIFOLD', 'look', { effectCm3: 0 }))).toBe('none');
  });
});
