import type { Vector } from '../vector';
import { pointOf } from './columns';
import { pocketVolume } from './pocketVolume';
import type { PourColumns } from './pourColumns';
import { closerSaddle, INNER, NEITHER, OUTER, type Saddle } from './saddle';
import { SAME_HEIGHT_MM, type OpenRuns, type Pocket, type Pockets } from './pocket';
import { sweepDown } from './sweepDown';

/*
 * Where air is shut in when a body is filled from below through its opening: the liquid rises level, so what lies above the height at which a
 * summit joins the opening stays full of air. Foam rises as a dome and laps over: this is the least there is to expect, not the most.
 * Voxels of the distance field were tried for this and are 3 to 13 % off for shallow pockets; columns along up are exact in height and need no field.
 */

/** A pocket of air, in the axes of the mesh, mm. */
export interface AirTrap {
  /** Its highest place: where a vent cures it. */
  topMm: Vector;
  /** Where it would open: level with this, the liquid shuts it. */
  saddleMm: Vector;
  volumeMm3: number;
  /** What the columns and the height of the saddle leave open. */
  doubtMm3: number;
  riseMm: number;
}

export interface AirTraps {
  /** Largest first. */
  traps: AirTrap[];
  /** Pockets below the stated volume: air that dissolves or leaves a pinhole. */
  pinholes: { count: number; volumeMm3: number; largest: AirTrap[] };
  /** Of the traps and the pinholes. */
  trappedMm3: number;
  /** Pieces that no liquid reaches from this opening. */
  apart: { topMm: Vector; volumeMm3: number }[];
}

export interface TrapWish {
  /** Smaller ones are pinholes. */
  leastMm3: number;
  onStep?: (() => void) | undefined;
}

/** Pockets smaller than this are roughness of the surface. Chosen here: a cube of 2.7 mm. */
export const ROUGHNESS_MM3 = 20;

/** Uncertainty of a saddle's height, in steps of the columns: twice what two balls in all poses left open after a closer look. Chosen here. */
const SADDLE_DOUBT = 0.02;

/** Every pocket of a body in columns that is not open, its saddle and its volume refined. */
export function findAirTraps(pour: PourColumns, open: OpenRuns, wish: TrapWish): AirTraps {
  const { body, columns } = pour;
  const found = pocketsOf(pour, open);
  const close = found.pockets.map((pocket) => {
    wish.onStep?.();
    return { pocket, saddle: saddleOf(pour, pocket) };
  });
  const all = joinedPockets(pour, close).map((pocket) => {
    wish.onStep?.();
    return trapOf(pour, pocket);
  });
  all.sort((a, b) => b.volumeMm3 - a.volumeMm3);
  const isTrap = ({ volumeMm3 }: AirTrap): boolean => volumeMm3 >= wish.leastMm3;
  const small = all.filter((trap) => !isTrap(trap));
  const total = (list: readonly { volumeMm3: number }[]): number =>
    list.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0);
  return {
    traps: all.filter(isTrap),
    pinholes: { count: small.length, volumeMm3: total(small), largest: small },
    trappedMm3: total(all),
    apart: found.apart
      .filter(({ volumeMm3 }) => volumeMm3 >= ROUGHNESS_MM3)
      .map(({ topRun, volumeMm3 }) => ({
        topMm: pointOf(body.axes, columns.grid, columns.column[topRun]!, columns.highMm[topRun]!),
        volumeMm3,
      })),
  };
}

/** The pockets as the columns have them. */
export const pocketsOf = ({ links, order, heights, ways }: PourColumns, open: OpenRuns): Pockets =>
  sweepDown(heights, links, open, { leastMm3: ROUGHNESS_MM3, order, ways });

interface ClosePocket {
  pocket: Pocket;
  saddle: Saddle;
}

/**
 * Between columns a crease is told too high, and by how much differs: of two creases nearly at one height the sweep may take the lower one first. Where a
 * pocket opens into another that turns out to open lower still, both are one pocket, and open there.
 */
function joinedPockets(pour: PourColumns, close: readonly ClosePocket[]): ClosePocket[] {
  const ownerOf = new Map(close.flatMap((one) => Array.from(one.pocket.runs, (run) => [run, one] as const)));
  const opensInto = (one: ClosePocket): ClosePocket | undefined => {
    if (one.pocket.outerRun < 0) return undefined;
    const own = (run: number): boolean => ownerOf.get(run) === one;
    const into = ownerOf.get(
      summitOver(pour, one.pocket.outerRun, { isWanted: (run) => ownerOf.has(run), own }),
    );
    return into !== undefined && into.saddle.levelMm < one.saddle.levelMm ? into : undefined;
  };
  const lastOf = (one: ClosePocket): ClosePocket => {
    const into = opensInto(one);
    return into === undefined ? one : lastOf(into);
  };
  const groups = new Map<ClosePocket, ClosePocket[]>();
  for (const one of close) groups.set(lastOf(one), [...(groups.get(lastOf(one)) ?? []), one]);
  return Array.from(groups, ([last, group]) => ({
    saddle: last.saddle,
    pocket: {
      ...last.pocket,
      runs: Int32Array.from(group.flatMap(({ pocket }) => Array.from(pocket.runs))).sort(),
    },
  }));
}

/**
 * Up the ceiling from a run outside of a pocket, always to the neighbor that reaches highest, until one is as wanted or none is higher. The run at the
 * meeting may stand on the pocket's own slope: its runs are passed over.
 */
function summitOver(
  { links, columns: { highMm } }: PourColumns,
  from: number,
  { isWanted, own }: { isWanted: (run: number) => boolean; own: (run: number) => boolean },
): number {
  let run = from;
  while (!isWanted(run)) {
    let best = run;
    for (let i = 0; i < links.count; i++) {
      const other = links.a[i] === run ? links.b[i]! : links.b[i] === run ? links.a[i]! : run;
      if (highMm[other]! > highMm[best]! && !own(other)) best = other;
    }
    if (best === run) return run;
    run = best;
  }
  return run;
}

/** Which side of its saddle a run is on. */
function sidesOf({ columns: { highMm, count } }: PourColumns, { runs, saddleMm }: Pocket): Uint8Array {
  const side = new Uint8Array(count);
  for (let run = 0; run < count; run++)
    side[run] = highMm[run]! > saddleMm + SAME_HEIGHT_MM ? OUTER : NEITHER;
  for (const run of runs) side[run] = INNER;
  return side;
}

function saddleOf(pour: PourColumns, pocket: Pocket): Saddle {
  const { body, columns } = pour;
  const { innerRun, outerRun, saddleMm } = pocket;
  if (outerRun < 0)
    return { levelMm: saddleMm, atMm: pointOf(body.axes, columns.grid, columns.column[innerRun]!, saddleMm) };
  const side = sidesOf(pour, pocket);
  const close = closerSaddle(body, columns, (run) => side[run]!, { innerRun, outerRun, levelMm: saddleMm });
  // Between columns a crease is no more than a slope of 45 degrees away; what is higher leaked through a wall thinner than the finest of them.
  const isLeak = close.levelMm > saddleMm + columns.grid.stepMm;
  return isLeak
    ? { levelMm: saddleMm, atMm: pointOf(body.axes, columns.grid, columns.column[innerRun]!, saddleMm) }
    : close;
}

function trapOf(pour: PourColumns, { pocket, saddle }: ClosePocket): AirTrap {
  const { body, columns } = pour;
  const { grid, column, highMm } = columns;
  const side = sidesOf(pour, pocket);
  const { volumeMm3, levelMm2, latticeErrorMm3 } = pocketVolume(body, columns, (run) => side[run]!, {
    runs: pocket.runs,
    saddleMm: saddle.levelMm,
  });
  const topRun = pocket.runs.reduce((best, run) => (highMm[run]! > highMm[best]! ? run : best));
  const levelDoubtMm = SADDLE_DOUBT * grid.stepMm;
  return {
    topMm: pointOf(body.axes, grid, column[topRun]!, highMm[topRun]!),
    saddleMm: saddle.atMm,
    volumeMm3,
    doubtMm3: latticeErrorMm3 + levelMm2 * levelDoubtMm,
    riseMm: highMm[topRun]! - saddle.levelMm,
  };
}
