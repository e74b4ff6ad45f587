import * as v from 'valibot';
import { unchanged } from './json';

/** A scan as the shop keeps it: the file itself, packed. */
export interface SavedScan {
  /** Of the file. */
  name: string;
  /** Length of the file, unpacked. */
  bytes: number;
  packing: 'gzip';
  /** The packed bytes in base64 (RFC 4648, section 4). */
  data: string;
}

const SCAN = v.looseObject({
  name: v.string(),
  bytes: v.pipe(v.number(), v.integer(), v.minValue(0)),
  packing: v.literal('gzip'),
  data: v.pipe(v.string(), v.check(isBase64, 'is not base64')),
});

/** The scan that `json` is, or what is wrong with it. */
export function readScan(json: unknown): SavedScan | string {
  const read = v.safeParse(SCAN, json);
  if (read.success) return unchanged(read.output, json);
  const [issue] = read.issues;
  const at = v.getDotPath(issue);
  return at === null ? issue.message : `${at}: ${issue.message}`;
}

/** Without a pattern over the whole: some engines run out of room on texts of many megabytes. */
export function isBase64(text: string): boolean {
  if (text.length % 4 !== 0) return false;
  const end = text.length - (text.endsWith('==') ? 2 : text.endsWith('=') ? 1 : 0);
  for (let i = 0; i < end; i++) if (!isDigit(text.charCodeAt(i))) return false;
  return true;
}

const isDigit = (code: number): boolean =>
  (code >= 65 && code <= 90) ||
  (code >= 97 && code <= 122) ||
  (code >= 48 && code <= 57) ||
  code === 43 ||
  code === 47;
