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

/**
 * Bounds of the vertices that triangles use (an unused vertex far away must not count).
 * `uses` says which triangles count; without it all do. Same unit as the mesh.
 */
export function boundsOf(mesh: TriangleMesh, uses?: (triangle: number) => boolean): Bounds {
  const { positions: p, triangles } = mesh;
  const min: Bounds['min'] = [Infinity, Infinity, Infinity];
  const max: Bounds['max'] = [-Infinity, -Infinity, -Infinity];
  for (let c = 0; c < triangles.length; c++) {
    if (uses !== undefined && !uses((c / 3) | 0)) continue;
    const v = 3 * triangles[c]!;
    for (let k = 0; k < 3; k++) {
      const x = p[v + k]!;
      if (x < min[k]!) min[k] = x;
      if (x > max[k]!) max[k] = x;
    }
  }
  return { min, max };
}

export const extentsOf = (b: Bounds): [number, number, number] => [
  Math.max(0, b.max[0] - b.min[0]),
  Math.max(0, b.max[1] - b.min[1]),
  Math.max(0, b.max[2] - b.min[2]),
];

export const diagonalOf = (b: Bounds): number => Math.hypot(...extentsOf(b));
