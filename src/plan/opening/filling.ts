import type { Estimate } from '../../estimate';
import {
  adviseVents,
  degreesBetween,
  findAirTraps,
  flatCeilings,
  dot,
  liquidHeldMm3,
  liquidLevelMm,
  openRuns,
  pourColumns,
  type AirTrap,
  type AirTraps,
  type Mouth,
  type TriangleMesh,
  type Vector,
} from '../../geometry';
import { CHECK_FIGURES } from '../../checks';
import { MM3_PER_CM3 } from '../sizeDoubts';

/** A pocket of air, places in mm on the placed piece. */
export interface Trap {
  topMm: Vector;
  saddleMm: Vector;
  volumeCm3: number;
  doubtCm3: number;
  riseMm: number;
}

/** How a mold fills in one attitude, to a level: for foam, which rises as a dome, the least air that stays. */
export interface LevelFill {
  /** Unit vector: up when poured. */
  up: Vector;
  /** Between up and the way the opening faces. */
  tiltDegrees: number;
  traps: Trap[];
  /** Smaller pockets, of which nothing but a pinhole is left. */
  pinholes: { count: number; volumeCm3: number };
  trappedCm3: Estimate;
  /** Vents that are advised beside those given, in the order of what they let out. */
  vents: { atMm: Vector; curesCm3: number }[];
  leftCm3: number;
  flat: { areaCm2: number; largest?: { areaCm2: number; atMm: Vector } };
  /** Liquid that stays in before it runs over the lowest point of the opening. */
  holdCm3: number;
  /** Vents, planned and advised, that stand under the poured liquid: it would run out of them. */
  ventsUnder: readonly Vector[];
  /** Planned vents that lead into nothing. */
  ventsMissed: number;
  /** Pieces that nothing poured here reaches. */
  apart: { count: number; volumeCm3: number };
}

export interface FillingWish {
  mouth: Mouth;
  up: Vector;
  vents: readonly Vector[];
  stepMm: number;
  /** Liquid that is poured, where it is known. */
  liquidCm3: number | undefined;
  onStep: () => void;
}

/** Pockets from this on ask for a vent, mm3: common practice, no source. */
export const LEAST_TRAP_MM3 = CHECK_FIGURES.trapSmall.value * MM3_PER_CM3;

export function fillingOf(
  chain: TriangleMesh,
  { mouth, up, vents, stepMm, liquidCm3, onStep }: FillingWish,
): LevelFill {
  const pour = pourColumns(chain, up, stepMm);
  onStep();
  const holes = vents.map((atMm) => ({ atMm }));
  const open = openRuns(pour.columns, pour.body.axes, { mouth, vents: holes });
  const wish = { leastMm3: LEAST_TRAP_MM3, onStep };
  const found = findAirTraps(pour, open, wish);
  const advice = adviseVents(pour, { ...wish, mouth, vents: holes });
  const flat = flatCeilings(pour, mouth);
  const levelMm = liquidCm3 === undefined ? -Infinity : liquidLevelMm(pour, mouth, liquidCm3 * MM3_PER_CM3);
  const isUnder = (atMm: Vector): boolean => dot(atMm, pour.body.axes.up) < levelMm;
  return {
    up: pour.body.axes.up,
    tiltDegrees: degreesBetween(pour.body.axes.up, mouth.normal),
    ...trapsIn(found),
    vents: advice.vents.map(({ atMm, curesMm3 }) => ({ atMm, curesCm3: curesMm3 / MM3_PER_CM3 })),
    leftCm3: advice.leftMm3 / MM3_PER_CM3,
    flat: {
      areaCm2: flat.areaMm2 / 100,
      ...(flat.largest === undefined
        ? {}
        : { largest: { areaCm2: flat.largest.areaMm2 / 100, atMm: flat.largest.atMm } }),
    },
    holdCm3: liquidHeldMm3(pour, mouth, holes) / MM3_PER_CM3,
    ventsUnder: [...vents, ...advice.vents.map(({ atMm }) => atMm)].filter(isUnder),
    ventsMissed: open.missed,
    apart: {
      count: found.apart.length,
      volumeCm3: found.apart.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0) / MM3_PER_CM3,
    },
  };
}

/** The pockets in cm3, with the range of their sum: what the columns leave open of each may all lie one way. */
export function trapsIn(found: AirTraps): Pick<LevelFill, 'traps' | 'pinholes' | 'trappedCm3'> {
  const value = found.trappedMm3 / MM3_PER_CM3;
  const doubt = found.traps.reduce((sum, { doubtMm3 }) => sum + doubtMm3, 0) / MM3_PER_CM3;
  return {
    traps: found.traps.map(trapInCm3),
    pinholes: { count: found.pinholes.count, volumeCm3: found.pinholes.volumeMm3 / MM3_PER_CM3 },
    trappedCm3: { value, low: Math.max(0, value - doubt), high: value + doubt, from: 'scanned' },
  };
}

const trapInCm3 = ({ volumeMm3, doubtMm3, ...places }: AirTrap): Trap => ({
  ...places,
  volumeCm3: volumeMm3 / MM3_PER_CM3,
  doubtCm3: doubtMm3 / MM3_PER_CM3,
});
