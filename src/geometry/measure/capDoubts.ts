import type { Loop } from '../repair/loops';
import { measureRim, rimDoubtMm3 } from '../repair/rims';
import type { TriangleMesh } from '../triangleMesh';
import type { PieceTable } from './pieces';

/** What closing its rims otherwise could change of every piece, mm3. The rims of our own cuts are closed without doubt. */
export function capDoubts(
  mesh: TriangleMesh,
  { pieces, pieceOf }: PieceTable,
  loops: readonly Loop[],
  isCutVertex: ((vertex: number) => boolean) | undefined,
): Float64Array {
  const doubtsMm3 = new Float64Array(pieces.length);
  for (const loop of loops) {
    if (loop.vertices.length < 3 || (isCutVertex !== undefined && loop.vertices.every(isCutVertex))) continue;
    doubtsMm3[pieceOf[loop.triangle]!]! += rimDoubtMm3(measureRim(mesh, loop));
  }
  return doubtsMm3;
}
