import type { TriangleMesh } from '../../src/geometry';
import { joined, mapPoints } from './meshTools';
import type { Vec3 } from './shapes';

/** Every facet with corners of its own, as a file keeps them whose writer shared none. */
export function unshared(mesh: TriangleMesh): TriangleMesh {
  const positions = new Float64Array(3 * mesh.triangles.length);
  mesh.triangles.forEach((v, c) => positions.set(mesh.positions.subarray(3 * v, 3 * v + 3), 3 * c));
  return { positions, triangles: Int32Array.from(mesh.triangles, (_, c) => c) };
}

/** A number spread as the normal distribution (Box and Muller 1958, Ann. Math. Stat. 29:610). */
const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** Every corner of every facet moved by itself, `rmsMm` along each axis. */
export const jittered = (mesh: TriangleMesh, rmsMm: number, random: () => number): TriangleMesh =>
  mapPoints(unshared(mesh), (p) => p.map((x) => x + rmsMm * normal(random)) as unknown as Vec3);

/** The corners of every facet rounded to one of four grids, drawn for each facet. Returns the widest step too. */
export function gridded(mesh: TriangleMesh, stepMm: number, random: () => number): TriangleMesh {
  let grid = stepMm;
  return mapPoints(unshared(mesh), (p, corner) => {
    if (corner % 3 === 0) grid = stepMm * [0.3, 0.5, 0.7, 1][Math.floor(4 * random())]!;
    return p.map((x) => grid * Math.round(x / grid)) as unknown as Vec3;
  });
}

/** A box whose six faces are cut into grids of their own: along an edge two faces share only its ends. */
export function patchedBox([x, y, z]: Vec3, steps: readonly number[]): TriangleMesh {
  const [a, b, c, d, e, f] = steps as [number, number, number, number, number, number];
  return joined(
    patch([0, 0, 0], [0, y, 0], [x, 0, 0], a, b),
    patch([0, 0, z], [x, 0, 0], [0, y, 0], c, d),
    patch([0, 0, 0], [x, 0, 0], [0, 0, z], e, f),
    patch([0, y, 0], [0, 0, z], [x, 0, 0], b, c),
    patch([0, 0, 0], [0, 0, z], [0, y, 0], d, a),
    patch([x, 0, 0], [0, y, 0], [0, 0, z], f, b),
  );
}

function patch(at: Vec3, u: Vec3, v: Vec3, across: number, along: number): TriangleMesh {
  const positions: number[] = [];
  for (let j = 0; j <= along; j++)
    for (let i = 0; i <= across; i++)
      for (const k of [0, 1, 2] as const) positions.push(at[k] + (u[k] * i) / across + (v[k] * j) / along);
  const triangles: number[] = [];
  for (let j = 0; j < along; j++)
    for (let i = 0; i < across; i++) {
      const low = j * (across + 1) + i;
      const high = low + across + 1;
      triangles.push(low, low + 1, high + 1, low, high + 1, high);
    }
  return { positions: Float64Array.from(positions), triangles: Int32Array.from(triangles) };
}

/** Facets strewn at random in a cube of 200 mm, some 10 mm wide each. */
export function strewn(count: number, random: () => number): TriangleMesh {
  const positions = new Float64Array(9 * count);
  for (let t = 0; t < count; t++) {
    const at = [200 * random(), 200 * random(), 200 * random()];
    for (let c = 0; c < 9; c++) positions[9 * t + c] = at[c % 3]! + 16 * random() - 8;
  }
  return { positions, triangles: Int32Array.from({ length: 3 * count }, (_, c) => c) };
}
