/** Twice the area vector of every triangle is added to its corners: large neighbors count more. */
export function vertexNormals(p: Float32Array, triangles: Int32Array): Float32Array {
  const normals = new Float32Array(p.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t]!,
      b = 3 * triangles[t + 1]!,
      c = 3 * triangles[t + 2]!;
    const ux = p[b]! - p[a]!,
      uy = p[b + 1]! - p[a + 1]!,
      uz = p[b + 2]! - p[a + 2]!;
    const vx = p[c]! - p[a]!,
      vy = p[c + 1]! - p[a + 1]!,
      vz = p[c + 2]! - p[a + 2]!;
    const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    for (const corner of [a, b, c]) {
      normals[corner]! += nx;
      normals[corner + 1]! += ny;
      normals[corner + 2]! += nz;
    }
  }
  for (let v = 0; v < normals.length; v += 3) {
    const length = Math.hypot(normals[v]!, normals[v + 1]!, normals[v + 2]!) || 1;
    for (let k = 0; k < 3; k++) normals[v + k]! /= length;
  }
  return normals;
}
