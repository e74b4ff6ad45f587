import { isIsoDate } from '../yield/silicone/card';
import { isRecord } from './json';
import type { Piece, SavedField } from './piece';

/** The boxes of a weigh-back: four weights and two temperatures. */
export const WEIGH_BOXES = ['mixed', 'residue', 'trim', 'casting', 'room', 'mold'] as const;
export type WeighBox = (typeof WEIGH_BOXES)[number];

/** What was done with a lot of the shop's stock. What was taken of each part, in kg. */
export interface StockTaken {
  card: string;
  lot?: string;
  aKg: number;
  bKg: number;
}

/** That the casting stands in the book, since when, and how it was before: to take it back. */
export interface Written {
  rowId: string;
  /** Milliseconds of the clock. */
  atMs: number;
  /** The row that it took the place of. */
  before?: unknown;
  taken?: StockTaken;
}

/**
 * What stands in the boxes of a weigh-back, as typed, and what was answered. `not`: said that nobody weighed, took or looked. What
 * nobody has touched is left out.
 */
export interface WeighState {
  boxes: Partial<Record<WeighBox, SavedField | 'not'>>;
  filled?: 'full' | 'short' | 'not';
  /** How much a short one lacks, as a volume or a share. */
  missing?: SavedField;
  skin?: 1 | 2 | 3 | 4 | 5 | 'not';
  opening?: 'open' | 'plug' | 'not';
  /** Where voids are, by the names of the places; an empty list: none anywhere. */
  voids?: string[];
  note?: string;
  /** Of the pour, as YYYY-MM-DD, where it is not the one that the bench has. */
  day?: string;
  /** A and B turned out to be the other way round. */
  isSwapped?: boolean;
  /** A and B were not weighed, and the plan is not to stand for them. */
  isPlanOut?: boolean;
  /** Fields of the row that were asked about and stay as typed, each with the value that was asked about. */
  kept?: Record<string, number>;
  /** The lot it was poured from, as on the label. */
  lot?: string;
  /** That lot is to become less by what was poured. */
  isTaken?: boolean;
  photo?: string;
  /** What went off the stock for this casting, by whichever writing. */
  takenOff?: StockTaken;
  /** The last time it was written into the book. */
  written?: Written;
}

/** Answers as someone gives them: undefined takes one back. */
export type Answers = { [Key in keyof Omit<WeighState, 'boxes'>]?: WeighState[Key] | undefined };

export interface ReadWeigh {
  state: WeighState;
  /** Names of what cannot be read; it stays in the piece until something else is said in its place. */
  unread: string[];
}

/** What is kept of the weigh-back of a casting, as far as it can be read. Anything else never keeps the piece from being read. */
export function readWeigh({ castings }: Piece, casting: string): ReadWeigh {
  const json = (castings[casting] as { weigh?: unknown } | undefined)?.weigh;
  if (json === undefined) return { state: { boxes: {} }, unread: [] };
  if (!isRecord(json)) return { state: { boxes: {} }, unread: ['weigh-back'] };
  const { boxes, ...answers } = json;
  const state: Record<string, unknown> = {};
  const unread: string[] = [];
  for (const [name, value] of Object.entries(answers)) {
    if (isKey(name) && ANSWERS[name](value)) state[name] = value;
    else unread.push(name);
  }
  const sound: Record<string, unknown> = {};
  if (boxes !== undefined && !isRecord(boxes)) unread.push('boxes');
  for (const [name, value] of Object.entries(isRecord(boxes) ? boxes : {})) {
    if (WEIGH_BOXES.some((box) => box === name) && (value === 'not' || isField(value))) sound[name] = value;
    else unread.push(name);
  }
  return { state: { ...state, boxes: sound }, unread };
}

/** The piece with that weigh-back of a casting. What could not be read of the one before stays beside it. */
export function withWeigh(piece: Piece, id: string, state: WeighState): Piece {
  const casting = piece.castings[id];
  if (casting === undefined) return piece;
  const before = (casting as { weigh?: unknown }).weigh;
  const { unread } = readWeigh(piece, id);
  const weigh = {
    ...unreadOf(before, unread),
    ...state,
    boxes: { ...unreadOf(isRecord(before) ? before.boxes : undefined, unread), ...state.boxes },
  };
  return { ...piece, castings: { ...piece.castings, [id]: { ...casting, weigh } as typeof casting } };
}

const unreadOf = (json: unknown, names: readonly string[]): Record<string, unknown> =>
  isRecord(json) ? Object.fromEntries(Object.entries(json).filter(([name]) => names.includes(name))) : {};

type Answer = Exclude<keyof WeighState, 'boxes'>;

const oneOf =
  (...values: readonly unknown[]) =>
  (value: unknown): boolean =>
    values.includes(value);
const isText = (value: unknown): boolean => typeof value === 'string';
const isTrue = (value: unknown): boolean => typeof value === 'boolean';
const isField = (value: unknown): value is SavedField =>
  isRecord(value) &&
  typeof value.text === 'string' &&
  (value.unit === undefined || typeof value.unit === 'string') &&
  (value.picked === undefined || typeof value.picked === 'number');
const isWritten = (value: unknown): boolean =>
  isRecord(value) &&
  typeof value.rowId === 'string' &&
  typeof value.atMs === 'number' &&
  (value.taken === undefined || isStock(value.taken));
const isStock = (value: unknown): boolean =>
  isRecord(value) &&
  typeof value.card === 'string' &&
  (value.lot === undefined || typeof value.lot === 'string') &&
  typeof value.aKg === 'number' &&
  typeof value.bKg === 'number';

const ANSWERS: Readonly<Record<Answer, (value: unknown) => boolean>> = {
  filled: oneOf('full', 'short', 'not'),
  missing: isField,
  skin: oneOf(1, 2, 3, 4, 5, 'not'),
  opening: oneOf('open', 'plug', 'not'),
  voids: (value) => Array.isArray(value) && value.every(isText),
  note: isText,
  day: (value) => isIsoDate(value),
  isSwapped: isTrue,
  isPlanOut: isTrue,
  kept: (value) => isRecord(value) && Object.values(value).every((one) => typeof one === 'number'),
  lot: isText,
  isTaken: isTrue,
  photo: isText,
  takenOff: isStock,
  written: isWritten,
};

const isKey = (name: string): name is Answer => Object.hasOwn(ANSWERS, name);
