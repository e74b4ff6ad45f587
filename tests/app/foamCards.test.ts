import { describe, expect, it } from 'vitest';
import type { ShopFoam } from '../../src/job/foamSheet';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { emptyCore } from '../../src/store';
import { reversedFrom } from '../../src/app/batch/reversed';
import { cardsWith } from '../../src/app/shop/cardsWith';
import { withCard } from '../../src/app/shelf/cardChange';
import { specOf } from '../../src/app/ticket/fields';
import { foamOnTicket, isAsOnFoamCard, onFoamCard } from '../../src/app/ticket/foamOnTicket';
import { newPiece } from '../../src/app/ticket/newPiece';
import { nextCasting } from '../../src/app/ticket/nextCasting';
import { readField } from '../../src/app/ticket/readField';
import { pieceWith, wordsOfPiece } from '../../src/app/ticket/record';
import { ticketReducer, type Action } from '../../src/app/ticket/reducer';
import { isAsOnSiliconeCard, onSiliconeCard, siliconeOnTicket } from '../../src/app/ticket/siliconeOnTicket';
import { newTicket, type Ticket } from '../../src/app/ticket/state';
import { typedText } from '../../src/app/ticket/typedText';
import { cardOf } from '../../src/app/ticket/wishes';
import { wordsOf } from '../../src/app/ticket/words';
import { KG_M3_PER_LB_FT3 } from '../../src/units';
import type { FoamCard, SiliconeCard } from '../../src/yield';
import { expectClose } from '../support/close';
import { lcg } from '../support/lcg';
import { valueOf } from '../support/outcome';

const after = (...actions: Action[]): Ticket => actions.reduce(ticketReducer, newTicket());
const [light, firm] = SAMPLE_SHOP.foams as [FoamCard, FoamCard];
const [silicone] = SAMPLE_SHOP.silicones as [SiliconeCard];
const OURS: ShopFoam = {
  name: 'Ours',
  freeRiseKgM3: 72.5,
  freeRiseFrom: 'cup-test',
  ratio: { a: 2, b: 1, by: 'volume' },
  partDensities: { aKgM3: 1230, bKgM3: 1011 },
  creamS: 12.5,
  openMin: 40,
  timesAtC: 21,
  ncoShare: 0.285,
  waterShare: 0.012,
  aPerKg: 11,
  bPerKg: 9.5,
};

describe('a foam card on the ticket', () => {
  it.each([
    ['Sample Foam Light', light, '6', 'lb/ft3'],
    ['Sample Foam Firm', firm, '12', 'lb/ft3'],
    ['one of 72.5 kg/m3', OURS, '72.5', 'kg/m3'],
  ])('%s stands as it would be typed', (_, card, text, unit) => {
    expect(after({ do: 'card', card }).fields.freeRise).toEqual({ text, unit });
  });

  it.each([light, firm, OURS].map((card) => [card.name, card] as const))(
    '%s is read back as it is on the card, source and sheet as well',
    (_, card) => {
      const ticket = after({ do: 'card', card });
      const back = valueOf(foamOnTicket(ticket)!);
      const { riseS: _rise, kits: _kits, ...told } = card as ShopFoam & { riseS?: number };
      expectClose(back.freeRiseKgM3, card.freeRiseKgM3, 1e-11, 'free rise');
      expect({ ...back, freeRiseKgM3: 0 }).toEqual({ ...told, freeRiseKgM3: 0 });
      expect(isAsOnFoamCard(ticket, card)).toBe(true);
    },
  );

  it('leaves nothing of the card before: what it does not say is blank', () => {
    const { fields } = after({ do: 'card', card: OURS }, { do: 'card', card: firm });
    expect([fields.densityA.text, fields.nco.text, fields.priceA.text]).toEqual(['', '', '']);
    expect(fields.sheetTemp.text).toBe('23');
  });

  it.each<[string, Action]>([
    ['another free rise', { do: 'type', field: 'freeRise', text: '6.1' }],
    ['a density that was cleared', { do: 'type', field: 'densityA', text: '' }],
    ['another way to count the ratio', { do: 'foam', foam: { by: 'volume' } }],
    ['a cup test', { do: 'foam', foam: { from: 'cup-test' } }],
    ['another name', { do: 'foam', foam: { name: 'Light' } }],
    ['a cream time', { do: 'type', field: 'cream', text: '41' }],
  ])('with %s is no longer as on the card', (_, change) => {
    expect(isAsOnFoamCard(after({ do: 'card', card: light }, change), light)).toBe(false);
  });

  it('typed in another unit is still as on the card', () => {
    const kgM3 = String(6 * KG_M3_PER_LB_FT3);
    const ticket = after(
      { do: 'card', card: light },
      { do: 'unit', field: 'freeRise', unit: 'kg/m3' },
      { do: 'type', field: 'freeRise', text: kgM3 },
    );
    expect(isAsOnFoamCard(ticket, light)).toBe(true);
  });

  it('turned round is noticed, of any card of the shop, until the foam goes by another name', () => {
    const turned = after(
      { do: 'card', card: OURS },
      { do: 'type', field: 'partsA', text: '1' },
      { do: 'type', field: 'partsB', text: '2' },
    );
    expect(reversedFrom(turned, cardOf(turned))?.values).toMatchObject({ a: 1, b: 2, cardA: 2, cardB: 1 });
    const other = ticketReducer(turned, { do: 'foam', foam: { name: 'Another' } });
    expect(reversedFrom(other, cardOf(other))).toBeUndefined();
  });

  it('is none to keep while a box of its sheet cannot be read', () => {
    expect(
      foamOnTicket(after({ do: 'card', card: light }, { do: 'type', field: 'nco', text: 'much' })),
    ).toBeUndefined();
  });
});

describe('a card that is kept', () => {
  it('changes what the page says of it, and keeps what the page cannot say', () => {
    const said = valueOf(
      foamOnTicket(
        after(
          { do: 'card', card: light },
          { do: 'type', field: 'densityA', text: '' },
          { do: 'type', field: 'densityB', text: '' },
          { do: 'type', field: 'freeRise', text: '7' },
        ),
      )!,
    );
    const kept = onFoamCard(light, said);
    expect(kept).toMatchObject({ riseS: 150, kits: [{ massKg: 2 }] });
    expect(kept.partDensities).toBeUndefined();
    expectClose(kept.freeRiseKgM3, 7 * KG_M3_PER_LB_FT3, 1e-11);
  });

  it('takes the place of the one of its name, and a new one stands behind the others', () => {
    expect(cardsWith([light, firm], { ...light, creamS: 1 }, onFoamCard).map(({ creamS }) => creamS)).toEqual(
      [1, 50],
    );
    expect(cardsWith([light], OURS, onFoamCard).map(({ name }) => name)).toEqual([light.name, 'Ours']);
  });

  it('under a new name takes its stock along', () => {
    const core = {
      ...emptyCore(),
      foams: [light, firm],
      stock: [{ card: light.name, aKg: 1 }, { card: firm.name }],
    };
    const after = withCard<FoamCard>(core, 'foams', {
      own: light.name,
      card: (kept) => ({ ...kept!, name: 'Lighter' }),
    });
    expect(after.foams.map(({ name }) => name)).toEqual(['Lighter', firm.name]);
    expect(after.stock.map(({ card }) => card)).toEqual(['Lighter', firm.name]);
  });
});

describe('a silicone card on the ticket', () => {
  it('is read back as it is on the card', () => {
    const ticket = after({ do: 'silicone', card: silicone });
    expect(valueOf(siliconeOnTicket(ticket)!)).toEqual(silicone);
    expect(isAsOnSiliconeCard(ticket, silicone)).toBe(true);
  });

  it('is none while density, ratio or pot life is blank: what is assumed is not kept as a fact', () => {
    for (const field of ['siliconeDensity', 'siliconeBase', 'potLife'] as const)
      expect(
        siliconeOnTicket(after({ do: 'silicone', card: silicone }, { do: 'type', field, text: '' })),
      ).toBeUndefined();
  });

  it('keeps what the page cannot say of it, and loses what was cleared', () => {
    const strong = { ...silicone, shoreA: 25, elongationAtBreak: 4 };
    const ticket = after({ do: 'silicone', card: strong }, { do: 'fact', fact: 'siliconeCure', value: '' });
    const kept = onSiliconeCard(strong, valueOf(siliconeOnTicket(ticket)!));
    expect(kept).toMatchObject({ shoreA: 25, elongationAtBreak: 4 });
    expect('cure' in kept).toBe(false);
    expect(isAsOnSiliconeCard(ticket, strong)).toBe(false);
  });
});

describe('a value typed for the user', () => {
  it('reads back as the value, in every box of a card (seed 7, 200 values each)', () => {
    const random = lcg(7);
    for (const name of ['freeRise', 'densityA', 'nco', 'sheetTemp', 'cream', 'scaleStep'] as const)
      for (let i = 0; i < 200; i++) {
        const value = Number((0.01 + random() * 0.9).toPrecision(6)) * (name === 'nco' ? 1 : 100);
        const read = readField(name, typedText(specOf(name), value));
        // What is hard to believe is asked about, with the value among its readings.
        const back = read.kind === 'one' ? read.value : read.kind === 'ask' ? read.readings[0]?.value : NaN;
        expectClose(back!, value, 1e-9, `${name} of ${value}`);
      }
  });

  it('stands in the unit that is shortest: 0.1 oz is not 2.83495 g', () => {
    expect(typedText(specOf('scaleStep'), 0.1 * 28.349523125)).toEqual({ text: '0.1', unit: 'oz' });
    expect(typedText(specOf('scaleStep'), 1)).toEqual({ text: '1', unit: 'g' });
  });
});

it('a cup test of one day is none of the next: its density stays, and is only given', () => {
  const piece = newPiece({ name: 'Troll', today: '2026-01-01', core: emptyCore() });
  const poured = pieceWith(piece, wordsOf(after({ do: 'card', card: OURS })));
  const next = wordsOfPiece(nextCasting(poured, poured.hand.casting)).words;
  expect([next.foam.from, next.fields.freeRise.text]).toEqual(['given', '72.5']);
});
