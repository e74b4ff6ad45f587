import { describe, expect, it } from 'vitest';
import { csvText } from '../../src/app/charts/csvText';
import type { Cell } from '../../src/app/charts/sheet';

const row = (...cells: Cell[]): string => csvText({ heads: ['h'], rows: [cells] }).split('\r\n')[1]!;

describe('a sheet as comma-separated values', () => {
  it('has one head row, and every line ends in CR LF, the last too (RFC 4180, 2)', () => {
    const text = csvText({
      heads: ['What', 'Mixed, g'],
      rows: [
        ['pack', 572],
        ['this pour', 572.4],
      ],
    });
    expect(text).toBe('What,"Mixed, g"\r\npack,572\r\nthis pour,572.4\r\n');
  });

  it('quotes a cell with a comma, a quote or a line end, and doubles its quotes (RFC 4180, 5 to 7)', () => {
    expect(row('a,b', 'say "now"', 'one\ntwo')).toBe('"a,b","say ""now""","one\ntwo"');
  });

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', ' =1', '\r=1'])(
    'takes the formula out of %j with an apostrophe',
    (text) => expect(row(text).replace(/^"/, '').startsWith("'")).toBe(true),
  );

  it('leaves numbers what they are, below zero too, and ordinary words without an apostrophe', () => {
    expect(row(-1.5, 0, 'filled before', '1.25 = pack')).toBe('-1.5,0,filled before,1.25 = pack');
  });
});
