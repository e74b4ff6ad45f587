import { siliconeNamed, stockOf, type Shop } from '../job/shop';
import type { MoldAsk, SiliconeWish } from '../plan';
import { bad, good, type Outcome } from '../problem';
import { CHOICES } from '../checks';
import type { SiliconeCard, SiliconeKit, SiliconeRatio } from '../yield';
import { listOf, textOf, type OptionSpec, type OptionValues } from './command';
import { defined, figureIn, readFigures, type Figure } from './moldFigures';
import { quantityOption, ratioOption } from './quantity';

export const SILICONE_OPTIONS: readonly OptionSpec[] = [
  {
    flags: '--silicone <card>',
    about: 'silicone card of the shop, by its exact name; figures below win over it',
  },
  { flags: '--silicone-density <density>', about: 'density of the mix (bare number: kg/m3)' },
  { flags: '--silicone-ratio <base:catalyst>', about: 'mixing ratio by mass, base first, as 10:1' },
  { flags: '--pot-life <time>', about: 'pot life by the data sheet (bare number: min)' },
  { flags: '--pot-life-at <temperature>', about: 'temperature that pot life holds at (bare number: C)' },
  { flags: '--cure <kind>', about: 'how the silicone cures', choices: CHOICES.siliconeCure },
  { flags: '--shrink <share>', about: 'linear shrink of the mold as you measured it, as "0.3 %"' },
  {
    flags: '--kit <mass=price>',
    about: 'a kit that can be bought, base and catalyst together, as "5.5 kg=160"; the price may be left out',
    repeat: true,
  },
  { flags: '--stock-base <mass>', about: 'base on the shelf (bare number: kg)' },
  { flags: '--stock-catalyst <mass>', about: 'catalyst on the shelf (bare number: kg)' },
];

const FIGURES: readonly Figure<
  'densityKgM3' | 'potLifeMin' | 'potLifeAtC' | 'shrink' | 'baseG' | 'catalystG'
>[] = [
  { key: 'densityKgM3', option: 'siliconeDensity', kind: 'density', bareUnit: 'kg/m3' },
  { key: 'potLifeMin', option: 'potLife', kind: 'minutes' },
  { key: 'potLifeAtC', option: 'potLifeAt', kind: 'temperature', bareUnit: 'C' },
  { key: 'shrink', option: 'shrink', kind: 'share', allowZero: true },
  { key: 'baseG', option: 'stockBase', kind: 'mass', bareUnit: 'kg', allowZero: true },
  { key: 'catalystG', option: 'stockCatalyst', kind: 'mass', bareUnit: 'kg', allowZero: true },
];

/** The silicone by its card, by its figures, or the card with figures that win over it. */
export function siliconeOptions(
  options: OptionValues,
  shop: Shop | undefined,
): Outcome<Pick<MoldAsk, 'measuredShrink'> & { silicone: SiliconeWish }> {
  const card = siliconeCardOption(options, shop);
  if (!card.ok) return card;
  const figures = readFigures(options, FIGURES);
  if (!figures.ok) return figures;
  const ratio = siliconeRatio(options, card.value.ratio);
  if (!ratio.ok) return ratio;
  const kits = kitOptions(listOf(options, 'kit'));
  if (!kits.ok) return kits;
  const { densityKgM3, potLifeMin, potLifeAtC, shrink, baseG, catalystG } = figures.value;
  if ((baseG === undefined) !== (catalystG === undefined))
    return bad('BAD_CALL', {
      text: 'One part on the shelf makes no rubber by itself.',
      hint: 'Give --stock-base and --stock-catalyst, 0 kg for the one that is not there.',
    });
  const stock =
    baseG === undefined || catalystG === undefined
      ? undefined
      : [{ baseKg: baseG / 1000, catalystKg: catalystG / 1000 }];
  const cure = textOf(options, 'cure') as SiliconeWish['cure'];
  return good({
    silicone: {
      ...card.value,
      ...defined({ densityKgM3, potLifeMin, potLifeAtC, cure, ratio: ratio.value, stock }),
      ...(kits.value.length === 0 ? {} : { kits: kits.value }),
    },
    ...(shrink === undefined ? {} : { measuredShrink: { share: shrink } }),
  });
}

/** The silicone card of --silicone, if one was named. Errors: BAD_CALL without a shop, CARD_UNKNOWN. */
export function siliconeCardOption(
  options: OptionValues,
  shop: Shop | undefined,
): Outcome<SiliconeWish & Partial<SiliconeCard>> {
  const name = textOf(options, 'silicone');
  if (name === undefined) return good({});
  if (shop === undefined)
    return bad('BAD_CALL', {
      text: `--silicone "${name}" needs a shop to look in.`,
      hint: 'Add --shop FILE; "risewright sample DIR" writes one to try.',
    });
  const card = siliconeNamed(shop, name);
  if (!card.ok) return card;
  const stock = stockOf(shop, name);
  return good(stock.length === 0 ? card.value : { ...card.value, stock });
}

/** More catalyst than this many times the base is a ratio typed in the other order. Chosen here: no silicone comes near. */
const MOST_CATALYST_PER_BASE = 2;

function siliconeRatio(
  options: OptionValues,
  ofCard: SiliconeRatio | undefined,
): Outcome<SiliconeRatio | undefined> {
  const text = textOf(options, 'siliconeRatio');
  if (text === undefined) return good(undefined);
  const read = ratioOption('--silicone-ratio', text);
  const hint = 'Write parts of base, a colon, parts of catalyst, both by mass, as 10:1.';
  if (!read.ok) return bad('BAD_CALL', { text: String(read.problem.values.text), hint });
  const { a: base, b: catalyst } = read.value;
  const isCardTurned =
    ofCard !== undefined && base !== catalyst && base * ofCard.base === catalyst * ofCard.catalyst;
  if (isCardTurned || catalyst > MOST_CATALYST_PER_BASE * base)
    return bad('BAD_CALL', { text: `--silicone-ratio "${text}" has more catalyst than base.`, hint });
  return good({ base, catalyst, by: 'mass' });
}

/** "5.5 kg=160", "1.1 kg". */
function kitOptions(texts: readonly string[]): Outcome<SiliconeKit[]> {
  const kits: SiliconeKit[] = [];
  for (const text of texts) {
    const [mass, price, ...more] = text.split('=');
    if (more.length > 0)
      return bad('BAD_CALL', {
        text: `--kit "${text}" is not one kit.`,
        hint: 'Write its mass and its price, as "5.5 kg=160", and give --kit once a size.',
      });
    const massG = quantityOption('--kit', mass!, 'mass', 'kg');
    if (!massG.ok) return massG;
    const massKg = massG.value / 1000;
    if (price === undefined) {
      kits.push({ massKg });
      continue;
    }
    const paid = figureIn({}, '--kit', price, true);
    if (!paid.ok)
      return bad('BAD_CALL', {
        text: `--kit "${text}": its price is not a number of 0 or more.`,
        hint: 'Write the price as a number in your own money, without a sign for it: "5.5 kg=160".',
      });
    kits.push({ massKg, price: paid.value });
  }
  return good(kits);
}
