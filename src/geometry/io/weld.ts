import type { TriangleMesh } from '../triangleMesh';

/**
 * Merges corners with bit-equal coordinates into one vertex, by an open-addressing hash of the raw words.
 * Tried before (figures in docs/how-it-computes.md): a Map of strings and mergeVertices of a loader library, both more
 * than 10 times slower on a million triangles.
 *
 * @param points x, y, z of every corner; changed in place (-0 becomes +0, so that the two weld)
 * @returns the distinct points as float64, and for every corner the number of its point
 */
export function weldPoints(points: Float32Array | Float64Array): {
  positions: Float64Array;
  index: Int32Array;
} {
  for (let i = 0; i < points.length; i++) points[i]! += 0;
  const wordsPerPoint = (3 * points.BYTES_PER_ELEMENT) / 4;
  const words = new Int32Array(points.buffer, points.byteOffset, (points.length / 3) * wordsPerPoint);
  const cornerCount = points.length / 3;
  const index = new Int32Array(cornerCount);
  const firstCorner = hashCorners(words, wordsPerPoint, index);
  const positions = new Float64Array(3 * firstCorner.length);
  for (let v = 0; v < firstCorner.length; v++) {
    const c = 3 * firstCorner[v]!;
    positions[3 * v] = points[c]!;
    positions[3 * v + 1] = points[c + 1]!;
    positions[3 * v + 2] = points[c + 2]!;
  }
  return { positions, index };
}

/** A triangle soup (nine numbers a triangle) as an indexed mesh. */
export function weldSoup(soup: Float32Array | Float64Array): TriangleMesh {
  const { positions, index } = weldPoints(soup);
  return { positions, triangles: index };
}

/** Fills `index` and returns, per distinct point, the first corner that holds it. Load factor stays under 0.6. */
function hashCorners(words: Int32Array, stride: number, index: Int32Array): Int32Array {
  const n = index.length;
  let first = new Int32Array(Math.max(16, n >> 2));
  let table = newTable(Math.max(1024, n >> 1));
  let mask = table.length - 1;
  let count = 0;
  for (let i = 0; i < n; i++) {
    const at = i * stride;
    let slot = hashWords(words, at, stride) & mask;
    let v = table[slot]!;
    while (v >= 0 && !sameWords(words, first[v]! * stride, at, stride)) {
      slot = (slot + 1) & mask;
      v = table[slot]!;
    }
    if (v < 0) {
      v = count++;
      table[slot] = v;
      if (v === first.length) first = grown(first);
      first[v] = i;
      if (count > 0.6 * table.length) {
        table = rehashed(words, stride, first, count, table.length * 2);
        mask = table.length - 1;
      }
    }
    index[i] = v;
  }
  return first.slice(0, count);
}

function hashWords(words: Int32Array, at: number, stride: number): number {
  let h = 0;
  for (let k = 0; k < stride; k++) h = Math.imul(h ^ words[at + k]!, 0x9e3779b1) ^ (h >>> 15);
  h ^= h >>> 16;
  h = Math.imul(h, 0x85ebca6b);
  return h ^ (h >>> 13);
}

function sameWords(words: Int32Array, a: number, b: number, stride: number): boolean {
  for (let k = 0; k < stride; k++) if (words[a + k] !== words[b + k]) return false;
  return true;
}

function newTable(atLeast: number): Int32Array {
  let size = 1024;
  while (size < atLeast) size *= 2;
  return new Int32Array(size).fill(-1);
}

function rehashed(
  words: Int32Array,
  stride: number,
  first: Int32Array,
  count: number,
  size: number,
): Int32Array {
  const table = newTable(size);
  const mask = table.length - 1;
  for (let v = 0; v < count; v++) {
    let slot = hashWords(words, first[v]! * stride, stride) & mask;
    while (table[slot]! >= 0) slot = (slot + 1) & mask;
    table[slot] = v;
  }
  return table;
}

function grown(a: Int32Array): Int32Array<ArrayBuffer> {
  const b = new Int32Array(2 * a.length);
  b.set(a);
  return b;
}
