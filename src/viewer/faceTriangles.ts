import { ShapeUtils, Vector2 } from 'three';
import type { Cut } from './cut';

/** A filled cut face: three coordinates a corner, three corners a triangle. */
export interface FaceTriangles {
  positions: Float32Array;
  index: Uint32Array;
}

/** The two axes of a plane in turning order, so that counter-clockwise seen from the tip of the axis stays so. */
const ACROSS = { x: [1, 2], y: [2, 0], z: [0, 1] } as const;

interface Loop {
  outline: Float64Array;
  flat: Vector2[];
  area: number;
}

/** Closed outlines of x, y, z, counter-clockwise around solid and clockwise around voids, to triangles. A void belongs to the smallest solid around it. */
export function faceTriangles(axis: Cut['axis'], outlines: readonly Float64Array[]): FaceTriangles {
  const loops = outlines.map((outline) => loopOf(axis, outline)).filter(({ area }) => area !== 0);
  const solids = loops.filter(({ area }) => area > 0).sort((a, b) => a.area - b.area);
  const holes = new Map<Loop, Loop[]>(solids.map((solid) => [solid, []]));
  for (const hole of loops.filter(({ area }) => area < 0)) {
    const around = solids.find((solid) => solid.area > -hole.area && holds(solid.flat, hole.flat[0]!));
    if (around !== undefined) holes.get(around)!.push(hole);
  }
  const positions: number[] = [];
  const index: number[] = [];
  for (const [solid, inside] of holes) {
    const first = positions.length / 3;
    const found = ShapeUtils.triangulateShape(
      solid.flat,
      inside.map(({ flat }) => flat),
    );
    for (const { outline } of [solid, ...inside]) positions.push(...outline);
    for (const corners of found) index.push(...corners.map((c) => first + c));
  }
  return { positions: Float32Array.from(positions), index: Uint32Array.from(index) };
}

function loopOf(axis: Cut['axis'], given: Float64Array): Loop {
  const [u, v] = ACROSS[axis];
  // Triangles are told by number: an end that repeats the beginning would shift them.
  const isRepeated = given.length > 3 && [0, 1, 2].every((k) => given[k] === given[given.length - 3 + k]);
  const outline = isRepeated ? given.subarray(0, given.length - 3) : given;
  const flat = Array.from(
    { length: outline.length / 3 },
    (_, i) => new Vector2(outline[3 * i + u], outline[3 * i + v]),
  );
  return { outline, flat, area: ShapeUtils.area(flat) };
}

/** Whether a line to the right crosses the outline an odd number of times. */
function holds(outline: readonly Vector2[], { x, y }: Vector2): boolean {
  let inside = false;
  outline.forEach((b, i) => {
    const a = outline[(i || outline.length) - 1]!;
    if (a.y > y !== b.y > y && x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)) inside = !inside;
  });
  return inside;
}

/** Both ends of every piece of the outlines. */
export function outlineEnds(outlines: readonly Float64Array[]): Float32Array {
  const ends = new Float32Array(2 * outlines.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const outline of outlines)
    for (let i = 0; i < outline.length; i += 3)
      for (const from of [i, (i + 3) % outline.length])
        for (let k = 0; k < 3; k++) ends[at++] = outline[from + k]!;
  return ends;
}
