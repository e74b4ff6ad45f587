import Module from 'manifold-3d';
import type { TriangleMesh } from '../../src/geometry';
import type { Vec3 } from './shapes';

/**
 * What solids hold when they are grown (positive) or shrunk (negative) by a distance, from outside our code: Steiner's formula,
 * half-spaces moved inward (their corners from the convex hull of the dual points, by the Manifold library of Lalish and others),
 * Weyl's tube formula within the reach of a smooth surface, and elementary geometry for the rest.
 */
export type VolumeAt = (levelMm: number) => number;

export interface TrueBody {
  mesh: TriangleMesh;
  volumeMm3: VolumeAt;
  /** How far the truth holds, outward and inward. */
  outMm: number;
  inMm: number;
}

const wasm = await Module();
wasm.setup();

/** A convex polyhedron, exactly. Inward as far as its middle keeps clear of every face. */
export function convexBody(mesh: TriangleMesh): TrueBody {
  const grown = tubeVolume(mesh, 2);
  const planes = planesAbout(mesh, middleOf(mesh));
  return {
    mesh,
    volumeMm3: (level) => (level >= 0 ? grown(level) : volumeWithin(planes, -level)),
    outMm: Infinity,
    inMm: Math.min(...planes.map(({ h }) => h)),
  };
}

/** A finely faceted smooth body; `eulerNumber` is 2 for a ball, 0 for a torus. Holds up to where neighboring normals meet. */
export function smoothBody(mesh: TriangleMesh, eulerNumber: number): TrueBody {
  return { mesh, volumeMm3: tubeVolume(mesh, eulerNumber), ...reachOf(mesh) };
}

/**
 * V + A L + L^2 sum(edge length x f) + (2 pi/3) euler L^3. At an edge of exterior angle t, f is t/2 where the offset fans out (Steiner)
 * and tan(t/2) where the slabs on both sides overlap; the last term is Gauss and Bonnet's. Exact outward of convex polyhedra; else
 * right to the square of the angles between facets (derived here).
 */
function tubeVolume(mesh: TriangleMesh, eulerNumber: number): VolumeAt {
  let [volume, area] = [0, 0];
  const facets = facetsOf(mesh);
  for (const { a, n, twiceArea } of facets) {
    volume += (twiceArea / 6) * dot(a, n);
    area += twiceArea / 2;
  }
  let [grow, shrink] = [0, 0];
  for (const { length, angle } of edgesOf(mesh, facets)) {
    grow += length * (angle >= 0 ? angle / 2 : Math.tan(angle / 2));
    shrink += length * (angle >= 0 ? Math.tan(angle / 2) : angle / 2);
  }
  const bend = ((2 * Math.PI) / 3) * eulerNumber;
  return (level) => volume + area * level + (level >= 0 ? grow : shrink) * level ** 2 + bend * level ** 3;
}

interface Facet {
  vertices: readonly [number, number, number];
  a: Vec3;
  n: Vec3;
  twiceArea: number;
}

function facetsOf({ positions: p, triangles }: TriangleMesh): Facet[] {
  const point = (v: number): Vec3 => [p[3 * v]!, p[3 * v + 1]!, p[3 * v + 2]!];
  return Array.from({ length: triangles.length / 3 }, (_, t) => {
    const vertices = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!] as const;
    const [a, b, c] = vertices.map(point) as [Vec3, Vec3, Vec3];
    const n = cross(minus(b, a), minus(c, a));
    const twiceArea = Math.hypot(...n);
    return { vertices, a, n: n.map((x) => x / twiceArea) as unknown as Vec3, twiceArea };
  });
}

/** Every edge of a closed mesh once, with its exterior angle: positive where the surface is convex. */
function edgesOf(
  { positions: p }: TriangleMesh,
  facets: readonly Facet[],
): { length: number; angle: number }[] {
  const count = p.length / 3;
  const first = new Map<number, Facet>();
  const edges: { length: number; angle: number }[] = [];
  for (const facet of facets)
    for (let k = 0; k < 3; k++) {
      const [u, v] = [facet.vertices[k]!, facet.vertices[(k + 1) % 3]!];
      const other = first.get(v * count + u);
      first.set(u * count + v, facet);
      if (other === undefined) continue;
      const along: Vec3 = [0, 1, 2].map((i) => p[3 * v + i]! - p[3 * u + i]!) as unknown as Vec3;
      const length = Math.hypot(...along);
      // From this facet to the other one the normal turns about the edge as this facet runs along it.
      const sine = dot(cross(facet.n, other.n), along) / length;
      edges.push({ length, angle: Math.atan2(sine, dot(facet.n, other.n)) });
    }
  return edges;
}

interface HalfSpace {
  n: Vec3;
  h: number;
}

/** The planes of the facets about a point inside, each once. */
function planesAbout(mesh: TriangleMesh, at: Vec3): HalfSpace[] {
  const all = facetsOf(mesh).map(({ a, n }) => ({ n, h: dot(n, minus(a, at)) }));
  all.sort((one, two) => one.n[0] - two.n[0]);
  const planes: HalfSpace[] = [];
  for (const plane of all) {
    let isKnown = false;
    for (let i = planes.length - 1; i >= 0 && plane.n[0] - planes[i]!.n[0] < 1e-9 && !isKnown; i--)
      isKnown = Math.hypot(...minus(plane.n, planes[i]!.n)) < 1e-9;
    if (!isKnown) planes.push(plane);
  }
  return planes;
}

/**
 * Volume of what lies at least `depth` behind every plane. The faces of the hull of the points n/h are the corners of that body, its
 * edges join the corners of faces that share an edge; summed as tetrahedra from the middle over the plane of each face.
 */
function volumeWithin(planes: readonly HalfSpace[], depth: number): number {
  const moved = planes.map(({ n, h }) => ({ n, h: h - depth }));
  if (moved.some(({ h }) => !(h > 0))) return 0;
  const numbers = hullOf(moved.map(({ n, h }): Vec3 => [n[0] / h, n[1] / h, n[2] / h]));
  const count = planes.length;
  const corner = new Map<number, Vec3>();
  for (let t = 0; t < numbers.length; t += 3) {
    const three = [0, 1, 2].map((k) => numbers[t + k]!);
    const x = meetingOf(...(three.map((i) => moved[i]!) as [HalfSpace, HalfSpace, HalfSpace]));
    for (let k = 0; k < 3; k++) corner.set(three[k]! * count + three[(k + 1) % 3]!, x);
  }
  let sum = 0;
  for (const [key, x] of corner) {
    const i = Math.floor(key / count);
    const { n, h } = moved[i]!;
    sum += h * dot(n, cross(corner.get((key % count) * count + i)!, x));
  }
  return Math.abs(sum) / 6;
}

/** The convex hull of some points as a mesh. */
export const hullMesh = (points: readonly Vec3[]): TriangleMesh => {
  const numbers = hullOf(points);
  const used = [...new Set(numbers)];
  const place = new Map(used.map((v, i) => [v, i]));
  return {
    positions: Float64Array.from(used.flatMap((v) => [...points[v]!])),
    triangles: Int32Array.from(numbers, (v) => place.get(v)!),
  };
};

/** Triangles of the convex hull, by the numbers of the points. The library hands vertices back as float32, which tells them apart. */
function hullOf(points: readonly Vec3[]): number[] {
  const numberOf = new Map(points.map((p, i) => [p.map(Math.fround).join(' '), i]));
  const solid = wasm.Manifold.hull(points.map(([x, y, z]): [number, number, number] => [x, y, z]));
  const { vertProperties, triVerts, numProp } = solid.getMesh();
  solid.delete();
  return Array.from(triVerts, (v) => {
    const number = numberOf.get(vertProperties.subarray(numProp * v, numProp * v + 3).join(' '));
    if (number === undefined) throw new Error('hullOf: expected a point of the input, got another');
    return number;
  });
}

/** Where three planes meet (Cramer's rule). */
function meetingOf(one: HalfSpace, two: HalfSpace, three: HalfSpace): Vec3 {
  const [a, b, c] = [cross(two.n, three.n), cross(three.n, one.n), cross(one.n, two.n)];
  const det = dot(one.n, a);
  return [0, 1, 2].map((k) => (one.h * a[k]! + two.h * b[k]! + three.h * c[k]!) / det) as unknown as Vec3;
}

/** How far every corner can be moved along its normal, outward and inward, before a facet turns over. */
function reachOf(mesh: TriangleMesh): { outMm: number; inMm: number } {
  const facets = facetsOf(mesh);
  const normals = new Float64Array(mesh.positions.length);
  for (const { vertices, n, twiceArea } of facets)
    for (const v of vertices) for (let k = 0; k < 3; k++) normals[3 * v + k]! += twiceArea * n[k]!;
  const unit = (v: number): Vec3 => {
    const n: Vec3 = [normals[3 * v]!, normals[3 * v + 1]!, normals[3 * v + 2]!];
    return n.map((x) => x / Math.hypot(...n)) as unknown as Vec3;
  };
  let [outMm, inMm] = [Infinity, Infinity];
  const p = mesh.positions;
  for (const { vertices, n, twiceArea } of facets) {
    const [a, b, c] = vertices;
    const side = (v: number): Vec3 => [0, 1, 2].map((k) => p[3 * v + k]! - p[3 * a + k]!) as unknown as Vec3;
    const [u, w, mu, mw] = [side(b), side(c), minus(unit(b), unit(a)), minus(unit(c), unit(a))];
    // (u + L mu) x (w + L mw) . n = twiceArea + p1 L + p2 L^2
    const p1 = dot(n, cross(u, mw)) + dot(n, cross(mu, w));
    const p2 = dot(n, cross(mu, mw));
    const root = Math.sqrt(Math.max(0, p1 * p1 - 4 * p2 * twiceArea));
    for (const level of [(2 * twiceArea) / (-p1 + root), (2 * twiceArea) / (-p1 - root)])
      if (level > 0) outMm = Math.min(outMm, level);
      else inMm = Math.min(inMm, -level);
  }
  return { outMm, inMm };
}

const middleOf = ({ positions: p }: TriangleMesh): Vec3 => {
  const sum = [0, 0, 0];
  for (let i = 0; i < p.length; i++) sum[i % 3]! += p[i]!;
  return sum.map((x) => (3 * x) / p.length) as unknown as Vec3;
};

const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
