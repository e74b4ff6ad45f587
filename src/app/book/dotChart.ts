/** One pour in a chart: a ring, or its skin score as a numeral. */
export interface Dot {
  x: number;
  y: number;
  text?: string;
  /** Drawn bold. */
  isStrong?: boolean;
}

export interface Axis {
  label: string;
  domain: [low: number, high: number];
  digits?: number;
  /** It counts: no figures between. */
  isWhole?: true;
  /** Figures with so many decimals, for a column that reads evenly. */
  decimals?: number;
}

/** A chart of single pours: no curve but a line that was learned as one. */
export interface DotChart {
  x: Axis;
  y: Axis;
  dots: readonly Dot[];
  line?: { from: [x: number, y: number]; to: [x: number, y: number]; words: string };
  /** Where the next pour would land. */
  ring?: { x: number; y: number; words: string };
}

/** A dot where it is drawn, px; `movedPx`: to the right of its place, clear of another. */
export interface PlacedDot extends Dot {
  movedPx: number;
}

/** A numeral takes about so much room, px. */
const WIDE_PX = 13;
const TALL_PX = 15;

/** Numerals clear of each other: one that would lie on another is moved to the right of it. Rings stay where they are. */
export function placedDots(
  dots: readonly Dot[],
  toPx: { x: (value: number) => number; y: (value: number) => number },
): PlacedDot[] {
  const placed: PlacedDot[] = [];
  for (const dot of dots) {
    let movedPx = 0;
    const isHidden = (): boolean =>
      placed.some(
        (other) =>
          Math.abs(toPx.x(other.x) + other.movedPx - toPx.x(dot.x) - movedPx) < WIDE_PX - 0.5 &&
          Math.abs(toPx.y(other.y) - toPx.y(dot.y)) < TALL_PX,
      );
    while (dot.text !== undefined && isHidden()) movedPx += WIDE_PX;
    placed.push({ ...dot, movedPx });
  }
  return placed;
}

/** An axis from 0 to beyond the largest. */
export const fromZero = (values: readonly number[]): [number, number] => [
  0,
  1.08 * Math.max(1e-9, ...values),
];

/** An axis about what was seen, at least so wide. */
export function about(values: readonly number[], leastSpan: number): [number, number] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const margin = Math.max((leastSpan - (high - low)) / 2, 0.12 * (high - low));
  return [low - margin, high + margin];
}

/** Where the words beside a ring stand: beside it, else above or below, wherever they lie on no dot and within the frame. */
export interface LabelSide {
  dx: number;
  dy: number;
  anchor: 'start' | 'end' | 'middle';
}

const SIDES: readonly LabelSide[] = [
  { dx: 13, dy: 0, anchor: 'start' },
  { dx: -13, dy: 0, anchor: 'end' },
  { dx: 0, dy: -20, anchor: 'middle' },
  { dx: 0, dy: 20, anchor: 'middle' },
  { dx: 13, dy: -20, anchor: 'start' },
  { dx: -13, dy: -20, anchor: 'end' },
  { dx: 13, dy: 20, anchor: 'start' },
  { dx: -13, dy: 20, anchor: 'end' },
];

/** Of the sides the first that is free, else the first that is within the frame. All in px; `atPx` are the dots. */
export function labelSide(
  ring: { xPx: number; yPx: number; widthPx: number },
  atPx: readonly { xPx: number; yPx: number }[],
  frame: readonly [leftPx: number, rightPx: number],
): LabelSide {
  const boxes = SIDES.map((side) => {
    const start = { start: 0, end: -ring.widthPx, middle: -ring.widthPx / 2 }[side.anchor];
    const left = ring.xPx + side.dx + start;
    return { side, left, right: left + ring.widthPx, y: ring.yPx + side.dy };
  });
  const within = boxes.filter(({ left, right }) => left >= frame[0] && right <= frame[1]);
  const free = within.find(({ left, right, y }) =>
    atPx.every(
      (dot) =>
        dot.xPx < left - WIDE_PX / 2 || dot.xPx > right + WIDE_PX / 2 || Math.abs(dot.yPx - y) >= TALL_PX,
    ),
  );
  return (free ?? within[0] ?? boxes[0]!).side;
}
