import { facetVector } from '../facetVector';
import { boundsOf, extentsOf, type TriangleMesh } from '../triangleMesh';

/** Vertices of a mesh by cells of a lattice. */
export interface Clusters {
  /** Number of the cluster of every vertex; -1 of those that no triangle uses. */
  of: Int32Array;
  count: number;
  /** Least corner of the cell of every cluster. */
  corners: Float64Array;
  cell: number;
}

/** Triangles that a cell's face of area leaves, about, for a first try. Chosen here: a ball, a ring and a troll came out within a fifth of it. */
const TRIANGLES_A_FACE = 3;

/** Cells along the longest side at most, so that their numbers stay whole. */
const MOST_CELLS = 1 << 17;

/** A cell that leaves about so many triangles, by the area of the mesh. */
export function cellSizeFor(mesh: TriangleMesh, wantedTriangles: number): number {
  const cell = Math.sqrt((TRIANGLES_A_FACE * areaOf(mesh)) / wantedTriangles);
  return cell > 0 ? cell : Number.MIN_VALUE;
}

export function clusterVertices(mesh: TriangleMesh, wantedCell: number): Clusters {
  const { positions: p, triangles } = mesh;
  const bounds = boundsOf(mesh);
  const cell = Math.max(wantedCell, Math.max(...extentsOf(bounds)) / MOST_CELLS, Number.MIN_VALUE);
  const [x0, y0, z0] = bounds.min;
  const [nx, ny] = extentsOf(bounds).map((side) => Math.floor(side / cell) + 1) as [number, number, number];
  const of = new Int32Array(p.length / 3).fill(-1);
  const table = new CellTable();
  for (let c = 0; c < triangles.length; c++) {
    const v = triangles[c]!;
    if (of[v]! >= 0) continue;
    const i = Math.floor((p[3 * v]! - x0) / cell);
    const j = Math.floor((p[3 * v + 1]! - y0) / cell);
    const k = Math.floor((p[3 * v + 2]! - z0) / cell);
    of[v] = table.numberOf((k * ny + j) * nx + i);
  }
  const corners = new Float64Array(3 * table.count);
  for (let n = 0; n < table.count; n++) {
    const key = table.keys[n]!;
    corners[3 * n] = x0 + cell * (key % nx);
    corners[3 * n + 1] = y0 + cell * (Math.floor(key / nx) % ny);
    corners[3 * n + 2] = z0 + cell * Math.floor(key / (nx * ny));
  }
  return { of, count: table.count, corners, cell };
}

/** Numbers cells in the order they are first met: open addressing, in typed arrays that double. */
class CellTable {
  count = 0;
  keys = new Float64Array(1 << 12);
  private slots = new Int32Array(1 << 13).fill(-1);

  numberOf(key: number): number {
    const mask = this.slots.length - 1;
    let at = hashOf(key) & mask;
    for (let n = this.slots[at]!; n >= 0; n = this.slots[at]!) {
      if (this.keys[n] === key) return n;
      at = (at + 1) & mask;
    }
    if (this.count === this.keys.length) {
      this.grow();
      return this.numberOf(key);
    }
    this.keys[this.count] = key;
    this.slots[at] = this.count;
    return this.count++;
  }

  private grow(): void {
    const keys = new Float64Array(2 * this.keys.length);
    keys.set(this.keys);
    this.keys = keys;
    this.slots = new Int32Array(2 * this.slots.length).fill(-1);
    const mask = this.slots.length - 1;
    for (let n = 0; n < this.count; n++) {
      let at = hashOf(keys[n]!) & mask;
      while (this.slots[at]! >= 0) at = (at + 1) & mask;
      this.slots[at] = n;
    }
  }
}

/** Both halves of a whole number below 2^53, mixed (constants from memory). */
function hashOf(key: number): number {
  let hash = Math.imul(key >>> 0, 0x9e3779b1) ^ Math.imul((key / 2 ** 32) >>> 0, 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 15), 0xc2b2ae35);
  return (hash ^ (hash >>> 13)) >>> 0;
}

function areaOf(mesh: TriangleMesh): number {
  let twice = 0;
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const [x, y, z] = facetVector(mesh, t);
    twice += Math.sqrt(x * x + y * y + z * z);
  }
  return twice / 2;
}
