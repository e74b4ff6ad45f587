import * as v from 'valibot';
import { unchanged, type Json } from './json';

/** What stands in one box: as typed, the unit beside it, and the meaning that was picked where it had several. */
export interface SavedField {
  text: string;
  unit?: string;
  picked?: number;
}

/** What was said of one part of the work: boxes that are not blank, and choices, each by its name on the page. */
export interface Said {
  fields: Record<string, SavedField>;
  choices: Record<string, Json>;
}

/** The master, by its scan. */
export interface SavedSculpt extends Said {
  /** The scan it was measured from, by its name among the shop's scans. */
  scan?: string;
}

export interface SavedMold extends Said {
  no: number;
}

/** A pour that is planned, or was poured. */
export interface SavedCasting extends Said {
  no: number;
  /** The mold it is cast in. */
  mold: string;
  /** The casting it was begun from. */
  after?: string;
}

/** A piece of work: one sculpt, its molds and what is cast in them. Ids are random texts without a meaning. */
export interface Piece {
  id: string;
  name: string;
  /** Stands before the number of a casting: TROLL-13. */
  code: string;
  /** YYYY-MM-DD. */
  begunOn: string;
  /** The clock then, in milliseconds: pieces of one day stay in the order they were begun. */
  begunAtMs?: number;
  sculpt: SavedSculpt;
  molds: Record<string, SavedMold>;
  castings: Record<string, SavedCasting>;
  /** What the ticket is open at. */
  hand: { mold: string; casting: string };
}

const json: v.GenericSchema<Json> = v.lazy(() =>
  v.union([v.null(), v.boolean(), v.number(), v.string(), v.array(json), v.record(v.string(), json)]),
);

const field = v.looseObject({
  text: v.string(),
  unit: v.exactOptional(v.string()),
  picked: v.exactOptional(v.number()),
});

const said = { fields: v.record(v.string(), field), choices: v.record(v.string(), json) };

/** A piece as a file has it. Keys it does not know stay. */
const PIECE = v.pipe(
  v.looseObject({
    id: v.pipe(v.string(), v.minLength(1)),
    name: v.string(),
    code: v.string(),
    begunOn: v.string(),
    begunAtMs: v.exactOptional(v.number()),
    sculpt: v.looseObject({ ...said, scan: v.exactOptional(v.string()) }),
    molds: v.record(v.string(), v.looseObject({ ...said, no: v.number() })),
    castings: v.record(
      v.string(),
      v.looseObject({ ...said, no: v.number(), mold: v.string(), after: v.exactOptional(v.string()) }),
    ),
    hand: v.looseObject({ mold: v.string(), casting: v.string() }),
  }),
  v.check(
    ({ molds, castings }) => Object.values(castings).every(({ mold }) => Object.hasOwn(molds, mold)),
    'a casting is of a mold that is not there',
  ),
  v.check(
    ({ hand, molds, castings }) => Object.hasOwn(castings, hand.casting) && Object.hasOwn(molds, hand.mold),
    'the mold or the casting in hand is not there',
  ),
);

/** The piece that `json` is, or what is wrong with it. */
export function readPiece(json: unknown): Piece | string {
  const read = v.safeParse(PIECE, json);
  if (read.success) return unchanged(read.output, json);
  const [issue] = read.issues;
  const at = v.getDotPath(issue);
  return at === null ? issue.message : `${at}: ${issue.message}`;
}
