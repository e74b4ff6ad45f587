import type { ErrorReason } from './kinds';
import { isDigit, readNumeral } from './numeral';
import type { Numeral } from './numeral';
import { tidyText } from './tidyText';

/** A number and the unit written behind it, if any. */
export interface Part {
  numeral: Numeral;
  unit: string | undefined;
}

export type Parts = { ok: true; parts: Part[]; otherDigits: boolean } | { ok: false; reason: ErrorReason };

/** Longer texts are no quantity; the limit also bounds the work (chosen by us, no source). */
const LONGEST_TEXT = 80;

/** Splits `5 ft 3 in` into (5, ft) and (3, in). */
export function readParts(raw: string): Parts {
  if (raw.length > LONGEST_TEXT) return { ok: false, reason: 'too-long' };
  const { text, otherDigits } = tidyText(raw);
  if (text === '') return { ok: false, reason: 'empty' };
  const parts: Part[] = [];
  let at = 0;
  while (at < text.length) {
    const read = readNumeral(text, at);
    if (!read.ok) return { ok: false, reason: read.reason };
    const unitStart = skipSpace(text, read.numeral.end);
    const unitEnd = endOfUnit(text, unitStart);
    const unit = text.slice(unitStart, unitEnd).trim();
    if (unit === '' && unitStart < text.length) return { ok: false, reason: 'not-a-number' };
    parts.push({ numeral: read.numeral, unit: unit === '' ? undefined : unit });
    at = skipSpace(text, unitEnd);
  }
  return { ok: true, parts, otherDigits };
}

function skipSpace(text: string, start: number): number {
  return text[start] === ' ' ? start + 1 : start;
}

/** Inch and foot marks and the percent sign stand alone; a digit belongs to a unit only right behind a letter or ^. */
function endOfUnit(text: string, start: number): number {
  const first = text[start];
  if (first === '"' || first === "'" || first === '%') return start + 1;
  let at = start;
  while (at < text.length) {
    const char = text[at] ?? '';
    const before = text[at - 1] ?? '';
    const digitOfUnit = isDigit(char) && at > start && (isLetter(before) || before === '^');
    const joint =
      char === ' ' ? isLetter(text[at + 1] ?? '') || text[at + 1] === '/' : '/^.°·'.includes(char);
    if (!isLetter(char) && !digitOfUnit && !joint) break;
    at += 1;
  }
  return at;
}

const isLetter = (char: string): boolean => (char >= 'a' && char <= 'z') || (char >= 'A' && char <= 'Z');
