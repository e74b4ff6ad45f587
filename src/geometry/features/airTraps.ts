import type { Vector } from '../vector';
import { pointOf } from './columns';
import { pocketVolume } from './pocketVolume';
import type { PourColumns } from './pourColumns';
import { closerSaddle, INNER, NEITHER, OUTER } from './saddle';
import { sweepDown, type OpenRuns, type Pocket, type Pockets } from './sweepDown';

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

/** Uncertainty of a refined saddle's height, in steps of the columns: twice what two balls in all poses left open. Chosen here. */
const SADDLE_DOUBT = 0.02;

/** Every pocket of a body in columns that is not open, its saddle and its volume refined. */
export function findAirTraps(pour: PourColumns, open: OpenRuns, wish: TrapWish): AirTraps {
  const { body, columns } = pour;
  const found = pocketsOf(pour, open);
  const all = found.pockets.map((pocket) => {
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
    apart: found.apart.map(({ topRun, volumeMm3 }) => ({
      topMm: pointOf(body.axes, columns.grid, columns.column[topRun]!, columns.highMm[topRun]!),
      volumeMm3,
    })),
  };
}

/** The pockets as the columns have them. */
export const pocketsOf = ({ links, order, heights }: PourColumns, open: OpenRuns): Pockets =>
  sweepDown(heights, links, open, { leastMm3: ROUGHNESS_MM3, order });

function trapOf({ body, columns }: PourColumns, pocket: Pocket): AirTrap {
  const { grid, column, highMm, count } = columns;
  const side = new Uint8Array(count);
  for (let run = 0; run < count; run++) side[run] = highMm[run]! > pocket.saddleMm ? OUTER : NEITHER;
  for (const run of pocket.runs) side[run] = INNER;
  const sideOf = (run: number): number => side[run]!;
  const { innerRun, outerRun, saddleMm, topRun } = pocket;
  const saddle =
    outerRun < 0
      ? { levelMm: saddleMm, atMm: pointOf(body.axes, grid, column[innerRun]!, saddleMm) }
      : closerSaddle(body, columns, sideOf, { innerRun, outerRun, levelMm: saddleMm });
  const { volumeMm3, levelMm2, latticeErrorMm3 } = pocketVolume(body, columns, sideOf, {
    runs: pocket.runs,
    saddleMm: saddle.levelMm,
  });
  const levelDoubtMm = outerRun < 0 ? 0 : SADDLE_DOUBT * grid.stepMm;
  return {
    topMm: pointOf(body.axes, grid, column[topRun]!, highMm[topRun]!),
    saddleMm: saddle.atMm,
    volumeMm3,
    doubtMm3: latticeErrorMm3 + levelMm2 * levelDoubtMm,
    riseMm: highMm[topRun]! - saddle.levelMm,
  };
}
