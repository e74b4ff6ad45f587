import type { Columns, UprightBody } from './columns';
import { carryMarks, windowOn, type Stretch } from './columnWindow';
import { linkRuns, type RunLinks } from './runLinks';
import { INNER, NEITHER } from './saddle';

export interface PocketVolume {
  volumeMm3: number;
  /** Its section at the saddle. */
  levelMm2: number;
  /** How far the four quarter-dense sets of columns are from it at the most, and what a row of columns along an upright wall may miss. */
  latticeErrorMm3: number;
}

/** Columns over a pocket, about, and how much denser than the coarse ones at the most. Chosen here. */
const [FINE_COLUMNS, MOST_FACTOR] = [30_000, 16];

/**
 * Air of a pocket above its saddle by columns of its own. At the saddle both sides touch between the columns, so every column belongs to the side that is
 * fewer steps away; what that could shift has no height.
 */
export function pocketVolume(
  body: UprightBody,
  columns: Columns,
  sideOf: (run: number) => number,
  { runs, saddleMm }: { runs: Int32Array; saddleMm: number },
): PocketVolume {
  const stretch = stretchOver(columns, runs);
  const across = (stretch.place1 - stretch.place0) * (stretch.row1 - stretch.row0);
  const factor = Math.max(1, Math.min(MOST_FACTOR, Math.floor(Math.sqrt(FINE_COLUMNS / across))));
  const window = windowOn(body, columns.grid, stretch, factor);
  const { fine } = window;
  const marks = carryMarks(window, columns, sideOf);
  const links = linkRuns(fine);
  spread(links, fine, marks, saddleMm);
  const inner = summed(fine, marks, saddleMm);
  return { ...inner, latticeErrorMm3: inner.latticeErrorMm3 + wallDoubtMm3(links, fine, marks, saddleMm) };
}

function stretchOver({ grid, column }: Columns, runs: Int32Array): Stretch {
  const over: Stretch = { place0: Infinity, place1: -Infinity, row0: Infinity, row1: -Infinity };
  for (const run of runs) {
    const place = column[run]! % grid.columns;
    const row = Math.floor(column[run]! / grid.columns);
    over.place0 = Math.min(over.place0, place - 1);
    over.place1 = Math.max(over.place1, place + 1);
    over.row0 = Math.min(over.row0, row - 1);
    over.row1 = Math.max(over.row1, row + 1);
  }
  return over;
}

/** Every run without a side takes that of the nearest one, by steps above the saddle. */
function spread(links: RunLinks, { highMm, count }: Columns, marks: Uint8Array, saddleMm: number): void {
  const degree = new Int32Array(count + 1);
  const isAbove = (link: number): boolean => links.levelMm[link]! > saddleMm;
  for (let i = 0; i < links.count; i++)
    if (isAbove(i)) {
      degree[links.a[i]! + 1]!++;
      degree[links.b[i]! + 1]!++;
    }
  for (let r = 0; r < count; r++) degree[r + 1]! += degree[r]!;
  const fill = degree.slice();
  const neighbor = new Int32Array(degree[count]!);
  for (let i = 0; i < links.count; i++)
    if (isAbove(i)) {
      neighbor[fill[links.a[i]!]!++] = links.b[i]!;
      neighbor[fill[links.b[i]!]!++] = links.a[i]!;
    }
  const queue = new Int32Array(count);
  let queued = 0;
  for (let r = 0; r < count; r++) if (marks[r] !== NEITHER && highMm[r]! > saddleMm) queue[queued++] = r;
  for (let at = 0; at < queued; at++) {
    const run = queue[at]!;
    for (let n = degree[run]!; n < degree[run + 1]!; n++) {
      const other = neighbor[n]!;
      if (marks[other] !== NEITHER) continue;
      marks[other] = marks[run]!;
      queue[queued++] = other;
    }
  }
}

function summed(
  { grid, column, lowMm, highMm, count }: Columns,
  marks: Uint8Array,
  saddleMm: number,
): PocketVolume {
  const quarters = [0, 0, 0, 0];
  let crossed = 0;
  for (let run = 0; run < count; run++) {
    if (marks[run] !== INNER || highMm[run]! <= saddleMm) continue;
    const c = column[run]!;
    const quarter = ((c % grid.columns) & 1) + 2 * (Math.floor(c / grid.columns) & 1);
    quarters[quarter]! += highMm[run]! - Math.max(lowMm[run]!, saddleMm);
    if (lowMm[run]! < saddleMm) crossed++;
  }
  const cellMm2 = grid.stepMm ** 2;
  const volumeMm3 = quarters.reduce((sum, quarter) => sum + quarter, 0) * cellMm2;
  return {
    volumeMm3,
    levelMm2: crossed * cellMm2,
    latticeErrorMm3: Math.max(...quarters.map((quarter) => Math.abs(4 * quarter * cellMm2 - volumeMm3))),
  };
}

/**
 * A wall that stands upright along a row of columns is half a step off at the most: that is told. Of eight neighbors three are missing at a straight wall. Where the ceiling runs down to the saddle nothing is missed.
 */
function wallDoubtMm3(links: RunLinks, columns: Columns, marks: Uint8Array, saddleMm: number): number {
  const { lowMm, highMm, count, grid } = columns;
  const neighbors = new Uint8Array(count);
  for (let i = 0; i < links.count; i++) {
    if (links.levelMm[i]! <= saddleMm) continue;
    neighbors[links.a[i]!]!++;
    neighbors[links.b[i]!]!++;
  }
  let length = 0;
  for (let run = 0; run < count; run++) {
    const missing = Math.min(3, 8 - neighbors[run]!);
    if (marks[run] !== INNER || highMm[run]! <= saddleMm || missing <= 0) continue;
    length += (missing / 3) * (highMm[run]! - Math.max(lowMm[run]!, saddleMm));
  }
  return (length * grid.stepMm ** 2) / 2;
}
