/**
 * Every number that a text of digits, points, commas, blanks and apostrophes can stand for. A point is a decimal sign. A comma is one, too,
 * unless it can stand before a group of three; then both are meant. Groups are of three and parted by one kind of sign.
 */
export function strictNumber(text: string): number[] {
  const [, sign, body] = /^([+-]?)(.*)$/s.exec(text.trim().replace(/ +/g, ' '))!;
  const values = new Set(MEANINGS.flatMap((meaning) => meaning(body!)));
  return [...values].map((value) => (sign === '-' ? -value : value));
}

const MEANINGS: readonly ((body: string) => number[])[] = [
  (body) => (/^(\d+\.?\d*|\.\d+)$/.test(body) ? [Number(body)] : []),
  (body) => (/^(\d*,\d+)$/.test(body) ? [Number(body.replace(',', '.'))] : []),
  ...[' ', "'", ',', '.'].map((mark) => (body: string) => grouped(body, mark)),
];

function grouped(body: string, mark: string): number[] {
  const [whole = '', decimals, ...more] = splitLast(body, mark);
  const groups = whole.split(mark);
  const [first = '', ...rest] = groups;
  if (
    more.length > 0 ||
    rest.length === 0 ||
    !/^\d{1,3}$/.test(first) ||
    rest.some((group) => !/^\d{3}$/.test(group))
  )
    return [];
  // One comma before three digits: a group, unless the number would start with 0. One point is always a decimal sign.
  if (
    rest.length === 1 &&
    decimals === undefined &&
    (mark === '.' || (mark === ',' && first.startsWith('0')))
  )
    return [];
  return [Number(`${groups.join('')}.${decimals ?? '0'}`)];
}

/** Behind the last point or comma that is not the mark stand decimals. */
function splitLast(body: string, mark: string): string[] {
  const signs = ['.', ','].filter((sign) => sign !== mark && body.includes(sign));
  if (signs.length === 0) return [body];
  const [sign = '.'] = signs;
  const [whole = '', decimals = '', ...more] = body.split(sign);
  return signs.length > 1 || !/^\d*$/.test(decimals) ? [whole, decimals, 'more'] : [whole, decimals, ...more];
}
