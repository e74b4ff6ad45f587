import { bad, finding, good, type Outcome } from '../../problem';
import { readObj } from './obj';
import { startsLikeObj } from './objText';
import { plainText } from './plainText';
import { readPly } from './ply';
import { startsLikePly } from './plyHeader';
import { SCAN_BYTES_LIMIT, tooManyBytes, type ScanFile } from './scanFile';
import { readAsciiStl, startsLikeAsciiStl } from './stlAscii';
import { announcesFacets, fitsBinaryStl } from './stlBinary';
import { readBinaryStl } from './stlCount';
import { excerpt, isBlank } from './text';
import { holdsModel, startsLikeZip } from './zipDirectory';

export interface ScanFormat {
  key: ScanFile['format'];
  title: string;
}

/** Every scan format we read: a new one is one file, one line here and one in READERS. */
export const SCAN_FORMATS: readonly ScanFormat[] = [
  { key: 'stl', title: 'STL' },
  { key: 'obj', title: 'OBJ' },
  { key: 'ply', title: 'PLY' },
  { key: '3mf', title: '3MF' },
];

interface Reader {
  /** Do the bytes start as this format does? A wrong yes costs the right reader its file. */
  looksLike: (bytes: Uint8Array) => boolean;
  read: (bytes: Uint8Array) => Outcome<ScanFile>;
}

/** Apart from the list: the page shows the list and leaves the reading to its worker. */
const READERS: Readonly<Record<Exclude<ScanFormat['key'], '3mf'>, Reader>> = {
  stl: { looksLike: looksLikeStl, read: readStl },
  obj: { looksLike: startsLikeObj, read: (bytes) => notText(bytes, true) ?? readObj(bytes) },
  ply: { looksLike: startsLikePly, read: (bytes) => notText(bytes, false) ?? readPly(bytes) },
};

/** First bytes of files that are often taken for a scan (published magic numbers, from memory). */
const OTHER_FILES: readonly { what: string; magic: readonly number[] }[] = [
  { what: 'a zip archive', magic: [0x50, 0x4b, 3, 4] },
  { what: 'a gzip archive', magic: [0x1f, 0x8b] },
  { what: 'a PNG picture', magic: [0x89, 0x50, 0x4e, 0x47] },
  { what: 'a JPEG picture', magic: [0xff, 0xd8, 0xff] },
  { what: 'a PDF', magic: [0x25, 0x50, 0x44, 0x46] },
];

export interface ScanBytes {
  bytes: Uint8Array;
  name: string;
  format?: string | undefined;
}

/** Is it an archive? Then `readScanWith` has a use for the reader of 3MF, which a page fetches only then. */
export const needs3mf = startsLikeZip;

/**
 * Reads a scan by its named format, or else by the ending of its name. Where the content is plainly of another format it decides, and
 * the finding WRONG_FORMAT says so.
 * Errors: EMPTY_FILE, TOO_LARGE, UNSUPPORTED_FORMAT, UNSUPPORTED_ENCODING, NOT_A_MESH and those of the reader.
 *
 * @param read3mf the reader of 3MF, which brings an XML parser along: apart, so that a page can fetch it later
 */
export function readScanWith(
  read3mf: (bytes: Uint8Array) => Outcome<ScanFile>,
  file: ScanBytes,
): Outcome<ScanFile> {
  const key = (file.format ?? file.name.split('.').pop() ?? '').toLowerCase();
  const said = SCAN_FORMATS.find((f) => f.key === key);
  if (said === undefined) {
    return bad('UNSUPPORTED_FORMAT', { format: key, known: SCAN_FORMATS.map((f) => f.title).join(', ') });
  }
  if (file.bytes.length === 0) return bad('EMPTY_FILE', {}, { byte: 0 });
  if (file.bytes.length > SCAN_BYTES_LIMIT) return tooManyBytes(file.bytes.length);
  const readers = { ...READERS, '3mf': { looksLike: holdsModel, read: read3mf } };
  const { bytes, findings } = looksLikeStl(file.bytes)
    ? { bytes: file.bytes, findings: [] }
    : plainText(file.bytes);
  const is = [said, ...SCAN_FORMATS].find((f) => readers[f.key].looksLike(bytes)) ?? said;
  const scan = readers[is.key].read(bytes);
  if (!scan.ok) return scan;
  const wrong = is === said ? [] : [finding('WRONG_FORMAT', 'look', { said: said.title, is: is.title })];
  return good({ ...scan.value, findings: [...wrong, ...findings, ...scan.value.findings] });
}

function looksLikeStl(bytes: Uint8Array): boolean {
  return (bytes.length > 84 && fitsBinaryStl(bytes)) || startsLikeAsciiStl(bytes);
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

/** Why these bytes can't be the text of a mesh, if they can't. Binary zeros count only where text is a must. */
function notText(bytes: Uint8Array, mustBeText: boolean): Outcome<never> | undefined {
  const other = OTHER_FILES.find((o) => o.magic.every((b, i) => bytes[i] === b));
  if (other !== undefined) return bad('NOT_A_MESH', { what: other.what }, { byte: 0 });
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    return bad('UNSUPPORTED_ENCODING', { encoding: 'UTF-16 or UTF-32' }, { byte: 0 });
  }
  if (bytes.every(isBlank)) return bad('EMPTY_FILE', {}, { byte: 0 });
  const zero = mustBeText ? bytes.subarray(0, 65536).indexOf(0) : -1;
  if (zero >= 0) return bad('NOT_A_MESH', { what: `binary data (${excerpt(bytes, 0, 8)})` }, { byte: zero });
  return undefined;
}
