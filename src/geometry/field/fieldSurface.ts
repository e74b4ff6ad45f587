import { boundsOf, extentsOf, type Bounds, type TriangleMesh } from '../triangleMesh';

/**
 * The surface the field measures from, in arrays that threads can share. Coordinates are mm in `frame`, in single
 * precision: within 130 mm of the origin a step is 8e-6 mm.
 */
export interface FieldSurface {
  positions: Float32Array;
  triangles: Int32Array;
  frame: Frame;
  /** In the frame. */
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

/** Where the field lies: the middle of the body is its zero, and it is turned askew. */
export interface Frame {
  originMm: readonly [number, number, number];
  /** Rows of a rotation: field = rows * (world - origin). */
  rows: readonly [number, number, number, number, number, number, number, number, number];
}

/**
 * Angles, radians, by which the field is turned about z, and about y where no base plane asks for level layers. Faces and edges of modeled
 * parts run along the axes; along the grid every voxel of an edge would err alike. Turned by this much an edge of thirty voxels passes all
 * places in a voxel. Measured on 40 boxes of whole millimeters (sides 30 to 70 mm, voxels of 1 mm), root mean square error of the volume on
 * the surface and 8 mm in: 0.058 and 0.19 % along the grid, 0.017 and 0.043 % with the grid shifted off round numbers, 0.005 and 0.02 %
 * turned as well. Larger angles gain little and make the grid larger.
 */
const TURN = { aboutZ: 0.1, aboutY: 0.07 };

/** The frame of a body with these bounds. */
export function frameOf(bounds: Bounds, hasBase: boolean): Frame {
  const originMm = [0, 1, 2].map((k) => (bounds.min[k]! + bounds.max[k]!) / 2) as [number, number, number];
  const [c, s] = [Math.cos(TURN.aboutZ), Math.sin(TURN.aboutZ)];
  const [d, t] = hasBase ? [1, 0] : [Math.cos(TURN.aboutY), Math.sin(TURN.aboutY)];
  return { originMm, rows: [d * c, -d * s, t, s, c, 0, -t * c, t * s, d] };
}

/** Sides of the box around a box of these bounds, turned into its frame, mm: what a grid has to hold. */
export function turnedExtents(bounds: Bounds, hasBase: boolean): [number, number, number] {
  const [a, b, c, d, e, f, g, h, i] = frameOf(bounds, hasBase).rows.map(Math.abs) as unknown as Frame['rows'];
  const [x, y, z] = extentsOf(bounds);
  return [a * x + b * y + c * z, d * x + e * y + f * z, g * x + h * y + i * z];
}

/** Copies a closed chain (mm) into its frame. */
export function fieldSurface(chain: TriangleMesh, frame: Frame, isShared: boolean): FieldSurface {
  const p = chain.positions;
  const positions = sharedFloats(p.length, isShared);
  const [x0, y0, z0] = frame.originMm;
  const [a, b, c, d, e, f, g, h, i] = frame.rows;
  for (let v = 0; v < p.length; v += 3) {
    const x = p[v]! - x0;
    const y = p[v + 1]! - y0;
    const z = p[v + 2]! - z0;
    positions[v] = a * x + b * y + c * z;
    positions[v + 1] = d * x + e * y + f * z;
    positions[v + 2] = g * x + h * y + i * z;
  }
  const triangles = sharedInts(chain.triangles.length, isShared);
  triangles.set(chain.triangles);
  return {
    positions,
    triangles,
    frame,
    bounds: boundsOf({ positions: positions as unknown as Float64Array, triangles }),
  };
}
