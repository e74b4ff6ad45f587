import { placeLabels, rowsOf, type PlacedLabel } from '../charts/placeLabels';
import { castingsWords } from '../words/packChartWords';
import { gramsText } from '../../units';
import type { PackChartData, PackDot, PastDot } from './packChart';

/** A row of labels, of dots in a stack, and the air between rows, px. */
const LINE_PX = 17;
const STACK_PX = 11;
const GAP_PX = 14;
/** Between a label and the bar under it. */
const LIFT_PX = 3;
/** Room for half of a label at either end. */
export const MARGIN_PX = 20;
/** Figures of the axis and its unit. */
export const AXIS_PX = 44;
/** More castings that went alike are said and not drawn one by one. Chosen here. */
const MOST_DOTS = 6;

export interface DotAt {
  xPx: number;
  yPx: number;
}
export interface LabelAt extends PlacedLabel {
  yPx: number;
}

/** Where everything of the chart stands, px from its upper left corner. */
export interface PackChartLayout {
  heightPx: number;
  domainG: [low: number, high: number];
  here: { label: LabelAt; xPx: number; topPx: number };
  fills?: {
    label: LabelAt;
    lowPx: number;
    middlePx: number;
    highPx: number;
    topPx: number;
    bottomPx: number;
  };
  heads: { text: string; yPx: number }[];
  dots: { packs: DotAt[]; filled: DotAt[]; short: DotAt[] };
  labels: LabelAt[];
  axisPx: number;
}

/** From top to bottom: this pour, what just fills, the packs, the castings of before, the axis. */
export function packChartLayout(data: PackChartData, stepG: number, widthPx: number): PackChartLayout {
  const domainG = domainOf(data);
  const x = scaleOf(domainG, widthPx);
  const one = (text: string, massG: number, yPx: number): LabelAt => ({
    ...placeLabels([{ text, atPx: x(massG) }], widthPx)[0]!,
    yPx,
  });
  const here = {
    label: one(`this pour, ${gramsText(data.here.massG, stepG)}`, data.here.massG, LINE_PX / 2),
    xPx: x(data.here.massG),
    topPx: LINE_PX,
  };
  let downPx = LINE_PX + GAP_PX / 2;
  const fills = fillsAt(data.fills, x, downPx, one);
  if (fills !== undefined) downPx = fills.bottomPx + GAP_PX;
  const packs = rowAt('packs', data.packs, x, widthPx, downPx, (dot) => dot.packFactor.toFixed(2));
  downPx += packs.heightPx + GAP_PX;
  const past = rowAt('castings of before', data.past, x, widthPx, downPx, castingsWords);
  if (data.past.length > 0) downPx += past.heightPx + GAP_PX;
  return {
    heightPx: downPx + AXIS_PX,
    axisPx: downPx,
    domainG,
    here,
    ...(fills === undefined ? {} : { fills }),
    heads: data.past.length > 0 ? [packs.head, past.head] : [packs.head],
    dots: {
      packs: packs.dots(data.packs),
      filled: past.dots(data.past.filter(({ filled }) => filled)),
      short: past.dots(data.past.filter(({ filled }) => !filled)),
    },
    labels: [...packs.labels, ...past.labels],
  };
}

/** From the least to the most of what is shown, with a little air. */
function domainOf({ fills, packs, past, here }: PackChartData): [number, number] {
  const all = [...packs, ...past, here].map(({ massG }) => massG);
  const low = Math.min(...all, fills?.lowG ?? Infinity);
  const high = Math.max(...all, fills?.highG ?? -Infinity);
  const air = high > low ? 0.04 * (high - low) : 0.1 * high;
  return [low - air, high + air];
}

type X = (massG: number) => number;
const scaleOf =
  ([low, high]: [number, number], widthPx: number): X =>
  (massG) =>
    MARGIN_PX + ((massG - low) / (high - low)) * (widthPx - 2 * MARGIN_PX);

function fillsAt(
  fills: PackChartData['fills'],
  x: X,
  topPx: number,
  one: (text: string, massG: number, yPx: number) => LabelAt,
): PackChartLayout['fills'] {
  if (fills === undefined) return undefined;
  const barPx = topPx + LINE_PX;
  return {
    label: one(
      `just fills, ${fills.text.low} to ${fills.text.high}`,
      fills.valueG,
      topPx + LINE_PX / 2 - LIFT_PX,
    ),
    lowPx: x(fills.lowG),
    middlePx: x(fills.valueG),
    highPx: x(fills.highG),
    topPx: barPx,
    bottomPx: barPx + LINE_PX,
  };
}

/** A name, then the labels, the lowest of them next to the dots, then the dots, those of one place in a stack. */
function rowAt<D extends PackDot & Partial<PastDot>>(
  name: string,
  dots: readonly D[],
  x: X,
  widthPx: number,
  topPx: number,
  words: (dot: D) => string,
) {
  const placed = placeLabels(
    dots.map((dot) => ({ text: words(dot), atPx: x(dot.massG) })),
    widthPx,
  );
  const stacks = dots.map(({ count = 1 }) => Math.min(count, MOST_DOTS));
  const dotsPx = topPx + LINE_PX * (1 + rowsOf(placed)) + STACK_PX / 2;
  const highest = Math.max(1, ...stacks);
  return {
    head: { text: name, yPx: topPx + LINE_PX / 2 },
    labels: placed.map((label) => ({ ...label, yPx: dotsPx - STACK_PX / 2 - LINE_PX * (label.row + 0.5) })),
    heightPx: LINE_PX * (1 + rowsOf(placed)) + STACK_PX * highest,
    dots: (some: readonly D[]): DotAt[] =>
      some.flatMap(({ massG, count = 1 }) =>
        Array.from({ length: Math.min(count, MOST_DOTS) }, (_, n) => ({
          xPx: x(massG),
          yPx: dotsPx + n * STACK_PX,
        })),
      ),
  };
}
