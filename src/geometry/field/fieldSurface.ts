import type { Bounds, TriangleMesh } from '../triangleMesh';

/**
 * The surface the field measures from, in arrays that threads can share. Coordinates are mm from `originMm`, in single
 * precision: within 130 mm of the origin a step is 8e-6 mm.
 */
export interface FieldSurface {
  positions: Float32Array;
  triangles: Int32Array;
  originMm: [number, number, number];
  bounds: Bounds;
}

/** Zeroed memory that threads can share, or plain memory where there is no such thing. */
export function sharedBytes(byteLength: number, isShared: boolean): SharedArrayBuffer | ArrayBuffer {
  const length = Math.max(8, byteLength);
  return isShared ? new SharedArrayBuffer(length) : new ArrayBuffer(length);
}

export const sharedInts = (length: number, isShared: boolean): Int32Array =>
  new Int32Array(sharedBytes(4 * length, isShared), 0, length);
export const sharedFloats = (length: number, isShared: boolean): Float32Array =>
  new Float32Array(sharedBytes(4 * length, isShared), 0, length);

/** A copy in memory that threads can share. */
export function shared<T extends Float32Array | Int32Array>(array: T, isShared: boolean): T {
  const Kind = array.constructor as new (
    buffer: SharedArrayBuffer | ArrayBuffer,
    at: number,
    length: number,
  ) => T;
  const copy = new Kind(sharedBytes(array.byteLength, isShared), 0, array.length);
  copy.set(array);
  return copy;
}

/** Copies a closed chain (mm) about the middle of its bounds. */
export function fieldSurface(chain: TriangleMesh, bounds: Bounds, isShared: boolean): FieldSurface {
  const [x0, y0, z0] = [0, 1, 2].map((k) => (bounds.min[k]! + bounds.max[k]!) / 2) as [
    number,
    number,
    number,
  ];
  const p = chain.positions;
  const positions = sharedFloats(p.length, isShared);
  for (let i = 0; i < p.length; i += 3) {
    positions[i] = p[i]! - x0;
    positions[i + 1] = p[i + 1]! - y0;
    positions[i + 2] = p[i + 2]! - z0;
  }
  const triangles = sharedInts(chain.triangles.length, isShared);
  triangles.set(chain.triangles);
  return {
    positions,
    triangles,
    originMm: [x0, y0, z0],
    bounds: {
      min: [bounds.min[0] - x0, bounds.min[1] - y0, bounds.min[2] - z0],
      max: [bounds.max[0] - x0, bounds.max[1] - y0, bounds.max[2] - z0],
    },
  };
}
