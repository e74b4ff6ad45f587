import type { TriangleMesh } from '../triangleMesh';
import { convexHull } from './convexHull';

/** Corners of the convex hull, counter-clockwise, mm. */
export interface Footprint {
  us: Float64Array;
  vs: Float64Array;
}

/**
 * What a mesh (mm, Z up) takes up seen from above: the corners of the convex hull of its shadow, u = x and v = y. With `throughZMm`
 * only of what is at that height or below it. Vertices that no triangle uses do not count; a mesh without triangles, or all of it
 * higher, gives none.
 */
export function footprintOf(mesh: TriangleMesh, { throughZMm = Infinity } = {}): Footprint {
  const us: number[] = [];
  const vs: number[] = [];
  addVertices(mesh, throughZMm, us, vs);
  if (throughZMm < Infinity) addCrossings(mesh, throughZMm, us, vs);
  const [allUs, allVs] = [Float64Array.from(us), Float64Array.from(vs)];
  const hull = convexHull(allUs, allVs);
  return {
    us: Float64Array.from(hull, (i) => allUs[i]!),
    vs: Float64Array.from(hull, (i) => allVs[i]!),
  };
}

function addVertices(
  { positions: p, triangles }: TriangleMesh,
  top: number,
  us: number[],
  vs: number[],
): void {
  const isTaken = new Uint8Array(p.length / 3);
  for (let c = 0; c < triangles.length; c++) {
    const v = triangles[c]!;
    if (isTaken[v] !== 0 || p[3 * v + 2]! > top) continue;
    isTaken[v] = 1;
    us.push(p[3 * v]!);
    vs.push(p[3 * v + 1]!);
  }
}

/** Where edges pass the height. */
function addCrossings(
  { positions: p, triangles }: TriangleMesh,
  top: number,
  us: number[],
  vs: number[],
): void {
  for (let c = 0; c < triangles.length; c++) {
    const a = 3 * triangles[c]!;
    const b = 3 * triangles[c % 3 === 2 ? c - 2 : c + 1]!;
    const [over, overNext] = [p[a + 2]! - top, p[b + 2]! - top];
    if (over > 0 === overNext > 0) continue;
    const share = over / (over - overNext);
    us.push(p[a]! + share * (p[b]! - p[a]!));
    vs.push(p[a + 1]! + share * (p[b + 1]! - p[a + 1]!));
  }
}
