import { boundsOf, type Bounds, type TriangleMesh } from './triangleMesh';
import type { Vector } from './vector';

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

/** A place or direction on the file's own axes as `placeMesh` would turn it, in the same unit. */
export const turnUp = (at: Vector, up: UpAxis): Vector => {
  const [x, y, z] = TURN[up].map(([from, sign]) => sign * at[from]!);
  return [x!, y!, z!];
};

/** The other way: from Z up back to the file's own axes. */
export function turnBack(at: Vector, up: UpAxis): Vector {
  const back: [number, number, number] = [0, 0, 0];
  TURN[up].forEach(([from, sign], to) => (back[from] = sign * at[to]!));
  return back;
}

/** Bounds of the mesh as `placeMesh` would place it, without the copy. */
export const placedBounds = (mesh: TriangleMesh, place: { up: UpAxis; mmPerUnit: number }): Bounds =>
  turnBounds(boundsOf(mesh), place);

/** Bounds on the file's own axes as `placeMesh` would place what is in them. */
export function turnBounds({ min, max }: Bounds, place: { up: UpAxis; mmPerUnit: number }): Bounds {
  const placed: Bounds = { min: [0, 0, 0], max: [0, 0, 0] };
  TURN[place.up].forEach(([from, sign], to) => {
    const ends = [sign * place.mmPerUnit * min[from]!, sign * place.mmPerUnit * max[from]!];
    placed.min[to] = Math.min(...ends);
    placed.max[to] = Math.max(...ends);
  });
  return placed;
}
