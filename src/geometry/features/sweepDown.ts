import { highestFirst, type RunLinks } from './runLinks';
import type { Ways } from './wallBetween';
import { lowerLinks } from './lowerLinks';
import { eachAlone, partOf } from '../parts';
import { splitAtSaddle } from './splitAtSaddle';
import { SAME_HEIGHT_MM, type OpenRuns, type Pocket, type Pockets, type RunHeights } from './pocket';

/*
 * The merge tree of a body filled from below, swept from the top down (Carr, Snoeyink, Axen 2003, Comput. Geom. 24:75, do the same for any dimension).
 * A level that sinks uncovers summits; summits grow together at saddles. What is linked to the outside lets air out. When a part that is not meets one that
 * is, all air above that saddle was shut in: a pocket. Parts that meet before either is open are one pocket, so a ring has one, not one a facet.
 */

/**
 * @param leastMm3 smaller pockets are only summed up
 * @param ways asked of links that would join two parts: up to which height they hold
 * @param order of the links; where it is given as a rough one, pockets that open at the very same height may be told as one
 */
export function sweepDown(
  heights: RunHeights,
  links: RunLinks,
  open: OpenRuns,
  {
    leastMm3,
    order = highestFirst(links),
    isRough = false,
    ways,
  }: { leastMm3: number; order?: Int32Array; isRough?: boolean; ways?: Ways },
): Pockets {
  const parts = newParts(heights);
  const { parent, isOpen } = parts;
  const opening = highestFirst({ levelMm: Float64Array.from(open.levelMm), count: open.run.length });
  const found: Pockets = { pockets: [], smaller: { count: 0, volumeMm3: 0 }, apart: [] };
  const close = (part: number, at: Pick<Pocket, 'saddleMm' | 'innerRun' | 'outerRun'>): void => {
    const size = measured(parts, part, at.saddleMm);
    if (size.volumeMm3 >= leastMm3) {
      const pocket = { ...at, ...size, runs: runsAbove(parts, part, at.saddleMm) };
      found.pockets.push(...(isRough ? [pocket] : splitAtSaddle(pocket, heights, { links, ways, leastMm3 })));
    } else if (size.volumeMm3 > 0) {
      found.smaller.count++;
      found.smaller.volumeMm3 += size.volumeMm3;
    }
  };
  let next = 0;
  const openDownTo = (levelMm: number): void => {
    for (; next < opening.length && open.levelMm[opening[next]!]! >= levelMm; next++) {
      const run = open.run[opening[next]!]!;
      const part = partOf(parent, run);
      if (isOpen[part] === 1) continue;
      close(part, { saddleMm: open.levelMm[opening[next]!]!, innerRun: run, outerRun: -1 });
      isOpen[part] = 1;
    }
  };
  const join = (link: number, saddleMm: number): void => {
    openDownTo(saddleMm);
    const [runA, runB] = [links.a[link]!, links.b[link]!];
    const [a, b] = [partOf(parent, runA), partOf(parent, runB)];
    if (a === b) return;
    if (isOpen[a] !== isOpen[b]) {
      if (isOpen[a] === 1) close(b, { saddleMm, innerRun: runB, outerRun: runA });
      else close(a, { saddleMm, innerRun: runA, outerRun: runB });
    }
    unite(parts, a, b);
  };
  const lower = lowerLinks();
  for (let i = 0; i < links.count; i++) {
    const link = order[i]!;
    const levelMm = links.levelMm[link]!;
    for (let next = lower.takeAbove(levelMm); next !== undefined; next = lower.takeAbove(levelMm))
      join(next.link, next.levelMm);
    if (partOf(parent, links.a[link]!) === partOf(parent, links.b[link]!)) continue;
    const topMm = ways === undefined ? levelMm : ways.topMm(link);
    if (topMm >= levelMm) join(link, levelMm);
    else if (topMm > -Infinity) lower.add({ link, levelMm: topMm });
  }
  for (let next = lower.takeAbove(-Infinity); next !== undefined; next = lower.takeAbove(-Infinity))
    join(next.link, next.levelMm);
  openDownTo(-Infinity);
  for (let run = 0; run < heights.count; run++)
    if (parent[run] === run && isOpen[run] === 0) {
      const { topRun, volumeMm3 } = measured(parts, run, -Infinity);
      found.apart.push({ topRun, volumeMm3 });
    }
  found.pockets.sort((p, q) => q.volumeMm3 - p.volumeMm3 || p.topRun - q.topRun);
  return found;
}

/** Parts that grow together: a forest with the runs of every part in a ring. */
interface Parts {
  heights: RunHeights;
  parent: Int32Array;
  isOpen: Uint8Array;
  nextRun: Int32Array;
  size: Int32Array;
}

const newParts = (heights: RunHeights): Parts => {
  const each = eachAlone(heights.count);
  return {
    heights,
    parent: each,
    nextRun: each.slice(),
    size: new Int32Array(heights.count).fill(1),
    isOpen: new Uint8Array(heights.count),
  };
};

function unite({ parent, size, isOpen, nextRun }: Parts, a: number, b: number): void {
  const [large, small] = size[a]! >= size[b]! ? [a, b] : [b, a];
  parent[small] = large;
  size[large]! += size[small]!;
  if (isOpen[small] === 1) isOpen[large] = 1;
  const next = nextRun[large]!;
  nextRun[large] = nextRun[small]!;
  nextRun[small] = next;
}

/** What of a part lies above a level. */
function measured(
  { heights, nextRun }: Parts,
  part: number,
  saddleMm: number,
): Pick<Pocket, 'topRun' | 'volumeMm3' | 'levelMm2'> {
  const { topMm, bottomMm, crossMm2 } = heights;
  let length = 0;
  let level = 0;
  let topRun = part;
  let run = part;
  do {
    const top = topMm[run]!;
    if (top > topMm[topRun]! || (top === topMm[topRun] && run < topRun)) topRun = run;
    if (top > saddleMm) {
      length += top - Math.max(bottomMm[run]!, saddleMm);
      if (bottomMm[run]! < saddleMm) level++;
    }
    run = nextRun[run]!;
  } while (run !== part);
  return { topRun, volumeMm3: length * crossMm2, levelMm2: level * crossMm2 };
}

function runsAbove({ heights, nextRun }: Parts, part: number, saddleMm: number): Int32Array {
  const runs: number[] = [];
  let run = part;
  do {
    if (heights.topMm[run]! > saddleMm + SAME_HEIGHT_MM) runs.push(run);
    run = nextRun[run]!;
  } while (run !== part);
  return Int32Array.from(runs).sort();
}
