import { pointOf, type Columns, type UprightBody } from './columns';
import { carryMarks, windowOn, type ColumnWindow, type Stretch } from './columnWindow';
import { highestFirst, linkRuns } from './runLinks';
import type { Vector } from '../vector';
import { eachAlone, partOf } from '../parts';

/*
 * The height at which a pocket opens, closer than the columns tell it. Between two columns a crease of the ceiling hides: both stand higher than it, so the
 * level of a link across it is too high, by as much as half a step times the slope. Denser columns around the place find the crease; which side
 * a column belongs to is carried over from the coarse ones, where it is known, and the two sides are watched until they meet. On two balls that
 * run into each other the level came out 0.3 mm too high from columns 1 mm apart, and within 0.01 mm after both looks (tests).
 */

export interface Saddle {
  levelMm: number;
  atMm: Vector;
}

/** Sides of the saddle. */
export const [NEITHER, INNER, OUTER] = [0, 1, 2] as const;

/** Of each of the two looks: half width of the window in steps of the columns, and how much denser it is. Chosen here, as is how often it may move. */
const LOOKS = [
  { half: 3, factor: 8 },
  { half: 0.5, factor: 64 },
] as const;
const MOST_MOVES = 8;

/** A meeting nearer to the edge of the window than this, in steps, may lie beyond it. */
const EDGE_STEPS = 1;

/** Where the two sides meet that `sideOf` tells of the runs of the columns; the search begins between two columns. */
export function closerSaddle(
  body: UprightBody,
  columns: Columns,
  sideOf: (run: number) => number,
  from: { innerRun: number; outerRun: number; levelMm: number },
): Saddle {
  const { grid } = columns;
  const [inner, outer] = [columns.column[from.innerRun]!, columns.column[from.outerRun]!];
  let middle = {
    place: ((inner % grid.columns) + (outer % grid.columns)) / 2,
    row: (Math.floor(inner / grid.columns) + Math.floor(outer / grid.columns)) / 2,
  };
  let best: Saddle = { levelMm: from.levelMm, atMm: pointOf(body.axes, grid, outer, from.levelMm) };
  let known = { columns, sideOf };
  for (const { half, factor } of LOOKS) {
    let met: Met | undefined;
    let window: ColumnWindow | undefined;
    const perCoarse = Math.round(grid.stepMm / known.columns.grid.stepMm);
    for (let move = 0; move < MOST_MOVES; move++) {
      const stretch = stretchAround(middle, half, known.columns, grid, perCoarse);
      window = windowOn(body, known.columns.grid, stretch, factor / perCoarse);
      met = meet(window.fine, carryMarks(window, known.columns, known.sideOf));
      if (met === undefined) break;
      const at = placeOf(met, window.fine, grid);
      const isInside =
        Math.abs(at.place - middle.place) < half - EDGE_STEPS / perCoarse &&
        Math.abs(at.row - middle.row) < half - EDGE_STEPS / perCoarse;
      middle = at;
      if (isInside) break;
    }
    if (met === undefined || window === undefined) break;
    const column = window.fine.column[met.run]!;
    best = { levelMm: met.levelMm, atMm: pointOf(body.axes, window.fine.grid, column, met.levelMm) };
    const { marks } = met;
    known = { columns: window.fine, sideOf: (run) => marks[run]! };
  }
  return best;
}

interface Place {
  place: number;
  row: number;
}

/** In places and rows of the grid `on`, which is `per` times as dense as the coarse one that `middle` is told in. */
function stretchAround(
  middle: Place,
  half: number,
  { grid: on }: Columns,
  coarse: Columns['grid'],
  per: number,
): Stretch {
  const place = (middle.place * coarse.stepMm + coarse.u0 - on.u0) / on.stepMm;
  const row = (middle.row * coarse.stepMm + coarse.v0 - on.v0) / on.stepMm;
  const reach = half * per;
  return {
    place0: Math.floor(place - reach),
    place1: Math.ceil(place + reach),
    row0: Math.floor(row - reach),
    row1: Math.ceil(row + reach),
  };
}

function placeOf({ run }: Met, { grid, column }: Columns, coarse: Columns['grid']): Place {
  const c = column[run]!;
  return {
    place: (grid.u0 + (c % grid.columns) * grid.stepMm - coarse.u0) / coarse.stepMm,
    row: (grid.v0 + Math.floor(c / grid.columns) * grid.stepMm - coarse.v0) / coarse.stepMm,
  };
}

interface Met {
  levelMm: number;
  /** The lower of the two runs that meet. */
  run: number;
  /** Side of every run at that moment. */
  marks: Uint8Array;
}

/** The highest level at which runs of the two sides are joined; undefined where they are not within the window. */
function meet(columns: Columns, marks: Uint8Array): Met | undefined {
  const links = linkRuns(columns);
  const parent = eachAlone(columns.count);
  const side = marks.slice();
  for (const link of highestFirst(links)) {
    const [a, b] = [partOf(parent, links.a[link]!), partOf(parent, links.b[link]!)];
    if (a === b) continue;
    const both = side[a]! | side[b]!;
    if (both === (INNER | OUTER)) {
      const [runA, runB] = [links.a[link]!, links.b[link]!];
      const run = columns.highMm[runA]! <= columns.highMm[runB]! ? runA : runB;
      const levelMm = links.levelMm[link]!;
      // The run at the meeting stands on the crease, or beside it on either slope: it belongs to neither.
      const isSure = (r: number): boolean => columns.highMm[r]! > levelMm;
      return { levelMm, run, marks: marks.map((_, r) => (isSure(r) ? side[partOf(parent, r)]! : NEITHER)) };
    }
    parent[b] = a;
    side[a] = both;
  }
  return undefined;
}
