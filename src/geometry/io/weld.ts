import type { TriangleMesh } from '../triangleMesh';

/*
 * Corners with bit-equal coordinates become one vertex, by an open-addressing hash of their raw words (Knuth, The Art of
 * Computer Programming, vol. 3, 6.4). Distinct points are kept side by side as words, so that a look-up reads two places and not
 * the whole soup. Tried before: a Map of strings, and the merge of a loader library; both many times slower (see bench/).
 */

/** Table slots per distinct point, at least: the load factor stays under 0.6. */
const SLOTS_PER_POINT = 1 / 0.6;

/**
 * Merges equal corners; -0 and +0 are equal.
 *
 * @param points x, y, z of every corner, float32 or float64; not changed
 * @returns the distinct points as float64, and for every corner the number of its point
 */
export function weldPoints(points: Float32Array | Float64Array): {
  positions: Float64Array;
  index: Int32Array;
} {
  const words = new Int32Array(
    points.buffer,
    points.byteOffset,
    (points.length * points.BYTES_PER_ELEMENT) / 4,
  );
  if (points instanceof Float32Array) {
    const welding = startWelding(points.length / 3);
    weldFacets(welding, words);
    const { positions, triangles } = endWelding(welding);
    return { positions, index: triangles };
  }
  const { distinct, index } = weldSextets(words);
  return { positions: new Float64Array(distinct.buffer), index };
}

/** A triangle soup (nine numbers a triangle) as an indexed mesh. */
export function weldSoup(soup: Float32Array | Float64Array): TriangleMesh {
  const { positions, index } = weldPoints(soup);
  return { positions, triangles: index };
}

interface Welded {
  /** The words of the distinct points, in order of appearance. */
  distinct: Int32Array;
  index: Int32Array;
}

/** Corners of three 32-bit words as they come in, so that a file need not be held as a soup beside its mesh. */
export interface Welding {
  distinct: Int32Array;
  count: number;
  index: Int32Array;
  /** Corners so far. */
  corners: number;
  table: Int32Array;
}

export const startWelding = (corners: number): Welding => ({
  // A closed mesh has about half as many vertices as triangles: a sixth of its corners.
  distinct: new Int32Array(3 * Math.max(64, corners >> 2)),
  count: 0,
  index: new Int32Array(corners),
  corners: 0,
  table: newTable(corners / 3),
});

/**
 * Adds whole facets: nine words each. Written out for speed: this loop sees every corner of a binary STL. Neighbors in a file mostly
 * share corners, so those of the facet before are tried first.
 */
export function weldFacets(welding: Welding, words: Int32Array): void {
  const { index } = welding;
  let { distinct, count, table } = welding;
  const first = welding.corners;
  const end = first + words.length / 3;
  for (let i = first, at = 0; i < end; i++, at += 3) {
    const a = unsignedZero(words[at]!);
    const b = unsignedZero(words[at + 1]!);
    const c = unsignedZero(words[at + 2]!);
    const recent = i < 3 ? -1 : recentCorner(index, distinct, i - (i % 3), a, b, c);
    if (recent >= 0) {
      index[i] = recent;
      continue;
    }
    const mask = table.length - 1;
    let slot = hashTriple(a, b, c) & mask;
    let v = table[slot]!;
    while (v >= 0 && (distinct[3 * v] !== a || distinct[3 * v + 1] !== b || distinct[3 * v + 2] !== c)) {
      slot = (slot + 1) & mask;
      v = table[slot]!;
    }
    if (v < 0) {
      v = count++;
      table[slot] = v;
      if (3 * count > distinct.length) distinct = grown(distinct);
      distinct[3 * v] = a;
      distinct[3 * v + 1] = b;
      distinct[3 * v + 2] = c;
      if (count * SLOTS_PER_POINT > table.length) table = widerTable(distinct, 3, count, table);
    }
    index[i] = v;
  }
  Object.assign(welding, { distinct, count, table, corners: end });
}

/** The welded mesh of float32 words. */
export function endWelding({ distinct, count, index }: Welding): TriangleMesh {
  return { positions: Float64Array.from(new Float32Array(distinct.buffer, 0, 3 * count)), triangles: index };
}

/** The vertex of the facet that ends before corner `facet` with these words, or -1. */
function recentCorner(
  index: Int32Array,
  distinct: Int32Array,
  facet: number,
  a: number,
  b: number,
  c: number,
): number {
  for (let corner = facet - 3; corner < facet; corner++) {
    const v = index[corner]!;
    if (distinct[3 * v] === a && distinct[3 * v + 1] === b && distinct[3 * v + 2] === c) return v;
  }
  return -1;
}

/** Points of six words: three float64, the low word of each first. */
function weldSextets(words: Int32Array): Welded {
  const corners = words.length / 6;
  const index = new Int32Array(corners);
  const point = new Int32Array(6);
  let distinct = new Int32Array(6 * Math.max(64, corners >> 2));
  let table = newTable(corners / 3);
  let count = 0;
  for (let i = 0; i < corners; i++) {
    for (let k = 0; k < 6; k++) point[k] = words[6 * i + k]!;
    for (let k = 0; k < 6; k += 2) if (point[k] === 0) point[k + 1] = unsignedZero(point[k + 1]!);
    const mask = table.length - 1;
    let slot = hashSextet(point, 0) & mask;
    let v = table[slot]!;
    while (v >= 0 && !sameAt(distinct, 6 * v, point)) {
      slot = (slot + 1) & mask;
      v = table[slot]!;
    }
    if (v < 0) {
      v = count++;
      table[slot] = v;
      if (6 * count > distinct.length) distinct = grown(distinct);
      distinct.set(point, 6 * v);
      if (count * SLOTS_PER_POINT > table.length) table = widerTable(distinct, 6, count, table);
    }
    index[i] = v;
  }
  return { distinct: distinct.slice(0, 6 * count), index };
}

/** The word of -0 is the lowest integer; that of +0 is 0. */
const unsignedZero = (word: number): number => (word === -2147483648 ? 0 : word);

/** Odd multipliers and the finishing steps of published 32-bit hashes; the constants are from memory. */
const hashTriple = (a: number, b: number, c: number): number =>
  mix(Math.imul(a, 0x9e3779b1) ^ Math.imul(b, 0x85ebca77) ^ Math.imul(c, 0xc2b2ae3d));

function mix(hash: number): number {
  let h = hash ^ (hash >>> 15);
  h = Math.imul(h, 0x2c1b3c6d);
  return h ^ (h >>> 13);
}

function hashSextet(words: Int32Array, at: number): number {
  let h = 0;
  for (let k = 0; k < 6; k++) h = Math.imul(h ^ words[at + k]!, 0x9e3779b1) ^ (h >>> 15);
  return mix(h);
}

function sameAt(distinct: Int32Array, at: number, point: Int32Array): boolean {
  for (let k = 0; k < 6; k++) if (distinct[at + k] !== point[k]) return false;
  return true;
}

function newTable(atLeast: number): Int32Array {
  let size = 1024;
  while (size < atLeast) size *= 2;
  return new Int32Array(size).fill(-1);
}

/** A table twice as wide, with every point so far in it. */
function widerTable(distinct: Int32Array, stride: 3 | 6, count: number, table: Int32Array): Int32Array {
  const wider = newTable(2 * table.length);
  const mask = wider.length - 1;
  for (let v = 0; v < count; v++) {
    const at = stride * v;
    const hash =
      stride === 3
        ? hashTriple(distinct[at]!, distinct[at + 1]!, distinct[at + 2]!)
        : hashSextet(distinct, at);
    let slot = hash & mask;
    while (wider[slot]! >= 0) slot = (slot + 1) & mask;
    wider[slot] = v;
  }
  return wider;
}

function grown(a: Int32Array): Int32Array<ArrayBuffer> {
  const b = new Int32Array(2 * a.length);
  b.set(a);
  return b;
}
