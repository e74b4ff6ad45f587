import { amount } from '../../words/sentence';
import type { Draw } from '../charts/DrawnChart';
import { LETTER_PX } from '../charts/placeLabels';
import { hereWords, type Holds, type SiliconeChartData } from './siliconeChart';

const INK = 'var(--ink)';
const QUIET = 'var(--line)';
/** This mold: the one mark of a chart that has it. */
const OURS = 'var(--accent)';
/** Words stay readable where a line runs behind them. */
const HALO = { stroke: 'var(--paper)', strokeWidth: 5, fontSize: 13 };
const [LEFT_PX, TOP_PX, BOTTOM_PX, RIGHT_PX] = [44, 26, 44, 12];
const HEIGHT_PX = 300;
/** Between figures of an axis, about. */
const TICK_PX = 64;
const LABEL_PX = 18;
/** Between the mark of this mold and its words. */
const HERE_PX = 10;

const longest = (words: string): number => Math.max(...words.split('\n').map(({ length }) => length));

/** Dots where silicone was measured; both axes start at 0. */
export const drawSiliconeChart =
  (data: SiliconeChartData): Draw =>
  ({ axisX, axisY, dot, line, plot, ruleX, ruleY, text }, widthPx) => {
    const { label, dots, curve, here, holds, topMm, topKg } = data;
    const at = { x: 'mm', y: 'kg' } as const;
    const insidePx = widthPx - LEFT_PX - RIGHT_PX;
    // A rising curve leaves room to the right of a dot and, at the end, to its left.
    const herePx = (here.mm / topMm) * insidePx;
    const isLeft = herePx + longest(hereWords(here)) * LETTER_PX + HERE_PX > insidePx + RIGHT_PX;
    return plot({
      width: widthPx,
      height: HEIGHT_PX,
      marginLeft: LEFT_PX,
      marginTop: TOP_PX,
      marginBottom: BOTTOM_PX,
      marginRight: RIGHT_PX,
      className: 'plot-of-ours',
      x: { domain: [0, topMm] },
      y: { domain: [0, topKg] },
      marks: [
        ruleY(holds, { y: 'kg', stroke: INK, strokeWidth: 1.5, strokeDasharray: '6 4' }),
        ...holds.map((hold) =>
          text([hold], {
            x: 0,
            y: 'kg',
            dx: 6,
            dy: isBelow(hold, holds, topKg) ? 10 : -10,
            text: 'text',
            textAnchor: 'start',
            ...HALO,
            fill: INK,
          }),
        ),
        line(curve, { ...at, stroke: QUIET, strokeWidth: 1.5 }),
        ruleX([here], { x: 'mm', y1: 0, y2: 'kg', stroke: OURS, strokeWidth: 2 }),
        dot(dots, { ...at, r: 4.5, fill: INK }),
        dot([here], { ...at, r: 5.5, fill: OURS, stroke: 'var(--paper)', strokeWidth: 1.5 }),
        text([here], {
          ...at,
          text: hereWords,
          textAnchor: isLeft ? 'end' : 'start',
          dx: isLeft ? -HERE_PX : HERE_PX,
          dy: isLeft ? 0 : LABEL_PX,
          ...HALO,
          fill: OURS,
          fontWeight: 600,
        }),
        ruleY([0], { stroke: INK }),
        axisX({
          ticks: Math.max(2, Math.floor(insidePx / TICK_PX)),
          tickFormat: (mm: number) => amount(mm),
          fontSize: 13,
          label: `${label}, mm`,
          labelAnchor: 'right',
          labelArrow: 'none',
          labelOffset: BOTTOM_PX - 4,
        }),
        axisY({
          ticks: Math.floor((HEIGHT_PX - TOP_PX - BOTTOM_PX) / TICK_PX) + 1,
          tickFormat: (kg: number) => amount(kg),
          fontSize: 13,
          label: 'kg mixed',
          labelAnchor: 'top',
          labelArrow: 'none',
          labelOffset: LEFT_PX - 2,
        }),
      ],
    });
  };

/** Of two lines close together the lower one has its words below. */
const isBelow = ({ kg }: Holds, holds: readonly Holds[], topKg: number): boolean =>
  holds.some(
    (other) => other.kg > kg && ((other.kg - kg) / topKg) * (HEIGHT_PX - TOP_PX - BOTTOM_PX) < 2 * LABEL_PX,
  );
