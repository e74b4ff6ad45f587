import { bad, type Problem } from '../../problem';
import type { TriangleMesh } from '../triangleMesh';

/** What a reader hands on. Coordinates are in the file's own unit, which of these formats only 3MF carries. */
export interface ScanFile {
  mesh: TriangleMesh;
  format: 'stl' | 'obj' | 'ply' | '3mf';
  /** The unit the file itself states. */
  unit?: 'mm' | 'cm' | 'm' | 'in' | 'ft';
  /** Facets the file holds, polygons counted as the triangles they were cut into. */
  trianglesRead: number;
  /** Smallest step the file can tell apart near its coordinates, in file units (float32 or written digits). */
  coordinateStep: number;
  findings: Problem[];
}

/** A coordinate beyond this many file units is refused: 100 km in mm, 100 m in microns. Chosen here. */
export const COORDINATE_LIMIT = 1e8;

/**
 * More triangles than this are refused before they are held: each takes about 100 bytes while it is read and several times that while
 * it is measured, and a thread of a browser has about 4 GB. Chosen here.
 */
export const TRIANGLE_LIMIT = 1e7;

/**
 * A file of more bytes is refused by its size, before it is read: as many triangles as are read take 500 MB as binary STL. Chosen here.
 */
export const SCAN_BYTES_LIMIT = 2 ** 29;

export const tooManyBytes = (count: number): { ok: false; problem: Problem } =>
  bad('TOO_LARGE', { part: 'file', count, limit: SCAN_BYTES_LIMIT });

export const tooManyTriangles = (count: number, at?: Problem['at']): { ok: false; problem: Problem } =>
  bad('TOO_LARGE', { part: 'triangles', count, limit: TRIANGLE_LIMIT }, at);
