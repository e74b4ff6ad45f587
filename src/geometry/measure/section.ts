import type { TriangleMesh } from '../triangleMesh';
import { coordinatesAlong, joined, ON_PLANE_SHARE, planeFrame, type Vector } from './planeFrame';
import { measureRegion, type WindingRegion } from './windingRegion';

/** A plane through `point`, mm, across `normal` (any length above 0). */
export interface Plane {
  point: Vector;
  normal: Vector;
}

/**
 * A plane section. Area and perimeter are of the region with winding number 1 or more: the union, where shells overlap.
 */
export interface Section extends WindingRegion {
  plane: Plane;
  /** Closed outlines, x, y, z per point, mm, the last point joined to the first: counter-clockwise around solid, clockwise around voids, seen from the tip of the normal. */
  outlines: Float64Array[];
  /** Plain sum of the outlines' areas: what is covered twice counts twice, what faces in is taken off. */
  signedAreaMm2: number;
}

/**
 * Cuts a closed chain of triangles that faces outward (mm) by a plane. A vertex on the plane counts as beyond it, on the normal's
 * side, so a plane flush with a flat top gives that top, and one flush with a flat bottom nothing. The crossing of an edge is
 * computed once, from its lower-numbered vertex. Linear in the triangles. Throws on a chain that is open across the plane.
 */
export function sectionOf(mesh: TriangleMesh, plane: Plane): Section {
  const frame = planeFrame(plane.normal);
  const outlines = sectionOutlines(mesh, plane);
  const segments = joined(outlines.map((outline) => segmentsIn(outline, plane.point, frame)));
  return { plane, outlines, ...measureRegion(segments), signedAreaMm2: signedArea(segments) };
}

/** The outlines of `sectionOf` alone, with nothing measured: to be drawn. Throws as it does. */
export const sectionOutlines = (mesh: TriangleMesh, { point, normal }: Plane): Float64Array[] =>
  chained(crossingsOf(mesh, heightsOver(mesh, point, planeFrame(normal).n)));

function heightsOver({ positions, triangles }: TriangleMesh, point: Vector, n: Vector): Float64Array {
  const heights = coordinatesAlong(positions, n, point);
  let largest = 0;
  for (let c = 0; c < triangles.length; c++) largest = Math.max(largest, Math.abs(heights[triangles[c]!]!));
  const tolerance = ON_PLANE_SHARE * largest;
  for (let v = 0; v < heights.length; v++) if (Math.abs(heights[v]!) <= tolerance) heights[v] = 0;
  return heights;
}

/** Where triangles meet the plane: steps between points on edges, the solid on their left seen from the tip of the normal. */
interface Crossings {
  points: number[];
  from: number[];
  to: number[];
}

function crossingsOf(mesh: TriangleMesh, heights: Float64Array): Crossings {
  const { triangles } = mesh;
  const found: Crossings = { points: [], from: [], to: [] };
  const made = new Map<number, number>();
  for (let t = 0; t < triangles.length; t += 3) {
    const beyond =
      Number(heights[triangles[t]!]! >= 0) +
      Number(heights[triangles[t + 1]!]! >= 0) +
      Number(heights[triangles[t + 2]!]! >= 0);
    if (beyond === 0 || beyond === 3) continue;
    for (let e = 0; e < 3; e++) {
      const a = triangles[t + e]!;
      const b = triangles[t + ((e + 1) % 3)]!;
      const isAbove = heights[a]! >= 0;
      if (isAbove === heights[b]! >= 0) continue;
      (isAbove ? found.from : found.to).push(pointOn(mesh.positions, heights, a, b, made, found.points));
    }
  }
  return found;
}

/** Number of the point where the edge a-b meets the plane. */
function pointOn(
  p: Float64Array,
  heights: Float64Array,
  a: number,
  b: number,
  made: Map<number, number>,
  points: number[],
): number {
  const low = a < b ? a : b;
  const high = a < b ? b : a;
  const key = low * heights.length + high;
  const known = made.get(key);
  if (known !== undefined) return known;
  const share = heights[low]! / (heights[low]! - heights[high]!);
  for (let k = 0; k < 3; k++) {
    const start = p[3 * low + k]!;
    const end = p[3 * high + k]!;
    points.push(share === 1 ? end : start + share * (end - start));
  }
  made.set(key, points.length / 3 - 1);
  return points.length / 3 - 1;
}

/** Joins the steps to outlines. Where several leave a point, as where shells share an edge, any pairing closes. */
function chained({ points, from, to }: Crossings): Float64Array[] {
  const leaving: number[][] = Array.from({ length: points.length / 3 }, () => []);
  from.forEach((point, step) => leaving[point]!.push(step));
  const outlines: Float64Array[] = [];
  for (let start = 0; start < leaving.length; start++) {
    while (leaving[start]!.length > 0) {
      const outline: number[] = [];
      let at = start;
      do {
        append(outline, points, at);
        const step = leaving[at]!.pop();
        if (step === undefined) throw new Error('sectionOf: expected a closed chain, got an open outline');
        at = to[step]!;
      } while (at !== start);
      if (outline.length > 3) outlines.push(withoutRepeatedEnd(outline));
    }
  }
  return outlines;
}

/** Edges that meet in a vertex on the plane all cross there: their point is taken once. */
function append(outline: number[], points: readonly number[], at: number): void {
  const last = outline.length - 3;
  const [x, y, z] = [points[3 * at]!, points[3 * at + 1]!, points[3 * at + 2]!];
  if (last < 0 || outline[last] !== x || outline[last + 1] !== y || outline[last + 2] !== z)
    outline.push(x, y, z);
}

function withoutRepeatedEnd(outline: number[]): Float64Array {
  const last = outline.length - 3;
  const isRepeated = [0, 1, 2].every((k) => outline[k] === outline[last + k]);
  return Float64Array.from(isRepeated ? outline.slice(0, last) : outline);
}

function segmentsIn(outline: Float64Array, point: Vector, { u, v }: { u: Vector; v: Vector }): Float64Array {
  const us = coordinatesAlong(outline, u, point);
  const vs = coordinatesAlong(outline, v, point);
  const segments = new Float64Array(4 * us.length);
  for (let i = 0; i < us.length; i++) {
    const j = (i + 1) % us.length;
    segments.set([us[i]!, vs[i]!, us[j]!, vs[j]!], 4 * i);
  }
  return segments;
}

function signedArea(segments: Float64Array): number {
  let twice = 0;
  for (let i = 0; i < segments.length; i += 4)
    twice += segments[i]! * segments[i + 3]! - segments[i + 2]! * segments[i + 1]!;
  return twice / 2;
}
