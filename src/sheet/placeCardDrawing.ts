import { inView, towardEye, VIEW_AXES, type PlaceCard, type Vector } from '../plan/placeCard';
import { UP_END_ON, UP_WHEN_POURED, VIEW_WORDS } from '../words/placeWords';
import { CAPTION, DRAWING, viewExtent, type Layout } from './placeCardLayout';
import { placeRings, ringPlaces, type PaperPoint } from './placeCardRings';
import type { Spot } from './placeCardSpots';

/** 12 pt in the drawing's own unit, mm. */
const TEXT_MM = (12 * 25.4) / 72;

/** The outlines to scale with their dots: one SVG whose unit is the millimeter on paper. */
export function drawingOf(card: PlaceCard, spots: readonly Spot[], layout: Layout): string {
  const views = layout.views.map((view) => viewOf(card, spots, layout, view)).join('\n');
  const [width, height] = [fixed(DRAWING.widthMm), fixed(layout.heightMm)];
  const x = (layout.widthMm - DRAWING.widthMm) / 2;
  return `<svg class="drawing" width="${width}mm" height="${height}mm" viewBox="${fixed(x)} 0 ${width} ${height}" data-scale="${layout.scale}">
${views}
</svg>`;
}

type View = Layout['views'][number];

function viewOf(card: PlaceCard, spots: readonly Spot[], layout: Layout, view: View): string {
  const { name, box } = view;
  const { low } = viewExtent(card.boundsMm, name);
  const onPaper = (u: number, v: number): PaperPoint => ({
    x: box.x + (u - low[0]) / layout.scale,
    y: box.y + box.height - (v - low[1]) / layout.scale,
  });
  const outlines = card.views
    .filter((one) => one.name === name)
    .flatMap((one) => one.outlines.map((outline) => pathOf(outline, onPaper)));
  const base = name === 'top' ? '' : baseLine(box);
  const shown = spots.filter((spot) => spot.view === name);
  return `<g data-view="${name}"><path class="outline" d="${outlines.join('')}"/>${base}
${dotsOf(shown, onPaper, view, layout)}
${captionOf(card.upWhenPoured, view)}</g>`;
}

function pathOf(outline: Float64Array, onPaper: (u: number, v: number) => PaperPoint): string {
  const points: string[] = [];
  for (let i = 0; i < outline.length; i += 2) points.push(pair(onPaper(outline[i]!, outline[i + 1]!)));
  return `M${points.join('L')}Z`;
}

/** The board, a little beyond the piece on both sides. */
const baseLine = ({ x, y, width, height }: View['box']): string =>
  `<path class="base" d="M${pair({ x: x - 1, y: y + height })}H${fixed(x + width + 1)}"/>`;

/** Leaders below, then the dots, then the rings, so that no number is struck through. */
function dotsOf(
  spots: readonly Spot[],
  onPaper: (u: number, v: number) => PaperPoint,
  { name, box }: View,
  { rings: ringRows }: Layout,
): string {
  const at = spots.map((spot) => onPaper(...spot.at));
  const rings = placeRings(at, ringPlaces(box, ringRows), ringRows.radiusMm);
  const leaders = spots.map(
    ({ face }, i) => `<path class="leader ${face}" d="M${pair(at[i]!)}L${pair(rings[i]!)}"/>`,
  );
  const dots = spots.map(
    ({ face }, i) =>
      `<circle class="dot ${face}" cx="${fixed(at[i]!.x)}" cy="${fixed(at[i]!.y)}" r="${face === 'near' ? 0.9 : 1}"/>`,
  );
  const numbers = spots.map(({ dot, face }, i) => {
    const [x, y] = [fixed(rings[i]!.x), rings[i]!.y];
    return `<g data-dot="${dot.n}" data-view="${name}"><circle class="ring ${face} ${dot.kind}" cx="${x}" cy="${fixed(y)}" r="${fixed(ringRows.radiusMm)}"/><text x="${x}" y="${fixed(y + 0.36 * TEXT_MM)}" text-anchor="middle">${dot.n}</text></g>`;
  });
  return [...leaders, ...dots, ...numbers].join('');
}

/** The view's name between the piece's own sides, and the arrow. */
function captionOf(upWhenPoured: Vector, { name, box, cell }: View): string {
  const words = VIEW_WORDS[name];
  const middle = cell.x + cell.width / 2;
  const least = CAPTION.widthMm / 2 - 3;
  const [left, right] = [Math.min(box.x, middle - least), Math.max(box.x + box.width, middle + least)];
  const y = cell.y + cell.height - CAPTION.heightMm;
  const text = (x: number, down: number, anchor: string, what: string): string =>
    `<text x="${fixed(x)}" y="${fixed(y + down)}" text-anchor="${anchor}">${what}</text>`;
  const { right: across, up, toward } = seenFrom(upWhenPoured, name);
  const isEndOn = Math.hypot(across, up) < END_ON;
  const at = { x: middle - 18, y: y + 8.9 };
  return [
    text(left, 4, 'start', words.leftEdge),
    text(middle, 4, 'middle', `<tspan font-weight="bold">${words.name}</tspan>`),
    text(right, 4, 'end', words.rightEdge),
    isEndOn ? endOn(toward, at) : arrowOf(across, up, at),
    text(middle - 13, 10, 'start', isEndOn ? UP_END_ON[toward > 0 ? 'toward' : 'away'] : UP_WHEN_POURED),
  ].join('');
}

/** A direction of length 1 on the paper and out of it. */
function seenFrom(direction: Vector, name: View['name']): { right: number; up: number; toward: number } {
  const axes = VIEW_AXES[name];
  const unit = direction.map((k) => k / Math.hypot(...direction)) as [number, number, number];
  const [right, up] = inView(axes, unit);
  const [toward] = inView({ ...axes, right: towardEye(axes) }, unit);
  return { right, up, toward };
}

/** Half of a full arrow, mm; where less than this share of it shows, it is drawn end on. */
const ARROW_MM = 3.1;
const END_ON = 0.3;

function arrowOf(right: number, up: number, { x, y }: PaperPoint): string {
  const [dx, dy] = [ARROW_MM * right, -ARROW_MM * up];
  const shown = Math.hypot(dx, dy);
  const [ax, ay] = [(1.6 * dx) / shown, (1.6 * dy) / shown];
  const [tip, tail] = [
    { x: x + dx, y: y + dy },
    { x: x - dx, y: y - dy },
  ];
  const wing = (side: 1 | -1): string =>
    pair({ x: tip.x - ax - side * ay * 0.7, y: tip.y - ay + side * ax * 0.7 });
  return `<path class="arrow" d="M${pair(tail)}L${pair(tip)}M${wing(1)}L${pair(tip)}L${wing(-1)}"/>`;
}

/** A ring with a point, the tip of the arrow, or with a cross, its feathers. */
function endOn(toward: number, { x, y }: PaperPoint): string {
  const ring = `<circle class="arrow" cx="${fixed(x)}" cy="${fixed(y)}" r="2"/>`;
  if (toward > 0) return `${ring}<circle cx="${fixed(x)}" cy="${fixed(y)}" r="0.7"/>`;
  const [l, r, t, b] = [x - 1.4, x + 1.4, y - 1.4, y + 1.4];
  return `${ring}<path class="arrow" d="M${pair({ x: l, y: t })}L${pair({ x: r, y: b })}M${pair({ x: l, y: b })}L${pair({ x: r, y: t })}"/>`;
}

/** To the hundredth of a millimeter, never "-0". */
const fixed = (mm: number): string => String(Number(mm.toFixed(2)) + 0);
const pair = ({ x, y }: PaperPoint): string => `${fixed(x)} ${fixed(y)}`;

/** Bars to hold a ruler to: 100 mm in centimeters and 4 in in inches. */
export function barsOf(): string {
  const bar = (y: number, stepMm: number, steps: number): string => {
    const ticks = Array.from({ length: steps + 1 }, (_, i) => `M${fixed(i * stepMm)} ${y}V${y + 3}`).join('');
    return `<path d="M0 ${y + 3}H${fixed(steps * stepMm)}${ticks}"/>`;
  };
  return `<svg class="bars" width="150mm" height="11mm" viewBox="-0.5 0 150 11">${bar(1, 10, 10)}${bar(7, 25.4, 4)}<text x="105" y="4.2">This bar is 100 mm</text><text x="105" y="10.2">This bar is 4 in</text></svg>`;
}
