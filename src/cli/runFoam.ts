import { sheetOf } from '../job/foamSheet';
import { stockOf, type Shop } from '../job/shop';
import { bad, good, type Outcome } from '../problem';
import type { FoamCard, FoamStock, MassRatio } from '../yield';
import { listOf, type OptionValues } from './command';
import { namedFields } from './girthFields';
import { defined } from './moldFigures';
import { readPourFigures } from './pourFigures';
import { quantityOption } from './quantity';

/** How --stock is written. */
export const STOCK_EXAMPLE = 'A=2kg,B=1.1kg';

/** Lots of the foam: what is typed, else those of the shop. Errors: BAD_CALL. */
export function stockOption(
  options: OptionValues,
  { card, shop }: { card: FoamCard | undefined; shop: Shop | undefined },
): Outcome<FoamStock[]> {
  const texts = listOf(options, 'stock');
  if (texts.length === 0)
    return good(
      card === undefined || shop === undefined
        ? []
        : stockOf(shop, card.name).map(({ aKg, bKg }) => defined({ aKg, bKg })),
    );
  const lots: FoamStock[] = [];
  for (const text of texts) {
    const lot = lotOf(text);
    if (!lot.ok) return lot;
    lots.push(lot.value);
  }
  return good(lots);
}

/** A part that is not named was not counted, which is not the same as none. */
function lotOf(text: string): Outcome<FoamStock> {
  const fields = namedFields(text, { option: '--stock', names: ['a', 'b'], example: STOCK_EXAMPLE });
  if (!fields.ok) return fields;
  const lot: FoamStock = {};
  for (const [part, key] of [
    ['a', 'aKg'],
    ['b', 'bKg'],
  ] as const) {
    const amount = fields.value[part];
    if (amount === undefined) continue;
    const read = quantityOption(`--stock ${part.toUpperCase()}`, amount, 'mass', 'kg', true);
    if (!read.ok) return read;
    lot[key] = read.value / 1000;
  }
  return good(lot);
}

/** Sizes the foam is sold in: what is typed, else those of the card. Errors: BAD_CALL. */
export function kitOption(options: OptionValues, card: FoamCard | undefined): Outcome<{ massKg: number }[]> {
  const texts = listOf(options, 'kit');
  if (texts.length === 0) return good(card === undefined ? [] : (sheetOf(card).kits ?? []));
  const kits: { massKg: number }[] = [];
  for (const text of texts) {
    const read = quantityOption('--kit', text, 'mass', 'kg');
    if (!read.ok) return read;
    kits.push({ massKg: read.value / 1000 });
  }
  return good(kits);
}

/** Price of a kilogram of mix: what is typed, else what stands on the card. Errors: BAD_CALL. */
export function foamPrice(
  options: OptionValues,
  { card, ratio }: { card: FoamCard | undefined; ratio: MassRatio },
): Outcome<number | undefined> {
  const read = readPourFigures<'aPerKg' | 'bPerKg'>(options, [
    { key: 'aPerKg', option: 'priceA', unit: 'money', allowZero: true },
    { key: 'bPerKg', option: 'priceB', unit: 'money', allowZero: true },
  ]);
  if (!read.ok) return read;
  const { aPerKg, bPerKg } = { ...(card === undefined ? {} : sheetOf(card)), ...read.value };
  if (aPerKg !== undefined && bPerKg !== undefined)
    return good((ratio.a * aPerKg + ratio.b * bPerKg) / (ratio.a + ratio.b));
  const isHalf = read.value.aPerKg !== undefined || read.value.bPerKg !== undefined;
  if (!isHalf) return good(undefined);
  return bad('BAD_CALL', {
    text: 'A cost needs the price of both parts.',
    hint: 'Give --price-a and --price-b, for 1 kg each, in the same money.',
  });
}
