import type { TriangleMesh } from '../triangleMesh';

declare const checked: unique symbol;

/** A closed surface in mm that faces outward. Only `solidIn` makes one, so whoever holds one need not check again. */
export interface Solid {
  readonly mesh: TriangleMesh;
  /** Of exactly this mesh, in mm3; above 0. */
  readonly volumeMm3: number;
  readonly [checked]: true;
}
