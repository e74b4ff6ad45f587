import * as v from 'valibot';
import { isRecord, unchanged } from './json';
import { isBase64 } from './scan';

/** A photo of a casting as the shop keeps it: the picture's file. */
export interface SavedPhoto {
  /** Of the file, such as image/jpeg. */
  type: string;
  /** Its bytes in base64 (RFC 4648, section 4). */
  data: string;
}

/** Pictures that every browser shows. Nothing that could carry a script, such as SVG. */
const TYPES = ['image/jpeg', 'image/png', 'image/webp'];

const PHOTO = v.looseObject({
  type: v.pipe(v.string(), v.picklist(TYPES, `is none of ${TYPES.join(', ')}`)),
  data: v.pipe(
    v.string(),
    v.minLength(4, 'is empty'),
    v.check((data) => isBase64(data), 'is not base64'),
  ),
});

/** The photo that `json` is, or what is wrong with it. */
export function readPhoto(json: unknown): SavedPhoto | string {
  const read = v.safeParse(PHOTO, json);
  if (read.success) return unchanged(read.output, json);
  const [issue] = read.issues;
  const at = v.getDotPath(issue);
  return at === null ? issue.message : `${at}: ${issue.message}`;
}

/** The photos that rows of a book name, also rows that cannot be read, and a book of a later version, wherever it keeps its rows. */
export function photosOfBook(book: unknown): string[] {
  if (Array.isArray(book)) return (book as unknown[]).flatMap(photosOfBook);
  return isRecord(book) ? [...photoOf(book), ...Object.values(book).flatMap(photosOfBook)] : [];
}

/** The photos that a piece names: taken at a weigh-back that is not in the book yet. */
export const photosOfPiece = ({ castings }: { castings: Readonly<Record<string, unknown>> }): string[] =>
  Object.values(castings).flatMap((casting) => (isRecord(casting) ? photoOf(casting.weigh) : []));

const photoOf = (entry: unknown): string[] =>
  isRecord(entry) && typeof entry.photo === 'string' ? [entry.photo] : [];
