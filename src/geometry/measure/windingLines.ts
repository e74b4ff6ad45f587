import type { Bounds, TriangleMesh } from '../triangleMesh';

/*
 * Winding along lines. A square lattice of lines runs through the body along one axis (called x
 * below, the others y and z, in cyclic order); on each, the signed crossings of the closed
 * surface, sorted, give the whole winding number of every stretch. Stretches counted twice, or below zero, are where shells
 * overlap or fold: there a plain sum of signed volumes is not the volume of the solid.
 *
 * The crossing of an edge with a lattice row is computed from the lower-numbered vertex, whichever triangle asks, and a
 * triangle owns the lattice points in (left, right] between its two edge crossings. So contributions of neighbors telescope
 * and the sum over a closed surface is zero on every line, exactly: no leaks (derived here). Stretches are exact along x; the only error is that of the lattice in y and z.
 */

export interface WindingSums {
  /** Volume by these lines of the signed sum, the cross-check of the divergence theorem. */
  signedMm3: number;
  /** What the signed sum counts beyond once, and below zero (a negative number). */
  doubledMm3: number;
  negativeMm3: number;
  /**
   * Largest disagreement of the four half-dense lattices about doubled + negative, but no less than ERROR_FLOOR of it: they can
   * agree by luck.
   */
  latticeErrorMm3: number;
  spacingMm: number;
}

/** Share of what was found that is always left in doubt. Chosen here: over ten times the largest miss seen in
 * tests of known overlaps. */
const ERROR_FLOOR = 5e-4;

/** Golden-ratio offset: keeps lattice rows off the round coordinates of modeled parts. */
const OFFSET = 0.3819660113;

/**
 * @param mesh closed chain of triangles (caps included), mm
 * @param bounds of that chain
 * @param lines `axes` they run along (0 x, 1 y, 2 z), all in one pass over the triangles; `across` how many over the longer of
 * the two other sides: 64 means cells of about 1.6 % of the size
 * @returns sums in the order of the axes
 */
export function windingAlongLines(
  mesh: TriangleMesh,
  bounds: Bounds,
  lines: { axes: readonly Axis[]; across: number },
): WindingSums[] {
  const lattices = lines.axes.map((axis) => makeLattice(bounds, axis, lines.across));
  collectCrossings(mesh, lattices);
  return lattices.map(sumLattice);
}

export type Axis = 0 | 1 | 2;

function sumLattice(lattice: Lattice): WindingSums {
  const { found, columns, rows } = lattice;
  const order = sortByLine(found, columns * rows);
  const doubled = [0, 0, 0, 0];
  const negative = [0, 0, 0, 0];
  let signed = 0;
  for (let line = 0; line < columns * rows; line++) {
    const [from, to] = [order.start[line]!, order.start[line + 1]!];
    if (from === to) continue;
    const parity = ((line % columns) & 1) + 2 * (((line / columns) | 0) & 1);
    let winding = 0;
    for (let i = from; i < to; i++) {
      const c = order.crossing[i]!;
      winding += found.sign[c]!;
      if (i + 1 === to) break;
      const length = found.x[order.crossing[i + 1]!]! - found.x[c]!;
      signed += winding * length;
      if (winding > 1) doubled[parity]! += (winding - 1) * length;
      else if (winding < 0) negative[parity]! += winding * length;
    }
  }
  return summed(lattice.spacing, signed, doubled, negative);
}

function summed(spacing: number, signed: number, doubled: number[], negative: number[]): WindingSums {
  const cell = spacing * spacing;
  const total = (a: number[]): number => a.reduce((x, y) => x + y, 0) * cell;
  const excess = total(doubled) + total(negative);
  const spread = doubled.map((d, i) => Math.abs(4 * (d + negative[i]!) * cell - excess));
  return {
    signedMm3: signed * cell,
    doubledMm3: total(doubled),
    negativeMm3: total(negative),
    latticeErrorMm3: Math.max(...spread, ERROR_FLOOR * (total(doubled) - total(negative))),
    spacingMm: spacing,
  };
}

/** A stretch of one line inside the body: its length and the triangles (3 * number) where it enters and leaves. */
export interface Stretch {
  lengthMm: number;
  enter: number;
  leave: number;
  /** Cross-section that the line stands for. */
  cellMm2: number;
}

/** Calls `visit` for every stretch of the lines along each axis on which the winding number is 1 or more; one pass over the triangles. */
export function insideStretches(
  mesh: TriangleMesh,
  bounds: Bounds,
  { axes, across }: { axes: readonly Axis[]; across: number },
  visit: (stretch: Stretch, axis: Axis) => void,
): void {
  const lattices = axes.map((axis) => makeLattice(bounds, axis, across));
  collectCrossings(mesh, lattices);
  lattices.forEach((lattice, i) => visitStretches(lattice, (stretch) => visit(stretch, axes[i]!)));
}

function visitStretches(lattice: Lattice, visit: (stretch: Stretch) => void): void {
  const { found, columns, rows, spacing } = lattice;
  const order = sortByLine(found, columns * rows);
  for (let line = 0; line < columns * rows; line++) {
    let winding = 0;
    let enter = -1;
    for (let i = order.start[line]!; i < order.start[line + 1]!; i++) {
      const c = order.crossing[i]!;
      const wasInside = winding >= 1;
      winding += found.sign[c]!;
      if (wasInside === winding >= 1) continue;
      if (!wasInside) enter = c;
      else
        visit({
          lengthMm: found.x[c]! - found.x[enter]!,
          enter: found.triangle[enter]!,
          leave: found.triangle[c]!,
          cellMm2: spacing * spacing,
        });
    }
  }
}

interface Lattice {
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

function makeLattice({ min, max }: Bounds, axis: Axis, across: number): Lattice {
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
    found: {
      line: new Int32Array(1 << 15),
      x: new Float64Array(1 << 15),
      sign: new Int8Array(1 << 15),
      triangle: new Int32Array(1 << 15),
      count: 0,
    },
  };
}

interface Crossings {
  line: Int32Array;
  x: Float64Array;
  sign: Int8Array;
  /** 3 * number of the triangle that was crossed. */
  triangle: Int32Array;
  count: number;
}

function collectCrossings({ positions: p, triangles }: TriangleMesh, lattices: readonly Lattice[]): void {
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t]!;
    const b = 3 * triangles[t + 1]!;
    const c = 3 * triangles[t + 2]!;
    for (const lattice of lattices) {
      const { kz, z0, spacing } = lattice;
      const za = p[a + kz]!;
      const zb = p[b + kz]!;
      const zc = p[c + kz]!;
      const low = za < zb ? (za < zc ? za : zc) : zb < zc ? zb : zc;
      const high = za > zb ? (za > zc ? za : zc) : zb > zc ? zb : zc;
      const firstRow = Math.floor((low - z0) / spacing) + 1;
      const lastRow = Math.floor((high - z0) / spacing);
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
  for (let c = Math.min(upColumn, downColumn) + 1; c <= Math.max(upColumn, downColumn); c++) {
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
function sortByLine(found: Crossings, lines: number): { start: Int32Array; crossing: Int32Array } {
  const start = new Int32Array(lines + 1);
  for (let i = 0; i < found.count; i++) start[found.line[i]! + 1]!++;
  for (let l = 1; l <= lines; l++) start[l]! += start[l - 1]!;
  const fill = start.slice();
  const crossing = new Int32Array(found.count);
  for (let i = 0; i < found.count; i++) crossing[fill[found.line[i]!]!++] = i;
  const { x } = found;
  for (let l = 0; l < lines; l++) {
    if (start[l + 1]! - start[l]! > 1)
      crossing.subarray(start[l], start[l + 1]).sort((a, b) => x[a]! - x[b]!);
  }
  return { start, crossing };
}
