import { eachAlone, partOf } from '../parts';
import type { TriangleMesh } from '../triangleMesh';

/** Rounding of a height on the board. */
export const ON_BOARD_MM = 1e-6;

/** A sculpt without the hollows that the board closes: no rubber gets in there. */
export interface WithoutHollows {
  /** Open along the board. */
  mesh: TriangleMesh;
  hollowMm3: number;
  count: number;
}

/**
 * Finds hollows that open only onto the board, like the inside of a cup upside down: with the facets on the board left out the surface falls
 * apart, and a part that faces inward (less than nothing between it and the board) is the wall of a hollow. Undefined where there is none.
 */
export function withoutHollows(mesh: TriangleMesh, boardMm: number): WithoutHollows | undefined {
  const { positions: p, triangles } = mesh;
  const isOn = (v: number): boolean => p[3 * v + 2]! <= boardMm + ON_BOARD_MM;
  const standing: number[] = [];
  for (let t = 0; t < triangles.length; t += 3)
    if (!(isOn(triangles[t]!) && isOn(triangles[t + 1]!) && isOn(triangles[t + 2]!))) standing.push(t);
  const partOf = partsOf(triangles, standing, p.length / 3, isOn);
  const volumes = new Map<number, number>();
  for (const t of standing) {
    const part = partOf(t);
    volumes.set(part, (volumes.get(part) ?? 0) + underFacet(mesh, t, boardMm));
  }
  const hollow = [...volumes].filter(([, volume]) => volume < 0);
  if (hollow.length === 0) return undefined;
  const dropped = new Set(hollow.map(([part]) => part));
  const kept = standing.filter((t) => !dropped.has(partOf(t)));
  return {
    mesh: {
      positions: p,
      triangles: Int32Array.from(kept.flatMap((t) => [...triangles.subarray(t, t + 3)])),
    },
    hollowMm3: hollow.reduce((sum, [, volume]) => sum - volume, 0),
    count: hollow.length,
  };
}

/** Number of the part that a facet belongs to: parts hang together by corners off the board. */
function partsOf(
  triangles: Int32Array,
  standing: readonly number[],
  vertices: number,
  isOn: (v: number) => boolean,
): (t: number) => number {
  const parent = eachAlone(vertices);
  const cornerOff = (t: number): number => [0, 1, 2].map((e) => triangles[t + e]!).find((v) => !isOn(v))!;
  for (const t of standing) {
    const first = partOf(parent, cornerOff(t));
    for (let e = 0; e < 3; e++)
      if (!isOn(triangles[t + e]!)) parent[partOf(parent, triangles[t + e]!)] = first;
  }
  return (t) => partOf(parent, cornerOff(t));
}

/** Volume between a facet and the board, signed by how it faces: its mean height times its plan (divergence theorem). */
function underFacet({ positions: p, triangles }: TriangleMesh, t: number, boardMm: number): number {
  const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
  const plan = ((p[b]! - p[a]!) * (p[c + 1]! - p[a + 1]!) - (p[b + 1]! - p[a + 1]!) * (p[c]! - p[a]!)) / 2;
  return plan * ((p[a + 2]! + p[b + 2]! + p[c + 2]!) / 3 - boardMm);
}
