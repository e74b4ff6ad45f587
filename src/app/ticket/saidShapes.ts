import * as v from 'valibot';
import { UP_AXES } from '../../geometry';
import { FILE_UNITS, type FileUnit } from '../../plan';
import { FOAM_SOURCES } from './foamState';
import { MOST_BODIES } from './sizingFields';
import { POUR_WAYS } from './ventingState';
import { newWords, type Words } from './words';

type Choice = Exclude<keyof Words, 'fields' | 'scanId'>;

const text = v.string();
const texts = v.record(text, text);
const number = v.number();
const vector = v.tuple([number, number, number]);
const maybe = <S extends v.GenericSchema>(schema: S) => v.optional(schema);

/** What each choice looks like where it was kept. A key that a version before did not have is filled in, see `readChoice`. */
const SHAPES = {
  up: v.object({ axis: v.picklist(UP_AXES), confirmed: v.boolean() }),
  scaleWay: v.picklist(['tape', 'unit']),
  along: v.picklist(['tall', 'wide', 'deep']),
  fileUnit: v.picklist(Object.keys(FILE_UNITS) as FileUnit[]),
  cut: v.union([
    v.object({ by: v.literal('floor'), atUnits: number }),
    v.object({ by: v.literal('height') }),
  ]),
  keep: v.picklist(['above', 'below']),
  measuring: v.looseObject({
    secondBy: maybe(v.picklist(['tall', 'wide', 'deep', 'points'])),
    points: v.pipe(v.array(vector), v.maxLength(2)),
    isSecondScale: v.boolean(),
    pieces: v.looseObject({
      leaveOut: v.array(vector),
      countSpecks: v.boolean(),
      fillHollows: v.boolean(),
      hollowInner: v.boolean(),
    }),
  }),
  sizing: v.looseObject({
    way: v.picklist(['scan', 'fill', 'displace', 'tape']),
    sunk: v.picklist(['water', 'rice', 'overflow']),
    bodies: v.pipe(
      v.array(v.looseObject({ kind: v.picklist(['limb', 'ball', 'box', 'dome']) })),
      v.maxLength(MOST_BODIES),
    ),
  }),
  filling: v.looseObject({ isAside: v.boolean() }),
  molding: v.looseObject({
    type: maybe(text),
    picks: texts,
    siliconeName: text,
    kits: text,
    facts: texts,
    degassed: v.boolean(),
    jacket: maybe(text),
    box: maybe(text),
    pourBy: maybe(v.picklist(['sculpt', 'cavity'])),
  }),
  venting: v.looseObject({
    way: v.picklist(['', 'found', ...(Object.keys(POUR_WAYS) as (keyof typeof POUR_WAYS)[])]),
    foundUp: maybe(vector),
    rows: v.pipe(number, v.integer(), v.minValue(0)),
  }),
  foam: v.looseObject({
    name: text,
    from: v.picklist(FOAM_SOURCES),
    by: v.picklist(['mass', 'volume']),
    cup: maybe(v.object({ kgM3: number, uShare: number })),
    card: maybe(v.object({ name: text, a: number, b: number, by: v.picklist(['mass', 'volume']) })),
  }),
  pouring: v.looseObject({
    sides: v.picklist(['', '1', '2']),
    surroundings: text,
    past: text,
    colors: v.array(v.looseObject({ name: text, of: v.picklist(['B', 'mix']) })),
    facts: texts,
    readyFor: text,
  }),
} satisfies Record<Choice, v.GenericSchema>;

/** A choice as it was kept, in full; undefined where this version cannot make sense of it. */
export function readChoice<C extends Choice>(choice: C, kept: unknown): Words[C] | undefined {
  const blank: unknown = newWords()[choice];
  const isParts = isObject(blank) && isObject(kept);
  const read = v.safeParse(SHAPES[choice], isParts ? { ...blank, ...kept } : kept);
  return read.success ? (read.output as Words[C]) : undefined;
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;
