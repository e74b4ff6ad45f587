import { describe, expect, it } from 'vitest';
import { filledNow, pourToldNow } from '../../src/app/ticket/now';
import { insideWords } from '../../src/app/words/insideWords';
import type { FieldName } from '../../src/app/ticket/fields';
import type { Action } from '../../src/app/ticket/reducer';
import { read3mf } from '../../src/geometry/io/read3mf';
import { answer } from '../../src/worker/answer';
import type { Answers } from '../../src/worker/protocol';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';
import { box, sphere } from '../support/shapes';
import { withModel } from '../support/threemfFiles';
import { measured, openScan, sizeOf, type OpenTicket } from '../support/ticketOf';
import { stlBytes } from '../support/writeMesh';

const type = (field: FieldName, text: string): Action => ({ do: 'type', field, text });
const FOAM: Action[] = [type('freeRise', '96 kg/m3'), type('partsA', '100'), type('partsB', '55')];
const MM: Action[] = [
  { do: 'up', axis: '+z' },
  { do: 'fileUnit', unit: 'mm' },
];

/** 100 x 100 x 100 mm: a liter, poured for as it was measured. */
const liter = (): OpenTicket => openScan('liter.stl', stlBytes(box([100, 100, 100])));
const AS_MEASURED: Action = { do: 'molding', molding: { pourBy: 'sculpt' } };
const wish = { fileUnit: 'mm', up: '+z' } as const;

describe('a core in the cavity', () => {
  it('takes its room from the foam, and the grams are asked for what is left', () => {
    const ticket = measured(liter(), ...MM, AS_MEASURED, ...FOAM, type('coreVolume', '400 cm3'));
    expectClose(sizeOf(ticket).volumeCm3.value, 1000, 1e-9, 'the sculpt');
    expectClose(filledNow(ticket).answer!.volumeCm3.value, 600, 1e-9, 'left');
    const { pour, core } = pourToldNow(ticket)!;
    expect(pour.cavity).toMatchObject({ volumeCm3: { value: 600 } });
    expect(core).toEqual({ coreCm3: 400 });
    expect(insideWords(filledNow(ticket).answer)).toMatch(/^Less its core of 400 cm³.*600\.0 cm³ are left/);
  });

  it('with an armature, both are taken off; with a mass, it is asked whether it floats', () => {
    const told = [type('coreVolume', '400'), type('armature', '6.4'), type('coreMass', '350 g')];
    const ticket = measured(liter(), ...MM, AS_MEASURED, ...FOAM, ...told);
    expectClose(filledNow(ticket).answer!.volumeCm3.value, 593.6, 1e-9, 'left');
    expect(pourToldNow(ticket)!.core).toEqual({ coreCm3: 400, coreG: 350 });
  });

  it('larger than the cavity is refused, and gives no grams', () => {
    const ticket = measured(liter(), ...MM, AS_MEASURED, ...FOAM, type('coreVolume', '1 L'));
    expect(filledNow(ticket)).toMatchObject({ state: 'refused', problem: { code: 'CORE_FILLS_MOLD' } });
    expect(pourToldNow(ticket)).toBeUndefined();
  });

  it('that cannot be read gives no grams either', () => {
    const ticket = measured(liter(), ...MM, AS_MEASURED, ...FOAM, type('coreVolume', '1,250'));
    expect(filledNow(ticket)).toMatchObject({ state: 'unread', field: 'coreVolume' });
    expect(pourToldNow(ticket)).toBeUndefined();
  });
});

const buffer = (bytes: Uint8Array): ArrayBuffer => bytes.slice().buffer;

describe('a core from its own scan', () => {
  const coreOf = (bytes: Uint8Array) =>
    answer(
      liter().desk,
      { kind: 'core', wish, name: 'core.stl', bytes: buffer(bytes) },
      () => undefined,
    ) as Answers['core'];

  it('is measured in the units of the sculpt, with the thinnest wall around it', () => {
    const ball = sphere(30, 96);
    const middle = { ...ball, positions: ball.positions.map((c) => c + 50) };
    const { coreCm3, wall } = valueOf(coreOf(stlBytes(middle)));
    // A ball of 96 sides is a little smaller than the true one (0.2 %).
    expectClose(coreCm3!.value, (4 / 3) * Math.PI * 27, 4e-3, 'core');
    expectClose(wall!.thinnestMm, 20, 0.01, 'wall');
    expect(wall!.isInside).toBe(true);
  });

  it('of a file that states its unit is read in that, whatever one unit of the sculpt is', () => {
    // A box of 40 x 30 x 20 mm in a cube that is read in cm.
    const items = '<item objectid="1" transform="1 0 0 0 1 0 0 0 1 400 400 400"/>';
    const answered = answer(
      { ...liter().desk, read3mf },
      {
        kind: 'core',
        wish: { ...wish, fileUnit: 'cm' },
        name: 'core.3mf',
        bytes: buffer(withModel({ items })),
      },
      () => undefined,
    ) as Answers['core'];
    const { coreCm3, ownUnit, wall } = valueOf(answered);
    expectClose(coreCm3!.value, 24, 1e-9, 'core');
    expect(ownUnit).toBe('mm');
    expect(wall!.isInside).toBe(true);
    expect(valueOf(coreOf(stlBytes(box([40, 30, 20])))).ownUnit).toBeUndefined();
  });

  it('what its reader read past is told with the wall', () => {
    const bytes = new Uint8Array(84 + 50 * 12 + 3);
    bytes.set(stlBytes(box([40, 30, 20])));
    expect(valueOf(coreOf(bytes)).findings.map(({ code }) => code)).toContain('TRAILING_DATA');
  });

  it('that cannot be read is told in words, and the sculpt stays', () => {
    expect(problemOf(coreOf(new TextEncoder().encode('no scan'))).code).toBeDefined();
  });
});
