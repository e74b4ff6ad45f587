import type { TriangleMesh } from '../triangleMesh';
import type { Clusters } from './vertexClusters';

/** Numbers a cluster: the six of n n^T, the three of (n . p) n, and the sum of its vertices with their count. */
const [MATRIX, RIGHT, SUM, COUNT, SIZE] = [0, 6, 9, 12, 13] as const;

/**
 * How strongly a place is drawn to the mean of its vertices, as a share of the trace: decides only along what the planes leave open, as Lindstrom's
 * least singular value of a thousandth does.
 */
const TO_MEAN = 1e-3;

/**
 * One place a cluster: the least sum of squared distances from the planes of the triangles that touch its cell, by twice their area (Lindstrom 2000), kept
 * within the cell.
 */
export function placeClusters(mesh: TriangleMesh, clusters: Clusters): Float64Array {
  const quadrics = new Float64Array(SIZE * clusters.count);
  addTriangles(mesh, clusters, quadrics);
  addMeans(mesh, clusters, quadrics);
  const places = new Float64Array(3 * clusters.count);
  for (let n = 0; n < clusters.count; n++) {
    solve(quadrics, SIZE * n);
    for (let a = 0; a < 3; a++) {
      const far = Math.min(clusters.cell, Math.max(0, PLACE[a]!));
      places[3 * n + a] = clusters.corners[3 * n + a]! + far;
    }
  }
  return places;
}

/** Planes are told from the corner of the cell, so that no digits are lost far from zero. */
function addTriangles({ positions: p, triangles }: TriangleMesh, clusters: Clusters, q: Float64Array): void {
  const { of, corners } = clusters;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t]!;
    const b = 3 * triangles[t + 1]!;
    const c = 3 * triangles[t + 2]!;
    const [px, py, pz] = [p[a]!, p[a + 1]!, p[a + 2]!];
    const [ux, uy, uz] = [p[b]! - px, p[b + 1]! - py, p[b + 2]! - pz];
    const [vx, vy, vz] = [p[c]! - px, p[c + 1]! - py, p[c + 2]! - pz];
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const first = of[triangles[t]!]!;
    const second = of[triangles[t + 1]!]!;
    const third = of[triangles[t + 2]!]!;
    for (let e = 0; e < 3; e++) {
      const n = e === 0 ? first : e === 1 ? second : third;
      if ((e === 1 && n === first) || (e === 2 && (n === first || n === second))) continue;
      const at = SIZE * n;
      const d =
        nx * (px - corners[3 * n]!) + ny * (py - corners[3 * n + 1]!) + nz * (pz - corners[3 * n + 2]!);
      q[at]! += nx * nx;
      q[at + 1]! += nx * ny;
      q[at + 2]! += nx * nz;
      q[at + 3]! += ny * ny;
      q[at + 4]! += ny * nz;
      q[at + 5]! += nz * nz;
      q[at + RIGHT]! += d * nx;
      q[at + RIGHT + 1]! += d * ny;
      q[at + RIGHT + 2]! += d * nz;
    }
  }
}

function addMeans({ positions: p }: TriangleMesh, { of, corners }: Clusters, q: Float64Array): void {
  for (let v = 0; v < of.length; v++) {
    const n = of[v]!;
    if (n < 0) continue;
    for (let a = 0; a < 3; a++) q[SIZE * n + SUM + a]! += p[3 * v + a]! - corners[3 * n + a]!;
    q[SIZE * n + COUNT]!++;
  }
}

/** Of the last `solve`, from the corner of the cell. */
const PLACE = new Float64Array(3);

/** (A + w I) x = r + w m by Cramer's rule; the mean where no triangle has an area. */
function solve(q: Float64Array, at: number): void {
  const count = q[at + COUNT]!;
  const [mx, my, mz] = [q[at + SUM]! / count, q[at + SUM + 1]! / count, q[at + SUM + 2]! / count];
  const trace = q[at + MATRIX]! + q[at + 3]! + q[at + 5]!;
  PLACE[0] = mx;
  PLACE[1] = my;
  PLACE[2] = mz;
  if (!(trace > 0)) return;
  const w = TO_MEAN;
  const a = q[at]! / trace + w;
  const b = q[at + 1]! / trace;
  const c = q[at + 2]! / trace;
  const d = q[at + 3]! / trace + w;
  const e = q[at + 4]! / trace;
  const f = q[at + 5]! / trace + w;
  const rx = q[at + RIGHT]! / trace + w * mx;
  const ry = q[at + RIGHT + 1]! / trace + w * my;
  const rz = q[at + RIGHT + 2]! / trace + w * mz;
  const [aa, bb, cc] = [d * f - e * e, c * e - b * f, b * e - c * d];
  const scale = 1 / (a * aa + b * bb + c * cc);
  PLACE[0] = scale * (aa * rx + bb * ry + cc * rz);
  PLACE[1] = scale * (bb * rx + (a * f - c * c) * ry + (b * c - a * e) * rz);
  PLACE[2] = scale * (cc * rx + (b * c - a * e) * ry + (a * d - b * b) * rz);
}
