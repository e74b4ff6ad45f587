import { facetVector } from '../facetVector';
import type { TriangleMesh } from '../triangleMesh';
import { clusterPoints } from './clusterPoints';
import { dropCollapsed } from './facets';

export interface NearWeld {
  /** Collapsed facets are gone. */
  mesh: TriangleMesh;
  /** Vertex of the new mesh for each of the old; -1 where no triangle used it. */
  index: Int32Array;
  /** Corners of triangles that now lie elsewhere. */
  cornersMoved: number;
  /** How far corners moved, averaged over the area of their facets. */
  meanMoveMm: number;
  collapsed: number;
}

/** Merges the corners that lie within `reachMm` of a common place; see `clusterPoints`. The mesh is not changed. */
export function weldNear(mesh: TriangleMesh, reachMm: number): NearWeld {
  const used = usedVertices(mesh);
  const points = new Float64Array(3 * used.length);
  for (let i = 0; i < used.length; i++)
    for (let k = 0; k < 3; k++) points[3 * i + k] = mesh.positions[3 * used[i]! + k]!;
  const { centers, index: groups } = clusterPoints(points, reachMm);
  const index = new Int32Array(mesh.positions.length / 3).fill(-1);
  for (let i = 0; i < used.length; i++) index[used[i]!] = groups[i]!;
  const { mesh: welded, dropped } = dropCollapsed({
    positions: centers,
    triangles: mesh.triangles.map((v) => index[v]!),
  });
  return { mesh: welded, index, collapsed: dropped, ...movesOf(mesh, centers, index) };
}

function usedVertices({ positions, triangles }: TriangleMesh): Int32Array {
  const isUsed = new Uint8Array(positions.length / 3);
  for (const v of triangles) isUsed[v] = 1;
  const used = new Int32Array(isUsed.reduce((sum, one) => sum + one, 0));
  for (let v = 0, at = 0; v < isUsed.length; v++) if (isUsed[v] === 1) used[at++] = v;
  return used;
}

function movesOf(
  mesh: TriangleMesh,
  centers: Float64Array,
  index: Int32Array,
): { cornersMoved: number; meanMoveMm: number } {
  const { positions: p, triangles } = mesh;
  let cornersMoved = 0;
  let weighted = 0;
  let total = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    let moves = 0;
    for (let c = t; c < t + 3; c++) {
      const [from, to] = [3 * triangles[c]!, 3 * index[triangles[c]!]!];
      const move = Math.hypot(
        centers[to]! - p[from]!,
        centers[to + 1]! - p[from + 1]!,
        centers[to + 2]! - p[from + 2]!,
      );
      if (move > 0) cornersMoved++;
      moves += move / 3;
    }
    const area = Math.hypot(...facetVector(mesh, t)) / 2;
    weighted += area * moves;
    total += area;
  }
  return { cornersMoved, meanMoveMm: total > 0 ? weighted / total : 0 };
}
