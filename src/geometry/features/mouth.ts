import { FOUND, AT, QUERY, testTriangle } from '../field/nearest';
import { coordinatesAlong, planeFrame, unit } from '../measure/planeFrame';
import type { TriangleMesh } from '../triangleMesh';
import { cross, dot, type Vector } from '../vector';

/** A round hole from outside into the cavity: the pour opening. */
export interface Mouth {
  /** Its middle on the surface. */
  atMm: Vector;
  /** Out of the body. */
  normal: Vector;
  diameterMm: number;
  /** Points all round its rim, on the surface. */
  lip: readonly Vector[];
  /** How far the point that was asked for lay from the surface. */
  movedMm: number;
  /** Points of the rim that miss the surface: the hole is wider than what it is in. */
  lipMissed: number;
}

/** Chosen here: between so many the height runs as a parabola. */
const LIP_POINTS = 72;

/** A place on a surface: the facet is told as 3 times its number. */
export interface SurfacePlace {
  atMm: Vector;
  facet: number;
  awayMm: number;
}

/** The places on a chain (mm) that are nearest to points. One pass over the facets; most are passed over by how far they can reach. */
export function nearestOnSurface(
  { positions: p, triangles }: TriangleMesh,
  points: readonly Vector[],
): SurfacePlace[] {
  const places = points.map((atMm): SurfacePlace => ({ atMm, facet: 0, awayMm: Infinity }));
  const corners = new Float32Array(9);
  QUERY.fill(0);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const reach = Math.max(
      Math.hypot(p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!),
      Math.hypot(p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!),
    );
    for (let i = 0; i < points.length; i++) {
      const [x, y, z] = points[i]!;
      const place = places[i]!;
      const [dx, dy, dz] = [p[a]! - x, p[a + 1]! - y, p[a + 2]! - z];
      const most = place.awayMm + reach;
      if (dx * dx + dy * dy + dz * dz > most * most) continue;
      corners.set([
        dx,
        dy,
        dz,
        p[b]! - x,
        p[b + 1]! - y,
        p[b + 2]! - z,
        p[c]! - x,
        p[c + 1]! - y,
        p[c + 2]! - z,
      ]);
      testTriangle(corners, ONE_FACET, 0);
      const awayMm = Math.sqrt(FOUND[AT.squared]!);
      if (awayMm >= place.awayMm) continue;
      const atMm: Vector = [x + FOUND[AT.footX]!, y + FOUND[AT.footY]!, z + FOUND[AT.footZ]!];
      places[i] = { atMm, facet: t, awayMm };
    }
  }
  return places;
}

const ONE_FACET = Int32Array.of(0, 1, 2);

/** Which way the surface faces at the places nearest to points: unit vectors out of the body. */
export const facingAt = (mesh: TriangleMesh, points: readonly Vector[]): Vector[] =>
  nearestOnSurface(mesh, points).map(({ facet }) => unit(areaVector(mesh, facet)));

/** A hole of that diameter, moved onto the surface; where no normal is given it faces as the surface does on average within it. */
export function mouthOn(
  mesh: TriangleMesh,
  { atMm, diameterMm, normal: given }: { atMm: Vector; diameterMm: number; normal?: Vector },
): Mouth {
  const nearest = nearestOnSurface(mesh, [atMm])[0]!;
  const normal = given === undefined ? facingAround(mesh, nearest, diameterMm / 2) : unit(given);
  const rim = rimOf(mesh, nearest.atMm, normal, diameterMm / 2);
  return {
    atMm: nearest.atMm,
    normal,
    diameterMm,
    lip: rim.points,
    movedMm: nearest.awayMm,
    lipMissed: rim.missed,
  };
}

/** Mean direction, by area, of the facets with their middle within a radius that face as the nearest one does; its own where there is none. */
function facingAround(
  mesh: TriangleMesh,
  { atMm, facet }: { atMm: Vector; facet: number },
  radiusMm: number,
): Vector {
  const { positions: p, triangles } = mesh;
  const own = areaVector(mesh, facet);
  let sum: Vector = own;
  for (let t = 0; t < triangles.length; t += 3) {
    let squared = 0;
    for (const k of [0, 1, 2] as const) {
      const middle =
        (p[3 * triangles[t]! + k]! + p[3 * triangles[t + 1]! + k]! + p[3 * triangles[t + 2]! + k]!) / 3;
      squared += (middle - atMm[k]) ** 2;
    }
    if (squared > radiusMm * radiusMm || t === facet) continue;
    const area = areaVector(mesh, t);
    if (dot(area, own) > 0) sum = [sum[0] + area[0], sum[1] + area[1], sum[2] + area[2]];
  }
  return unit(sum);
}

function areaVector({ positions: p, triangles }: TriangleMesh, t: number): Vector {
  const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
  const side = (to: number): Vector => [p[to]! - p[a]!, p[to + 1]! - p[a + 1]!, p[to + 2]! - p[a + 2]!];
  return cross(side(b), side(c));
}

/** Where lines along the hole, on its rim, meet the surface nearest to its middle; in its plane where they miss it. */
function rimOf(
  { positions: p, triangles }: TriangleMesh,
  atMm: Vector,
  normal: Vector,
  radiusMm: number,
): { points: Vector[]; missed: number } {
  const { u, v } = planeFrame(normal);
  const turns = Array.from({ length: LIP_POINTS }, (_, i) => (2 * Math.PI * i) / LIP_POINTS);
  const us = turns.map((turn) => radiusMm * Math.cos(turn));
  const vs = turns.map((turn) => radiusMm * Math.sin(turn));
  const depths = new Array<number>(LIP_POINTS).fill(Infinity);
  const us0 = coordinatesAlong(p, u, atMm);
  const vs0 = coordinatesAlong(p, v, atMm);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    const [ua, ub, uc] = [us0[a]!, us0[b]!, us0[c]!];
    if (
      (ua > radiusMm && ub > radiusMm && uc > radiusMm) ||
      (ua < -radiusMm && ub < -radiusMm && uc < -radiusMm)
    )
      continue;
    const [va, vb, vc] = [vs0[a]!, vs0[b]!, vs0[c]!];
    if (
      (va > radiusMm && vb > radiusMm && vc > radiusMm) ||
      (va < -radiusMm && vb < -radiusMm && vc < -radiusMm)
    )
      continue;
    const twice = (ub - ua) * (vc - va) - (uc - ua) * (vb - va);
    // Facets that face inward close the far side.
    if (twice <= 0) continue;
    const [depthA, depthB, depthC] = [a, b, c].map((vertex) => depthOf(p, vertex, atMm, normal)) as [
      number,
      number,
      number,
    ];
    for (let i = 0; i < LIP_POINTS; i++) {
      const x = us[i]! - ua;
      const y = vs[i]! - va;
      const toB = (x * (vc - va) - y * (uc - ua)) / twice;
      const toC = ((ub - ua) * y - (vb - va) * x) / twice;
      if (toB < 0 || toC < 0 || toB + toC > 1) continue;
      const depth = depthA + toB * (depthB - depthA) + toC * (depthC - depthA);
      if (Math.abs(depth) < Math.abs(depths[i]!)) depths[i] = depth;
    }
  }
  const reached = depths.map((depth) => Math.abs(depth) <= MOST_DEPTH * radiusMm);
  const points = turns.map((_, i): Vector => {
    const depth = reached[i]! ? depths[i]! : 0;
    return [0, 1, 2].map((k) => {
      const at = k as 0 | 1 | 2;
      return atMm[at] + us[i]! * u[at] + vs[i]! * v[at] + depth * normal[at];
    }) as unknown as Vector;
  });
  return { points, missed: reached.filter((is) => !is).length };
}

const depthOf = (p: Float64Array, vertex: number, atMm: Vector, normal: Vector): number =>
  dot([p[3 * vertex]! - atMm[0], p[3 * vertex + 1]! - atMm[1], p[3 * vertex + 2]! - atMm[2]], normal);

/** A rim point farther along the hole than this many radii lies on another part of the body. Chosen here. */
const MOST_DEPTH = 2;

/** Highest and lowest point of the rim along up: heights from the origin of the mesh, mm, and the highest of its points. */
export function lipHeights({ lip }: Mouth, up: Vector): { highMm: number; lowMm: number; highest: Vector } {
  const heights = lip.map((point) => dot(point, up));
  const top = heights.indexOf(Math.max(...heights));
  const bottom = heights.indexOf(Math.min(...heights));
  return { highMm: peakAt(heights, top), lowMm: peakAt(heights, bottom), highest: lip[top]! };
}

/** Between the points of a ring: the vertex of the parabola through a highest (or lowest) value and its two neighbors. */
function peakAt(heights: readonly number[], at: number): number {
  const count = heights.length;
  const [before, here, after] = [
    heights[(at + count - 1) % count]!,
    heights[at]!,
    heights[(at + 1) % count]!,
  ];
  const bend = before - 2 * here + after;
  return bend === 0 ? here : here - (before - after) ** 2 / (8 * bend);
}
