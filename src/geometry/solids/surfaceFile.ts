import { bad, good, type Outcome } from '../../problem';
import { facetVector } from '../facetVector';
import { writerFor } from '../io/writers';
import { boundsOf, type TriangleMesh } from '../triangleMesh';
import type { LevelField, LevelOptions } from './levelField';
import { levelSurface } from './levelSurface';
import type { WasmSource } from './wasmSource';

/** A file that rounds coordinates by more than this share of an edge spoils the facets. Chosen here. */
const ROUNDING_LIMIT = 0.01;

/**
 * The surface of a level of the field as the bytes of a file, in the format the ending of its name asks for. Nothing is
 * written to disk here.
 * Errors: UNSUPPORTED_FORMAT (told before anything is computed), ZERO_VOLUME, PRECISION.
 */
export async function surfaceFile(
  input: LevelField & LevelOptions & { levelMm: number; fileName: string },
  source?: WasmSource,
): Promise<Outcome<Uint8Array>> {
  const writer = writerFor(input.fileName);
  if (!writer.ok) return writer;
  const solid = await levelSurface(input, source);
  if (!solid.ok) return solid;
  const { mesh, volumeMm3 } = solid.value;
  const stepMm = writer.value.stepMm(largestCoordinate(mesh));
  if (stepMm > ROUNDING_LIMIT * input.edgeMm)
    return bad('PRECISION', { doubtShare: (areaMm2(mesh) * stepMm) / 2 / volumeMm3 });
  return good(writer.value.write(mesh));
}

function largestCoordinate(mesh: TriangleMesh): number {
  const { min, max } = boundsOf(mesh);
  return Math.max(...min.map(Math.abs), ...max.map(Math.abs));
}

function areaMm2(mesh: TriangleMesh): number {
  let twice = 0;
  for (let t = 0; t < mesh.triangles.length; t += 3) twice += Math.hypot(...facetVector(mesh, t));
  return twice / 2;
}
