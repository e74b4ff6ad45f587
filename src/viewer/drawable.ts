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
  /** Of the whole surface; `shownTriangles` of them, or a simpler surface of so many, are drawn. */
  triangles: number;
  shownTriangles: number;
}

/** A level plane at a height of the picture, in its units from its middle, and the side that a cut there takes. */
export interface Plane {
  atUnits: number;
  takes: 'above' | 'below';
}
