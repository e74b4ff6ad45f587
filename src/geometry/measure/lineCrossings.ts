import type { Bounds, TriangleMesh } from '../triangleMesh';

/*
 * Where the lines of a lattice cross a surface. The crossing of an edge with a lattice row is computed from the lower-numbered vertex, whichever triangle
 * asks, and a triangle owns the lattice points in (left, right] between its two edge crossings. So contributions of neighbors telescope and the sum
 * over a closed surface is zero on every line, exactly: no leaks (derived here).
 */

export type Axis = 0 | 1 | 2;

/** Golden-ratio offset: keeps lattice rows off the round coordinates of modeled parts. */
const OFFSET = 0.3819660113;

/** Parallel lines along one axis, and what was found on them. */
export interface Lattice {
  /** Offsets of x, y and z within a vertex's three numbers. */
  kx: number;
  ky: number;
  kz: number;
  y0: number;
  z0: number;
  spacing: number;
  columns: number;
  rows: number;
  found: Crossings;
}

/** Lines over the whole of the bounds, `across` of them over the longer of the two other sides. */
export function makeLattice({ min, max }: Bounds, axis: Axis, across: number): Lattice {
  const [kx, ky, kz] = [axis, (axis + 1) % 3, (axis + 2) % 3] as const;
  const [sizeY, sizeZ] = [max[ky]! - min[ky]!, max[kz]! - min[kz]!];
  const spacing = Math.max(sizeY, sizeZ) / across || 1;
  return {
    kx,
    ky,
    kz,
    spacing,
    y0: min[ky]! + OFFSET * spacing,
    z0: min[kz]! + OFFSET * spacing,
    columns: Math.floor(sizeY / spacing - OFFSET) + 2,
    rows: Math.floor(sizeZ / spacing - OFFSET) + 2,
    found: noCrossings(),
  };
}

export interface Crossings {
  line: Int32Array;
  x: Float64Array;
  sign: Int8Array;
  /** 3 * number of the triangle that was crossed. */
  triangle: Int32Array;
  count: number;
}

export const noCrossings = (): Crossings => ({
  line: new Int32Array(1 << 15),
  x: new Float64Array(1 << 15),
  sign: new Int8Array(1 << 15),
  triangle: new Int32Array(1 << 15),
  count: 0,
});

/** One pass over the triangles for all lattices. */
export function collectCrossings(
  { positions: p, triangles }: TriangleMesh,
  lattices: readonly Lattice[],
): void {
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t]!;
    const b = 3 * triangles[t + 1]!;
    const c = 3 * triangles[t + 2]!;
    for (const lattice of lattices) {
      const { kz, z0, spacing, rows } = lattice;
      const za = p[a + kz]!;
      const zb = p[b + kz]!;
      const zc = p[c + kz]!;
      const low = za < zb ? (za < zc ? za : zc) : zb < zc ? zb : zc;
      const high = za > zb ? (za > zc ? za : zc) : zb > zc ? zb : zc;
      const firstRow = Math.floor((low - z0) / spacing) + 1;
      const lastRow = Math.min(rows - 1, Math.floor((high - z0) / spacing));
      for (let row = firstRow < 0 ? 0 : firstRow; row <= lastRow; row++)
        crossRow(p, triangles, t, row, lattice);
    }
  }
}

/** Where a triangle meets one lattice row: a stretch in y between its rising and its falling edge. */
function crossRow(p: Float64Array, triangles: Int32Array, t: number, row: number, lattice: Lattice): void {
  const { kx, ky, kz, found } = lattice;
  const z = lattice.z0 + row * lattice.spacing;
  let upY = 0,
    upX = 0,
    downY = 0,
    downX = 0;
  for (let e = 0; e < 3; e++) {
    const a = triangles[t + e]!;
    const b = triangles[t + (e === 2 ? 0 : e + 1)]!;
    const aBelow = p[3 * a + kz]! < z;
    if (aBelow === p[3 * b + kz]! < z) continue;
    const low = 3 * (a < b ? a : b);
    const high = 3 * (a < b ? b : a);
    const share = (z - p[low + kz]!) / (p[high + kz]! - p[low + kz]!);
    const y = p[low + ky]! + share * (p[high + ky]! - p[low + ky]!);
    const x = p[low + kx]! + share * (p[high + kx]! - p[low + kx]!);
    if (aBelow) {
      upY = y;
      upX = x;
    } else {
      downY = y;
      downX = x;
    }
  }
  const upColumn = Math.floor((upY - lattice.y0) / lattice.spacing);
  const downColumn = Math.floor((downY - lattice.y0) / lattice.spacing);
  const sign = upColumn > downColumn ? -1 : 1;
  const first = Math.max(0, Math.min(upColumn, downColumn) + 1);
  const last = Math.min(lattice.columns - 1, Math.max(upColumn, downColumn));
  for (let c = first; c <= last; c++) {
    const share = (lattice.y0 + c * lattice.spacing - upY) / (downY - upY);
    record(found, row * lattice.columns + c, upX + Math.min(1, Math.max(0, share)) * (downX - upX), sign, t);
  }
}

function record(found: Crossings, line: number, x: number, sign: number, t: number): void {
  if (found.count === found.line.length) {
    found.line = widened(found.line);
    found.triangle = widened(found.triangle);
    const x2 = new Float64Array(2 * found.count);
    x2.set(found.x);
    found.x = x2;
    const sign2 = new Int8Array(2 * found.count);
    sign2.set(found.sign);
    found.sign = sign2;
  }
  found.line[found.count] = line;
  found.x[found.count] = x;
  found.triangle[found.count] = t;
  found.sign[found.count++] = sign;
}

function widened(ints: Int32Array): Int32Array {
  const wider = new Int32Array(2 * ints.length);
  wider.set(ints);
  return wider;
}

/** Counting sort by line, then each short list by x. */
export function sortByLine(found: Crossings, lines: number): { start: Int32Array; crossing: Int32Array } {
  const start = new Int32Array(lines + 1);
  for (let i = 0; i < found.count; i++) start[found.line[i]! + 1]!++;
  for (let l = 1; l <= lines; l++) start[l]! += start[l - 1]!;
  const fill = start.slice();
  const crossing = new Int32Array(found.count);
  for (let i = 0; i < found.count; i++) crossing[fill[found.line[i]!]!++] = i;
  const { x } = found;
  for (let l = 0; l < lines; l++) insertionSort(crossing, start[l]!, start[l + 1]!, x);
  return { start, crossing };
}

/** Few crossings a line: quicker than a call with a comparison. */
function insertionSort(crossing: Int32Array, from: number, to: number, x: Float64Array): void {
  for (let i = from + 1; i < to; i++) {
    const one = crossing[i]!;
    const at = x[one]!;
    let j = i - 1;
    for (; j >= from && x[crossing[j]!]! > at; j--) crossing[j + 1] = crossing[j]!;
    crossing[j + 1] = one;
  }
}
