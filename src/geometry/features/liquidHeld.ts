import { pocketsOf } from './airTraps';
import { lipHeights, type Mouth } from './mouth';
import { openRuns, runsInMouth, type VentHole } from './openRuns';
import type { Pocket } from './pocket';
import type { PourColumns } from './pourColumns';
import { eachAlone, partOf } from '../parts';

/**
 * What a body holds before it runs over the lowest point of its opening, mm3: the basin below that height which the opening leads into, not others behind
 * a ridge, less the air that the liquid shuts in below that height. 0 where the opening leads into nothing that lies lower.
 */
export function liquidHeldMm3(pour: PourColumns, mouth: Mouth, vents: readonly VentHole[] = []): number {
  const { body, columns, heights } = pour;
  const { lowMm: brimMm } = lipHeights(mouth, body.axes.up);
  const { lowMm, highMm } = columns;
  const isInBasin = basin(pour, mouth, brimMm);
  let length = 0;
  for (let run = 0; run < columns.count; run++)
    if (isInBasin(run)) length += Math.min(highMm[run]!, brimMm) - lowMm[run]!;
  const { pockets } = pocketsOf(pour, openRuns(columns, body.axes, { mouth, vents }));
  const airIn = ({ runs, saddleMm }: Pocket): number =>
    runs.reduce(
      (sum, run) =>
        isInBasin(run)
          ? sum + Math.max(0, Math.min(highMm[run]!, brimMm) - Math.max(lowMm[run]!, saddleMm))
          : sum,
      0,
    );
  const air = pockets
    .filter(({ saddleMm }) => saddleMm < brimMm)
    .reduce((sum, pocket) => sum + airIn(pocket), 0);
  return (length - air) * heights.crossMm2;
}

/** Halvings of the height: to a millionth of it. */
const HALVINGS = 20;

/** How high so much liquid stands in the basin under the opening, from the origin of the mesh, mm: at most up to the lowest point of the opening. */
export function liquidLevelMm(pour: PourColumns, mouth: Mouth, liquidMm3: number): number {
  const { body, columns, heights } = pour;
  const { lowMm: brimMm } = lipHeights(mouth, body.axes.up);
  const { lowMm, highMm } = columns;
  const isInBasin = basin(pour, mouth, brimMm);
  const runs = Array.from({ length: columns.count }, (_, run) => run).filter(isInBasin);
  const under = (level: number): number =>
    heights.crossMm2 *
    runs.reduce((sum, run) => sum + Math.max(0, Math.min(highMm[run]!, level) - lowMm[run]!), 0);
  let [low, high] = [body.height.low, brimMm];
  if (under(high) <= liquidMm3) return high;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (under(middle) < liquidMm3) low = middle;
    else high = middle;
  }
  return high;
}

/** Which runs the liquid can reach below the brim. */
function basin(
  { body, columns, links, ways }: PourColumns,
  mouth: Mouth,
  brimMm: number,
): (run: number) => boolean {
  const { lowMm, count } = columns;
  const parent = eachAlone(count);
  for (let i = 0; i < links.count; i++) {
    const [a, b] = [links.a[i]!, links.b[i]!];
    if (Math.max(lowMm[a]!, lowMm[b]!) >= brimMm || partOf(parent, a) === partOf(parent, b)) continue;
    if (ways.isOpenBelow(i, brimMm)) parent[partOf(parent, b)] = partOf(parent, a);
  }
  const basins = new Set(
    runsInMouth(columns, body.axes, mouth)
      .filter((run) => lowMm[run]! < brimMm)
      .map((run) => partOf(parent, run)),
  );
  return (run) => lowMm[run]! < brimMm && basins.has(partOf(parent, run));
}
