import { amount } from '../../words/sentence';
import type { Draw } from '../charts/DrawnChart';
import type { PackChartData } from './packChart';
import { AXIS_PX, MARGIN_PX, packChartLayout, type DotAt, type LabelAt } from './packChartLayout';

const INK = 'var(--ink)';
const QUIET = 'var(--line)';
/** This pour: the one mark of a chart that has it. */
const OURS = 'var(--accent)';
/** Words stay readable where a line runs behind them. */
const HALO = { stroke: 'var(--paper)', strokeWidth: 5 };
const DOT_PX = 4.5;
/** Between figures of the axis, about. */
const TICK_PX = 80;

/** Dots and words at their places; the scale along the axis is in grams, everything up and down in pixels. */
export const drawPackChart =
  (data: PackChartData, stepG: number): Draw =>
  ({ axisX, dot, plot, rect, ruleX, ruleY, text }, widthPx) => {
    const layout = packChartLayout(data, stepG, widthPx);
    const { here, fills, heads, dots, labels, axisPx, domainG, heightPx } = layout;
    const grams = gramsAt(domainG, widthPx);
    const at = { x: ({ xPx }: DotAt) => grams(xPx), y: 'yPx' };
    const words = {
      x: ({ middlePx }: LabelAt) => grams(middlePx),
      y: 'yPx',
      text: 'text',
      fontSize: 13,
      ...HALO,
    };
    return plot({
      width: widthPx,
      height: heightPx,
      margin: 0,
      marginLeft: MARGIN_PX,
      marginRight: MARGIN_PX,
      marginBottom: AXIS_PX,
      className: 'plot-of-ours',
      x: { domain: domainG },
      y: { type: 'identity', axis: null },
      marks: [
        ruleX([grams(here.xPx)], { y1: here.topPx, y2: axisPx, stroke: OURS, strokeWidth: 2 }),
        ...(fills === undefined
          ? []
          : [
              rect([fills], {
                x1: grams(fills.lowPx),
                x2: grams(fills.highPx),
                y1: 'topPx',
                y2: 'bottomPx',
                fill: 'var(--sheet)',
                stroke: INK,
                strokeWidth: 1.5,
              }),
              ruleX([grams(fills.middlePx)], {
                y1: fills.topPx,
                y2: fills.bottomPx,
                stroke: INK,
                strokeWidth: 2,
              }),
              text([fills.label], { ...words, fill: INK }),
            ]),
        text([here.label], { ...words, fill: OURS, fontWeight: 600 }),
        text(heads, {
          x: domainG[0],
          dx: -MARGIN_PX,
          y: 'yPx',
          text: 'text',
          textAnchor: 'start',
          fontSize: 13,
          ...HALO,
          fill: QUIET,
        }),
        dot(dots.packs, { ...at, r: DOT_PX, symbol: 'diamond', fill: INK }),
        dot(dots.filled, { ...at, r: DOT_PX, fill: INK }),
        dot(dots.short, { ...at, r: DOT_PX, fill: 'var(--sheet)', stroke: INK, strokeWidth: 2 }),
        text(labels, { ...words, fill: INK }),
        ruleY([axisPx], { stroke: INK, insetLeft: -MARGIN_PX, insetRight: -MARGIN_PX }),
        axisX({
          ticks: Math.max(2, Math.floor(widthPx / TICK_PX)),
          tickFormat: (massG: number) => amount(massG, 6),
          fontSize: 13,
          label: 'g mixed',
          labelAnchor: 'right',
          labelArrow: 'none',
          labelOffset: AXIS_PX - 4,
        }),
      ],
    });
  };

/** Back from pixels, so that what was moved clear of others is drawn where it was put. */
const gramsAt =
  ([low, high]: [number, number], widthPx: number) =>
  (xPx: number): number =>
    low + ((xPx - MARGIN_PX) / (widthPx - 2 * MARGIN_PX)) * (high - low);
