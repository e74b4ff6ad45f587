import { boundsOf, type Bounds, type TriangleMesh } from './triangleMesh';

/** The direction of the file that points up as poured. */
export type UpAxis = '+x' | '-x' | '+y' | '-y' | '+z' | '-z';
export const UP_AXES: readonly UpAxis[] = ['+x', '-x', '+y', '-y', '+z', '-z'];

/** For each axis of the placed mesh: which axis of the file it is, and its sign. All are turns, none is a mirror. */
const TURN: Record<UpAxis, readonly [number, number][]> = {
  '+z': [
    [0, 1],
    [1, 1],
    [2, 1],
  ],
  '-z': [
    [0, 1],
    [1, -1],
    [2, -1],
  ],
  '+y': [
    [0, 1],
    [2, -1],
    [1, 1],
  ],
  '-y': [
    [0, 1],
    [2, 1],
    [1, -1],
  ],
  '+x': [
    [2, -1],
    [1, 1],
    [0, 1],
  ],
  '-x': [
    [2, 1],
    [1, 1],
    [0, -1],
  ],
};

/** The mesh with Z up as poured, every coordinate multiplied by `mmPerUnit`: a copy that shares the triangle list, or itself where nothing changes. */
export function placeMesh(mesh: TriangleMesh, place: { up: UpAxis; mmPerUnit: number }): TriangleMesh {
  if (place.up === '+z' && place.mmPerUnit === 1) return mesh;
  const p = mesh.positions;
  const placed = new Float64Array(p.length);
  TURN[place.up].forEach(([from, sign], to) => {
    const factor = sign * place.mmPerUnit;
    for (let i = 0; i < p.length; i += 3) placed[i + to] = factor * p[i + from]!;
  });
  return { positions: placed, triangles: mesh.triangles };
}

/** Bounds of the mesh as `placeMesh` would place it, without the copy. */
export function placedBounds(mesh: TriangleMesh, place: { up: UpAxis; mmPerUnit: number }): Bounds {
  const { min, max } = boundsOf(mesh);
  const placed: Bounds = { min: [0, 0, 0], max: [0, 0, 0] };
  TURN[place.up].forEach(([from, sign], to) => {
    const ends = [sign * place.mmPerUnit * min[from]!, sign * place.mmPerUnit * max[from]!];
    placed.min[to] = Math.min(...ends);
    placed.max[to] = Math.max(...ends);
  });
  return placed;
}
