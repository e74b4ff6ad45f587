import { isBlank, isLineEnd, isWord } from './text';
import { wordAfter, type Cursor } from './tokens';

/**
 * A solid's name is free text to the end of its line, unless the whole file stands on one line: then it ends before the first facet, or
 * before endsolid. Words of the format may stand in it.
 *
 * @returns the first word of the format in it, by its byte, if there is one: another reader may stop there
 */
export function skipName(c: Cursor): number | undefined {
  const { bytes } = c;
  let odd: number | undefined;
  for (let i = c.to; ;) {
    const mark = i;
    while (i < bytes.length && isBlank(bytes[i]!) && !isLineEnd(bytes[i]!)) i++;
    const from = i;
    while (i < bytes.length && !isBlank(bytes[i]!)) i++;
    const opens = isWord(bytes, from, i, 'facet') && startsNormal(bytes, i);
    const closes = isWord(bytes, from, i, 'endsolid');
    if (from < i && !(opens && opensFacet(bytes, i)) && !(closes && endsHere(c, i))) {
      if (opens || closes) odd ??= from;
      continue;
    }
    // At the end of the line, or before the first word that is no part of the name.
    c.to = from < i ? mark : i;
    return odd;
  }
}

function startsNormal(bytes: Uint8Array, at: number): boolean {
  const word = wordAfter(bytes, at);
  return word !== undefined && isWord(bytes, word.from, word.to, 'normal');
}

/** Behind the words facet and normal: three words, and the loop or its first vertex? */
function opensFacet(bytes: Uint8Array, at: number): boolean {
  let word = wordAfter(bytes, at);
  for (let k = 0; k < 4 && word !== undefined; k++) word = wordAfter(bytes, word.to);
  if (word === undefined) return true;
  return isWord(bytes, word.from, word.to, 'outer') || isWord(bytes, word.from, word.to, 'vertex');
}

/** Is the word endsolid no part of the name? It is where a facet of this solid follows on the next line. */
function endsHere(c: Cursor, at: number): boolean {
  const { bytes } = c;
  if (at > c.lineEnd) {
    c.lineEnd = at;
    while (c.lineEnd < bytes.length && !isLineEnd(bytes[c.lineEnd]!)) c.lineEnd++;
  }
  const word = wordAfter(bytes, c.lineEnd);
  return word === undefined || !isWord(bytes, word.from, word.to, 'facet');
}

/** Do whole facets stand within [from, to), a line that is passed over? The byte of the first. */
export function facetWithin(bytes: Uint8Array, from: number, to: number): number | undefined {
  let facet: number | undefined;
  for (
    let word = wordAfter(bytes, from);
    word !== undefined && word.to <= to;
    word = wordAfter(bytes, word.to)
  ) {
    if (isWord(bytes, word.from, word.to, 'facet')) facet ??= word.from;
    else if (facet !== undefined && isWord(bytes, word.from, word.to, 'vertex')) return facet;
  }
  return undefined;
}
