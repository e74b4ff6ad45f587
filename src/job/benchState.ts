import { isRecord } from './json';
import type { Piece, SavedField } from './piece';

/** What is pressed at the bench, in this order. */
export const PRESSES = ['mixing', 'poured', 'plugged', 'open'] as const;
export type PressName = (typeof PRESSES)[number];

/** One press: the time of day by the device's clock then, and what the pour clock showed. */
export interface Press {
  what: PressName;
  wallMs: number;
  elapsedMs: number;
}

/** A time of the plan with how it is known; `from` is a source tag. Seconds since A went in. */
export interface PlannedTime {
  s: number;
  from: string;
  /** The temperature that it holds at, in words. */
  at?: string;
  /** What it was worked out from, in words. */
  by?: string;
}

/** What the plan said when the clock was started: it stands as long as the clock runs, whatever is changed on the ticket meanwhile. */
export interface BenchPlan {
  partAG: number;
  partBG: number;
  totalG: number;
  stepG: number;
  packFactor: number;
  cavityCm3?: number;
  /** In all cups together, where there is any. */
  colorG?: number;
  cups: number;
  /** A of one cup, and what the scale reads with it on top of B and the color. */
  cupAG: number;
  scaleG: number;
  /** All poured by then: before it creams. */
  pourBy?: PlannedTime;
  rise?: PlannedTime;
  /** When it may be opened; `earliestS` where it is a range of common practice and `s` its end. */
  open?: PlannedTime & { earliestS?: number };
  opening?: 'open' | 'plug';
  coreC?: { low: number; high: number };
  /** What to free before the rest is pulled, in words. */
  freeFirst?: string;
}

/** What was pressed of one pour. `rev` counts every press and every undo: of two, the higher is the newer. */
export interface BenchRun {
  rev: number;
  presses: readonly Press[];
  /** "I am mixing", after it was undone: the clock can still be taken up again. */
  undone?: Press;
  plan?: BenchPlan;
}

export const NO_RUN: BenchRun = { rev: 0, presses: [] };

/** What was done at the bench for one casting, as the piece keeps it. */
export interface BenchState {
  ticks: Readonly<Record<string, boolean>>;
  /** Stops of the plan that were read, by their words. */
  read: Readonly<Record<string, boolean>>;
  /** As typed. Undefined: what stands on the ticket holds. */
  room?: SavedField;
  mold?: SavedField;
  /** It is weighed back, and no clock ran here. */
  withoutClock: boolean;
  isSoundOff: boolean;
  run: BenchRun;
}

const KEY = 'bench';

/** What a casting says of the bench, and the names of what in it cannot be read. Broken parts are told, and never lose the rest. */
export function readBench(piece: Piece, id: string): { bench: BenchState; unread: string[] } {
  const raw = rawBench(piece, id);
  const unread: string[] = raw === undefined ? ['all of it'] : [];
  const from = raw ?? {};
  const taken = <T>(name: string, read: (json: unknown) => T | undefined): T | undefined => {
    if (from[name] === undefined) return undefined;
    const value = read(from[name]);
    if (value === undefined) unread.push(name);
    return value;
  };
  const room = taken('room', readBox);
  const mold = taken('mold', readBox);
  const bench: BenchState = {
    ticks: taken('ticks', readMarks) ?? {},
    read: taken('read', readMarks) ?? {},
    ...(room === undefined ? {} : { room }),
    ...(mold === undefined ? {} : { mold }),
    withoutClock: taken('withoutClock', readFlag) ?? false,
    isSoundOff: taken('isSoundOff', readFlag) ?? false,
    // A list of one: where two tabs have each pressed something, one of them is taken whole.
    run: taken('run', (json) => readRun(Array.isArray(json) ? json[0] : undefined)) ?? NO_RUN,
  };
  return { bench, unread };
}

/** The piece with a part of what a casting says of the bench; keys of a later version stay. */
export function withBench(piece: Piece, id: string, part: Partial<BenchState>): Piece {
  const casting = piece.castings[id];
  if (casting === undefined) return piece;
  const { run, ...rest } = part;
  const bench = { ...rawBench(piece, id), ...rest, ...(run === undefined ? {} : { run: [run] }) };
  return { ...piece, castings: { ...piece.castings, [id]: Object.assign({ ...casting }, { [KEY]: bench }) } };
}

/** Undefined where something stands there that is no record. */
function rawBench(piece: Piece, id: string): Record<string, unknown> | undefined {
  const raw = (piece.castings[id] as Record<string, unknown> | undefined)?.[KEY];
  return raw === undefined ? {} : isRecord(raw) ? raw : undefined;
}

const isNumber = (json: unknown): json is number => typeof json === 'number' && Number.isFinite(json);
const readFlag = (json: unknown): boolean | undefined => (typeof json === 'boolean' ? json : undefined);

const readMarks = (json: unknown): Record<string, boolean> | undefined =>
  isRecord(json) && Object.values(json).every((value) => typeof value === 'boolean')
    ? (json as Record<string, boolean>)
    : undefined;

function readBox(json: unknown): SavedField | undefined {
  if (!isRecord(json) || typeof json.text !== 'string') return undefined;
  const { text, unit, picked } = json;
  return {
    text,
    ...(typeof unit === 'string' ? { unit } : {}),
    ...(isNumber(picked) ? { picked } : {}),
  };
}

/** A run as it is kept anywhere; undefined where it is none. Presses that are not in their order make it none. */
export function readRun(json: unknown): BenchRun | undefined {
  if (!isRecord(json) || !isNumber(json.rev) || !Array.isArray(json.presses)) return undefined;
  const presses = json.presses as unknown[];
  if (!presses.every((press, n) => isPress(press) && press.what === PRESSES[n])) return undefined;
  if (json.undone !== undefined && !isPress(json.undone)) return undefined;
  const plan = readPlan(json.plan);
  return {
    rev: json.rev,
    presses: presses as Press[],
    ...(json.undone === undefined ? {} : { undone: json.undone }),
    ...(plan === undefined ? {} : { plan }),
  };
}

const isPress = (json: unknown): json is Press =>
  isRecord(json) &&
  PRESSES.some((what) => what === json.what) &&
  isNumber(json.wallMs) &&
  isNumber(json.elapsedMs) &&
  json.elapsedMs >= 0;

/** Without its grams a plan is none; a time of it that cannot be read is left out, and the clock says that it is not known. */
function readPlan(json: unknown): BenchPlan | undefined {
  if (!isRecord(json)) return undefined;
  const { partAG, partBG, totalG, stepG, packFactor, cavityCm3, cups, cupAG, scaleG } = json;
  const { opening, coreC, freeFirst, colorG } = json;
  const figures = { partAG, partBG, totalG, stepG, packFactor, cups, cupAG, scaleG };
  if (!Object.values(figures).every(isNumber)) return undefined;
  const times = Object.fromEntries(
    (['pourBy', 'rise', 'open'] as const).flatMap((name) => {
      const time = readTime(json[name]);
      return time === undefined ? [] : [[name, time]];
    }),
  );
  return {
    ...(figures as BenchPlan),
    ...times,
    ...(isNumber(cavityCm3) ? { cavityCm3 } : {}),
    ...(isNumber(colorG) ? { colorG } : {}),
    ...(opening === 'open' || opening === 'plug' ? { opening } : {}),
    ...(isRecord(coreC) && isNumber(coreC.low) && isNumber(coreC.high)
      ? { coreC: { low: coreC.low, high: coreC.high } }
      : {}),
    ...(typeof freeFirst === 'string' ? { freeFirst } : {}),
  };
}

function readTime(json: unknown): (PlannedTime & { earliestS?: number }) | undefined {
  if (!isRecord(json) || !isNumber(json.s) || json.s < 0 || typeof json.from !== 'string') return undefined;
  const { s, from, at, by, earliestS } = json;
  return {
    s,
    from,
    ...(typeof at === 'string' ? { at } : {}),
    ...(typeof by === 'string' ? { by } : {}),
    ...(isNumber(earliestS) ? { earliestS } : {}),
  };
}
