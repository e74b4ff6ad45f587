import type { PlaceCard } from '../plan/placeCard';
import { PLACE_CAUTIONS, RING_WORDS, TAPE_NOTE, VENT_NOTE, VIEWS_NOTE } from '../words/placeWords';
import { blank, escaped } from './html';
import { barsOf, drawingOf } from './placeCardDrawing';
import { layOutCard, type Layout } from './placeCardLayout';
import { spotsOf, type Spot } from './placeCardSpots';
import { LINE_MM, linesOf, TABLE_HEAD_MM, tableOf, tableRows, type TableRow } from './placeCardTable';
import { PLACE_STYLE } from './placeCardStyle';
import type { SheetMeta } from './pourSheet';

export type PlaceCardMeta = Pick<SheetMeta, 'title' | 'jobCode' | 'version' | 'date' | 'show'> & {
  /** What stands in a frame over the drawing. */
  warnings?: readonly CardWarning[];
};

/** In bold what it is, then what is wrong. */
export interface CardWarning {
  lead: string;
  text: string;
}

/**
 * The place card: outlines of the sculpt to scale, with a numbered dot for each opening, vent, air pocket and thin place, and for each the
 * distances to mark it by with a tape. HTML that needs nothing but itself, one page of 190 by 259 mm, and more where the table is long.
 * Same card and meta, same bytes. Throws on a card that no plan makes: no view, bounds or dots that are not finite, a number used twice.
 *
 * @example
 * const html = placeCard(card, { title: 'Quay Troll head', jobCode: 'TROLL-13', version: '0.1.0' });
 */
export function placeCard(card: PlaceCard, meta: PlaceCardMeta): string {
  checkCard(card);
  const { title = 'Sculpt', jobCode, show = 'both', warnings = [] } = meta;
  const spots = spotsOf(card);
  const { layout, drawn } = layOutCard(card, spots);
  const rows = tableRows(card.boundsMm, spots, { show, drawn: drawn.length });
  const pages = paged(rows, firstRoomMm(layout) - warningsMm(warnings) - ventNoteMm(card));
  const bodies = pages.map((some, i) => {
    const top = i === 0 ? warningsOf(warnings) + firstPageTop(card, drawn, layout) : '';
    const table = some.length > 0 ? tableOf(card.boundsMm, some, show) : rows.length === 0 ? NO_DOTS : '';
    return `<article>${headOf(title, meta, i, pages.length)}${top}${table}${footOf(meta)}</article>`;
  });
  return `<!doctype html>
<html lang="en-US"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1"><title>${escaped(`Place card ${jobCode ?? title}`)}</title><style>${PLACE_STYLE}</style></head>
<body>
${bodies.join('\n')}
</body></html>
`;
}

const warningsOf = (warnings: readonly CardWarning[]): string =>
  warnings.map(({ lead, text }) => `\n<p class="stop"><b>${escaped(lead)}</b> ${escaped(text)}</p>`).join('');

/** Between the frame and the text, mm, and what a frame takes beside its lines, with the air under it. */
const FRAME_ACROSS_MM = 4.4;
const FRAME_DOWN_MM = 4.1;

const warningsMm = (warnings: readonly CardWarning[]): number =>
  warnings.reduce(
    (sum, { lead, text }) =>
      sum + linesOf(`${lead} ${text}`, PAGE_WIDTH_MM - FRAME_ACROSS_MM) * LINE_MM + FRAME_DOWN_MM,
    0,
  );

const NO_DOTS = '<p>No places to mark.</p>';

function checkCard({ boundsMm, views, upWhenPoured, dots }: PlaceCard): void {
  const figures = [...boundsMm.min, ...boundsMm.max, ...upWhenPoured, ...dots.flatMap(({ atMm }) => atMm)];
  const numbers = dots.map(({ n }) => n);
  if (views.length === 0) throw new Error('placeCard: expected a view or more, got none');
  if (!figures.every(Number.isFinite)) throw new Error('placeCard: expected finite places, got others');
  if (!(Math.hypot(...upWhenPoured) > 0)) throw new Error('placeCard: expected a direction up, got none');
  if (new Set(numbers).size < numbers.length)
    throw new Error(`placeCard: expected each number once, got ${numbers.join(' ')}`);
}

/** What the page takes beside drawing and rows, mm, as printed: head, notes, bars, cautions, foot, head of the table, and the air between. */
const PAGE_MM = 259;
const PAGE_WIDTH_MM = 190;
const HEAD_MM = 12.5;
const FOOT_MM = 6;
const WORDS_MM = 7 * 4.96 + 11 + 3 + 6 * 1.5 + 2;

const firstRoomMm = ({ heightMm }: Layout): number =>
  PAGE_MM - HEAD_MM - FOOT_MM - WORDS_MM - heightMm - TABLE_HEAD_MM;
const NEXT_ROOM_MM = PAGE_MM - HEAD_MM - FOOT_MM - TABLE_HEAD_MM - 6;

/** Rows page by page, none cut in two. */
function paged(rows: readonly TableRow[], firstMm: number): TableRow[][] {
  const pages: TableRow[][] = [[]];
  let leftMm = firstMm;
  for (const row of rows) {
    if (row.heightMm > leftMm) {
      pages.push([]);
      leftMm = NEXT_ROOM_MM;
    }
    pages[pages.length - 1]!.push(row);
    leftMm -= row.heightMm;
  }
  return pages;
}

function headOf(title: string, { date }: PlaceCardMeta, page: number, pages: number): string {
  const count = pages > 1 ? `, page ${page + 1} of ${pages}` : '';
  return `<header><div><h1>${escaped(title)}</h1><p>Places to mark on the sculpt${count}</p></div><div class="right"><p>Date ${date === undefined ? blank(30) : escaped(date)}</p><p>By ${blank(30)}</p></div></header>`;
}

const footOf = ({ jobCode, version }: PlaceCardMeta): string =>
  `<footer><span><b>${escaped(jobCode ?? '')}</b></span><span>risewright ${escaped(version)}</span></footer>`;

function firstPageTop(card: PlaceCard, spots: readonly Spot[], layout: Layout): string {
  const cautions = PLACE_CAUTIONS.map(({ what }) => escaped(what)).join(' ');
  return `
${drawingOf(card, spots, layout)}
<p class="notes">${escaped(VIEWS_NOTE)} ${escaped(TAPE_NOTE)}${ringNote(spots)}${hasVent(card) ? ` ${escaped(VENT_NOTE)}` : ''}</p>
<p><b>${scaleWords(layout.scale)}</b> If a bar is off by a ruler, print again at 100 %.</p>
${barsOf()}
<p class="stop">${cautions}</p>
`;
}

const scaleWords = (scale: number): string =>
  scale === 1 ? 'Scale 1:1, true size.' : `Scale 1:${scale}: 1 mm on paper is ${scale} mm on the piece.`;

const hasVent = ({ dots }: PlaceCard): boolean => dots.some(({ kind }) => kind === 'vent');

/** The room it takes after the other notes. */
const ventNoteMm = (card: PlaceCard): number =>
  hasVent(card) ? linesOf(VENT_NOTE, PAGE_WIDTH_MM) * LINE_MM : 0;

/** Only what is drawn is explained. */
function ringNote(spots: readonly Spot[]): string {
  const said = [
    ...(spots.some(({ dot }) => dot.kind === 'opening') ? [RING_WORDS.opening] : []),
    ...(spots.some(({ face }) => face === 'far') ? [RING_WORDS.far] : []),
    ...(spots.some(({ face }) => face === 'unknown') ? [RING_WORDS.unknown] : []),
  ].join('; ');
  return said === '' ? '' : ` ${escaped(`${said.slice(0, 1).toUpperCase()}${said.slice(1)}.`)}`;
}
