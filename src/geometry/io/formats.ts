import { bad, type Outcome } from '../../problem';
import { readObj } from './obj';
import type { ScanFile } from './scanFile';
import { readAsciiStl, startsLikeAsciiStl } from './stlAscii';
import { announcesFacets, fitsBinaryStl, readBinaryStl } from './stlBinary';
import { excerpt, isBlank } from './text';

export interface ScanFormat {
  key: 'stl' | 'obj';
  title: string;
  read: (bytes: Uint8Array) => Outcome<ScanFile>;
}

/** Every scan format we read: a new one is one file and one line here. */
export const SCAN_FORMATS: readonly ScanFormat[] = [
  { key: 'stl', title: 'STL', read: readStl },
  { key: 'obj', title: 'OBJ', read: readObjText },
];

/** First bytes of files that are often taken for a scan (published magic numbers, from memory). */
const OTHER_FILES: readonly { what: string; magic: readonly number[] }[] = [
  { what: 'a zip archive', magic: [0x50, 0x4b, 3, 4] },
  { what: 'a gzip archive', magic: [0x1f, 0x8b] },
  { what: 'a PNG picture', magic: [0x89, 0x50, 0x4e, 0x47] },
  { what: 'a JPEG picture', magic: [0xff, 0xd8, 0xff] },
  { what: 'a PDF', magic: [0x25, 0x50, 0x44, 0x46] },
];

/**
 * Reads a scan, by its named format or else by the ending of its name; the content must agree with it.
 * Errors: EMPTY_FILE, UNSUPPORTED_FORMAT, UNSUPPORTED_ENCODING, NOT_A_MESH, WRONG_FORMAT and those of the reader.
 */
export function readScan(file: {
  bytes: Uint8Array;
  name: string;
  format?: string | undefined;
}): Outcome<ScanFile> {
  const key = (file.format ?? file.name.split('.').pop() ?? '').toLowerCase();
  const format = SCAN_FORMATS.find((f) => f.key === key);
  if (format === undefined) {
    return bad('UNSUPPORTED_FORMAT', { format: key, known: SCAN_FORMATS.map((f) => f.title).join(', ') });
  }
  if (file.bytes.length === 0) return bad('EMPTY_FILE', {}, { byte: 0 });
  return format.read(file.bytes);
}

function readStl(bytes: Uint8Array): Outcome<ScanFile> {
  if (fitsBinaryStl(bytes)) return readBinaryStl(bytes);
  const refused = notText(bytes, false);
  if (refused !== undefined) return refused;
  return isAscii(bytes) ? readAsciiStl(bytes) : readBinaryStl(bytes);
}

/**
 * Which of the two STL forms a file that fits neither is most likely meant to be, so that the error helps. A header with
 * control bytes and a believable facet count is a binary one, even if it starts with "solid"; text is an ASCII one.
 */
function isAscii(bytes: Uint8Array): boolean {
  if (startsLikeAsciiStl(bytes)) return !(bytes.subarray(0, 80).some(isControl) && announcesFacets(bytes));
  return bytes.length >= 84 && !bytes.subarray(0, 512).some((byte) => isControl(byte) || byte > 127);
}

/** A byte that no text file holds. */
const isControl = (byte: number): boolean => (byte < 32 && !isBlank(byte)) || byte === 127;

function readObjText(bytes: Uint8Array): Outcome<ScanFile> {
  if (fitsBinaryStl(bytes) && bytes.length > 84)
    return bad('WRONG_FORMAT', { said: 'OBJ', is: 'STL' }, { byte: 0 });
  const refused = notText(bytes, true);
  if (refused !== undefined) return refused;
  if (startsLikeAsciiStl(bytes)) return bad('WRONG_FORMAT', { said: 'OBJ', is: 'STL' }, { byte: 0 });
  return readObj(bytes);
}

/** Why these bytes can't be the text of a mesh, if they can't. Binary zeros count only where text is a must. */
function notText(bytes: Uint8Array, mustBeText: boolean): Outcome<never> | undefined {
  const other = OTHER_FILES.find((o) => o.magic.every((b, i) => bytes[i] === b));
  if (other !== undefined) return bad('NOT_A_MESH', { what: other.what }, { byte: 0 });
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    return bad('UNSUPPORTED_ENCODING', { encoding: 'UTF-16' }, { byte: 0 });
  }
  if (bytes.every(isBlank)) return bad('EMPTY_FILE', {}, { byte: 0 });
  const zero = mustBeText ? bytes.subarray(0, 65536).indexOf(0) : -1;
  if (zero >= 0) return bad('NOT_A_MESH', { what: `binary data (${excerpt(bytes, 0, 8)})` }, { byte: zero });
  return undefined;
}
