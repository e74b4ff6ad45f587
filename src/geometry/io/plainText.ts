import { finding, type Problem } from '../../problem';

/** How the characters of a text lie in its bytes. */
interface Wide {
  encoding: 'UTF-16' | 'UTF-32';
  /** Bytes a character. */
  width: 2 | 4;
  little: boolean;
  /** Bytes of the mark in front. */
  mark: number;
}

/**
 * UTF-16 or UTF-32 text as one byte a character, which is all a mesh has; other characters, as in names, become dots. Line numbers stay.
 * Everything else goes through as it is.
 */
export function plainText(bytes: Uint8Array): { bytes: Uint8Array; findings: Problem[] } {
  const wide = wideOf(bytes);
  if (wide === undefined || bytes.length % wide.width !== 0) return { bytes, findings: [] };
  const { encoding, width, little, mark } = wide;
  const plain = new Uint8Array((bytes.length - mark) / width);
  for (let i = 0, at = mark; i < plain.length; i++, at += width)
    plain[i] = plainAt(bytes, at, width, little) ?? DOT;
  return { bytes: plain, findings: [finding('ENCODING', 'fine', { encoding })] };
}

const DOT = 46;

/** By its mark; or, without one, by zeros between the first characters where plain text has none. */
function wideOf(bytes: Uint8Array): Wide | undefined {
  return (
    WIDE.find(({ width, little, mark }) => mark > 0 && isMark(bytes, width, little)) ??
    WIDE.find(({ mark, ...wide }) => mark === 0 && looksWide(bytes, wide))
  );
}

/** The wider one first: the mark of one order of UTF-32 begins with that of UTF-16. */
const WIDE: readonly Wide[] = ([4, 2] as const).flatMap((width) =>
  [true, false].flatMap((little) =>
    [width, 0].map((mark): Wide => ({ encoding: width === 4 ? 'UTF-32' : 'UTF-16', width, little, mark })),
  ),
);

function isMark(bytes: Uint8Array, width: number, little: boolean): boolean {
  const mark = [...new Array<number>(width - 2).fill(0), 0xfe, 0xff];
  return (little ? mark.reverse() : mark).every((byte, i) => bytes[i] === byte);
}

/** So many characters must lie there as plain letters between zeros. Chosen here. */
const LOOK_CHARACTERS = 16;

function looksWide(bytes: Uint8Array, { width, little }: Pick<Wide, 'width' | 'little'>): boolean {
  if (bytes.length < LOOK_CHARACTERS * width) return false;
  for (let i = 0; i < LOOK_CHARACTERS; i++) {
    const byte = plainAt(bytes, i * width, width, little) ?? 0;
    if (byte < 9) return false;
  }
  return true;
}

/** The character at a byte, where it is one of ASCII. */
function plainAt(bytes: Uint8Array, at: number, width: number, little: boolean): number | undefined {
  const low = little ? at : at + width - 1;
  for (let k = at; k < at + width; k++) if (k !== low && bytes[k] !== 0) return undefined;
  const byte = bytes[low]!;
  return byte < 128 ? byte : undefined;
}
