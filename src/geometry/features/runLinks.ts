import type { Columns } from './columns';

/** Which runs touch: run `a`, run `b`, and the height up to which both reach side by side, mm. */
export interface RunLinks {
  a: Int32Array;
  b: Int32Array;
  levelMm: Float64Array;
  count: number;
}

/** Half of the eight neighbors of a column; the others see it. */
const AHEAD = [
  [1, 0],
  [-1, 1],
  [0, 1],
  [1, 1],
] as const;

/** Links between runs of neighboring columns (eight of them) that overlap in height. */
export function linkRuns({ grid, start, lowMm, highMm, count }: Columns): RunLinks {
  const links: RunLinks = roomFor(8 * count + 16);
  for (let row = 0; row < grid.rows; row++)
    for (let place = 0; place < grid.columns; place++) {
      const c = row * grid.columns + place;
      const [from, to] = [start[c]!, start[c + 1]!];
      if (from === to) continue;
      for (const [aside, ahead] of AHEAD) {
        const i = place + aside;
        const j = row + ahead;
        if (i < 0 || i >= grid.columns || j >= grid.rows) continue;
        const other = j * grid.columns + i;
        let b = start[other]!;
        const end = start[other + 1]!;
        for (let a = from; a < to; a++) {
          while (b < end && highMm[b]! <= lowMm[a]!) b++;
          for (let q = b; q < end && lowMm[q]! < highMm[a]!; q++) {
            if (links.count === links.a.length) widen(links);
            links.a[links.count] = a;
            links.b[links.count] = q;
            links.levelMm[links.count++] = Math.min(highMm[a]!, highMm[q]!);
          }
        }
      }
    }
  return links;
}

export const roomFor = (room: number): RunLinks => ({
  a: new Int32Array(room),
  b: new Int32Array(room),
  levelMm: new Float64Array(room),
  count: 0,
});

function widen(links: RunLinks): void {
  const wider = roomFor(2 * links.a.length);
  wider.a.set(links.a);
  wider.b.set(links.b);
  wider.levelMm.set(links.levelMm);
  links.a = wider.a;
  links.b = wider.b;
  links.levelMm = wider.levelMm;
}

/**
 * Numbers of the links, highest level first; equal ones in the order they were made. Linear but for crowded heights. `roughly` leaves those of one
 * bucket as they come: a few hundredths of a millimeter on a head.
 */
export function highestFirst(
  { levelMm, count }: Pick<RunLinks, 'levelMm' | 'count'>,
  roughly = false,
): Int32Array {
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < count; i++) {
    if (levelMm[i]! < low) low = levelMm[i]!;
    if (levelMm[i]! > high) high = levelMm[i]!;
  }
  const buckets = roughly ? ROUGH_BUCKETS : Math.min(1 << 16, Math.max(16, 2 * count));
  const perMm = high > low ? (buckets - 1) / (high - low) : 0;
  const start = new Int32Array(buckets + 1);
  const bucket = new Int32Array(count);
  for (let i = 0; i < count; i++) start[(bucket[i] = Math.floor((high - levelMm[i]!) * perMm)) + 1]!++;
  for (let b = 0; b < buckets; b++) start[b + 1]! += start[b]!;
  const fill = start.slice();
  const order = new Int32Array(count);
  for (let i = 0; i < count; i++) order[fill[bucket[i]!]!++] = i;
  if (!roughly) for (let b = 0; b < buckets; b++) sortWithin(order, start[b]!, start[b + 1]!, levelMm);
  return order;
}

/** Chosen here: they stay in the nearest memory. */
const ROUGH_BUCKETS = 4096;

/** A bucket of more than this is sorted by the library. */
const FEW = 24;

function sortWithin(order: Int32Array, from: number, to: number, levelMm: Float64Array): void {
  if (to - from > FEW) {
    order.subarray(from, to).sort((a, b) => levelMm[b]! - levelMm[a]! || a - b);
    return;
  }
  for (let i = from + 1; i < to; i++) {
    const one = order[i]!;
    const level = levelMm[one]!;
    let j = i - 1;
    for (; j >= from && levelMm[order[j]!]! < level; j--) order[j + 1] = order[j]!;
    order[j + 1] = one;
  }
}
