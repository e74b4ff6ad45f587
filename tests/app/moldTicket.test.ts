import { describe, expect, it } from 'vitest';
import { MOLD_TYPES } from '../../src/geometry';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { JACKET_MATERIALS, SILICONE_RULES } from '../../src/yield';
import { chosenNow } from '../../src/app/mold/chosen';
import { fieldOfMold } from '../../src/app/mold/fieldProblem';
import { moldMarks } from '../../src/app/mold/marks';
import { asksOf } from '../../src/app/ticket/asks';
import { readKitsText } from '../../src/app/ticket/kits';
import { isPicked, jacketField, MADE_FIELDS, moldField } from '../../src/app/ticket/madeFields';
import { moldsAskOf, pourByOf, unreadForMold } from '../../src/app/ticket/moldWishes';
import { castingNow, moldNow, pourNow, sizeNow } from '../../src/app/ticket/now';
import { readField } from '../../src/app/ticket/readField';
import { newTicket, type Ticket } from '../../src/app/ticket/state';
import { announceMold } from '../../src/app/words/announceMold';
import { totalKg } from '../../src/app/words/moldFigures';
import type { Desk } from '../../src/worker/answer';
import { expectClose } from '../support/close';
import { openBox, poured, settle, step, still, type } from './pageEngine';

const SKIN = 'mold.skin.skinMm' as const;
const skin: Parameters<typeof step>[1] = { do: 'molding', molding: { type: 'skin' } };

/** The box of 100 x 100 x 200 mm with the figures of its molds: worked out once, a ticket is never changed. */
const molded = (): Molded => (once ??= mold());
let once: Molded | undefined;
type Molded = { ticket: Ticket; desk: ReturnType<typeof poured>['desk'] };

function mold(): Molded {
  const { ticket, desk } = poured();
  return { ticket: settle(step(ticket, skin), desk, { withMolds: true }), desk };
}

describe('what the page may show of a mold', () => {
  it('is nothing from the first keystroke in a thickness on, while volume and grams stay', () => {
    const { ticket } = molded();
    expect(moldNow(ticket).state).toBe('answered');
    const typed = step(ticket, ...type(SKIN, '8'));
    expect([moldNow(typed).state, chosenNow(typed).answer]).toEqual(['working', undefined]);
    expect(announceMold(typed)).toBe('');
    expect([sizeNow(typed).state, pourNow(typed).state]).toEqual(['answered', 'answered']);
  });

  it('follows the thickness: more skin takes more silicone', () => {
    const { ticket, desk } = molded();
    const before = chosenNow(ticket).answer!;
    const thick = settle(step(ticket, ...type(SKIN, '9 mm')), desk, { withMolds: true });
    expect(chosenNow(thick).answer!.settings.skinMm).toBe(9);
    expect(chosenNow(thick).answer!.silicone.totalG).toBeGreaterThan(before.silicone.totalG);
    expect(announceMold(thick)).toBe(
      `Brushed skin: ${totalKg(chosenNow(thick).answer!).value} kilograms of silicone.`,
    );
  });

  it.each(['1,250', 'thick', '-3'])('is nothing while a thickness reads %s, and says which box', (text) => {
    const { ticket } = molded();
    const typed = step(ticket, ...type(SKIN, text), still);
    expect(moldNow(typed)).toEqual({ state: 'unread', field: SKIN });
    expect(asksOf(typed)).toEqual([]);
  });

  it('leaves out a type whose box cannot be read, and goes on with the chosen one', () => {
    const { ticket } = molded();
    const typed = step(ticket, ...type('mold.blanket.skinMm', 'thick'), still);
    expect(Object.keys(moldsAskOf(typed)!.settings)).toEqual(['block', 'skin']);
  });

  it('is nothing with one side of the ratio: the other is not guessed', () => {
    const { ticket } = molded();
    const half = step(ticket, ...type('siliconeBase', '100'), still);
    expect(unreadForMold(half)).toBe('siliconeCatalyst');
    expect(unreadForMold(step(half, ...type('siliconeCatalyst', '5')))).toBeUndefined();
  });

  it('goes with the size: a new tape drops it at once', () => {
    const { ticket } = molded();
    expect(moldNow(step(ticket, ...type('tape', '210'))).state).toBe('working');
    expect(moldNow(step(ticket, ...type('tape', 'tall'))).state).toBe('open');
  });

  it('is not asked for without a scan or without a size', () => {
    expect(moldNow(newTicket()).state).toBe('open');
    const desk: Desk = {};
    const unsized = settle(openBox(newTicket(), desk), desk);
    expect(sizeNow(unsized).problem?.code).toBe('SCALE_UNKNOWN');
    expect(asksOf(unsized).map(({ job }) => job)).not.toContain('mold');
  });

  it('is refused by the box that is out of its bounds', () => {
    const { ticket, desk } = molded();
    const wide = settle(step(ticket, ...type(SKIN, '400 mm')), desk, { withMolds: true });
    const { problem } = chosenNow(wide);
    expect(problem?.code).toBe('MOLD_PARAMETER');
    expect(fieldOfMold(wide, problem!)).toBe(SKIN);
    expect(moldMarks(wide)[0]).toBe('stop');
  });
});

describe('the form of a mold', () => {
  it('has a box or a menu for every parameter of every type and every figure of every jacket', () => {
    for (const mold of MOLD_TYPES)
      for (const parameter of mold.parameters)
        expect(isPicked(parameter) || MADE_FIELDS.has(moldField(mold, parameter)), parameter.key).toBe(true);
    for (const { key, parameters } of JACKET_MATERIALS)
      for (const parameter of parameters)
        expect(MADE_FIELDS.has(jacketField(key, parameter.key)), parameter.key).toBe(true);
  });

  it('reads back every default of a mold as the value that is taken for it', () => {
    for (const mold of MOLD_TYPES)
      for (const parameter of mold.parameters.filter((one) => !isPicked(one))) {
        const name = moldField(mold, parameter);
        const { spec } = MADE_FIELDS.get(name)!;
        const read = readField(name, { text: `${parameter.default}`, unit: spec.units[0] ?? '' });
        expect(read, `${mold.key} ${parameter.key}`).toMatchObject({ kind: 'one', value: parameter.default });
      }
  });

  it('asks once for what two types share by name: one flange, but a skin and a blanket', () => {
    const nameOf = (key: string, parameter: string) => {
      const mold = MOLD_TYPES.find((one) => one.key === key)!;
      return moldField(
        mold,
        mold.parameters.find((one) => one.key === parameter)!,
      );
    };
    expect(nameOf('blanket', 'flangeMm')).toBe(nameOf('skin', 'flangeMm'));
    expect(nameOf('blanket', 'skinMm')).not.toBe(nameOf('skin', 'skinMm'));
  });

  it('says what was said and nothing else to the engine', () => {
    const ticket = step(
      newTicket(),
      skin,
      ...type(SKIN, '1/4 in'),
      { do: 'moldPick', field: 'mold.block.base', value: 'closed' },
      ...type('siliconeWaste', '8'),
      ...type('stockBase', '2'),
      { do: 'fact', fact: 'patchTested', value: 'no' },
      { do: 'fact', fact: 'gloves', value: 'nitrile' },
      { do: 'fact', fact: 'gloves', value: '' },
    );
    const ask = moldsAskOf(ticket)!;
    expect(ask.settings.skin).toEqual({ skinMm: 6.35, base: 'closed' });
    expect(ask.settings.block).toEqual({ base: 'closed' });
    expect(ask.work).toEqual({ wasteShare: 0.08, degassed: false });
    expect(ask.silicone).toEqual({ stock: [{ baseKg: 2 }] });
    expect(ask.facts).toEqual({ patchTested: false, today: ticket.today });
  });
});

describe('the silicone card', () => {
  it('typed in from the sample shop is that card to the engine', () => {
    const [card] = SAMPLE_SHOP.silicones;
    const { silicone } = moldsAskOf(step(newTicket(), { do: 'silicone', card: card! }))!;
    expect(silicone).toEqual(card);
  });

  it('leaves nothing of the card before it', () => {
    const [card] = SAMPLE_SHOP.silicones;
    const other = { ...card!, name: 'Other', densityKgM3: 1250, kits: [] };
    delete other.linearShrinkShare;
    const ticket = step(newTicket(), { do: 'silicone', card: card! }, { do: 'silicone', card: other });
    const { silicone } = moldsAskOf(ticket)!;
    expect(silicone?.linearShrinkShare).toBeUndefined();
    expect(silicone?.kits).toBeUndefined();
    expect(silicone?.densityKgM3).toBe(1250);
  });

  it.each([
    ['1.1 kg=30, 5.5 kg=130', [1.1, 5.5], [30, 130]],
    ['1,1 kg=30; 5,5 kg', [1.1, 5.5], [30, undefined]],
    ['10 lb=99.50', [4.5359237], [99.5]],
    ['1.1', [1.1], [undefined]],
    ['', [], []],
  ])('reads the kits "%s"', (text, masses, prices) => {
    const read = readKitsText(text);
    if (!read.ok) throw new Error(`expected kits, got ${read.text}`);
    expect(read.kits.map(({ massKg }) => Number(massKg.toPrecision(12)))).toEqual(masses);
    expect(read.kits.map(({ price }) => price)).toEqual(prices);
  });

  it.each(['1.1 kg=cheap', 'two kits', '1.1 kg=30=40', '-1 kg', '1,100 kg=30'])(
    'takes no kits from "%s", and has no mold until they are put right',
    (text) => {
      expect(readKitsText(text).ok).toBe(false);
      expect(unreadForMold(step(newTicket(), { do: 'kits', text }))).toBe('kits');
    },
  );

  it('waits with the engine while kits are typed', () => {
    const { ticket } = molded();
    const typed = step(ticket, { do: 'kits', text: '1' });
    expect(asksOf(typed)).toEqual([]);
    expect(moldNow(typed).state).toBe('working');
  });
});

describe('the cavity that Batch pours for', () => {
  it('is the sculpt until something about the cavity is said', () => {
    const { ticket } = poured();
    expect(pourByOf(ticket)).toBe('sculpt');
    expect(pourNow(ticket).answer!.cavityCm3.value).toBe(sizeNow(ticket).answer!.size.volumeCm3.value);
  });

  it('is the cavity at casting temperature once shrink and warmth are said', () => {
    const { ticket, desk } = poured();
    const warm = settle(step(ticket, ...type('sheetShrink', '0.2'), ...type('castingTemp', '40')), desk);
    expect(pourByOf(warm)).toBe('cavity');
    // By hand: 2000 cm3 x ((1 - 0.002)(1 + 2.4e-4 x 17))^3, warm from 23 to 40 degrees.
    const cm3 = 2000 * ((1 - 0.002) * (1 + 2.4e-4 * 17)) ** 3;
    expectClose(castingNow(warm).answer!.cavityCm3.value, cm3, 1e-6, 'cavity');
    expectClose(pourNow(warm).answer!.cavityCm3.value, cm3, 1e-6, 'volume of the pour');
    expect(pourNow(warm).answer!.batch.totalG).not.toBe(pourNow(ticket).answer!.batch.totalG);
  });

  it('is the sculpt again when the switch says so, and drops the grams at once', () => {
    const { ticket, desk } = poured();
    const shrunk = settle(step(ticket, ...type('measuredShrink', '1 %')), desk);
    const switched = step(shrunk, { do: 'molding', molding: { pourBy: 'sculpt' } });
    expect(pourNow(switched)).toEqual({ state: 'working' });
    expect(pourNow(settle(switched, desk)).answer!.cavityCm3.value).toBe(
      sizeNow(ticket).answer!.size.volumeCm3.value,
    );
  });

  it.each(['warm', '1,250', '400 C'])('gives no grams while the casting temperature reads %s', (text) => {
    const { ticket, desk } = poured();
    const typed = settle(step(ticket, ...type('castingTemp', text)), desk);
    expect(castingNow(typed).answer).toBeUndefined();
    expect(pourNow(typed)).toEqual({ state: 'open' });
  });
});

describe('a new scan', () => {
  it('keeps the silicone, and forgets what was said of the sculpt before', () => {
    const [card] = SAMPLE_SHOP.silicones;
    const said = step(
      newTicket(),
      { do: 'silicone', card: card! },
      ...type('sculptMass', '3 kg'),
      ...type('mold.block.partingMm', '80'),
      ...type(SKIN, '8'),
      { do: 'fact', fact: 'sculptSurface', value: 'wax' },
      { do: 'fact', fact: 'gloves', value: 'nitrile' },
    );
    const opened = openBox(said, {});
    const ask = moldsAskOf(opened)!;
    expect(ask.silicone?.name).toBe(card!.name);
    expect(ask.settings.skin).toEqual({ skinMm: 8 });
    expect(ask.settings.block).toEqual({});
    expect(ask.sculptMassG).toBeUndefined();
    expect(ask.facts).toEqual({ siliconeCure: 'condensation', gloves: 'nitrile', today: opened.today });
  });
});

describe('marks of Mold', () => {
  it('are open without figures, and say no check is fine that nobody answered', () => {
    expect(moldMarks(newTicket())).toEqual(Array(7).fill('open'));
    const { ticket } = molded();
    expect(moldMarks(ticket)[3]).toBe('unknown');
  });

  it('stop at the materials when latex gloves meet addition-cure silicone', () => {
    const { ticket, desk } = molded();
    const worn = step(
      ticket,
      { do: 'fact', fact: 'siliconeCure', value: 'addition' },
      { do: 'fact', fact: 'gloves', value: 'latex' },
    );
    expect(moldMarks(settle(worn, desk, { withMolds: true }))[3]).toBe('stop');
  });

  it('want a look at a type that nobody chose', () => {
    const { ticket, desk } = molded();
    const open = step(ticket, { do: 'molding', molding: { type: undefined } });
    expect(moldMarks(settle(open, desk, { withMolds: true }))[0]).toBe('look');
  });
});

it('assumes the ratio of the rules while nothing is typed', () => {
  const { ticket } = molded();
  const { baseG, catalystG } = chosenNow(ticket).answer!.silicone;
  // Each mix is rounded to whole grams of catalyst: half a gram of 10 is 5 %.
  expectClose(baseG / catalystG, SILICONE_RULES.basePerCatalyst.value, 0.05, 'base over catalyst');
});
