import { findNearest, type Nearest, type PieceTree } from './nearestPiece';
import { windingAt, type SegmentRows } from './segmentRows';

/** What `growRegion` makes of segments. */
export interface GrownRegion {
  /** Of the boundary. */
  tree: PieceTree;
  /** Of all segments. */
  rows: SegmentRows;
  cellMm: number;
}

/** mm, negative inside; `nearest` is written. */
export function signedDistance({ tree, rows }: GrownRegion, u: number, v: number, nearest: Nearest): number {
  findNearest(tree, u, v, nearest);
  return (windingAt(rows, u, v) >= 1 ? -1 : 1) * Math.sqrt(nearest.squared);
}
