import * as v from 'valibot';
import { isIsoDate } from '../../yield/silicone/card';
import { isRecord } from '../json';
import type { AskedField, BookRow } from './bookRow';

const text = v.exactOptional(v.string());
const number = v.pipe(v.number(), v.finite());
const atLeastNone = v.pipe(number, v.minValue(0, 'it is below 0'));
const massG = v.exactOptional(atLeastNone);
const tempC = v.exactOptional(number);
const volumeCm3 = v.exactOptional(atLeastNone);

const SKIN = 'it is not from 1 to 5';

const any = {
  id: v.pipe(v.string(), v.minLength(1)),
  day: v.exactOptional(
    v.pipe(
      v.string(),
      v.check((day) => isIsoDate(day), 'it is not a day such as 2026-03-31'),
    ),
  ),
  note: text,
};
const ofFoam = { foam: text, lot: text, lotB: text, roomC: tempC };
const water = { waterG: massG, waterTempC: tempC };

/** All that can be asked about, each once. */
export const ASKED_FIELDS = [
  'aG',
  'bG',
  'mixedG',
  'residueG',
  'castingG',
  'trimG',
  'roomC',
  'moldC',
  'balance',
] as const satisfies readonly AskedField[];

/** Rows as a file has them. Keys they do not know stay. */
const ROW = v.variant('kind', [
  v.looseObject({
    kind: v.literal('pour'),
    ...any,
    ...ofFoam,
    no: v.exactOptional(v.pipe(v.number(), v.integer(), v.minValue(1))),
    piece: text,
    mold: text,
    casting: text,
    pack: v.exactOptional(v.pipe(number, v.gtValue(0, 'it is not above 0'))),
    moldC: tempC,
    opening: v.exactOptional(v.picklist(['open', 'plug'])),
    cavityCm3: volumeCm3,
    plannedG: massG,
    aG: massG,
    bG: massG,
    colorG: massG,
    mixedG: massG,
    residueG: massG,
    castingG: massG,
    trimG: massG,
    filled: v.exactOptional(v.picklist(['full', 'short'])),
    voidCm3: volumeCm3,
    skin: v.exactOptional(v.pipe(number, v.minValue(1, SKIN), v.maxValue(5, SKIN))),
    isLeftOut: v.exactOptional(v.boolean()),
    keptAsTyped: v.exactOptional(v.array(v.picklist(ASKED_FIELDS))),
    photo: text,
  }),
  v.looseObject({
    kind: v.literal('cup'),
    ...any,
    ...ofFoam,
    ...water,
    foamsG: v.exactOptional(v.array(atLeastNone)),
  }),
  v.looseObject({ kind: v.literal('fill'), ...any, ...water, piece: text, mold: text }),
]);

/**
 * The row that `json` is, or what is wrong with it. Rows of the first form have neither kind nor id: they were all pours, each by
 * its number.
 */
export function readRow(json: unknown): BookRow | string {
  if (!isRecord(json)) return 'it is not an object';
  const read = v.safeParse(ROW, isFirstForm(json) ? { kind: 'pour', id: `pour-${json.no}`, ...json } : json);
  if (read.success) return read.output;
  const [issue] = read.issues;
  const at = v.getDotPath(issue);
  return at === null ? issue.message : `${at}: ${issue.message}`;
}

const isFirstForm = (json: Record<string, unknown>): json is { no: number } =>
  !('kind' in json) && !('id' in json) && typeof json.no === 'number' && typeof json.piece === 'string';
