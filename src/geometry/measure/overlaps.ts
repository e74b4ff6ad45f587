import { boundsOf, centerOf, type Bounds, type TriangleMesh } from '../triangleMesh';
import { windingAlongLines, type WindingSums } from './windingLines';

/** Overlap below this share of the volume is left in the plain sum and only widens the range. */
const OVERLAP_SHARE = 1e-4;

/** A solid inside a solid counts as whole inside when the lines agree with its own volume this closely. */
const WHOLE_INSIDE_SHARE = 2e-3;

/** Lines across for the overlap watch (cells of 1 % of the size) and, once something is found, for its volume. */
const WATCH_LINES = 96;
const FINE_LINES = 640;

/**
 * Looks along all three axes, since a flat overlap can slip between lines that run along it; then measures what was found with
 * many more lines, the mesh turned askew: a face parallel to the lattice would fall in or out of it as a whole.
 */
export function watchOverlaps(mesh: TriangleMesh, bounds: Bounds, plainSumMm3: number): WindingSums {
  const watch = windingAlongLines(mesh, bounds, { axes: [0, 1, 2], across: WATCH_LINES });
  const found = watch.find((sums) => sums.doubledMm3 - sums.negativeMm3 > 1e-9 * Math.abs(plainSumMm3));
  if (found === undefined) return watch[0]!;
  const askew = turnAskew(mesh);
  return windingAlongLines(askew, boundsOf(askew), { axes: [0], across: FINE_LINES })[0]!;
}

/** Two turns by angles that no modeler uses, about the center of the bounds. */
function turnAskew({ positions: p, triangles }: TriangleMesh): TriangleMesh {
  const [s1, c1, s2, c2] = [Math.sin(0.37), Math.cos(0.37), Math.sin(0.59), Math.cos(0.59)];
  const origin = centerOf(boundsOf({ positions: p, triangles }));
  const turned = new Float64Array(p.length);
  for (let i = 0; i < p.length; i += 3) {
    const x = p[i]! - origin[0],
      y = p[i + 1]! - origin[1],
      z = p[i + 2]! - origin[2];
    const x1 = c1 * x - s1 * y,
      y1 = s1 * x + c1 * y;
    turned[i] = c2 * x1 + s2 * z;
    turned[i + 1] = y1;
    turned[i + 2] = c2 * z - s2 * x1;
  }
  return { positions: turned, triangles };
}

/**
 * The volume of the union, from the plain sum and what the lines saw of overlaps. Solids that lie whole inside another are taken
 * off exactly; what overlaps in part is taken off as the lines measured it, with their error as doubt.
 */
export function settleOverlaps(
  winding: WindingSums,
  plainSumMm3: number,
  insideMm3: number,
): { volumeMm3: number; doubtMm3: number; method: 'exact' | 'field' } {
  const seenMm3 = winding.doubledMm3 - winding.negativeMm3;
  const tolerance = Math.max(2 * winding.latticeErrorMm3, WHOLE_INSIDE_SHARE * insideMm3);
  if (insideMm3 > 0 && winding.negativeMm3 === 0 && Math.abs(seenMm3 - insideMm3) <= tolerance) {
    return {
      volumeMm3: plainSumMm3 - insideMm3,
      doubtMm3: 2 * Math.abs(seenMm3 - insideMm3),
      method: 'exact',
    };
  }
  if (seenMm3 <= OVERLAP_SHARE * Math.abs(plainSumMm3))
    return { volumeMm3: plainSumMm3, doubtMm3: seenMm3, method: 'exact' };
  const excessMm3 = winding.doubledMm3 + winding.negativeMm3;
  return { volumeMm3: plainSumMm3 - excessMm3, doubtMm3: winding.latticeErrorMm3, method: 'field' };
}
