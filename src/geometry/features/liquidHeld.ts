import { lipHeights, type Mouth } from './mouth';
import { runsInMouth } from './openRuns';
import type { PourColumns } from './pourColumns';

/**
 * What a body holds before it runs over the lowest point of its opening, mm3: the basin below that height which the opening leads into, not others behind
 * a ridge. 0 where the opening leads into nothing that lies lower.
 */
export function liquidHeldMm3({ body, columns, links, heights }: PourColumns, mouth: Mouth): number {
  const { lowMm: brimMm } = lipHeights(mouth, body.axes.up);
  const { lowMm, highMm, count } = columns;
  const parent = Int32Array.from({ length: count }, (_, run) => run);
  const partOf = (run: number): number => {
    while (parent[run] !== run) run = parent[run] = parent[parent[run]!]!;
    return run;
  };
  for (let i = 0; i < links.count; i++) {
    const [a, b] = [links.a[i]!, links.b[i]!];
    if (Math.max(lowMm[a]!, lowMm[b]!) < brimMm) parent[partOf(b)] = partOf(a);
  }
  const basins = new Set(
    runsInMouth(columns, body.axes, mouth)
      .filter((run) => lowMm[run]! < brimMm)
      .map(partOf),
  );
  let length = 0;
  for (let run = 0; run < count; run++)
    if (lowMm[run]! < brimMm && basins.has(partOf(run)))
      length += Math.min(highMm[run]!, brimMm) - lowMm[run]!;
  return length * heights.crossMm2;
}
