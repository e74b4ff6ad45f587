import { bad, good, type Outcome } from '../problem';
import { foamNamed, readShop, type Shop } from '../job/shop';
import type { PourInputs } from '../plan';
import { reversedRatio, type FoamCard, type Given, type MixRatio } from '../yield';
import type { ScalarKind } from '../units';
import { textOf, type OptionSpec, type OptionValues } from './command';
import type { Io } from './io';
import { quantityOption, ratioOption } from './quantity';
import { fileTrouble } from './fileTrouble';

export const BATCH_OPTIONS: readonly OptionSpec[] = [
  { flags: '--scan <scan>', about: 'scan whose volume is poured (with the options of size)' },
  { flags: '--volume <volume>', about: 'volume of the cavity, if known (bare number: cm3)' },
  { flags: '--riser <volume>', about: 'riser that fills too (bare number: cm3)' },
  { flags: '--foam <card>', about: 'foam card of the shop, by its exact name' },
  { flags: '--free-rise <density>', about: 'free-rise density (bare number: kg/m3)' },
  {
    flags: '--free-rise-from <source>',
    about: 'where that density is from; "cup-test" is a cup of today',
    choices: ['data-sheet', 'cup-test'],
  },
  { flags: '--ratio <a:b>', about: 'mixing ratio, A (isocyanate) first, as 52:100' },
  { flags: '--ratio-by <way>', about: 'what the ratio counts (assumed mass)', choices: ['mass', 'volume'] },
  {
    flags: '--part-a-density <density>',
    about: 'liquid density of part A (bare number: kg/m3), for a ratio by volume',
  },
  { flags: '--part-b-density <density>', about: 'liquid density of part B' },
  { flags: '--liquid-density <density>', about: 'liquid density of the mix (bare number: kg/m3)' },
  { flags: '--pack <factor>', about: 'pack factor: molded over free-rise density (assumed 1.30)' },
  { flags: '--overpack <percent>', about: 'instead of --pack: percent of the minimum fill, with --min-fill' },
  { flags: '--min-fill <density>', about: 'minimum-fill density (bare number: kg/m3)' },
  { flags: '--short-fill <chance>', about: 'instead of --pack: wanted chance of a short fill, as "1 %"' },
  { flags: '--residue <mass>', about: 'mix that stays in the cup (bare number: g)' },
  { flags: '--vents <mass>', about: 'foam that comes out of the vents (bare number: g)' },
  { flags: '--gas-loss <share>', about: 'share of the mix that leaves as gas, as "1 %"' },
  { flags: '--scale-step <mass>', about: 'step of the scale (bare number: g)' },
];

interface Numeric {
  key:
    | 'riserCm3'
    | 'minFillKgM3'
    | 'liquidKgM3'
    | 'packFactor'
    | 'shortFillChance'
    | 'overpackShare'
    | 'ventsG'
    | 'gasLossShare'
    | 'residueG'
    | 'scaleStepG';
  option: string;
  kind: ScalarKind;
  bareUnit?: string;
  allowZero?: boolean;
}

const NUMERIC: readonly Numeric[] = [
  { key: 'riserCm3', option: 'riser', kind: 'volume', bareUnit: 'cm3', allowZero: true },
  { key: 'minFillKgM3', option: 'minFill', kind: 'density', bareUnit: 'kg/m3' },
  { key: 'liquidKgM3', option: 'liquidDensity', kind: 'density', bareUnit: 'kg/m3' },
  { key: 'packFactor', option: 'pack', kind: 'packFactor' },
  { key: 'shortFillChance', option: 'shortFill', kind: 'share' },
  { key: 'overpackShare', option: 'overpack', kind: 'overpack', bareUnit: '%' },
  { key: 'ventsG', option: 'vents', kind: 'mass', bareUnit: 'g', allowZero: true },
  { key: 'gasLossShare', option: 'gasLoss', kind: 'share', allowZero: true },
  { key: 'residueG', option: 'residue', kind: 'mass', bareUnit: 'g', allowZero: true },
  { key: 'scaleStepG', option: 'scaleStep', kind: 'mass', bareUnit: 'g' },
];

export type FoamAndChoices = Omit<PourInputs, 'cavity'>;

/** What of the batch the call says, with the card and the shop it was read from. */
export interface BatchCall {
  choices: FoamAndChoices;
  card?: FoamCard;
  shop?: Shop;
}

/** Everything about the foam and the pour that the call says; the cavity is the caller's. */
export function batchOptions(options: OptionValues, io: Io): Outcome<BatchCall> {
  const shop = shopOption(options, io);
  if (!shop.ok) return shop;
  const card = foamCardOption(options, shop.value);
  if (!card.ok) return card;
  const foam = foamOption(options, card.value);
  if (!foam.ok) return foam;
  const chosen: Partial<Record<Numeric['key'], Given>> = {};
  for (const { key, option, kind, bareUnit, allowZero } of NUMERIC) {
    const text = textOf(options, option);
    if (text === undefined) continue;
    const read = quantityOption(flagOf(option), text, kind, bareUnit, allowZero);
    if (!read.ok) return read;
    chosen[key] = {
      value: read.value,
      from: key === 'packFactor' || key === 'shortFillChance' ? 'chosen' : 'given',
    };
  }
  return good({
    choices: { ...foam.value, ...scaleOf(shop.value), ...chosen },
    ...(card.value === undefined ? {} : { card: card.value }),
    ...(shop.value === undefined ? {} : { shop: shop.value }),
  });
}

/** The scale of the shop; a step that is typed wins over its own. */
function scaleOf(shop: Shop | undefined): Pick<FoamAndChoices, 'scaleStepG' | 'scaleMaxG'> {
  if (shop?.scale === undefined) return {};
  const { stepG, maxG } = shop.scale;
  return {
    scaleStepG: { value: stepG, from: 'given' },
    ...(maxG === undefined ? {} : { scaleMaxG: { value: maxG, from: 'given' as const } }),
  };
}

/** The shop of --shop, if one was named. Errors: CANNOT_READ_FILE and those of `readShop`. */
export function shopOption(options: OptionValues, io: Io): Outcome<Shop | undefined> {
  const file = textOf(options, 'shop');
  if (file === undefined) return good(undefined);
  let text: string;
  try {
    text = new TextDecoder().decode(io.readFile(file));
  } catch (e) {
    return bad('CANNOT_READ_FILE', { file, why: fileTrouble(e) });
  }
  return readShop(text, file);
}

/** The foam by its card, by its figures, or the card with figures that win over it. */
function foamOption(options: OptionValues, card: FoamCard | undefined): Outcome<FoamAndChoices> {
  const densities = partDensities(options, card);
  if (!densities.ok) return densities;
  const freeRise = freeRiseOption(options, card);
  if (!freeRise.ok) return freeRise;
  const ratio = mixRatio(options, card);
  if (!ratio.ok) return ratio;
  const liquid = card?.liquidDensityKgM3;
  return good({
    freeRiseKgM3: freeRise.value,
    ratio: ratio.value,
    ...(densities.value === undefined ? {} : { partDensities: densities.value }),
    ...(liquid === undefined ? {} : { liquidKgM3: { value: liquid, from: 'data-sheet' as const } }),
  });
}

/** The foam card of --foam, if one was named. Errors: BAD_CALL without a shop, CARD_UNKNOWN. */
export function foamCardOption(options: OptionValues, shop: Shop | undefined): Outcome<FoamCard | undefined> {
  const name = textOf(options, 'foam');
  if (name === undefined) return good(undefined);
  if (shop === undefined)
    return bad('BAD_CALL', {
      text: `--foam "${name}" needs a shop to look in.`,
      hint: 'Add --shop FILE; "risewright sample DIR" writes one to try.',
    });
  return foamNamed(shop, name);
}

/** A cup test on the card is one of another day, unless the call says that it is today's. */
function freeRiseOption(
  options: OptionValues,
  card: FoamCard | undefined,
): Outcome<FoamAndChoices['freeRiseKgM3']> {
  const text = textOf(options, 'freeRise');
  const from = textOf(options, 'freeRiseFrom') as 'data-sheet' | 'cup-test' | undefined;
  if (text !== undefined) {
    const read = quantityOption('--free-rise', text, 'density', 'kg/m3');
    return read.ok ? good({ value: read.value, from: from ?? 'given' }) : read;
  }
  if (card !== undefined) {
    const isOld = from === undefined && card.freeRiseFrom === 'cup-test';
    const freeRise = { value: card.freeRiseKgM3, from: from ?? card.freeRiseFrom };
    return good(isOld ? { ...freeRise, isOld } : freeRise);
  }
  return bad('BAD_CALL', {
    text: 'The foam is not known: no free-rise density and no card.',
    hint: 'Give --free-rise "6 pcf" and --ratio A:B, or --foam NAME with --shop FILE.',
  });
}

function mixRatio(options: OptionValues, card: FoamCard | undefined): Outcome<MixRatio> {
  const text = textOf(options, 'ratio');
  const by = textOf(options, 'ratioBy') as MixRatio['by'] | undefined;
  if (text === undefined) {
    if (card === undefined)
      return bad('BAD_CALL', {
        text: 'The mixing ratio is missing.',
        hint: 'Give --ratio A:B, A (the isocyanate side) first, as on the label.',
      });
    if (by !== undefined && by !== card.ratio.by) {
      return bad('BAD_CALL', {
        text: `The card gives its ratio by ${card.ratio.by}, not by ${by}.`,
        hint: 'Give --ratio as well.',
      });
    }
    return good(card.ratio);
  }
  const read = ratioOption('--ratio', text);
  if (!read.ok) return read;
  const typed: MixRatio = { ...read.value, by: by ?? card?.ratio.by ?? 'mass' };
  if (card !== undefined && reversedRatio(card, typed)) {
    return bad('RATIO_REVERSED', { a: typed.a, b: typed.b, cardA: card.ratio.a, cardB: card.ratio.b });
  }
  return good(typed);
}

function partDensities(
  options: OptionValues,
  card: FoamCard | undefined,
): Outcome<FoamCard['partDensities']> {
  const [a, b] = [textOf(options, 'partADensity'), textOf(options, 'partBDensity')];
  if (a === undefined && b === undefined) return good(card?.partDensities);
  if (a === undefined || b === undefined)
    return bad('BAD_CALL', {
      text: 'One part density alone does not help.',
      hint: 'Give --part-a-density and --part-b-density.',
    });
  const aRead = quantityOption('--part-a-density', a, 'density', 'kg/m3');
  if (!aRead.ok) return aRead;
  const bRead = quantityOption('--part-b-density', b, 'density', 'kg/m3');
  return bRead.ok ? good({ aKgM3: aRead.value, bKgM3: bRead.value }) : bRead;
}

/** "--free-rise" of the key "freeRise". */
export const flagOf = (option: string): string =>
  `--${option.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
