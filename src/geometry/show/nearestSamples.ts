/**
 * For each point (three numbers each) the number of the sample nearest to it, -1 where none is within `reachMm`. Samples lie in cells as wide as the reach, so 27 of them
 * are looked through. Order of the samples decides between equals.
 */
export function nearestSamples(
  points: Float32Array | Float64Array,
  samples: Float32Array,
  reachMm: number,
): Int32Array {
  const cells = cellsOf(samples, reachMm);
  const found = new Int32Array(points.length / 3).fill(-1);
  for (let v = 0; v < found.length; v++)
    found[v] = nearestTo(cells, points[3 * v]!, points[3 * v + 1]!, points[3 * v + 2]!);
  return found;
}

interface Cells {
  samples: Float32Array;
  reachMm: number;
  /** First sample of each slot, and for each sample the next one of its slot; -1: none. Cells share slots by chance, which costs looks only. */
  heads: Int32Array;
  next: Int32Array;
}

function cellsOf(samples: Float32Array, reachMm: number): Cells {
  const count = samples.length / 3;
  const heads = new Int32Array(1 << Math.ceil(Math.log2(Math.max(16, 2 * count)))).fill(-1);
  const next = new Int32Array(count);
  // From the last one, so that each list begins with its first.
  for (let s = count - 1; s >= 0; s--) {
    const [i, j, k] = [0, 1, 2].map((a) => Math.floor(samples[3 * s + a]! / reachMm));
    const slot = slotOf(i!, j!, k!, heads.length);
    next[s] = heads[slot]!;
    heads[slot] = s;
  }
  return { samples, reachMm, heads, next };
}

function nearestTo({ samples, reachMm, heads, next }: Cells, x: number, y: number, z: number): number {
  const i = Math.floor(x / reachMm);
  const j = Math.floor(y / reachMm);
  const k = Math.floor(z / reachMm);
  let least = reachMm * reachMm;
  let found = -1;
  for (let c = k - 1; c <= k + 1; c++)
    for (let b = j - 1; b <= j + 1; b++)
      for (let a = i - 1; a <= i + 1; a++)
        for (let s = heads[slotOf(a, b, c, heads.length)]!; s >= 0; s = next[s]!) {
          const dx = samples[3 * s]! - x;
          const dy = samples[3 * s + 1]! - y;
          const dz = samples[3 * s + 2]! - z;
          const far = dx * dx + dy * dy + dz * dz;
          if (far > least || (far === least && s >= found && found >= 0)) continue;
          least = far;
          found = s;
        }
  return found;
}

/** Primes that spread cells evenly: Teschner et al. 2003, "Optimized spatial hashing for collision detection", Proc. VMV, 47-54. */
const slotOf = (i: number, j: number, k: number, slots: number): number =>
  ((Math.imul(i, 73856093) ^ Math.imul(j, 19349663) ^ Math.imul(k, 83492791)) >>> 0) & (slots - 1);
