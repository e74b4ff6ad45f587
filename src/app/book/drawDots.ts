import { amount } from '../../words/sentence';
import type { Draw } from '../charts/DrawnChart';
import { LETTER_PX } from '../charts/placeLabels';
import { labelSide, placedDots, type Axis, type DotChart, type PlacedDot } from './dotChart';

const INK = 'var(--ink)';
/** The pour to come: the one mark of a chart that has it. */
const OURS = 'var(--accent)';
const HALO = { stroke: 'var(--paper)', strokeWidth: 5 };
const MARGIN = { marginTop: 30, marginRight: 18, marginBottom: 46, marginLeft: 52 };
const MOST_WIDE_PX = 560;
/** Between figures of an axis, about. */
const TICK_PX = 70;
const TICK_TALL_PX = 44;

/** Rings or numerals at their places, in whole; the labels stand above and below the axes, in words with their units. */
export const drawDots =
  ({ x, y, dots, line: learned, ring }: DotChart): Draw =>
  ({ axisX, axisY, dot, line, plot, ruleX, ruleY, text }, availablePx) => {
    const width = Math.min(availablePx, MOST_WIDE_PX);
    const height = Math.round(Math.min(340, 0.62 * width + 60));
    const toPx = {
      x: scale(x.domain, [MARGIN.marginLeft, width - MARGIN.marginRight]),
      y: scale(y.domain, [height - MARGIN.marginBottom, MARGIN.marginTop]),
    };
    const placed = placedDots(dots, toPx);
    const movedX = ({ x: at, movedPx }: PlacedDot): number =>
      x.domain[0] +
      ((toPx.x(at) + movedPx - MARGIN.marginLeft) / (toPx.x(x.domain[1]) - MARGIN.marginLeft)) *
        (x.domain[1] - x.domain[0]);
    const rings = placed.filter((one) => one.text === undefined);
    const numerals = placed.filter((one) => one.text !== undefined);
    const words = { fontSize: 13, ...HALO };
    const side =
      ring === undefined
        ? undefined
        : labelSide(
            { xPx: toPx.x(ring.x), yPx: toPx.y(ring.y), widthPx: LETTER_PX * ring.words.length },
            placed.map((one) => ({ xPx: toPx.x(one.x) + one.movedPx, yPx: toPx.y(one.y) })),
            [MARGIN.marginLeft, width],
          );
    return plot({
      width,
      height,
      ...MARGIN,
      className: 'plot-of-ours',
      x: { domain: x.domain },
      y: { domain: y.domain },
      marks: [
        ruleX([x.domain[0]], { stroke: INK }),
        ruleY([y.domain[0]], { stroke: INK }),
        axisX({
          ticks: Math.min(
            Math.max(2, Math.floor(width / TICK_PX)),
            x.isWhole === true ? x.domain[1] - x.domain[0] : Infinity,
          ),
          tickFormat: tickOf(x),
          fontSize: 13,
          label: x.label,
          labelAnchor: 'right',
          labelArrow: 'none',
          labelOffset: 40,
        }),
        axisY({
          ticks: Math.max(2, Math.floor(height / TICK_TALL_PX)),
          tickFormat: tickOf(y),
          fontSize: 13,
          label: null,
        }),
        text([y.label], {
          frameAnchor: 'top-left',
          dy: -MARGIN.marginTop + 6,
          dx: -MARGIN.marginLeft,
          fontSize: 13,
          fill: INK,
        }),
        ...(learned === undefined
          ? []
          : [
              line([learned.from, learned.to], { stroke: INK, strokeWidth: 1.5 }),
              text([learned.words], {
                x: (learned.from[0] + learned.to[0]) / 2,
                y: (learned.from[1] + learned.to[1]) / 2,
                dy: 24,
                dx: 10,
                textAnchor: 'start',
                fill: INK,
                ...words,
              }),
            ]),
        dot(rings, { x: 'x', y: 'y', r: 4.5, fill: 'var(--paper)', stroke: INK, strokeWidth: 1.8 }),
        text(
          numerals.filter(({ isStrong }) => isStrong !== true),
          { x: movedX, y: 'y', text: 'text', fill: INK, ...words, fontSize: 16 },
        ),
        text(
          numerals.filter(({ isStrong }) => isStrong === true),
          { x: movedX, y: 'y', text: 'text', fill: INK, ...words, fontSize: 16, fontWeight: 700 },
        ),
        ...(ring === undefined || side === undefined
          ? []
          : [
              dot([ring], { x: 'x', y: 'y', r: 8, stroke: OURS, strokeWidth: 2 }),
              text([ring], {
                x: 'x',
                y: 'y',
                text: 'words',
                dx: side.dx,
                dy: side.dy,
                textAnchor: side.anchor,
                fill: OURS,
                fontWeight: 600,
                ...words,
              }),
            ]),
      ],
    });
  };

const tickOf =
  ({ digits = 6, decimals }: Axis) =>
  (value: number): string =>
    decimals === undefined ? amount(value, digits) : value.toFixed(decimals);

const scale =
  ([low, high]: readonly [number, number], [from, to]: readonly [number, number]) =>
  (value: number): number =>
    from + ((value - low) / (high - low)) * (to - from);
