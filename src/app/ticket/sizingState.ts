import type { TapedBody } from '../../yield';
import { FIELDS, textOf, type Fields, type FieldText } from './fields';
import { bodyFields, BODY_SIDES, MOST_BODIES } from './sizingFields';
import { typedText } from './typedText';

/** How the volume to pour for can be known. */
export type SizeWay = 'scan' | 'fill' | 'displace' | 'tape';

export type BodyKind = TapedBody['kind'];

/** What the sculpt is sunk into, and what is read: a level, or the water that ran over. */
export type Sunk = 'water' | 'rice' | 'overflow';

/** What was said of how the sculpt is sized, beside what was typed into boxes. */
export interface Sizing {
  way: SizeWay;
  sunk: Sunk;
  /** The bodies that the tape takes, in their order; their sides are fields. */
  bodies: readonly { kind: BodyKind }[];
}

/** A scan that is brought in is the way in, unless the mold is filled: the water then stands beside it. */
export const withScanIn = (sizing: Sizing): Sizing =>
  sizing.way === 'displace' || sizing.way === 'tape' ? { ...sizing, way: 'scan' } : sizing;

export const newSizing = (): Sizing => ({ way: 'scan', sunk: 'water', bodies: [{ kind: 'limb' }] });

/** What was said of the water fill of a mold, beside what was typed. */
export interface Filling {
  /** The sculpt's own volume is poured for, though the mold was filled. */
  isAside: boolean;
}

export const newFilling = (): Filling => ({ isAside: false });

/** A weighed fill as the Book has it. */
export interface FillOfBook {
  waterG: number;
  waterTempC?: number;
}

/** What the user says of the size, beside what is typed. */
export type SizingWord =
  | { do: 'sizeWay'; way: SizeWay }
  | { do: 'sunk'; sunk: Sunk }
  | { do: 'addBody'; kind: BodyKind }
  | { do: 'bodyKind'; row: number; kind: BodyKind }
  | { do: 'dropBody'; row: number }
  | { do: 'fillAside'; isAside: boolean }
  | { do: 'takeFill'; fill: FillOfBook };

interface Said {
  sizing: Sizing;
  filling: Filling;
  fields: Fields;
}

export function withSizingWord({ sizing, filling, fields }: Said, word: SizingWord): Said {
  switch (word.do) {
    case 'sizeWay':
      return { sizing: { ...sizing, way: word.way }, filling, fields };
    case 'sunk':
      return { sizing: { ...sizing, sunk: word.sunk }, filling, fields };
    case 'addBody':
      return sizing.bodies.length < MOST_BODIES
        ? { sizing: { ...sizing, bodies: [...sizing.bodies, { kind: word.kind }] }, filling, fields }
        : { sizing, filling, fields };
    case 'bodyKind':
      return {
        sizing: {
          ...sizing,
          bodies: sizing.bodies.map((body, row) => (row === word.row ? { kind: word.kind } : body)),
        },
        filling,
        fields,
      };
    case 'dropBody':
      return { ...withoutBody({ sizing, fields }, word.row), filling };
    case 'fillAside':
      return { sizing, filling: { ...filling, isAside: word.isAside }, fields };
    case 'takeFill':
      return {
        sizing,
        filling: { ...filling, isAside: false },
        fields: { ...fields, ...typedFill(word.fill) },
      };
  }
}

/** As it would be typed; a temperature that nobody wrote down goes blank. */
const typedFill = ({ waterG, waterTempC }: FillOfBook): Record<'fillWater' | 'fillTemp', FieldText> => ({
  fillWater: typedText(FIELDS.fillWater, waterG),
  fillTemp: { text: typedText({ ...FIELDS.fillTemp, units: ['C'] }, waterTempC).text, unit: 'C' },
});

/** The bodies after it move up, each with its sides. */
function withoutBody(
  { sizing, fields }: Pick<Said, 'sizing' | 'fields'>,
  row: number,
): Pick<Said, 'sizing' | 'fields'> {
  const kept = sizing.bodies.map((_, at) => at).filter((at) => at !== row);
  const sides = Array.from({ length: MOST_BODIES }, (_, at) => at).flatMap((at) =>
    BODY_SIDES.map((side) => {
      const from = kept[at];
      const text = from === undefined ? BLANK : textOf(fields, bodyFields(from)[side]);
      return [bodyFields(at)[side], text] as const;
    }),
  );
  return {
    sizing: { ...sizing, bodies: kept.map((at) => sizing.bodies[at]!) },
    fields: { ...fields, ...Object.fromEntries(sides) },
  };
}

const BLANK: FieldText = { text: '', unit: 'mm' };
