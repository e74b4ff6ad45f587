/** Axis-parallel box as {points, faces: six outward quads}, mm. */
export function boxQuads({ cornerMm, sizeMm }) {
  const points = [];
  for (let n = 0; n < 8; n += 1) {
    for (let a = 0; a < 3; a += 1) points.push(cornerMm[a] + ((n >> a) & 1) * sizeMm[a]);
  }
  const faces = [
    [0, 4, 6, 2],
    [1, 3, 7, 5],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 2, 3, 1],
    [4, 5, 7, 6],
  ];
  return { points, faces };
}

/** The same faces cut into fans of triangles. */
export function triangulated({ points, faces }) {
  const triangles = faces.flatMap((f) => f.slice(2).flatMap((_, n) => [f[0], f[n + 1], f[n + 2]]));
  return { points, triangles };
}
