import type { AskReason, ErrorReason } from './kinds';

/** A number as typed: usually one value; two where a comma can be a decimal sign or a thousands separator. */
export interface Numeral {
  values: number[];
  doubt?: Extract<AskReason, 'comma-or-thousands' | 'exponent' | 'bare-fraction'>;
  /** Index of the first character behind it. */
  end: number;
}

export type NumeralOutcome = { ok: true; numeral: Numeral } | { ok: false; reason: ErrorReason };

/**
 * Reads the number that starts at `start` of a tidied text: `12`, `1.5`, `1,5`, `1 234,5`, `1'234.5`, `10 1/4`, `1e3`.
 * Scans forward only, so its time is proportional to the length of the text.
 */
export function readNumeral(text: string, start: number): NumeralOutcome {
  let at = start;
  const sign = text[at] === '-' ? -1 : 1;
  if (text[at] === '-' || text[at] === '+') at += 1;
  const end = endOfBody(text, at);
  if (!isDigit(text[at]) && !(isPoint(text[at]) && isDigit(text[at + 1])))
    return { ok: false, reason: 'not-a-number' };
  const body = text.slice(at, end);
  const fraction = readFraction(text, body, end);
  if (fraction !== undefined) return signed(sign, fraction);
  const values = valuesOfBody(body);
  if (values === undefined) return { ok: false, reason: 'bad-grouping' };
  const exponentEnd = endOfExponent(text, end);
  if (exponentEnd > end) return withExponent({ text, sign, body, values, end, exponentEnd });
  const numeral: Numeral = { values, end };
  if (values.length > 1) numeral.doubt = 'comma-or-thousands';
  return signed(sign, { ok: true, numeral });
}

export const isDigit = (char: string | undefined): boolean =>
  char !== undefined && char >= '0' && char <= '9';

const isPoint = (char: string | undefined): boolean => char === '.' || char === ',';

function signed(sign: number, outcome: NumeralOutcome): NumeralOutcome {
  if (!outcome.ok || sign > 0) return outcome;
  return { ok: true, numeral: { ...outcome.numeral, values: outcome.numeral.values.map((value) => -value) } };
}

/** The digits with their points, commas and group separators. A separator counts only before a group of three. */
function endOfBody(text: string, start: number): number {
  let at = start;
  for (;;) {
    const char = text[at];
    if (isDigit(char) || isPoint(char)) at += 1;
    else if (
      (char === ' ' || char === "'") &&
      isDigit(text[at - 1]) &&
      at > start &&
      groupFollows(text, start, at)
    )
      at += 1;
    else return at;
  }
}

/** `1 234` and `1'234` are grouped; `10 1/4`, `12 3456` and `12.5 300` are not. */
function groupFollows(text: string, start: number, separatorAt: number): boolean {
  const three =
    isDigit(text[separatorAt + 1]) && isDigit(text[separatorAt + 2]) && isDigit(text[separatorAt + 3]);
  if (!three || isDigit(text[separatorAt + 4]) || text[separatorAt + 4] === '/') return false;
  let run = 0;
  for (let at = separatorAt - 1; at >= start && isDigit(text[at]); at -= 1) run += 1;
  const before = text[separatorAt - 1 - run];
  const first = separatorAt - run === start;
  return first ? run <= 3 : run === 3 && !isPoint(before);
}

function valuesOfBody(body: string): number[] | undefined {
  const separators = [' ', "'"].filter((char) => body.includes(char));
  const dots = count(body, '.');
  const commas = count(body, ',');
  if (separators.length > 1) return undefined;
  if (separators.length === 1) {
    return dots + commas > 1 ? undefined : grouped(body, separators[0] ?? '', commas === 1 ? ',' : '.');
  }
  if (dots > 0 && commas > 0) {
    const dotLast = body.lastIndexOf('.') > body.lastIndexOf(',');
    return (dotLast ? dots : commas) > 1
      ? undefined
      : grouped(body, dotLast ? ',' : '.', dotLast ? '.' : ',');
  }
  if (dots > 1) return grouped(body, '.', ',');
  if (commas > 1) return grouped(body, ',', '.');
  if (commas === 1) return valuesWithOneComma(body);
  return [Number(body)];
}

/** `1,5` is 1.5; `0,250` is 0.25, since no group starts with 0; `1,250` has two meanings. */
function valuesWithOneComma(body: string): number[] | undefined {
  const [left = '', right = ''] = body.split(',');
  if (right === '') return undefined;
  const decimal = Number(`${left}.${right}`);
  const canBeGroup = right.length === 3 && left.length >= 1 && left.length <= 3 && !left.startsWith('0');
  return canBeGroup ? [decimal, Number(left + right)] : [decimal];
}

function grouped(body: string, separator: string, decimalSign: string): number[] | undefined {
  const [whole = '', decimals = '', ...more] = body.split(decimalSign);
  const groups = whole.split(separator);
  const [first = '', ...others] = groups;
  const sound = first.length >= 1 && first.length <= 3 && others.every((group) => group.length === 3);
  if (more.length > 0 || !sound || decimals.includes(separator)) return undefined;
  return [Number(`${groups.join('')}.${decimals || '0'}`)];
}

/** `1/2` and `10 1/4`; undefined when no fraction stands there. */
function readFraction(text: string, body: string, end: number): NumeralOutcome | undefined {
  const mixed = text[end] === ' ' && isDigit(text[end + 1]);
  const topStart = mixed ? end + 1 : end - body.length;
  const topEnd = mixed ? endOfDigits(text, topStart) : end;
  if (text[topEnd] !== '/' || !isDigit(text[topEnd + 1])) return undefined;
  const bottomEnd = endOfDigits(text, topEnd + 1);
  const top = Number(text.slice(topStart, topEnd));
  const bottom = Number(text.slice(topEnd + 1, bottomEnd));
  const whole = mixed ? Number(body) : 0;
  if (!Number.isInteger(whole) || !Number.isInteger(top) || bottom === 0 || (mixed && top >= bottom)) {
    return { ok: false, reason: 'not-a-number' };
  }
  const numeral: Numeral = { values: [whole + top / bottom], end: bottomEnd };
  return { ok: true, numeral: mixed ? numeral : { ...numeral, doubt: 'bare-fraction' } };
}

function withExponent(parts: {
  text: string;
  sign: number;
  body: string;
  values: number[];
  end: number;
  exponentEnd: number;
}): NumeralOutcome {
  const [mantissa, ...more] = parts.values;
  if (mantissa === undefined || more.length > 0) return { ok: false, reason: 'bad-grouping' };
  const value = parts.sign * Number(`${mantissa}e${parts.text.slice(parts.end + 1, parts.exponentEnd)}`);
  const lost = !Number.isFinite(value) || (value === 0 && mantissa !== 0);
  if (lost) return { ok: false, reason: 'out-of-reach' };
  return { ok: true, numeral: { values: [value], doubt: 'exponent', end: parts.exponentEnd } };
}

function endOfExponent(text: string, at: number): number {
  if (text[at] !== 'e' && text[at] !== 'E') return at;
  const digitsAt = text[at + 1] === '-' || text[at + 1] === '+' ? at + 2 : at + 1;
  return isDigit(text[digitsAt]) ? endOfDigits(text, digitsAt) : at;
}

function endOfDigits(text: string, start: number): number {
  let at = start;
  while (isDigit(text[at])) at += 1;
  return at;
}

const count = (text: string, char: string): number => text.split(char).length - 1;
