import { tapeFrom, type Bounds, type Side } from '../plan/placeCard';
import { MM_PER_IN, type Show } from '../units';
import { NOT_DRAWN, seenWords, SIDE_WORDS } from '../words/placeWords';
import { escaped } from './html';
import type { Spot } from './placeCardSpots';
import { widthClass, type WidthMm } from './widths';

/** A row of the table as HTML, and the room it takes, mm. */
export interface TableRow {
  html: string;
  heightMm: number;
}

/** Widths of the columns, mm: wider where a length stands in mm and inches, and for four digits of mm. */
const COLUMNS_MM = {
  both: { n: 10, what: 50, up: 30, near: 38, across: 38, seen: 24 },
  bothLong: { n: 10, what: 38, up: 34, near: 42, across: 42, seen: 24 },
  one: { n: 10, what: 64, up: 28, near: 33, across: 31, seen: 24 },
} as const;

const LONG_MM = 1000;

function columnsOf(
  bounds: Bounds,
  show: Show,
): Record<'n' | 'what' | 'up' | 'near' | 'across' | 'seen', WidthMm> {
  if (show !== 'both') return COLUMNS_MM.one;
  const isLong = bounds.max.some((high, k) => high - bounds.min[k]! >= LONG_MM);
  return isLong ? COLUMNS_MM.bothLong : COLUMNS_MM.both;
}

/** Height of a line of 12 pt, of what a row adds to its lines, and width of a mean character, mm, as printed. */
export const LINE_MM = 4.96;
const ROW_AIR_MM = 1.3;
const CHAR_MM = 2.16;
const CELL_PADDING_MM = 2.4;

/** The head of the table takes two lines. */
export const TABLE_HEAD_MM = 2 * LINE_MM + ROW_AIR_MM;

/** A row for each spot; of those after the first so many the table says that they are not drawn. */
export function tableRows(
  bounds: Bounds,
  spots: readonly Spot[],
  { show, drawn }: { show: Show; drawn: number },
): TableRow[] {
  const widths = columnsOf(bounds, show);
  return spots.map(({ dot, view, face }, i) => {
    const tape = tapeFrom(bounds, dot.atMm);
    const seen = i < drawn ? seenWords(view, face) : NOT_DRAWN;
    const from = (side: Side, mm: number): string => `${SIDE_WORDS[side]} ${lengthText(mm, show)}`;
    const lines = Math.max(linesOf(dot.text, widths.what), linesOf(seen, widths.seen));
    return {
      heightMm: lines * LINE_MM + ROW_AIR_MM,
      html: `<tr data-row="${dot.n}"><td><b>${dot.n}</b></td><td>${escaped(dot.text)}</td><td class="mm">${lengthText(tape.upMm, show)}</td><td class="mm">${from(tape.side, tape.inMm)}</td><td class="mm">${from(tape.acrossSide, tape.acrossMm)}</td><td>${escaped(seen)}</td></tr>`,
    };
  });
}

export function tableOf(bounds: Bounds, rows: readonly TableRow[], show: Show): string {
  const unit = { both: 'mm&nbsp;(in)', metric: 'mm', us: 'in' }[show];
  const { n, what, up, near, across, seen } = columnsOf(bounds, show);
  const columns: [WidthMm, string][] = [
    [n, 'No.'],
    [what, 'What'],
    [up, `Up from base ${unit}`],
    [near, `In from nearest side, ${unit}`],
    [across, `and in from ${unit}`],
    [seen, 'Seen in'],
  ];
  const head = columns.map(([mm, text]) => `<th class="${widthClass(mm)}">${text}</th>`);
  return `<table class="places"><thead><tr>${head.join('')}</tr></thead><tbody>${rows.map(({ html }) => html).join('\n')}</tbody></table>`;
}

/** Whole millimeters and sixteenths of an inch, as a tape has them: `124 (4 7/8)`. */
export function lengthText(mm: number, show: Show): string {
  const metric = String(Math.round(mm) + 0);
  const us = sixteenths(mm / MM_PER_IN);
  return show === 'both' ? `${metric} (${us})` : show === 'us' ? us : metric;
}

function sixteenths(inches: number): string {
  let parts = Math.round(16 * Math.abs(inches));
  const sign = inches < 0 && parts > 0 ? '\u2212' : '';
  const whole = Math.floor(parts / 16);
  parts -= 16 * whole;
  if (parts === 0) return `${sign}${whole}`;
  let of = 16;
  while (parts % 2 === 0) [parts, of] = [parts / 2, of / 2];
  return `${sign}${whole === 0 ? '' : `${whole} `}${parts}/${of}`;
}

/** Lines that a text takes, broken between words, and within those that are wider than the column. */
export function linesOf(text: string, widthMm: number): number {
  const fits = Math.max(1, Math.floor((widthMm - CELL_PADDING_MM) / CHAR_MM));
  let lines = 1;
  let used = 0;
  for (const { length } of text.split(/\s+/)) {
    if (used > 0 && used + 1 + length > fits) [lines, used] = [lines + 1, 0];
    used += (used > 0 ? 1 : 0) + length;
    while (used > fits) [lines, used] = [lines + 1, used - fits];
  }
  return lines;
}
