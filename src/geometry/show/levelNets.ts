import type { TriangleMesh } from '../triangleMesh';
import type { Lattice } from './boardLayers';
import { Growing } from './growing';
import { NET, placeInCell } from './netVertex';

/** A closed surface, facing outward, with a unit normal a vertex. */
export interface NetSurface {
  mesh: TriangleMesh;
  normals: Float32Array;
}

/**
 * The surface of all that lies within a level (values at most `levelMm`), in the lattice's own axes: one vertex in every cell that the level runs through, set
 * onto the level, and a quad across every edge of the lattice that it cuts (surface nets, Gibson 1998, "Constrained elastic surface nets", Proc. MICCAI, 888-898).
 * Closed, as the faces of the lattice are outside. Linear in the points.
 */
export function levelNets(lattice: Lattice, levelMm: number): NetSurface {
  const { nx, ny, nz, first } = lattice;
  const nets: Nets = {
    lattice,
    levelMm,
    positions: new Growing(new Float64Array(3 << 12)),
    normals: new Growing(new Float32Array(3 << 12)),
    triangles: new Growing(new Int32Array(3 << 13)),
    below: new Int32Array(nx * ny),
    here: new Int32Array(nx * ny),
    isLow: new Uint8Array(nx * ny),
    isHigh: new Uint8Array(nx * ny),
  };
  markInside(nets, first, nets.isHigh);
  for (let k = first; k + 1 < nz; k++) {
    [nets.isLow, nets.isHigh] = [nets.isHigh, nets.isLow];
    [nets.below, nets.here] = [nets.here, nets.below];
    markInside(nets, k + 1, nets.isHigh);
    addVertices(nets, k);
    addQuads(nets);
  }
  return {
    mesh: { positions: nets.positions.taken(), triangles: nets.triangles.taken() },
    normals: nets.normals.taken(),
  };
}

interface Nets {
  lattice: Lattice;
  levelMm: number;
  positions: Growing<Float64Array>;
  normals: Growing<Float32Array>;
  triangles: Growing<Int32Array>;
  /** Number of the vertex of every cell of the layer below, and of this one. */
  below: Int32Array;
  here: Int32Array;
  /** 1 for the points inside on the lower layer of the cells, and on the upper one. */
  isLow: Uint8Array;
  isHigh: Uint8Array;
}

function markInside({ lattice: { nx, ny, values }, levelMm }: Nets, k: number, marks: Uint8Array): void {
  const from = k * nx * ny;
  for (let p = 0; p < marks.length; p++) marks[p] = values[from + p]! <= levelMm ? 1 : 0;
}

/** Cells between layers k and k + 1. */
function addVertices({ lattice, levelMm, positions, normals, here, isLow, isHigh }: Nets, k: number): void {
  const { nx, ny } = lattice;
  for (let j = 0; j + 1 < ny; j++) {
    for (let i = 0, p = j * nx; i + 1 < nx; i++, p++) {
      const mask =
        isLow[p]! |
        (isLow[p + 1]! << 1) |
        (isLow[p + nx]! << 2) |
        (isLow[p + nx + 1]! << 3) |
        (isHigh[p]! << 4) |
        (isHigh[p + 1]! << 5) |
        (isHigh[p + nx]! << 6) |
        (isHigh[p + nx + 1]! << 7);
      if (mask === 0 || mask === 255) continue;
      here[p] = positions.length / 3;
      placeInCell(lattice, levelMm, i, j, k);
      positions.push3(NET[0]!, NET[1]!, NET[2]!);
      normals.push3(NET[3]!, NET[4]!, NET[5]!);
    }
  }
}

/** Across the edges that leave the lower corner of every cell of this layer: along x and y, and up. */
function addQuads(nets: Nets): void {
  const { lattice, below, here, isLow, isHigh } = nets;
  const { nx, ny } = lattice;
  for (let j = 1; j + 1 < ny; j++) {
    for (let i = 1, p = j * nx + 1; i + 1 < nx; i++, p++) {
      const inside = isLow[p]!;
      if (isLow[p + 1] !== inside) quad(nets, inside, below[p - nx]!, below[p]!, here[p]!, here[p - nx]!);
      if (isLow[p + nx] !== inside) quad(nets, inside, below[p - 1]!, here[p - 1]!, here[p]!, below[p]!);
      if (isHigh[p] !== inside) quad(nets, inside, here[p - nx - 1]!, here[p - nx]!, here[p]!, here[p - 1]!);
    }
  }
}

/** Corners counter-clockwise seen from outside where the start of the edge is inside; parted along the shorter diagonal. */
function quad(
  { positions, triangles }: Nets,
  inside: number,
  a: number,
  b: number,
  c: number,
  d: number,
): void {
  const [second, fourth] = inside === 1 ? [b, d] : [d, b];
  if (apart2(positions, a, c) <= apart2(positions, b, d)) {
    triangles.push3(a, second, c);
    triangles.push3(a, c, fourth);
  } else {
    triangles.push3(a, second, fourth);
    triangles.push3(second, c, fourth);
  }
}

function apart2(positions: Growing<Float64Array>, a: number, b: number): number {
  let sum = 0;
  for (let axis = 0; axis < 3; axis++) sum += (positions.at(3 * a + axis) - positions.at(3 * b + axis)) ** 2;
  return sum;
}
