import type { Balls } from './thicknessRoom';
import type { Neighbors } from './thicknessNeighbors';
import type { SurfaceSamples } from './thicknessSamples';

/** Ways over the samples of a region, between the middles of the balls that cover them: along the middle of a fin or a finger, not over its skin. */
interface Region {
  samples: SurfaceSamples;
  balls: Balls;
  coveredBy: Int32Array;
  thicknessMm: Float32Array;
  neighbors: Neighbors;
}

/**
 * How far a thin region reaches, mm: from where it joins thicker material to the farthest middle of a ball, along the region, and half the thickness
 * more, as the ball itself reaches that far beyond its middle. For a fin that is its height, for a finger its length with the tip. Where it joins
 * nothing thicker (a plate by itself) it is its longest way from end to end, and half the thickness at both ends.
 */
export function measureReach(
  covered: Region,
  region: readonly number[],
  { thicknessMm, thinMm }: { thicknessMm: number; thinMm: number },
  onStep: () => void,
): number {
  const places = new Map(region.map((s, n) => [s, n] as const));
  const joins = joinsOf(covered, region, places, { mostMm: thicknessMm, thinMm }, onStep);
  if (joins.some((mm) => mm < Infinity))
    return farthest(covered, region, places, joins, onStep).mm + thicknessMm / 2;
  const from = (n: number): number[] => region.map((_, m) => (m === n ? 0 : Infinity));
  const end = farthest(covered, region, places, from(0), onStep).place;
  return farthest(covered, region, places, from(end), onStep).mm + thicknessMm;
}

/**
 * Of every sample of a region, how far beyond it the thicker material begins; Infinity where it joins none. Without a thickness, a sample is known to be
 * thicker by its own ball (the top of a block beside its fin). Other ones in between are passed, up to `mostMm` away: a rounded root, and samples as thin
 * as the region that no neighbor joins to it, as on a flat tip.
 */
function joinsOf(
  { samples, balls, neighbors, thicknessMm }: Region,
  region: readonly number[],
  places: ReadonlyMap<number, number>,
  { mostMm, thinMm }: { mostMm: number; thinMm: number },
  onStep: () => void,
): number[] {
  const { start, list } = neighbors;
  return region.map((s) => {
    onStep();
    let least = Infinity;
    const seen = new Set([s]);
    const ahead = [s];
    for (const here of ahead)
      for (let m = start[here]!; m < start[here + 1]!; m++) {
        const other = list[m]!;
        if (seen.has(other) || places.has(other)) continue;
        seen.add(other);
        const mm = apart(samples.at, s, other);
        if (thicknessMm[other]! > thinMm || balls.ownMm[other]! > thinMm) least = Math.min(least, mm / 2);
        else if (mm < mostMm) ahead.push(other);
      }
    return least;
  });
}

const apart = (at: Float32Array, s: number, t: number): number =>
  Math.hypot(at[3 * s]! - at[3 * t]!, at[3 * s + 1]! - at[3 * t + 1]!, at[3 * s + 2]! - at[3 * t + 2]!);

/** The place farthest from the given starts and how far it is, by the shortest ways (Dijkstra). Places that cannot be reached do not count. */
function farthest(
  { balls, coveredBy, neighbors }: Region,
  region: readonly number[],
  places: ReadonlyMap<number, number>,
  starts: readonly number[],
  onStep: () => void,
): { place: number; mm: number } {
  const mm = Float64Array.from(starts);
  const queue = newQueue();
  mm.forEach((start, place) => start < Infinity && queue.put(start, place));
  let last = { place: 0, mm: 0 };
  for (let next = queue.take(); next !== undefined; next = queue.take()) {
    if (next.key > mm[next.place]!) continue;
    onStep();
    last = { place: next.place, mm: next.key };
    const s = region[next.place]!;
    for (let m = neighbors.start[s]!; m < neighbors.start[s + 1]!; m++) {
      const place = places.get(neighbors.list[m]!);
      if (place === undefined) continue;
      const way = next.key + apart(balls.at, coveredBy[s]!, coveredBy[neighbors.list[m]!]!);
      if (way >= mm[place]!) continue;
      mm[place] = way;
      queue.put(way, place);
    }
  }
  return last;
}

interface Queue {
  put(key: number, place: number): void;
  take(): { key: number; place: number } | undefined;
}

/** Least key first: a binary heap. */
function newQueue(): Queue {
  const heap: { key: number; place: number }[] = [];
  const swap = (a: number, b: number): void => {
    [heap[a], heap[b]] = [heap[b]!, heap[a]!];
  };
  return {
    put(key, place) {
      heap.push({ key, place });
      for (let n = heap.length - 1; n > 0;) {
        const up = (n - 1) >> 1;
        if (heap[up]!.key <= heap[n]!.key) break;
        swap(up, n);
        n = up;
      }
    },
    take() {
      const first = heap[0];
      const last = heap.pop();
      if (first === undefined || last === undefined || heap.length === 0) return first;
      heap[0] = last;
      for (let n = 0; ;) {
        let least = n;
        for (const down of [2 * n + 1, 2 * n + 2])
          if (down < heap.length && heap[down]!.key < heap[least]!.key) least = down;
        if (least === n) break;
        swap(least, n);
        n = least;
      }
      return first;
    },
  };
}
