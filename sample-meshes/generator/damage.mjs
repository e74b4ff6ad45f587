import { cross, dot, minus, pointAt, vertexNormals } from './measure.mjs';

/** Triangles of the flat base removed (they are the last baseTriangles of the list). */
export function withoutBase(mesh) {
  return { ...mesh, triangles: mesh.triangles.slice(0, mesh.triangles.length - 3 * mesh.baseTriangles) };
}

/**
 * Every vertex moved along its normal by a uniform amount within +-amplitudeMm. Vertices at z = 0 move in
 * that plane only, so the rim stays flat; the inner base vertices have no in-plane normal and stay.
 */
export function withNoise({ mesh, random, amplitudeMm }) {
  const side = vertexNormals(withoutBase(mesh));
  const points = [...mesh.points];
  for (let v = 0; v < points.length / 3; v += 1) {
    const n = pointAt(side, v);
    if (mesh.isBase[v]) n[2] = 0;
    const size = Math.sqrt(dot(n, n));
    const step = (random() * amplitudeMm) / (size || 1);
    for (let a = 0; a < 3; a += 1) points[3 * v + a] += step * n[a];
  }
  return { ...mesh, points };
}

/** All triangles removed that touch a vertex within radiusMm of the vertex nearest to nearMm. */
export function withHole({ mesh, nearMm, radiusMm }) {
  const centre = pointAt(mesh.points, nearestVertex(mesh, nearMm));
  const gone = (v) => distance(pointAt(mesh.points, v), centre) <= radiusMm;
  const triangles = [];
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const corners = mesh.triangles.slice(t, t + 3);
    if (!corners.some(gone)) triangles.push(...corners);
  }
  return { ...mesh, triangles };
}

/**
 * A closed lump, tetrahedron or octahedron with unequal half-axes, floating over the vertex nearest to
 * nearMm: its centre lies on that vertex's normal, gapMm plus its largest half-axis above the surface.
 */
export function speck({ mesh, nearMm, gapMm, halfAxesMm, kind }) {
  const v = nearestVertex(mesh, nearMm);
  const lift = gapMm + Math.max(...halfAxesMm);
  const n = pointAt(vertexNormals(mesh), v);
  const centre = pointAt(mesh.points, v).map((c, a) => c + lift * n[a]);
  const corners = kind === 'tetrahedron' ? TETRAHEDRON : OCTAHEDRON;
  const points = corners.flatMap((corner) => corner.map((c, a) => centre[a] + c * halfAxesMm[a]));
  return { points, triangles: hullTriangles(corners) };
}

/** Smallest distance from a vertex of the speck to a vertex of the mesh, mm. */
export function gapBetween(lump, mesh) {
  let least = Infinity;
  for (let w = 0; w < lump.points.length / 3; w += 1) {
    const corner = pointAt(lump.points, w);
    const v = nearestVertex(mesh, corner);
    least = Math.min(least, distance(pointAt(mesh.points, v), corner));
  }
  return least;
}

// Corners at unit distance from the centre.
const THIRD = 1 / Math.sqrt(3);
const TETRAHEDRON = [
  [1, 1, 1],
  [1, -1, -1],
  [-1, 1, -1],
  [-1, -1, 1],
].map((c) => c.map((v) => v * THIRD));
const OCTAHEDRON = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
  [0, 0, -1],
];

// Triples of corners with all others strictly on one side, turned outward.
function hullTriangles(corners) {
  const out = [];
  for (let i = 0; i < corners.length; i += 1) {
    for (let j = i + 1; j < corners.length; j += 1) {
      for (let k = j + 1; k < corners.length; k += 1) {
        const n = cross(minus(corners[j], corners[i]), minus(corners[k], corners[i]));
        const others = corners.filter((_, m) => m !== i && m !== j && m !== k);
        const heights = others.map((c) => dot(n, minus(c, corners[i])));
        if (heights.every((h) => h < -1e-9)) out.push(i, j, k);
        if (heights.every((h) => h > 1e-9)) out.push(i, k, j);
      }
    }
  }
  return out;
}

function nearestVertex(mesh, p) {
  let [best, least] = [-1, Infinity];
  for (const v of new Set(mesh.triangles)) {
    const d = distance(pointAt(mesh.points, v), p);
    if (d < least) [best, least] = [v, d];
  }
  return best;
}

function distance(a, b) {
  const d = minus(a, b);
  return Math.sqrt(dot(d, d));
}
