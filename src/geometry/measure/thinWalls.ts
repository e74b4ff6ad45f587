import { facetNormal } from '../facetVector';
import type { Bounds, TriangleMesh } from '../triangleMesh';
import { insideStretches } from './windingLines';

/** Walls seen by lines along the three axes, thinnest first. */
export interface ThinWalls {
  /** Thinnest wall of which at least LEAST_SHARE of the area seen is no thicker; undefined when no wall was seen. */
  thinnestMm: number | undefined;
  /** Area (one side) of the walls thinner than this, and the thinnest of them. */
  thinnerThan: (mm: number) => { areaMm2: number; thinnestMm: number };
}

/** Lines across the longer side. Chosen here. */
const LINES = 96;

/** Both faces must look along the line this much (cosine): of any direction, one of three axes is nearer than 1 / sqrt(3) = 0.577. */
const LEAST_COSINE = 0.55;

/** And they must look away from each other this much, so that what is measured is a wall and not a corner. Chosen here. */
const LEAST_OPPOSITE = 0.8;

/** A wall counts from this share of the area seen. Chosen here: less is a nick or noise. */
const LEAST_SHARE = 2e-3;

/** How thick a body is where lines pass through it squarely. Features between the lines, about 1 % of the size apart, are not seen. */
export function thinWalls(chain: TriangleMesh, bounds: Bounds): ThinWalls {
  const walls: { thicknessMm: number; areaMm2: number }[] = [];
  const lines = { axes: [0, 1, 2] as const, across: LINES };
  insideStretches(chain, bounds, lines, ({ lengthMm, enter, leave, cellMm2 }, axis) => {
    const [first, second] = [facetNormal(chain, enter), facetNormal(chain, leave)];
    const cosine = Math.min(Math.abs(first[axis]), Math.abs(second[axis]));
    const opposite = -(first[0] * second[0] + first[1] * second[1] + first[2] * second[2]);
    if (cosine >= LEAST_COSINE && opposite >= LEAST_OPPOSITE)
      // Each of the three directions sees a wall by its own share; the squares of the cosines add up to one.
      walls.push({ thicknessMm: lengthMm * cosine, areaMm2: cellMm2 * cosine });
  });
  walls.sort((a, b) => a.thicknessMm - b.thicknessMm);
  const total = walls.reduce((sum, wall) => sum + wall.areaMm2, 0);
  let seen = 0;
  const counted = walls.find((wall) => (seen += wall.areaMm2) >= LEAST_SHARE * total);
  return {
    thinnestMm: counted?.thicknessMm,
    thinnerThan: (mm) => {
      const thin = walls.filter((wall) => wall.thicknessMm < mm);
      const areaMm2 = thin.reduce((sum, wall) => sum + wall.areaMm2, 0);
      return thin.length === 0 || areaMm2 < LEAST_SHARE * total
        ? { areaMm2: 0, thinnestMm: Infinity }
        : { areaMm2, thinnestMm: thin[0]!.thicknessMm };
    },
  };
}
