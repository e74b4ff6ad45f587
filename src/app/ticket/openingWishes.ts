import type { Vector } from '../../geometry';
import type { OpeningAsk } from '../../plan';
import { massRatio, mixedLiquidKgM3, pourWindow } from '../../yield';
import type { FieldName, Fields } from './fields';
import { moldField, ventFields } from './madeFields';
import { given, isUnreadField } from './moldWishes';
import { typeOf } from './moldState';
import { OPENING_FIELDS, type OpeningField } from './openingFields';
import { valueIn } from './readField';
import type { Ticket } from './state';
import { POUR_WAYS, type Venting } from './ventingState';
import { cardOf } from './wishes';

const OWN = Object.keys(OPENING_FIELDS) as OpeningField[];
const PLACE = ['openX', 'openY', 'openZ'] as const;

/** Asked in Batch: the foam that is poured through the opening. */
const OF_FOAM = ['freeRise', 'pack'] as const;

const ventRows = ({ rows }: Venting): FieldName[][] =>
  Array.from({ length: rows }, (_, row) => ventFields(row));

/** The boxes of the question itself, as they stand on the page. */
export const openingFields = ({ venting }: Ticket): FieldName[] => [...OWN, ...ventRows(venting).flat()];

/** The first box that it hangs on and that has no single meaning, or is missing beside others of one place. */
export function unreadForOpening(ticket: Ticket): FieldName | undefined {
  const { fields } = ticket;
  return (
    [...openingFields(ticket), ...OF_FOAM].find((name) => isUnreadField(fields, name)) ??
    halfPlaces(ticket)[0]
  );
}

/** Boxes that are blank beside typed ones of the same place: it is not guessed. */
export const halfPlaces = ({ fields, venting }: Ticket): FieldName[] =>
  [PLACE, ...ventRows(venting)].flatMap((place: readonly FieldName[]) => {
    const blank = place.filter((name) => valueIn(fields, name) === undefined);
    return blank.length === place.length ? [] : blank;
  });

/** What opening, vents and the way out are worked out with, or undefined while a box for them is unread. */
export function openingAskOf(ticket: Ticket): OpeningAsk | undefined {
  const sought = searchAskOf(ticket);
  if (sought === undefined) return undefined;
  const { fields, venting } = ticket;
  const vents = ventRows(venting)
    .map((names) => placeIn(fields, names))
    .filter((place) => place !== undefined);
  return {
    ...sought,
    ...given('pourUp', upOf(venting)),
    ...(vents.length === 0 ? {} : { vents }),
    ...given('ventMm', valueIn(fields, 'ventWide')),
    ...given('thinMm', valueIn(fields, 'thinUnder')),
    rubber: { ...given('elongationAtBreak', shareOf(valueIn(fields, 'breakStretch'))) },
  };
}

/** What the best way up hangs on: neither today's way up nor the vents planned for it. */
export function searchAskOf(ticket: Ticket): OpeningAsk | undefined {
  if (unreadForOpening(ticket) !== undefined) return undefined;
  const { fields } = ticket;
  return {
    ...given('base', baseOf(ticket)),
    opening: {
      ...given('atMm', placeIn(fields, PLACE)),
      ...given('diameterMm', valueIn(fields, 'openWide')),
    },
    pour: {
      ...given('freeRiseKgM3', valueIn(fields, 'freeRise')),
      ...given('packFactor', valueIn(fields, 'pack')),
      ...given('liquidKgM3', liquidOf(ticket)),
      ...given('withinS', valueIn(fields, 'pourWithin') ?? windowS(ticket)),
      ...given('mixPaS', valueIn(fields, 'mixViscosity')),
      ...given('riseS', valueIn(fields, 'riseTime')),
    },
  };
}

/** What the cream time of Batch leaves, as it is reckoned there; undefined where it is not told, or leaves nothing. */
export function windowS({ fields }: Ticket): number | undefined {
  const creamS = valueIn(fields, 'cream');
  if (creamS === undefined) return undefined;
  const found = pourWindow({
    creamS,
    ...given('mixS', valueIn(fields, 'mixTime')),
    ...given('carryS', valueIn(fields, 'carryTime')),
    ...given('atC', valueIn(fields, 'sheetTemp')),
    ...given('nowC', valueIn(fields, 'ingredients') ?? valueIn(fields, 'pourRoom')),
  });
  return found.ok ? found.value.pourWindowS.value : undefined;
}

/** Of the two parts mixed, where their densities are told. */
function liquidOf(ticket: Ticket): number | undefined {
  const card = cardOf(ticket);
  if (card?.ok !== true || card.value.partDensities === undefined) return undefined;
  const ratio = massRatio(card.value.ratio, card.value.partDensities);
  return ratio.ok ? mixedLiquidKgM3(ratio.value, card.value.partDensities) : undefined;
}

const upOf = ({ way, foundUp }: Venting): Vector | undefined =>
  way === '' ? undefined : way === 'found' ? foundUp : POUR_WAYS[way];

/** As the chosen type of mold has it: on its board or hanging free. */
function baseOf({ molding }: Ticket): 'closed' | undefined {
  const type = typeOf(molding);
  const parameter = type.parameters.find(({ key }) => key === 'base');
  const picked =
    parameter === undefined ? undefined : (molding.picks[moldField(type, parameter)] ?? parameter.default);
  return picked === 'closed' ? 'closed' : undefined;
}

const shareOf = (percent: number | undefined): number | undefined =>
  percent === undefined ? undefined : percent / 100;

function placeIn(fields: Fields, names: readonly FieldName[]): Vector | undefined {
  const [x, y, z] = names.map((name) => valueIn(fields, name));
  return x === undefined || y === undefined || z === undefined ? undefined : [x, y, z];
}
