import type { Bounds } from '../triangleMesh';

export type Point = Bounds['min'];

/** A shape by its distance: what a level surface is drawn from. */
export interface LevelField {
  /** Signed distance to the surface in mm, negative inside; never NaN. */
  distanceAtMm: (xMm: number, yMm: number, zMm: number) => number;
  /** Where the surface lies (level 0), as the field has it. */
  bounds: Bounds;
}

export interface LevelOptions {
  /** About the longest edge of a facet, in mm; not below `finestEdgeMm`. Halve it and the error falls to a quarter. */
  edgeMm: number;
  /**
   * Cut flat at this height and closed there, open towards the board: only what lies above stays. Let the field run on below
   * the base where the solid stands on it: a surface that ends at the base itself turns over its lower rim, not square to it.
   */
  baseMm?: number | undefined;
  /** Fewer facets: the surface may move by this much, in mm. Off unless given. */
  simplifyMm?: number | undefined;
}
