import type { Bounds, TriangleMesh } from '../triangleMesh';
import { insideStretches } from './windingLines';

/** Walls seen by lines along the three axes, thinnest first. */
export interface ThinWalls {
  /** Thinnest wall of which at least LEAST_SHARE of the area seen is no thicker; undefined when no wall was seen. */
  thinnestMm: number | undefined;
  /** Area (one side) of the walls thinner than this, and the thinnest of them. */
  thinnerThan: (mm: number) => { areaMm2: number; thinnestMm: number };
}

/** Lines across the longer side. */
const LINES = 96;

/** Both faces must look along the line this much (cosine), so that what is measured is a wall and not a grazed edge. Chosen here. */
const LEAST_COSINE = 0.8;

/** A wall counts from this share of the area seen. Chosen here: less is a nick or noise. */
const LEAST_SHARE = 2e-3;

/** How thick a body is where lines pass through it squarely. Features between the lines, about 1 % of the size apart, are not seen. */
export function thinWalls(chain: TriangleMesh, bounds: Bounds): ThinWalls {
  const walls: { thicknessMm: number; areaMm2: number }[] = [];
  for (const axis of [0, 1, 2] as const) {
    insideStretches(chain, bounds, { axis, across: LINES }, ({ lengthMm, enter, leave, cellMm2 }) => {
      const cosine = Math.min(facing(chain, enter, axis), facing(chain, leave, axis));
      if (cosine >= LEAST_COSINE)
        // Each of the three directions sees a wall by its own share; the squares of the cosines add up to one.
        walls.push({ thicknessMm: lengthMm * cosine, areaMm2: cellMm2 * cosine });
    });
  }
  walls.sort((a, b) => a.thicknessMm - b.thicknessMm);
  const total = walls.reduce((sum, wall) => sum + wall.areaMm2, 0);
  let seen = 0;
  const counted = walls.find((wall) => (seen += wall.areaMm2) >= LEAST_SHARE * total);
  return {
    thinnestMm: counted?.thicknessMm,
    thinnerThan: (mm) => {
      const thin = walls.filter((wall) => wall.thicknessMm < mm);
      const areaMm2 = thin.reduce((sum, wall) => sum + wall.areaMm2, 0);
      return areaMm2 < LEAST_SHARE * total
        ? { areaMm2: 0, thinnestMm: Infinity }
        : { areaMm2, thinnestMm: thin[0]!.thicknessMm };
    },
  };
}

/** How squarely a triangle faces an axis: the cosine of its normal with it, without sign. */
function facing({ positions: p, triangles }: TriangleMesh, t: number, axis: 0 | 1 | 2): number {
  const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
  const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
  const [wx, wy, wz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
  const normal = [uy * wz - uz * wy, uz * wx - ux * wz, ux * wy - uy * wx];
  return Math.abs(normal[axis]!) / (Math.hypot(...normal) || 1);
}
