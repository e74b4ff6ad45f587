/**
 * A surface to draw: float32, Z up, relative to the middle of its bounds, in units of the file. `rims` holds both ends of
 * every open edge, `normals` one unit vector a vertex.
 */
export interface Drawable {
  positions: Float32Array;
  normals: Float32Array;
  index: Uint32Array;
  rims: Float32Array;
  halfUnits: [number, number, number];
  triangles: number;
}
