import type { Estimate } from '../../estimate';
import { castingCavity } from '../../plan';
import type { Outcome, Problem } from '../../problem';
import {
  displacedByLevel,
  displacedByOverflow,
  VOLUME_RULES,
  volumeByGirth,
  waterFill,
  type TapedBody,
} from '../../yield';
import type { FieldName, Fields } from './fields';
import { isUnreadField } from './moldWishes';
import { valueIn } from './readField';
import { bodyFields, FILL_FIELDS, type BodySide } from './sizingFields';
import type { BodyKind, Sizing } from './sizingState';
import type { Words } from './words';

/** What a way in without a scan says as the boxes stand: a few products, worked out at every keystroke. */
export type WayRead =
  | { state: 'open' }
  | { state: 'unread'; field: FieldName }
  | { state: 'answered'; answer: Estimate }
  | { state: 'refused'; problem: Problem };

type SaidOfSize = Pick<Words, 'fields' | 'sizing' | 'filling'>;

/** The cavity of the mold in hand by the water that fills it, cm3. */
export function fillRead({ fields }: Pick<SaidOfSize, 'fields'>): WayRead {
  return readFrom(fields, [...FILL_FIELDS, 'scaleStep'], () => {
    const waterG = valueIn(fields, 'fillWater');
    return waterG === undefined ? undefined : waterFill({ waterG, ...waterOf(fields, 'fillTemp') });
  });
}

/** The fill at the temperature of the mold when foam is poured, where that was said: rubber grows as it is warmed, from the water's temperature on. */
export function warmedFill(fillCm3: Estimate, { fields }: Pick<SaidOfSize, 'fields'>): Estimate {
  const castingTempC = valueIn(fields, 'castingTemp');
  if (castingTempC === undefined) return fillCm3;
  const warmed = castingCavity(fillCm3, {
    castingTempC,
    work: { roomC: valueIn(fields, 'fillTemp') ?? VOLUME_RULES.waterTemp.value },
    // It has shrunk already: the water tells what is left.
    measuredShrink: { share: 0, low: 0, high: 0 },
  });
  return warmed.ok ? warmed.value.cavityCm3 : fillCm3;
}

/** Something stands in the box for the water in the mold, whether it can be read or not. */
export const isFillSaid = ({ fields }: Pick<SaidOfSize, 'fields'>): boolean =>
  fields.fillWater.text.trim() !== '';

/** The volume of the sculpt by what it pushes out, cm3. */
export function displacedRead({ fields, sizing }: Pick<SaidOfSize, 'fields' | 'sizing'>): WayRead {
  if (sizing.sunk === 'overflow')
    return readFrom(fields, ['overWater', 'overTemp', 'scaleStep'], () => {
      const waterG = valueIn(fields, 'overWater');
      return waterG === undefined
        ? undefined
        : displacedByOverflow({ waterG, ...waterOf(fields, 'overTemp') });
    });
  const { sunk: medium } = sizing;
  return readFrom(fields, ['sunkBefore', 'sunkAfter', 'sunkStep'], () => {
    const beforeCm3 = valueIn(fields, 'sunkBefore');
    const afterCm3 = valueIn(fields, 'sunkAfter');
    const readingCm3 = valueIn(fields, 'sunkStep');
    if (beforeCm3 === undefined || afterCm3 === undefined) return undefined;
    return displacedByLevel({
      medium,
      beforeCm3,
      afterCm3,
      ...(readingCm3 === undefined ? {} : { readingCm3 }),
    });
  });
}

/** The volume of the sculpt by the tape, cm3, of all its bodies; open while a side of one of them is blank: a body left out would be poured short. */
export function tapedRead({ fields, sizing }: Pick<SaidOfSize, 'fields' | 'sizing'>): WayRead {
  return readFrom(fields, tapedFields(sizing), () => {
    const bodies = sizing.bodies.map(({ kind }, row) => bodyOf(fields, kind, row));
    const whole = bodies.filter((body) => body !== undefined);
    return whole.length === 0 || whole.length < bodies.length ? undefined : volumeByGirth(whole);
  });
}

/** One body alone; undefined while a side of it is not read, or out of bounds. */
export function bodyRead(
  { fields, sizing }: Pick<SaidOfSize, 'fields' | 'sizing'>,
  row: number,
): TapedBody | undefined {
  const kind = sizing.bodies[row]?.kind;
  return kind === undefined ? undefined : bodyOf(fields, kind, row);
}

/** The sides that a tape takes of each shape; the other girth of a limb may stay blank. */
export const SIDES_OF: Readonly<Record<BodyKind, readonly BodySide[]>> = {
  limb: ['length', 'girth', 'otherGirth'],
  ball: ['girth'],
  box: ['width', 'depth', 'height'],
  dome: ['girth', 'height'],
};

export const tapedFields = ({ bodies }: Pick<Sizing, 'bodies'>): FieldName[] =>
  bodies.flatMap(({ kind }, row) => SIDES_OF[kind].map((side): FieldName => bodyFields(row)[side]));

/** The boxes of the way in that stand on the page. */
export function fieldsOfWay({ sizing, fields }: Pick<SaidOfSize, 'fields' | 'sizing'>): FieldName[] {
  const own: FieldName[] =
    sizing.way === 'tape'
      ? tapedFields(sizing)
      : sizing.way !== 'displace'
        ? []
        : sizing.sunk === 'overflow'
          ? ['overWater', 'overTemp']
          : ['sunkBefore', 'sunkAfter', 'sunkStep'];
  return sizing.way === 'fill' || isFillSaid({ fields }) ? [...own, ...FILL_FIELDS] : own;
}

function bodyOf(fields: Fields, kind: BodyKind, row: number): TapedBody | undefined {
  const names = bodyFields(row);
  const side = (name: BodySide): number | undefined => valueIn(fields, names[name]);
  const sides = SIDES_OF[kind].filter((name) => name !== 'otherGirth');
  if (sides.some((name) => side(name) === undefined)) return undefined;
  const mm = (name: BodySide): number => side(name) ?? Number.NaN;
  switch (kind) {
    case 'limb': {
      const otherGirthMm = side('otherGirth');
      return {
        kind,
        lengthMm: mm('length'),
        girthMm: mm('girth'),
        ...(otherGirthMm === undefined ? {} : { otherGirthMm }),
      };
    }
    case 'ball':
      return { kind, girthMm: mm('girth') };
    case 'box':
      return { kind, widthMm: mm('width'), depthMm: mm('depth'), heightMm: mm('height') };
    case 'dome':
      return { kind, girthMm: mm('girth'), heightMm: mm('height') };
  }
}

function waterOf(fields: Fields, temp: 'fillTemp' | 'overTemp'): { waterTempC?: number; stepG?: number } {
  const waterTempC = valueIn(fields, temp);
  const stepG = valueIn(fields, 'scaleStep');
  return {
    ...(waterTempC === undefined ? {} : { waterTempC }),
    ...(stepG === undefined ? {} : { stepG }),
  };
}

/** `work` gives nothing while a box that it needs is blank. */
function readFrom(
  fields: Fields,
  names: readonly FieldName[],
  work: () => Outcome<Estimate> | undefined,
): WayRead {
  const field = names.find((name) => isUnreadField(fields, name));
  if (field !== undefined) return { state: 'unread', field };
  const said = work();
  if (said === undefined) return { state: 'open' };
  return said.ok ? { state: 'answered', answer: said.value } : { state: 'refused', problem: said.problem };
}
