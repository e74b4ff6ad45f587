import type { TriangleMesh } from '../triangleMesh';
import { coverLines } from './coveredLines';
import { coordinatesAlong, planeFrame, rangeOf, type Vector } from './planeFrame';

export interface Silhouette {
  areaMm2: number;
  /**
   * Largest disagreement of the two lattices and of the four quarter-dense parts of each, but no less than ERROR_FLOOR of the area:
   * all can agree by luck. Errors were at most 0.8 of it for six convex shapes along a thousand directions each.
   */
  latticeErrorMm2: number;
  /** Of the coarser lattice. */
  spacingMm: number;
}

/**
 * Share of the area that is always left in doubt. Chosen here: without it, the worst of those 6000 errors was 1.25 times the
 * disagreement.
 */
const ERROR_FLOOR = 1e-5;

/** Golden-ratio offset: keeps lines off the round coordinates of modeled parts. */
const OFFSET = 0.3819660113;

/** Chosen here. */
const DEFAULT_LINES = 512;

/**
 * Area of the shadow of any list of triangles (mm) along a direction (any length above 0). Two lattices of parallel lines cross the
 * shadow at a right angle, and their areas are averaged; on each line the union of the stretches that triangles cover is exact, so
 * the only error is that of the lattices. Which way triangles face does not matter, and they need not be closed.
 */
export function silhouetteOf(
  mesh: TriangleMesh,
  { direction, lines = DEFAULT_LINES }: { direction: Vector; lines?: number },
): Silhouette {
  const { u, v } = planeFrame(direction);
  const us = coordinatesAlong(mesh.positions, u, ORIGIN);
  const vs = coordinatesAlong(mesh.positions, v, ORIGIN);
  const one = sumLines(mesh.triangles, us, vs, lines);
  const other = sumLines(mesh.triangles, vs, us, lines);
  const areaMm2 = (one.areaMm2 + other.areaMm2) / 2;
  const apart = Math.abs(one.areaMm2 - other.areaMm2);
  return {
    areaMm2,
    latticeErrorMm2: Math.max(one.spreadMm2, other.spreadMm2, apart, ERROR_FLOOR * areaMm2),
    spacingMm: Math.max(one.spacingMm, other.spacingMm),
  };
}

/** Area by the lines along u, and how far four times every fourth line is from it at the most. */
function sumLines(
  triangles: Int32Array,
  us: Float64Array,
  vs: Float64Array,
  lines: number,
): { areaMm2: number; spreadMm2: number; spacingMm: number } {
  const { low, high } = rangeOf(vs, triangles);
  const spacingMm = high > low ? (high - low) / lines : 0;
  if (spacingMm === 0) return { areaMm2: 0, spreadMm2: 0, spacingMm };
  const covered = coverLines(triangles, us, vs, { first: low + OFFSET * spacingMm, spacingMm, lines });
  const quarters = [0, 0, 0, 0];
  for (let i = 0; i < covered.count; i++)
    quarters[covered.line[i]! & 3]! += (covered.right[i]! - covered.left[i]!) * spacingMm;
  const areaMm2 = quarters.reduce((sum, quarter) => sum + quarter, 0);
  return { areaMm2, spreadMm2: Math.max(...quarters.map((q) => Math.abs(4 * q - areaMm2))), spacingMm };
}

const ORIGIN: Vector = [0, 0, 0];
