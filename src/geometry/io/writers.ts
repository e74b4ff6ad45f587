import { bad, good, type Outcome } from '../../problem';
import type { TriangleMesh } from '../triangleMesh';
import { float32Step } from './stlBinary';
import { write3mf } from './write3mf';
import { writeStl } from './writeStl';

export interface MeshWriter {
  key: 'stl' | '3mf';
  title: string;
  extensions: readonly string[];
  /** Smallest step a coordinate of this size can be written with, in mm. */
  stepMm: (sizeMm: number) => number;
  /** A mesh in mm as the bytes of a file; equal meshes give equal bytes. */
  write: (mesh: TriangleMesh) => Uint8Array;
}

/** Every format we write a surface in: a new one is one file and one line here. */
export const MESH_WRITERS: readonly MeshWriter[] = [
  { key: 'stl', title: 'STL', extensions: ['.stl'], stepMm: float32Step, write: writeStl },
  { key: '3mf', title: '3MF', extensions: ['.3mf'], stepMm: () => 1e-6, write: write3mf },
];

/** The writer that the ending of a file name asks for. Error: UNSUPPORTED_FORMAT. */
export function writerFor(fileName: string): Outcome<MeshWriter> {
  const name = fileName.toLowerCase();
  const writer = MESH_WRITERS.find((w) => w.extensions.some((ending) => name.endsWith(ending)));
  if (writer !== undefined) return good(writer);
  const format = /\.([^./\\]+)$/.exec(name)?.[1] ?? '';
  return bad('UNSUPPORTED_FORMAT', {
    format,
    part: 'written',
    known: MESH_WRITERS.map((w) => w.title).join(', '),
  });
}
