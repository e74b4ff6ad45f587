import { SAME_HEIGHT_MM, type Pocket, type RunHeights } from './pocket';
import type { RunLinks } from './runLinks';
import type { Ways } from './wallBetween';
import { eachAlone, partOf } from '../parts';

/**
 * Two chimneys on one level lid open at the very same height: the sweep joins them over the lid before either is open. What hangs together strictly above
 * that height is a pocket of its own.
 */
export function splitAtSaddle(
  pocket: Pocket,
  heights: RunHeights,
  { links, ways, leastMm3 }: { links: RunLinks; ways: Ways | undefined; leastMm3: number },
): Pocket[] {
  const { runs, saddleMm } = pocket;
  const placeOf = new Map(Array.from(runs, (run, i) => [run, i] as const));
  const parent = eachAlone(runs.length);
  /** Links at the height itself, from one of the runs to the lid. */
  const exits = new Map<number, { innerRun: number; outerRun: number }>();
  for (let link = 0; link < links.count; link++) {
    const levelMm = links.levelMm[link]!;
    if (levelMm < saddleMm - SAME_HEIGHT_MM) continue;
    const [a, b] = [placeOf.get(links.a[link]!), placeOf.get(links.b[link]!)];
    if (levelMm > saddleMm + SAME_HEIGHT_MM) {
      if (
        a !== undefined &&
        b !== undefined &&
        partOf(parent, a) !== partOf(parent, b) &&
        (ways?.topMm(link) ?? levelMm) > saddleMm + SAME_HEIGHT_MM
      )
        parent[partOf(parent, b)] = partOf(parent, a);
    } else if (a !== undefined && b === undefined)
      exits.set(a, { innerRun: links.a[link]!, outerRun: links.b[link]! });
    else if (b !== undefined && a === undefined)
      exits.set(b, { innerRun: links.b[link]!, outerRun: links.a[link]! });
  }
  const parts = new Map<number, number[]>();
  for (let i = 0; i < runs.length; i++) {
    const part = parts.get(partOf(parent, i));
    if (part === undefined) parts.set(partOf(parent, i), [i]);
    else part.push(i);
  }
  if (parts.size < 2) return [pocket];
  const split = Array.from(parts.values(), (part) => {
    const own = Int32Array.from(part, (i) => runs[i]!);
    const way = part.map((i) => exits.get(i)).find((one) => one !== undefined);
    return { ...pocket, ...measured(own, saddleMm, heights), runs: own, ...(way ?? { outerRun: -1 }) };
  });
  return split.filter(({ volumeMm3 }) => volumeMm3 >= leastMm3);
}

function measured(
  runs: Int32Array,
  saddleMm: number,
  { topMm, bottomMm, crossMm2 }: RunHeights,
): Pick<Pocket, 'topRun' | 'volumeMm3' | 'levelMm2'> {
  let length = 0;
  let level = 0;
  let topRun = runs[0]!;
  for (const run of runs) {
    if (topMm[run]! > topMm[topRun]!) topRun = run;
    length += topMm[run]! - Math.max(bottomMm[run]!, saddleMm);
    if (bottomMm[run]! < saddleMm) level++;
  }
  return { topRun, volumeMm3: length * crossMm2, levelMm2: level * crossMm2 };
}
