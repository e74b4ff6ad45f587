import { convexHull } from '../plane/convexHull';
import { coordinatesAlong, joined, planeFrame, type Vector } from './planeFrame';
import type { Section } from './section';

/** What the tape goes round: all outlines together, the longest one, or the one that passes nearest to a point. */
export type Taped = 'all' | 'longest' | { nearest: Vector };

export interface Girth {
  /** 0 where the plane misses the body. */
  girthMm: number;
  /** Where the tape touches, x, y, z per point, counter-clockwise seen from the tip of the normal. */
  hull: Float64Array;
}

/**
 * Girth of a section as a tape pulled taut measures it: perimeter of the convex hull of its outlines, mm. A tape bridges hollows
 * and goes round two legs at once; so does this, unless told to take one outline.
 */
export function girthOf({ outlines, plane }: Section, taped: Taped = 'all'): Girth {
  const points = joined(outlinesTaped(outlines, taped));
  const { u, v } = planeFrame(plane.normal);
  const us = coordinatesAlong(points, u, plane.point);
  const vs = coordinatesAlong(points, v, plane.point);
  const order = convexHull(us, vs);
  let girthMm = 0;
  order.forEach((i, k) => {
    const j = order[(k + 1) % order.length]!;
    girthMm += Math.hypot(us[j]! - us[i]!, vs[j]! - vs[i]!);
  });
  return { girthMm, hull: joined(order.map((i) => points.subarray(3 * i, 3 * i + 3))) };
}

function outlinesTaped(outlines: readonly Float64Array[], taped: Taped): readonly Float64Array[] {
  if (taped === 'all' || outlines.length < 2) return outlines;
  const rank = outlines.map(taped === 'longest' ? (o) => -lengthOf(o) : (o) => distanceTo(o, taped.nearest));
  return [outlines[rank.indexOf(Math.min(...rank))]!];
}

const pointAt = (outline: Float64Array, i: number): Vector => {
  const at = (3 * i) % outline.length;
  return [outline[at]!, outline[at + 1]!, outline[at + 2]!];
};

function lengthOf(outline: Float64Array): number {
  let length = 0;
  for (let i = 0; i < outline.length / 3; i++) {
    const [a, b] = [pointAt(outline, i), pointAt(outline, i + 1)];
    length += Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
  }
  return length;
}

/** Distance of a point from the nearest segment of an outline. */
function distanceTo(outline: Float64Array, point: Vector): number {
  let nearest = Infinity;
  for (let i = 0; i < outline.length / 3; i++) {
    const [a, b] = [pointAt(outline, i), pointAt(outline, i + 1)];
    const [x, y, z] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
    const [px, py, pz] = [point[0] - a[0], point[1] - a[1], point[2] - a[2]];
    const along = (x * px + y * py + z * pz) / (x * x + y * y + z * z);
    const share = Math.min(1, Math.max(0, along));
    nearest = Math.min(nearest, Math.hypot(px - share * x, py - share * y, pz - share * z));
  }
  return nearest;
}
