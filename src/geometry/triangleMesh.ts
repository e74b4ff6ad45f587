/**
 * An indexed triangle surface, as read: it may be open, tangled or inside out.
 * `positions`: x, y, z per vertex, float64, in the file's unit until `placeMesh` turns it into mm with Z up.
 * `triangles`: three vertex numbers per triangle; counter-clockwise seen from outside where the surface is sound.
 */
export interface TriangleMesh {
  positions: Float64Array;
  triangles: Int32Array;
}

export const triangleCount = (mesh: TriangleMesh): number => mesh.triangles.length / 3;
export const vertexCount = (mesh: TriangleMesh): number => mesh.positions.length / 3;

/** Axis-aligned bounds; `min[i] > max[i]` where nothing was in them. */
export interface Bounds {
  min: [number, number, number];
  max: [number, number, number];
}

/** Bounds of the vertices that triangles use (an unused vertex far away must not count). Same unit as the mesh. */
export function boundsOf({ positions: p, triangles }: TriangleMesh): Bounds {
  let x0 = Infinity;
  let y0 = Infinity;
  let z0 = Infinity;
  let x1 = -Infinity;
  let y1 = -Infinity;
  let z1 = -Infinity;
  for (let c = 0; c < triangles.length; c++) {
    const v = 3 * triangles[c]!;
    const x = p[v]!;
    const y = p[v + 1]!;
    const z = p[v + 2]!;
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
    if (z < z0) z0 = z;
    if (z > z1) z1 = z;
  }
  return { min: [x0, y0, z0], max: [x1, y1, z1] };
}

/** The smallest bounds around all of these. */
export function boundsAround(all: readonly Bounds[]): Bounds {
  const around: Bounds = { min: [Infinity, Infinity, Infinity], max: [-Infinity, -Infinity, -Infinity] };
  for (const { min, max } of all) {
    for (const k of [0, 1, 2] as const) {
      around.min[k] = Math.min(around.min[k], min[k]);
      around.max[k] = Math.max(around.max[k], max[k]);
    }
  }
  return around;
}

export const centerOf = ({ min, max }: Bounds): [number, number, number] => [
  (min[0] + max[0]) / 2,
  (min[1] + max[1]) / 2,
  (min[2] + max[2]) / 2,
];

export const extentsOf = (b: Bounds): [number, number, number] => [
  Math.max(0, b.max[0] - b.min[0]),
  Math.max(0, b.max[1] - b.min[1]),
  Math.max(0, b.max[2] - b.min[2]),
];

export const diagonalOf = (b: Bounds): number => Math.hypot(...extentsOf(b));
