import { pairEdges } from '../repair/edges';
import { uncancelledEdges } from '../repair/openEdges';
import { facetVector } from '../facetVector';
import type { TriangleMesh } from '../triangleMesh';

export interface Flux {
  /** A third of the flux of the place vector about the area centroid: the volume, if the facets were closed. Signed. */
  volumeMm3: number;
  areaMm2: number;
  centerMm: [number, number, number];
}

/** About the area centroid: what is missing then changes the flux least, wherever the file's zero lies. */
export function fluxOf(mesh: TriangleMesh): Flux {
  const { positions: p, triangles } = mesh;
  const origin = [0, 1, 2].map((k) => p[3 * triangles[0]! + k]!);
  const moment = [0, 0, 0];
  const vector = [0, 0, 0];
  let areaMm2 = 0;
  let about = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const n = facetVector(mesh, t).map((x) => x / 2);
    const area = Math.hypot(n[0]!, n[1]!, n[2]!);
    areaMm2 += area;
    for (let k = 0; k < 3; k++) {
      const middle = (p[a + k]! + p[b + k]! + p[c + k]!) / 3 - origin[k]!;
      moment[k]! += area * middle;
      vector[k]! += n[k]!;
      about += n[k]! * middle;
    }
  }
  const mean = moment.map((m) => (areaMm2 > 0 ? m / areaMm2 : 0));
  // Moving the origin by m changes the flux by m times the sum of the area vectors, which is zero only where all is closed.
  const volumeMm3 = (about - mean.reduce((sum, m, k) => sum + m * vector[k]!, 0)) / 3;
  return { volumeMm3, areaMm2, centerMm: mean.map((m, k) => m + origin[k]!) as Flux['centerMm'] };
}

/**
 * The facets with a cone from every edge that none cancels to one place: a closed chain, whose volume is the flux about that
 * place. Its caps run through the inside and are no surface of the piece.
 */
export function coneAll(
  mesh: TriangleMesh,
  apexMm: readonly [number, number, number],
): TriangleMesh & { openEdges: number } {
  const pairs = pairEdges(mesh);
  const edges = uncancelledEdges(mesh, pairs, new Uint8Array(mesh.triangles.length / 3));
  const apex = mesh.positions.length / 3;
  const positions = new Float64Array(mesh.positions.length + 3);
  positions.set(mesh.positions);
  positions.set(apexMm, mesh.positions.length);
  const triangles = new Int32Array(mesh.triangles.length + 3 * edges.from.length);
  triangles.set(mesh.triangles);
  for (let e = 0, at = mesh.triangles.length; e < edges.from.length; e++) {
    triangles[at++] = edges.from[e]!;
    triangles[at++] = edges.to[e]!;
    triangles[at++] = apex;
  }
  return { positions, triangles, openEdges: pairs.openCount };
}
