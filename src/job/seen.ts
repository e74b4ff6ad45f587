import type { Estimate, Source } from '../estimate';
import { fnv1a64 } from './fnv';
import { isRecord, stableText } from './json';
import type { Piece, Said } from './piece';

/** A shadow of the sculpt: closed lines of pairs, to the right and down, on a sheet that is `wide` by `tall`. */
export interface Outline {
  view: 'front' | 'top';
  wide: number;
  tall: number;
  lines: number[][];
}

/** What the engine last said of a sculpt. It holds while `on` is what was said of it, see `sculptKey`. */
export interface SeenSculpt {
  on: string;
  outline?: Outline;
  size?: { extentsMm: [wide: number, deep: number, tall: number]; volumeCm3: Estimate };
}

/** What the engine last said of a casting. It holds while `on` is what was said of sculpt, mold and casting, see `castingKey`. */
export interface SeenCasting {
  on: string;
  /** YYYY-MM-DD. */
  day: string;
  packFactor: number;
  partAG: number;
  partBG: number;
  totalG: number;
  stepG: number;
  /** It was said to be ready, for just this. */
  isReady?: true;
}

/** What the size hangs on: all that was said of the sculpt, its scan, and the version of the program that works it out. */
export const sculptKey = ({ sculpt }: Piece, version: string): string =>
  fnv1a64(stableText({ version, sculpt: saidIn(sculpt), scan: sculpt.scan ?? '' }));

/** What the grams hang on. */
export function castingKey(piece: Piece, id: string, version: string): string {
  const casting = piece.castings[id];
  const mold = casting === undefined ? undefined : piece.molds[casting.mold];
  if (casting === undefined || mold === undefined)
    throw new Error(`castingKey: expected a casting of ${piece.id}, got ${id}`);
  return fnv1a64(
    stableText({ sculpt: sculptKey(piece, version), mold: saidIn(mold), casting: saidIn(casting) }),
  );
}

/** What was said alone: a number that was worked out, or a key of a later version, does not change what it hangs on. */
const saidIn = ({ fields, choices }: Said): Said => ({ fields, choices });

/** Kept as a list of one: where two tabs have each seen something else, a list is taken whole and never mixed. */
function only(part: unknown): unknown {
  const { seen } = (part ?? {}) as { seen?: unknown };
  return Array.isArray(seen) ? seen[0] : undefined;
}

/** What is known of the sculpt as it stands; nothing where it was worked out for something else. */
export function seenSculpt(piece: Piece, version: string): SeenSculpt | undefined {
  const seen = readSeenSculpt(only(piece.sculpt));
  return seen?.on === sculptKey(piece, version) ? seen : undefined;
}

/** What is known of a casting as it stands. */
export function seenCasting(piece: Piece, id: string, version: string): SeenCasting | undefined {
  const seen = readSeenCasting(only(piece.castings[id]));
  return seen?.on === castingKey(piece, id, version) ? seen : undefined;
}

export const withSeenSculpt = (piece: Piece, seen: SeenSculpt): Piece => ({
  ...piece,
  sculpt: Object.assign({ ...piece.sculpt }, { seen: [seen] }),
});

export function withSeenCasting(piece: Piece, id: string, seen: SeenCasting): Piece {
  const casting = piece.castings[id];
  if (casting === undefined) return piece;
  return { ...piece, castings: { ...piece.castings, [id]: Object.assign({ ...casting }, { seen: [seen] }) } };
}

/** From a file: anything that is not as it should be was not seen. */
function readSeenSculpt(json: unknown): SeenSculpt | undefined {
  if (!isRecord(json) || typeof json.on !== 'string') return undefined;
  const { on, outline, size } = json;
  return {
    on,
    ...(isOutline(outline) ? { outline } : {}),
    ...(isSize(size) ? { size } : {}),
  };
}

function readSeenCasting(json: unknown): SeenCasting | undefined {
  if (!isRecord(json) || typeof json.on !== 'string' || typeof json.day !== 'string') return undefined;
  const { packFactor, partAG, partBG, totalG, stepG } = json;
  const isWhole = [packFactor, partAG, partBG, totalG, stepG].every(isAboveZero);
  return isWhole ? (json as unknown as SeenCasting) : undefined;
}

const isAboveZero = (value: unknown): boolean =>
  typeof value === 'number' && value > 0 && Number.isFinite(value);

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

function isOutline(json: unknown): json is Outline {
  return (
    isRecord(json) &&
    (json.view === 'front' || json.view === 'top') &&
    isAboveZero(json.wide) &&
    isAboveZero(json.tall) &&
    Array.isArray(json.lines) &&
    json.lines.every(
      (line) => Array.isArray(line) && line.length >= 6 && line.length % 2 === 0 && line.every(isNumber),
    )
  );
}

function isSize(json: unknown): json is NonNullable<SeenSculpt['size']> {
  if (!isRecord(json) || !Array.isArray(json.extentsMm) || !isRecord(json.volumeCm3)) return false;
  const { value, low, high, from } = json.volumeCm3;
  return (
    json.extentsMm.length === 3 &&
    json.extentsMm.every(isAboveZero) &&
    isAboveZero(value) &&
    isNumber(low) &&
    isNumber(high) &&
    (SIZE_SOURCES as readonly unknown[]).includes(from)
  );
}

/** How a volume can be known. */
const SIZE_SOURCES: readonly Source[] = [
  'given',
  'file',
  'taped',
  'weighed',
  'scanned',
  'water-fill',
  'assumed',
];
