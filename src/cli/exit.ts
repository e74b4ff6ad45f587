import type { Code } from '../problem';

/** The exit codes of the command-line contract. */
export const EXIT = {
  answered: 0,
  ourFault: 1,
  badCall: 2,
  unreadable: 3,
  noVolume: 4,
  unitUnknown: 5,
  strictStop: 6,
} as const;
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

const NO_VOLUME: readonly Code[] = [
  'NOT_CLOSED',
  'NOT_ORIENTED',
  'ZERO_VOLUME',
  'DEGENERATE_ONLY',
  'PRECISION',
  'SELF_INTERSECT',
  'TOO_SMALL',
  'MOLD_NEEDS_SURFACE',
];
const UNREADABLE: readonly Code[] = [
  'CANNOT_READ_FILE',
  'EMPTY_FILE',
  'UNSUPPORTED_FORMAT',
  'UNSUPPORTED_ENCODING',
  'NOT_A_MESH',
  'WRONG_FORMAT',
  'TRUNCATED',
  'COUNT_MISMATCH',
  'TRAILING_DATA',
  'SYNTAX',
  'BAD_NUMBER',
  'COORD_RANGE',
  'BAD_INDEX',
  'INDEX_OUT_OF_RANGE',
  'BAD_POLYGON',
  'UNSUPPORTED_FEATURE',
  'NO_TRIANGLES',
  'TOO_LARGE',
  'ENDIAN',
  'CORRUPT_ARCHIVE',
  'UNSAFE_ARCHIVE',
  'UNSAFE_XML',
  'BAD_UNIT',
  'BAD_REFERENCE',
  'BAD_TRANSFORM',
  'CYCLE',
  'SHOP_FILE',
  'BOOK_NOT_A_LIST',
  'BOOK_LIST_BROKEN',
  'SILICONE_CARD_FIELD',
];

/** Which exit code a problem without an answer ends in. */
export function exitOf(code: Code): ExitCode {
  if (code === 'SCALE_UNKNOWN') return EXIT.unitUnknown;
  if (NO_VOLUME.includes(code)) return EXIT.noVolume;
  if (UNREADABLE.includes(code)) return EXIT.unreadable;
  return EXIT.badCall;
}
