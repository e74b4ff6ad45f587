import type { Vector } from '../vector';
import { pocketsOf } from './airTraps';
import { pointOf, type Columns } from './columns';
import type { Mouth } from './mouth';
import { openRuns, type VentHole } from './openRuns';
import type { PourColumns } from './pourColumns';
import type { Pocket } from './pocket';

/** A vent that is advised: where, and how much air it lets out. */
export interface AdvisedVent {
  atMm: Vector;
  curesMm3: number;
}

export interface VentAdvice {
  vents: AdvisedVent[];
  /** Air that stays with all of them, pinholes included. */
  leftMm3: number;
}

/** More vents than this are another attitude or another opening. Chosen here. */
const MOST_VENTS = 24;

/** Places this much below the highest one count as the summit: the vent goes to their middle. Chosen here: no deeper than roughness. */
const SUMMIT_MM = 0.02;

/** A vent at the summit of the largest pocket, and again, until no pocket of the stated volume is left. */
export function adviseVents(
  pour: PourColumns,
  wish: { mouth: Mouth; vents: readonly VentHole[]; leastMm3: number; onStep?: () => void },
): VentAdvice {
  const { body, columns } = pour;
  const vents: AdvisedVent[] = [];
  let trappedMm3 = Infinity;
  for (;;) {
    wish.onStep?.();
    const holes = { mouth: wish.mouth, vents: [...wish.vents, ...vents] };
    const { pockets } = pocketsOf(pour, openRuns(columns, body.axes, holes));
    const nowMm3 = pockets.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0);
    const last = vents.at(-1);
    if (last !== undefined) last.curesMm3 = trappedMm3 - nowMm3;
    trappedMm3 = nowMm3;
    const largest = pockets[0];
    if (largest === undefined || largest.volumeMm3 < wish.leastMm3 || vents.length === MOST_VENTS) break;
    const run = summitOf(columns, largest);
    const atMm = pointOf(body.axes, columns.grid, columns.column[run]!, columns.highMm[run]!);
    vents.push({ atMm, curesMm3: 0 });
  }
  return { vents, leftMm3: trappedMm3 };
}

/** Of the runs that reach as high as any, to a hair, the one nearest to their middle. */
function summitOf({ grid, column, highMm }: Columns, { runs, topRun }: Pocket): number {
  const summit = [...runs].filter((run) => highMm[run]! > highMm[topRun]! - SUMMIT_MM);
  const placeOf = (run: number): [number, number] => [
    column[run]! % grid.columns,
    Math.floor(column[run]! / grid.columns),
  ];
  const [sumI, sumJ] = summit.reduce(([i, j], run) => [i + placeOf(run)[0], j + placeOf(run)[1]], [0, 0]);
  const away = (run: number): number => {
    const [i, j] = placeOf(run);
    return Math.hypot(i - sumI / summit.length, j - sumJ / summit.length);
  };
  return summit.reduce((best, run) => (away(run) < away(best) - 1e-9 ? run : best), topRun);
}
