import type { CheckFacts } from '../../checks';
import type { Estimate } from '../../estimate';
import type { PourAsk } from '../../plan';
import { massRatio, RULES, WARMTH_RULES, type ColorShare, type Given } from '../../yield';
import type { FieldName } from './fields';
import { colorFields } from './madeFields';
import { factValues, given, isUnreadField } from './moldWishes';
import { readPastText } from './past';
import { DROPS_WEIGHED, type PourField } from './pourFields';
import { valueIn } from './readField';
import type { Ticket } from './state';
import { isSampleFoam } from './foamState';
import { reversedFrom } from '../batch/reversed';
import { batchWishOf, cardOf } from './wishes';

/** The questions of the pour and the boxes each hangs on. The grams hang on those of the day. */
export const POUR_PARTS = {
  day: ['pourRoom', 'ingredients', 'altitude', 'station', 'sheetTemp', 'sheetAltitude'],
  mold: ['moldTemp'],
  cups: ['foamCup', 'cupFill', 'hands', 'cream', 'mixTime', 'carryTime'],
  forces: ['projected', 'plugArea', 'lidMass', 'strapTension', 'strapCount', 'peakPressure', 'peakPack'],
  warm: ['warmWall', 'warmAir', 'warmTarget', 'warmJacket'],
  times: ['nco', 'water', 'openTime'],
  skin: ['skinDepth'],
  prices: ['priceA', 'priceB', 'failPrice'],
  facts: ['ventCount', 'ventMm', 'panelSpan', 'strapWorking'],
} as const satisfies Readonly<Record<string, readonly PourField[]>>;

export type PourPart = keyof typeof POUR_PARTS | 'colors';

export const fieldsOfPart = ({ pouring }: Pick<Ticket, 'pouring'>, part: PourPart): readonly FieldName[] =>
  part === 'colors' ? pouring.colors.flatMap((_, row) => Object.values(colorFields(row))) : POUR_PARTS[part];

export const fieldsOfPour = (ticket: Ticket): FieldName[] => [
  ...(Object.keys(POUR_PARTS) as PourPart[]).flatMap((part) => fieldsOfPart(ticket, part)),
  ...fieldsOfPart(ticket, 'colors'),
  'bInCup',
];

/** The first box of a part that has no single meaning: what hangs on it is not asked for. */
export const unreadOfPart = (ticket: Ticket, part: PourPart): FieldName | undefined =>
  fieldsOfPart(ticket, part).find((name) => isUnreadField(ticket.fields, name));

export const canPour = (ticket: Ticket): boolean =>
  batchWishOf(ticket) !== undefined && unreadOfPart(ticket, 'day') === undefined;

/** The packs that stand side by side: four of the usual range, and the chosen one. */
export function packsOf({ fields }: Ticket): number[] {
  const chosen = valueIn(fields, 'pack') ?? RULES.packFactor.value;
  return [...new Set([...USUAL_PACKS, chosen])].sort((a, b) => a - b);
}

const USUAL_PACKS = [1.15, 1.25, 1.35, 1.45];

/** What the foam fills, and the surface of the scan where there is one. */
export interface Measured {
  volumeCm3: Estimate;
  castingCm2?: number;
  uScanToMoldShare?: Given;
}

/** All that the engine is told of the pour; undefined while something that the grams hang on is missing or unread. */
export function pourAskOf(
  ticket: Ticket,
  { volumeCm3, castingCm2, uScanToMoldShare }: Measured,
): PourAsk | undefined {
  const wish = batchWishOf(ticket);
  if (wish === undefined || !canPour(ticket)) return undefined;
  const read = readable(ticket);
  const colors = read('colors') ? colorsOf(ticket) : [];
  const past = readPastText(ticket.pouring.past);
  return {
    pour: { ...wish, cavity: { volumeCm3 }, ...given('uScanToMoldShare', uScanToMoldShare) },
    packs: { list: packsOf(ticket) },
    ...(past.ok && past.past.length > 0 ? { past: past.past } : {}),
    ...dayOf(ticket),
    ...given('moldC', read('mold') ? valueIn(ticket.fields, 'moldTemp') : undefined),
    ...foamOf(ticket, read),
    ...(read('cups') ? { cups: cupsOf(ticket) } : {}),
    ...(read('forces') ? { clamp: clampOf(ticket) } : {}),
    ...given('warm', read('warm') ? warmOf(ticket) : undefined),
    ...given('castingCm2', castingCm2),
    ...given('core', coreOf(ticket)),
    ...given('skinMm', read('skin') ? valueIn(ticket.fields, 'skinDepth') : undefined),
    ...given('prices', read('prices') ? pricesOf(ticket) : undefined),
    ...(colors.length === 0 ? {} : { colors }),
    facts: factsOf(ticket, wish, colors),
  };
}

/** A core that was told of: does it float? */
function coreOf({ fields }: Ticket): PourAsk['core'] {
  const coreCm3 = valueIn(fields, 'coreVolume');
  const isUnread = isUnreadField(fields, 'coreMass');
  return coreCm3 === undefined || coreCm3 === 0
    ? undefined
    : { coreCm3, ...given('coreG', isUnread ? undefined : valueIn(fields, 'coreMass')) };
}

type IsRead = (part: PourPart) => boolean;
const readable =
  (ticket: Ticket): IsRead =>
  (part) =>
    unreadOfPart(ticket, part) === undefined;

const inM = (mm: number | undefined): number | undefined => (mm === undefined ? undefined : mm / 1000);

function dayOf({ fields }: Ticket): Pick<PourAsk, 'air' | 'roomC' | 'ingredientsC'> {
  const then = inM(valueIn(fields, 'sheetAltitude'));
  const air = {
    ...given('stationKPa', valueIn(fields, 'station')),
    ...given('altitudeM', inM(valueIn(fields, 'altitude'))),
    ...(then === undefined ? {} : { then: { altitudeM: then } }),
  };
  return {
    ...(Object.keys(air).length === 0 ? {} : { air }),
    ...given('roomC', valueIn(fields, 'pourRoom')),
    ...given('ingredientsC', valueIn(fields, 'ingredients')),
  };
}

function foamOf({ fields }: Ticket, read: IsRead): Pick<PourAsk, 'foam'> {
  const times = read('times');
  const foam = {
    ...given('timesAtC', valueIn(fields, 'sheetTemp')),
    ...given('creamS', read('cups') ? valueIn(fields, 'cream') : undefined),
    ...given('openMin', times ? valueIn(fields, 'openTime') : undefined),
    ...given('ncoShare', times ? valueIn(fields, 'nco') : undefined),
    ...given('waterShare', times ? valueIn(fields, 'water') : undefined),
  };
  return Object.keys(foam).length === 0 ? {} : { foam };
}

const cupsOf = ({ fields }: Ticket): PourAsk['cups'] & object => ({
  ...given('cupCm3', valueIn(fields, 'foamCup')),
  ...given('cupFillShare', valueIn(fields, 'cupFill')),
  ...given('mixers', valueIn(fields, 'hands')),
  ...given('mixS', valueIn(fields, 'mixTime')),
  ...given('carryS', valueIn(fields, 'carryTime')),
});

function clampOf({ fields }: Ticket): PourAsk['clamp'] & object {
  const peakKPa = valueIn(fields, 'peakPressure');
  const packFactor = valueIn(fields, 'peakPack');
  return {
    ...given('projectedCm2', valueIn(fields, 'projected')),
    // Nothing in the opening is a fact of its own, not a plug of no area.
    ...given('plugCm2', valueIn(fields, 'plugArea') || undefined),
    ...given('lidG', valueIn(fields, 'lidMass')),
    straps: {
      ...given('strapN', valueIn(fields, 'strapTension')),
      ...given('straps', valueIn(fields, 'strapCount')),
    },
    ...(peakKPa === undefined || packFactor === undefined ? {} : { measuredPeak: { peakKPa, packFactor } }),
  };
}

/** Reckoned once the wall and the air around it are known. */
function warmOf({ fields, pouring }: Ticket): PourAsk['warm'] {
  const wallMm = valueIn(fields, 'warmWall');
  const airTempC = valueIn(fields, 'warmAir');
  const thicknessMm = valueIn(fields, 'warmJacket');
  if (wallMm === undefined || airTempC === undefined) return undefined;
  const targetTempC = valueIn(fields, 'warmTarget');
  const assumed = [
    ...(pouring.sides === '' ? (['sides'] as const) : []),
    ...(pouring.surroundings === '' ? (['surroundings'] as const) : []),
    ...(targetTempC === undefined ? (['targetTempC'] as const) : []),
  ];
  return {
    wallMm,
    airTempC,
    sides: pouring.sides === '2' ? 2 : 1,
    surroundings: pouring.surroundings === '' ? 'still box' : pouring.surroundings,
    targetTempC: targetTempC ?? WARMTH_RULES.moldFine.value,
    ...(thicknessMm === undefined ? {} : { jacket: { thicknessMm } }),
    ...(assumed.length === 0 ? {} : { assumed }),
  };
}

function pricesOf({ fields }: Ticket): PourAsk['prices'] {
  const [aPerKg, bPerKg] = [valueIn(fields, 'priceA'), valueIn(fields, 'priceB')];
  if (aPerKg === undefined || bPerKg === undefined) return undefined;
  return { aPerKg, bPerKg, ...given('failurePrice', valueIn(fields, 'failPrice')) };
}

/** Rows of the recipe that have a share. */
function colorsOf({ fields, pouring }: Ticket): ColorShare[] {
  return pouring.colors.flatMap(({ name, of }, row) => {
    const names = colorFields(row);
    const share = valueIn(fields, names.share);
    const dropsG = valueIn(fields, names.drops);
    if (share === undefined) return [];
    return [
      {
        name: name.trim() === '' ? `Color ${row + 1}` : name.trim(),
        share,
        of,
        ...(dropsG === undefined ? {} : { weighedDrops: { drops: DROPS_WEIGHED, dropsG } }),
      },
    ];
  });
}

/** Facts that only a person knows. What is worked out, the plan adds. */
function factsOf(
  ticket: Ticket,
  wish: NonNullable<ReturnType<typeof batchWishOf>>,
  colors: readonly ColorShare[],
): CheckFacts {
  const { fields, molding, pouring, today } = ticket;
  const number = (field: PourField): number | undefined =>
    isUnreadField(fields, field) ? undefined : valueIn(fields, field);
  return {
    ...factValues({ ...molding.facts, ...pouring.facts }),
    ...given('ratioReversed', isReversed(ticket)),
    ...given('pigmentShare', valueIn(fields, 'pigmentShare') ?? pigmentShare(wish, colors)),
    ...(number('plugArea') === 0 ? { plugN: 0 } : {}),
    ...given('ventCount', number('ventCount')),
    ...given('ventMm', number('ventMm')),
    ...given('panelSpanMm', number('panelSpan')),
    ...given('strapWorkingN', number('strapWorking')),
    today,
  };
}

/** A sample card knows its own order; of another foam only who has read it back from the labels can say. */
function isReversed(ticket: Ticket): boolean | undefined {
  const { foam, pouring } = ticket;
  if (reversedFrom(ticket, cardOf(ticket)) !== undefined) return true;
  return isSampleFoam(foam) || pouring.facts.ratioReadBack === 'yes' ? false : undefined;
}

/** Of A and B together, as the check of pigment wants it. */
function pigmentShare(
  { ratio, partDensities }: NonNullable<ReturnType<typeof batchWishOf>>,
  colors: readonly ColorShare[],
): number | undefined {
  const byMass = massRatio(ratio, partDensities);
  if (!byMass.ok || colors.length === 0) return undefined;
  const shareOfB = byMass.value.b / (byMass.value.a + byMass.value.b);
  return colors.reduce((sum, { share, of }) => sum + share * (of === 'B' ? shareOfB : 1), 0);
}
