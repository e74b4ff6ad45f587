import type { TriangleMesh } from '../triangleMesh';
import type { Vector } from '../vector';
import { columnsThrough, gridOver, SKY_MM, standUpright, type Columns, type UprightBody } from './columns';
import { highestFirst, linkRuns, type RunLinks } from './runLinks';
import type { OpenRuns, RunHeights } from './pocket';
import { waysBetween, type Ways } from './wallBetween';

/** A body stood up as it is poured, in columns with their links: what traps, vents and the liquid are worked out from. */
export interface PourColumns {
  body: UprightBody;
  columns: Columns;
  links: RunLinks;
  /** Links, highest first. */
  order: Int32Array;
  heights: RunHeights;
  /** What stands between the runs of a link. */
  ways: Ways;
}

/** @param chain closed, mm; it may overlap itself: inside is where it winds once or more */
export function pourColumns(chain: TriangleMesh, up: Vector, stepMm: number): PourColumns {
  const body = standUpright(chain, up);
  return inColumns(body, columnsThrough(body, gridOver(body, stepMm)));
}

/** The space around a sculpt that stands on its board: what silicone poured over it fills, from the board up. */
export function columnsAroundSculpt(
  chain: TriangleMesh,
  { boardMm, stepMm }: { boardMm: number; stepMm: number },
): PourColumns {
  const body = { ...standUpright(chain, [0, 0, 1]), aroundFromMm: boardMm };
  return inColumns(body, columnsThrough(body, gridOver(body, stepMm, 2)));
}

function inColumns(body: UprightBody, columns: Columns): PourColumns {
  const links = linkRuns(columns);
  const { count, lowMm, highMm, grid } = columns;
  const heights = { count, topMm: highMm, bottomMm: lowMm, crossMm2: grid.stepMm ** 2 };
  const ways = waysBetween(body, columns, links);
  return { body, columns, links, order: highestFirst(links), heights, ways };
}

/** Around a sculpt everything that reaches the sky is open. */
export function openToSky({ body, columns }: PourColumns): OpenRuns {
  const skyMm = body.height.high + SKY_MM;
  const run: number[] = [];
  for (let r = 0; r < columns.count; r++) if (columns.highMm[r]! >= skyMm) run.push(r);
  return { run, levelMm: run.map(() => skyMm) };
}
