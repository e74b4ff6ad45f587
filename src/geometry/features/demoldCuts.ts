import { coordinatesAlong, ON_PLANE_SHARE, rangeOf, unit, type Vector } from '../measure/planeFrame';
import { sectionOf, type Section } from '../measure/section';
import type { TriangleMesh } from '../triangleMesh';

/** A body seen along the way it is pulled out. Depths count from its end on that side, into the mold, mm. */
export interface DeepBody {
  mesh: TriangleMesh;
  /** Unit vector out of the mold. */
  way: Vector;
  /** Of every vertex. */
  depths: Float64Array;
  lengthMm: number;
}

/** Throws on a body without triangles or of no length along the way. */
export function deepBody(mesh: TriangleMesh, way: Vector): DeepBody {
  const out = unit(way);
  const heights = coordinatesAlong(mesh.positions, out, firstVertex(mesh));
  const { low, high } = rangeOf(heights, mesh.triangles);
  if (!(high > low)) throw new Error(`deepBody: expected a body with a length, got ${high - low} mm`);
  return { mesh, way: out, depths: heights.map((height) => high - height), lengthMm: high - low };
}

/**
 * Sections across the way at these depths (ascending), as `sectionOf` gives them, normals along the way. Triangles are sorted by the
 * planes they meet first, so each plane looks at its own ones only. `onStep` is called once a plane.
 */
export function cutAtDepths(body: DeepBody, depthsMm: readonly number[], onStep?: () => void): Section[] {
  const { starts, sorted } = trianglesByPlane(body, depthsMm);
  const localOf = new Int32Array(body.depths.length).fill(-1);
  const point = firstVertex(body.mesh);
  const height = body.depths[body.mesh.triangles[0]!]!;
  return depthsMm.map((depthMm, plane) => {
    onStep?.();
    const own = sorted.subarray(starts[plane], starts[plane + 1]);
    const [x, y, z] = body.way.map((w, k) => point[k]! + (height - depthMm) * w) as [number, number, number];
    return sectionOf(smallMesh(body.mesh, own, localOf), { point: [x, y, z], normal: body.way });
  });
}

function firstVertex({ positions: p, triangles }: TriangleMesh): Vector {
  if (triangles.length === 0) throw new Error('deepBody: expected a closed chain, got no triangles');
  const v = 3 * triangles[0]!;
  return [p[v]!, p[v + 1]!, p[v + 2]!];
}

/** Counting sort of the triangles by plane; one that meets several stands with each. */
function trianglesByPlane(
  { mesh: { triangles }, depths, lengthMm }: DeepBody,
  depthsMm: readonly number[],
): { starts: Int32Array; sorted: Int32Array } {
  const tolerance = ON_PLANE_SHARE * lengthMm;
  const count = triangles.length / 3;
  const first = new Int32Array(count);
  const end = new Int32Array(count);
  const starts = new Int32Array(depthsMm.length + 1);
  for (let i = 0; i < count; i++) {
    const a = depths[triangles[3 * i]!]!;
    const b = depths[triangles[3 * i + 1]!]!;
    const c = depths[triangles[3 * i + 2]!]!;
    first[i] = planesBefore(depthsMm, Math.min(a, b, c) - tolerance);
    end[i] = planesBefore(depthsMm, Math.max(a, b, c) + tolerance);
    for (let plane = first[i]!; plane < end[i]!; plane++) starts[plane + 1]!++;
  }
  for (let plane = 0; plane < depthsMm.length; plane++) starts[plane + 1]! += starts[plane]!;
  const fill = starts.slice();
  const sorted = new Int32Array(starts[depthsMm.length]!);
  for (let i = 0; i < count; i++)
    for (let plane = first[i]!; plane < end[i]!; plane++) sorted[fill[plane]!++] = i;
  return { starts, sorted };
}

/** How many planes lie nearer to the mouth than a depth, by halving. */
function planesBefore(depthsMm: readonly number[], depthMm: number): number {
  let low = 0;
  let high = depthsMm.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (depthsMm[middle]! < depthMm) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Some triangles with the vertices they use. `localOf` is all -1, before and after. */
function smallMesh(
  { positions, triangles }: TriangleMesh,
  own: Int32Array,
  localOf: Int32Array,
): TriangleMesh {
  const used: number[] = [];
  const small = new Int32Array(3 * own.length);
  for (let i = 0; i < small.length; i++) {
    const v = triangles[3 * own[(i / 3) | 0]! + (i % 3)]!;
    if (localOf[v] === -1) localOf[v] = used.push(v) - 1;
    small[i] = localOf[v]!;
  }
  const points = new Float64Array(3 * used.length);
  used.forEach((v, i) => {
    localOf[v] = -1;
    for (let k = 0; k < 3; k++) points[3 * i + k] = positions[3 * v + k]!;
  });
  return { positions: points, triangles: small };
}
