import type { TriangleMesh } from '../triangleMesh';

/** The outer face of one part of a mold, mm on the placed piece. */
export interface MoldShell {
  part: 'skin' | 'jacket' | 'block';
  /** Closed, facing outward: to be cut. */
  chain: TriangleMesh;
  /** The same to be drawn: vertices of a sharp edge stand in it once a side. */
  positions: Float32Array;
  normals: Float32Array;
  index: Uint32Array;
}
