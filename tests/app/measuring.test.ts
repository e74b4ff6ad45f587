import { describe, expect, it } from 'vitest';
import { soundRows } from '../../src/app/measure/soundRows';
import { upWords } from '../../src/app/measure/upWords';
import { measureMarks } from '../../src/app/measure/marks';
import { readChoice } from '../../src/app/ticket/saidShapes';
import { saidOf } from '../../src/app/ticket/record';
import { newTicket } from '../../src/app/ticket/state';
import { sizeWishOf } from '../../src/app/ticket/wishes';
import { forgetScan } from '../../src/app/ticket/forgetScan';
import { wordsOf } from '../../src/app/ticket/words';
import { whereWords } from '../../src/app/words/whereWords';
import { expectClose } from '../support/close';
import { sampleBytes, truthOf } from '../support/samples';
import { box } from '../support/shapes';
import { withModel } from '../support/threemfFiles';
import { measured, openScan, sizeOf, tell } from '../support/ticketOf';
import { stlBytes } from '../support/writeMesh';

/** 30 x 40 x 120 units: the space diagonal is 130 (Pythagoras). */
const brick = openScan('brick.stl', stlBytes(box([30, 40, 120])));

describe('a second distance on the ticket', () => {
  const tall = { do: 'type', field: 'tape', text: '240' } as const;

  it('is asked for as a check of the first, whatever the first is', () => {
    const ticket = tell(
      newTicket(),
      tall,
      { do: 'second', by: 'wide' },
      { do: 'type', field: 'checkLength', text: '61' },
    );
    expect(sizeWishOf(ticket)).toEqual({
      taped: { along: 'tall', lengthMm: 240 },
      second: { along: 'wide', lengthMm: 61 },
      scaleBy: 'tall',
    });
    const byUnit = tell(ticket, { do: 'fileUnit', unit: 'mm' });
    expect(sizeWishOf(byUnit)).toMatchObject({ fileUnit: 'mm', scaleBy: 'file unit' });
  });

  it('without a first it sets nothing', () => {
    const alone = tell(
      newTicket(),
      { do: 'second', by: 'wide' },
      { do: 'type', field: 'checkLength', text: '61' },
    );
    expect(sizeWishOf(alone)).toEqual({});
  });

  it('of a file that states its unit it checks that unit, as long as nothing else was said first', () => {
    // A box of 40 x 30 x 20 in cm.
    const open = openScan('box.3mf', withModel({ attributes: 'unit="centimeter"' }));
    const words = [
      { do: 'second', by: 'wide' },
      { do: 'type', field: 'checkLength', text: '412 mm' },
    ] as const;
    const ticket = measured(open, ...words);
    expect(sizeWishOf(ticket)).toEqual({
      second: { along: 'wide', lengthMm: 412 },
      scaleBy: 'own unit',
    });
    expect(sizeOf(ticket).scale).toMatchObject({ mmPerUnit: 10, from: 'file', by: 'own unit' });
    expectClose(sizeOf(ticket).scale.disagreements[0]!.share, 0.03, 1e-9);
    expect(measureMarks(ticket)[2]).toBe('look');
    const swapped = measured({ ...open, ticket }, { do: 'scaleFrom', which: 'second' });
    expectClose(sizeOf(swapped).scale.mmPerUnit, 10.3, 1e-9);
    const named = tell(ticket, { do: 'fileUnit', unit: 'in' });
    expect(sizeWishOf(named)).toMatchObject({ fileUnit: 'in', scaleBy: 'file unit' });
  });

  it('taken for the scale it is one, and the first checks it', () => {
    const ticket = measured(
      brick,
      tall,
      { do: 'second', by: 'wide' },
      { do: 'type', field: 'checkLength', text: '63' },
    );
    expectClose(sizeOf(ticket).scale.mmPerUnit, 2, 1e-9);
    expect(measureMarks(ticket)[2]).toBe('look');
    const swapped = measured({ ...brick, ticket }, { do: 'scaleFrom', which: 'second' });
    expectClose(sizeOf(swapped).scale.mmPerUnit, 2.1, 1e-9);
    expect(sizeOf(swapped).scale.disagreements.map(({ by }) => by)).toEqual(['tall']);
    const back = measured({ ...brick, ticket: swapped }, { do: 'scaleFrom', which: 'first' });
    expectClose(sizeOf(back).scale.mmPerUnit, 2, 1e-9);
  });

  it('between two picked points: 260 mm over 130 units', () => {
    const ticket = measured(
      brick,
      tall,
      { do: 'pickPoint', at: [0, 0, 0] },
      { do: 'pickPoint', at: [30, 40, 120] },
      { do: 'type', field: 'checkLength', text: '260' },
    );
    expectClose(sizeOf(ticket).scale.disagreements[0]!.share + 1, 1, 1e-9);
    expect(measureMarks(ticket)[2]).toBe('fine');
  });

  it('a length is forgotten with what it was the length of', () => {
    const ticket = tell(
      newTicket(),
      { do: 'pickPoint', at: [0, 0, 0] },
      { do: 'pickPoint', at: [1, 0, 0] },
      { do: 'type', field: 'checkLength', text: '260' },
    );
    expect(tell(ticket, { do: 'pickPoint', at: [5, 5, 5] })).toMatchObject({
      measuring: { points: [[5, 5, 5]] },
      fields: { checkLength: { text: '' } },
    });
    for (const word of [{ do: 'clearPoints' }, { do: 'second', by: 'deep' }] as const)
      expect(tell(ticket, word).fields.checkLength.text).toBe('');
  });

  it('the side that is taped first cannot check itself', () => {
    const ticket = tell(
      newTicket(),
      tall,
      { do: 'second', by: 'wide' },
      { do: 'type', field: 'checkLength', text: '61' },
      { do: 'along', along: 'wide' },
    );
    expect(ticket.measuring.secondBy).toBeUndefined();
    expect(sizeWishOf(ticket)).toEqual({ taped: { along: 'wide', lengthMm: 240 } });
  });

  it('a box that is not read takes the volume away only where it is the scale', () => {
    const ticket = tell(
      newTicket(),
      tall,
      { do: 'second', by: 'wide' },
      { do: 'type', field: 'checkLength', text: '1,250' },
    );
    expect(sizeWishOf(ticket)).toEqual({ taped: { along: 'tall', lengthMm: 240 } });
    expect(sizeWishOf(tell(ticket, { do: 'scaleFrom', which: 'second' }))).toBeUndefined();
  });

  it('Lamp Eel, told to be in mm: the tape warns with 3.1 %, as the generator made it small', () => {
    const { scale } = truthOf('lamp-eel-scan.stl');
    const ticket = measured(
      openScan('lamp-eel-scan.stl', sampleBytes('lamp-eel-scan.stl')),
      { do: 'up', axis: '+z' },
      { do: 'fileUnit', unit: 'mm' },
      { do: 'second', by: 'wide' },
      { do: 'type', field: 'checkLength', text: '520' },
    );
    expectClose(sizeOf(ticket).scale.disagreements[0]!.share, 1 / scale! - 1, 0.02);
    expect(measureMarks(ticket)[2]).toBe('look');
    const row = soundRows(sizeOf(ticket), ticket).find(({ problem }) => problem.code === 'UNITS_SUSPECT')!;
    expect(row.text).toContain('3.1 % larger');
    expect(row.verb).toEqual({ label: 'Use it instead', word: { do: 'scaleFrom', which: 'second' } });
    expect(row.effect).toMatch(/^would be \+ 7\d\.\d+ cm³$/);
  });
});

describe('said of a scan, kept and forgotten with it', () => {
  const ticket = tell(
    newTicket(),
    { do: 'pickPoint', at: [0.1, 0.2, 0.3] },
    { do: 'pickPoint', at: [1, 2, 3] },
    { do: 'type', field: 'checkLength', text: '10 1/4 in' },
    { do: 'leaveOut', corner: [0.1, -7.25, 1e-9] },
    { do: 'pieceRule', rule: 'countSpecks', isOff: true },
  );

  it('reads back as it was kept, to the last digit', () => {
    const kept = saidOf(wordsOf(ticket), 'sculpt');
    expect(kept.fields.checkLength).toMatchObject({ text: '10 1/4 in' });
    const text = JSON.stringify(kept.choices.measuring);
    expect(readChoice('measuring', JSON.parse(text))).toEqual(ticket.measuring);
  });

  it('what was kept before there was a second distance is blank', () => {
    expect(readChoice('measuring', {})).toEqual(newTicket().measuring);
    expect(readChoice('measuring', { points: [[1, 2]] })).toBeUndefined();
  });

  it('another scan knows nothing of it', () => {
    const after = forgetScan(ticket);
    expect(after.measuring).toEqual(newTicket().measuring);
    expect(after.fields.checkLength.text).toBe('');
  });

  it('is taken back by undo, the piece left out first', () => {
    const { pieces } = tell(ticket, { do: 'undo' }, { do: 'undo' }).measuring;
    expect(pieces).toEqual(newTicket().measuring.pieces);
  });
});

describe('places and sides in words', () => {
  const bounds = { min: [-100, -50, 10] as const, max: [100, 50, 310] as const };
  it.each([
    [{ xMm: 0, yMm: 0, zMm: 310 }, '300 mm (11.81 in) up, in the middle'],
    [{ xMm: 80, yMm: 0, zMm: 10 }, '0 mm (0.00 in) up, 80 mm (3.15 in) to its right of the middle'],
    [
      { xMm: -80, yMm: -40, zMm: 110 },
      '100 mm (3.94 in) up, 80 mm (3.15 in) to its left and 40 mm (1.57 in) to the back of the middle',
    ],
  ])('%o', (at, words) => expect(whereWords(at, { min: [...bounds.min], max: [...bounds.max] })).toBe(words));

  it('a place in a file has none', () =>
    expect(whereWords({ line: 3 }, { min: [0, 0, 0], max: [1, 1, 1] })).toBeUndefined());

  it('the sides of a file of 10 x 20 x 30, by the axis that is up', () => {
    const file = {
      min: [0, 0, 0] as [number, number, number],
      max: [10, 20, 30] as [number, number, number],
    };
    expect(upWords(file, '+z')).toEqual(['30 tall', '10 wide', '20 deep']);
    expect(upWords(file, '-y')).toEqual(['20 tall', '10 wide', '30 deep']);
    expect(upWords(file, '+x')).toEqual(['10 tall', '30 wide', '20 deep']);
  });
});
