import type { Problem } from '../../problem';
import type { TriangleMesh } from '../triangleMesh';

/** What a reader hands on. Coordinates are in the file's own unit, which STL and OBJ do not carry. */
export interface ScanFile {
  mesh: TriangleMesh;
  format: 'stl' | 'obj';
  /** Facets the file holds, polygons counted as the triangles they were cut into. */
  trianglesRead: number;
  /** Smallest step the file can tell apart near its coordinates, in file units (float32 or written digits). */
  coordinateStep: number;
  findings: Problem[];
}

/** A coordinate beyond this many file units is refused: 100 km in mm, 100 m in microns. Chosen here. */
export const COORDINATE_LIMIT = 1e8;
