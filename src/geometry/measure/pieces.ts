import { rootOf, type EdgePairs } from '../repair/edges';
import { triangleArea } from '../repair/orient';
import type { Capped } from '../repair/closeCycle';
import type { Loop } from '../repair/loops';
import type { Bounds } from '../triangleMesh';
import { localOrigin, signedSixfold } from './divergence';

/** One connected surface of a scan (triangles that hang together by edges), with its caps. Mesh units: mm once placed. */
export interface Piece {
  areaMm2: number;
  /** Signed, of the capped surface: negative when the piece is inside out, or a void. */
  volumeMm3: number;
  bounds: Bounds;
  triangles: number;
  /** Loops that had to be capped. */
  loops: number[];
  /** A triangle of the piece. */
  seed: number;
}

/** The pieces, largest area first, and the piece number of every triangle, caps included. */
export interface PieceTable {
  pieces: Piece[];
  pieceOf: Int32Array;
}

/** `isCutVertex` marks the vertices of cuts of ours: a facet of three such is a closed cut and no scanned surface. */
export function tabulatePieces(
  capped: Capped,
  pairs: EdgePairs,
  loops: readonly Loop[],
  isCutVertex: (vertex: number) => boolean = () => false,
): PieceTable {
  const { mesh, surfaceCount, loopOf } = capped;
  const total = mesh.triangles.length / 3;
  const numberOf = new Int32Array(surfaceCount).fill(-1);
  const pieceOf = new Int32Array(total);
  const pieces: Piece[] = [];
  const origin = localOrigin(mesh);
  for (let t = 0; t < total; t++) {
    const owner = t < surfaceCount ? t : loops[loopOf[t - surfaceCount]!]!.triangle;
    const root = rootOf(pairs.pieceRoot, owner);
    if (numberOf[root]! < 0) {
      numberOf[root] = pieces.length;
      pieces.push(emptyPiece(t));
    }
    const piece = pieces[numberOf[root]!]!;
    pieceOf[t] = numberOf[root]!;
    piece.volumeMm3 += signedSixfold(mesh, t, origin) / 6;
    if (t >= surfaceCount) continue;
    piece.triangles++;
    const corners = mesh.triangles.subarray(3 * t, 3 * t + 3);
    if (!corners.every(isCutVertex)) piece.areaMm2 += triangleArea(mesh, t);
    widen(piece.bounds, mesh.positions, mesh.triangles, t);
  }
  loops.forEach((loop, i) => pieces[pieceOf[loop.triangle]!]!.loops.push(i));
  return bySize(pieces, pieceOf);
}

const emptyPiece = (seed: number): Piece => ({
  areaMm2: 0,
  volumeMm3: 0,
  triangles: 0,
  loops: [],
  seed,
  bounds: { min: [Infinity, Infinity, Infinity], max: [-Infinity, -Infinity, -Infinity] },
});

function widen(b: Bounds, p: Float64Array, triangles: Int32Array, t: number): void {
  for (let c = 3 * t; c < 3 * t + 3; c++) {
    const v = 3 * triangles[c]!;
    for (let k = 0; k < 3; k++) {
      if (p[v + k]! < b.min[k]!) b.min[k] = p[v + k]!;
      if (p[v + k]! > b.max[k]!) b.max[k] = p[v + k]!;
    }
  }
}

function bySize(pieces: Piece[], pieceOf: Int32Array): PieceTable {
  const order = pieces.map((_, i) => i).sort((a, b) => pieces[b]!.areaMm2 - pieces[a]!.areaMm2 || a - b);
  const rank = new Int32Array(pieces.length);
  order.forEach((piece, place) => (rank[piece] = place));
  for (let t = 0; t < pieceOf.length; t++) pieceOf[t] = rank[pieceOf[t]!]!;
  return { pieces: order.map((i) => pieces[i]!), pieceOf };
}
