import type { SurfaceSamples } from './thicknessSamples';

/** Samples close to each other on the same part of the surface. Those of sample s are `list[start[s]]` up to `list[start[s + 1]]`. */
export interface Neighbors {
  start: Int32Array;
  list: Int32Array;
}

/** Neighbors are nearer than this many spacings: twenty on average. Chosen here. */
const REACH = 2.5;

/** Samples that look apart by more than this cosine lie on opposite sides of a wall or a gap. Chosen here: a little beyond a square edge. */
const SAME_SIDE = -0.2;

export function neighborsOf(samples: SurfaceSamples, onStep: () => void): Neighbors {
  const { count, at, inward, spacingMm } = samples;
  const reach = REACH * spacingMm;
  const cells = sampleCells(samples, reach);
  const start = new Int32Array(count + 1);
  const list: number[] = [];
  for (let s = 0; s < count; s++) {
    if (s % 256 === 0) onStep();
    forEachNear(cells, at[3 * s]!, at[3 * s + 1]!, at[3 * s + 2]!, (other) => {
      if (other === s || distance2(at, s, other) > reach * reach) return;
      let cosine = 0;
      for (let a = 0; a < 3; a++) cosine += inward[3 * s + a]! * inward[3 * other + a]!;
      if (cosine > SAME_SIDE) list.push(other);
    });
    start[s + 1] = list.length;
  }
  return { start, list: Int32Array.from(list) };
}

/** The sample nearest to a point, within a cell; -1: none. */
export function nearestSample(
  cells: SampleCells,
  { at }: SurfaceSamples,
  x: number,
  y: number,
  z: number,
): number {
  let best = -1;
  let least = cells.edgeMm * cells.edgeMm;
  forEachNear(cells, x, y, z, (s) => {
    const squared = (at[3 * s]! - x) ** 2 + (at[3 * s + 1]! - y) ** 2 + (at[3 * s + 2]! - z) ** 2;
    if (squared < least) {
      least = squared;
      best = s;
    }
  });
  return best;
}

const distance2 = (at: Float32Array, s: number, t: number): number =>
  (at[3 * s]! - at[3 * t]!) ** 2 +
  (at[3 * s + 1]! - at[3 * t + 1]!) ** 2 +
  (at[3 * s + 2]! - at[3 * t + 2]!) ** 2;

/** Samples by the cube they lie in. */
export interface SampleCells {
  edgeMm: number;
  low: [number, number, number];
  wide: [number, number, number];
  start: Int32Array;
  members: Int32Array;
}

export function sampleCells({ count, at }: SurfaceSamples, edgeMm: number): SampleCells {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let c = 0; c < 3 * count; c++) {
    low[c % 3] = Math.min(low[c % 3]!, at[c]!);
    high[c % 3] = Math.max(high[c % 3]!, at[c]!);
  }
  const wide = high.map((top, a) => Math.max(1, Math.floor((top - low[a]!) / edgeMm) + 1)) as [
    number,
    number,
    number,
  ];
  const start = new Int32Array(wide[0] * wide[1] * wide[2] + 1);
  const cellOf = (s: number): number => {
    const [i, j, k] = [0, 1, 2].map((a) => Math.floor((at[3 * s + a]! - low[a]!) / edgeMm));
    return (k! * wide[1] + j!) * wide[0] + i!;
  };
  const cells = Int32Array.from({ length: count }, (_, s) => cellOf(s));
  for (const cell of cells) start[cell + 1]!++;
  for (let c = 1; c < start.length; c++) start[c]! += start[c - 1]!;
  const fill = start.slice();
  const members = new Int32Array(count);
  for (let s = 0; s < count; s++) members[fill[cells[s]!]!++] = s;
  return { edgeMm, low, wide, start, members };
}

/** Calls `act` with the samples of the 27 cubes around a point, in a set order. */
function forEachNear(
  { edgeMm, low, wide, start, members }: SampleCells,
  x: number,
  y: number,
  z: number,
  act: (s: number) => void,
): void {
  const i = Math.floor((x - low[0]) / edgeMm);
  const j = Math.floor((y - low[1]) / edgeMm);
  const k = Math.floor((z - low[2]) / edgeMm);
  for (let c = Math.max(0, k - 1); c <= Math.min(wide[2] - 1, k + 1); c++)
    for (let b = Math.max(0, j - 1); b <= Math.min(wide[1] - 1, j + 1); b++) {
      const row = (c * wide[1] + b) * wide[0];
      const [from, to] = [Math.max(0, i - 1), Math.min(wide[0] - 1, i + 1)];
      if (from > to) continue;
      for (let m = start[row + from]!; m < start[row + to + 1]!; m++) act(members[m]!);
    }
}
