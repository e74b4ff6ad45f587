import type { TriangleMesh } from '../../src/geometry';
import type { Vec3 } from './shapes';

/** Plain changes to a mesh: moving, turning, joining, turning over, taking apart. None of them repairs anything. */

export const mapPoints = (mesh: TriangleMesh, to: (p: Vec3, vertex: number) => Vec3): TriangleMesh => {
  const positions = new Float64Array(mesh.positions.length);
  for (let v = 0; v < positions.length; v += 3) {
    positions.set(to([mesh.positions[v]!, mesh.positions[v + 1]!, mesh.positions[v + 2]!], v / 3), v);
  }
  return { positions, triangles: mesh.triangles.slice() };
};

export const moved = (mesh: TriangleMesh, by: Vec3): TriangleMesh =>
  mapPoints(mesh, ([x, y, z]) => [x + by[0], y + by[1], z + by[2]]);
export const scaled = (mesh: TriangleMesh, factor: number): TriangleMesh =>
  mapPoints(mesh, ([x, y, z]) => [factor * x, factor * y, factor * z]);

/** A turn by the unit quaternion of four numbers (Shoemake's matrix, as in any text on rotations). */
export function turned(
  mesh: TriangleMesh,
  quaternion: readonly [number, number, number, number],
): TriangleMesh {
  const length = Math.hypot(...quaternion);
  const [w, x, y, z] = quaternion.map((q) => q / length) as [number, number, number, number];
  const rows = [
    [1 - 2 * (y * y + z * z), 2 * (x * y - w * z), 2 * (x * z + w * y)],
    [2 * (x * y + w * z), 1 - 2 * (x * x + z * z), 2 * (y * z - w * x)],
    [2 * (x * z - w * y), 2 * (y * z + w * x), 1 - 2 * (x * x + y * y)],
  ] as const;
  return mapPoints(
    mesh,
    (p) => rows.map((row) => row[0] * p[0] + row[1] * p[1] + row[2] * p[2]) as unknown as Vec3,
  );
}

/** Both meshes as one list; vertices stay apart. */
export function joined(...meshes: readonly TriangleMesh[]): TriangleMesh {
  const positions: number[] = [];
  const triangles: number[] = [];
  for (const mesh of meshes) {
    const first = positions.length / 3;
    for (const x of mesh.positions) positions.push(x);
    for (const v of mesh.triangles) triangles.push(first + v);
  }
  return { positions: Float64Array.from(positions), triangles: Int32Array.from(triangles) };
}

export const reversed = (mesh: TriangleMesh): TriangleMesh =>
  withTriangles(
    mesh,
    trianglesOf(mesh).map(([a, b, c]) => [a, c, b]),
  );

export type Triple = [number, number, number];

export function trianglesOf(mesh: TriangleMesh): Triple[] {
  const triples: Triple[] = [];
  for (let t = 0; t < mesh.triangles.length; t += 3)
    triples.push([mesh.triangles[t]!, mesh.triangles[t + 1]!, mesh.triangles[t + 2]!]);
  return triples;
}

export const withTriangles = (mesh: TriangleMesh, triples: readonly Triple[]): TriangleMesh => ({
  positions: mesh.positions,
  triangles: Int32Array.from(triples.flat()),
});

/** Coordinates as an STL or another program keeps them: float32. */
export const asFloat32 = (mesh: TriangleMesh): TriangleMesh =>
  mapPoints(mesh, ([x, y, z]) => [Math.fround(x), Math.fround(y), Math.fround(z)]);

/** Deletes, turns over or doubles each triangle with the chance `share`. */
export function damaged(
  mesh: TriangleMesh,
  how: 'deleted' | 'flipped' | 'doubled' | 'all three',
  share: number,
  random: () => number,
): TriangleMesh {
  const kinds = how === 'all three' ? (['deleted', 'flipped', 'doubled'] as const) : [how];
  const triples = trianglesOf(mesh).flatMap(([a, b, c]): Triple[] => {
    let now: Triple[] = [[a, b, c]];
    for (const kind of kinds) {
      if (random() >= share) continue;
      if (kind === 'deleted') now = [];
      else if (kind === 'flipped') now = now.map(([p, q, r]) => [p, r, q]);
      else now = [...now, ...now];
    }
    return now;
  });
  return withTriangles(mesh, triples);
}

/** Closes every rim with a fan about the plain mean of its vertices. For rims that are simple loops; throws otherwise. */
export function cappedByFans(mesh: TriangleMesh): TriangleMesh {
  const triples = trianglesOf(mesh);
  const directed = new Set(triples.flatMap(([a, b, c]) => [`${a} ${b}`, `${b} ${c}`, `${c} ${a}`]));
  const next = new Map<number, number>();
  for (const [a, b, c] of triples)
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const) {
      if (directed.has(`${to} ${from}`)) continue;
      if (next.has(to)) throw new Error(`cappedByFans: expected simple rims, got two through vertex ${to}`);
      next.set(to, from);
    }
  const points = [...mesh.positions];
  for (const start of [...next.keys()]) {
    const rim: number[] = [];
    for (let v = start; next.has(v);) {
      rim.push(v);
      const then = next.get(v)!;
      next.delete(v);
      v = then;
    }
    if (rim.length < 3) continue;
    const apex = points.length / 3;
    for (let k = 0; k < 3; k++)
      points.push(rim.reduce((sum, v) => sum + mesh.positions[3 * v + k]!, 0) / rim.length);
    rim.forEach((v, i) => triples.push([v, rim[(i + 1) % rim.length]!, apex]));
  }
  return { positions: Float64Array.from(points), triangles: Int32Array.from(triples.flat()) };
}

export function lowestVertex(mesh: TriangleMesh, axis: 0 | 1 | 2): number {
  let lowest = mesh.triangles[0]!;
  for (const v of mesh.triangles)
    if (mesh.positions[3 * v + axis]! < mesh.positions[3 * lowest + axis]!) lowest = v;
  return lowest;
}

/** Takes away the triangles within `rings` steps of a vertex: one hole whose rim is a plain loop. */
export function withoutRings(mesh: TriangleMesh, vertex: number, rings: number): TriangleMesh {
  const triples = trianglesOf(mesh);
  let inside = new Set([vertex]);
  for (let ring = 1; ring < rings; ring++)
    inside = new Set(triples.filter((t) => t.some((v) => inside.has(v))).flat());
  return withTriangles(
    mesh,
    triples.filter((t) => !t.some((v) => inside.has(v))),
  );
}

/** Every triangle in four, its corners where they were: the same body. */
export function quartered(mesh: TriangleMesh): TriangleMesh {
  const positions = [...mesh.positions];
  const made = new Map<number, number>();
  const middle = (a: number, b: number): number => {
    const key = Math.min(a, b) * mesh.positions.length + Math.max(a, b);
    if (!made.has(key)) {
      made.set(key, positions.length / 3);
      for (let k = 0; k < 3; k++)
        positions.push((mesh.positions[3 * a + k]! + mesh.positions[3 * b + k]!) / 2);
    }
    return made.get(key)!;
  };
  const triples = trianglesOf(mesh).flatMap(([a, b, c]): Triple[] => {
    const [ab, bc, ca] = [middle(a, b), middle(b, c), middle(c, a)];
    return [
      [a, ab, ca],
      [ab, b, bc],
      [ca, bc, c],
      [ab, bc, ca],
    ];
  });
  return withTriangles({ positions: Float64Array.from(positions), triangles: mesh.triangles }, triples);
}
