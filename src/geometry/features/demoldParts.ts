import { planeFrame, type Vector } from '../measure/planeFrame';
import type { Plane } from '../measure/section';
import { convexHull } from '../plane/convexHull';
import type { SectionOut, SectionsOut } from './demoldSection';
import { gapMm, grouped, isOverlap, ringOf, signedMm2, type FlatRing } from './demoldRings';

/** What of a section hangs together in its plane, with what it goes on as in the planes beside it. */
export interface Part {
  alongMm: number;
  girthMm: number;
  middleMm: Vector;
  /** Corners of what a tape goes round. */
  corners: FlatRing;
  rings: FlatRing[];
  /** In the next plane towards the mouth, and in the next one deeper in. */
  shallower: Part[];
  deeper: Part[];
  /** Nothing leads from it to the mouth but by way of what lies deeper: part of a limb that points to the mouth. */
  isHanging: boolean;
}

/**
 * A limb that leans so far that it leaves its own shadow between two planes is followed if it moves by no more than this many times
 * their distance: leaning up to 72 degrees. Chosen here.
 */
const LEAN = 3;

/** Parts of every plane, linked. Those of less girth than `leastMm` are left out. */
export function partsOf({ sections, way }: SectionsOut, leastMm: number): Part[][] {
  const plane: Plane = { point: sections[0]!.middleMm, normal: way };
  const solid = sections.map((section) =>
    partsIn(section, plane).filter(({ girthMm }) => girthMm >= leastMm),
  );
  const planes = solid.filter((parts) => parts.length > 0);
  for (let i = 0; i + 1 < planes.length; i++) {
    link(planes[i]!, planes[i + 1]!);
    for (const part of planes[i + 1]!) part.isHanging = part.shallower.every(({ isHanging }) => isHanging);
  }
  return planes;
}

function partsIn(section: SectionOut, plane: Plane): Part[] {
  const solid = section.outlines
    .map((outline) => ringOf(outline, plane))
    .filter((ring) => signedMm2(ring) > 0);
  return grouped(solid).map((rings) => ({
    alongMm: section.alongMm,
    rings,
    ...tapeRound(rings, section, plane),
    shallower: [],
    deeper: [],
    isHanging: false,
  }));
}

/** The tape around flat outlines of one section: girth, corners and the middle of what it holds. */
export function tapeRound(
  rings: readonly FlatRing[],
  section: { alongMm: number; middleMm: Vector },
  plane: Plane,
): { girthMm: number; corners: FlatRing; middleMm: Vector } {
  const points = rings.flatMap((ring) => Array.from(ring));
  const us = Float64Array.from({ length: points.length / 2 }, (_, i) => points[2 * i]!);
  const vs = Float64Array.from({ length: points.length / 2 }, (_, i) => points[2 * i + 1]!);
  const corners = Float64Array.from(convexHull(us, vs).flatMap((i) => [us[i]!, vs[i]!]));
  let girthMm = 0;
  for (let i = 0, j = corners.length - 2; i < corners.length; j = i, i += 2)
    girthMm += Math.hypot(corners[i]! - corners[j]!, corners[i + 1]! - corners[j + 1]!);
  return { girthMm, corners, middleMm: placeOf(flatMiddle(corners), section, plane) };
}

/** Of the area; the parts' least girth keeps out those that hold none. */
function flatMiddle(corners: FlatRing): [number, number] {
  let [u, v, weights] = [0, 0, 0];
  const [u0, v0] = [corners[0]!, corners[1]!];
  for (let i = 2; i + 2 < corners.length; i += 2) {
    const [du, dv] = [corners[i]! - u0, corners[i + 1]! - v0];
    const [eu, ev] = [corners[i + 2]! - u0, corners[i + 3]! - v0];
    const weight = du * ev - dv * eu;
    u += (weight * (du + eu)) / 3;
    v += (weight * (dv + ev)) / 3;
    weights += weight;
  }
  return weights > 0 ? [u0 + u / weights, v0 + v / weights] : [u0, v0];
}

/** A flat place of a section in the axes of the body: the section's middle lies in its plane. */
function placeOf(
  [cu, cv]: readonly [number, number],
  { middleMm }: { middleMm: Vector },
  { point, normal }: Plane,
): Vector {
  const { u, v, n } = planeFrame(normal);
  const deep = [0, 1, 2].reduce((sum, k) => sum + n[k]! * (middleMm[k]! - point[k]!), 0);
  const at = (k: 0 | 1 | 2): number => point[k] + cu * u[k] + cv * v[k] + deep * n[k];
  return [at(0), at(1), at(2)];
}

/** By what lies over one another; what is left over, by what lies near. One part in each plane is the same. */
function link(near: readonly Part[], far: readonly Part[]): void {
  const isOnly = near.length === 1 && far.length === 1;
  for (const a of near)
    for (const b of far)
      if (isOnly || a.rings.some((p) => b.rings.some((q) => isOverlap(p, q)))) connect(a, b);
  const farthestMm = LEAN * (far[0]!.alongMm - near[0]!.alongMm);
  for (const b of far.filter(({ shallower }) => shallower.length === 0)) {
    const ends = near.filter(({ deeper }) => deeper.length === 0);
    const gaps = ends.map((a) => gapMm(a.corners, b.corners));
    const least = Math.min(...gaps);
    if (least <= farthestMm) connect(ends[gaps.indexOf(least)]!, b);
  }
}

function connect(a: Part, b: Part): void {
  a.deeper.push(b);
  b.shallower.push(a);
}
