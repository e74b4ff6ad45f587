import type { Capped } from '../repair/closeCycle';
import type { EdgePairs } from '../repair/edges';
import type { Loop } from '../repair/loops';
import type { Bounds, TriangleMesh } from '../triangleMesh';

/** One connected surface of a scan (triangles that hang together by edges), with its caps. Mesh units: mm once placed. */
export interface Piece {
  areaMm2: number;
  /** Of the closed faces of our own cuts. */
  cutAreaMm2: number;
  /** Signed, of the capped surface: negative when the piece is inside out, or a void. */
  volumeMm3: number;
  bounds: Bounds;
  triangles: number;
  /** A triangle of the piece. */
  seed: number;
  /** It had a rim other than of a cut of ours. */
  isOpen: boolean;
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
  isCutVertex?: (vertex: number) => boolean,
): PieceTable {
  const { pieceOf, seeds } = numberPieces(capped, pairs, loops);
  const pieces = sumPieces(capped, pieceOf, seeds, isCutVertex);
  for (const { vertices, triangle } of loops) {
    if (isCutVertex === undefined || !vertices.every(isCutVertex)) pieces[pieceOf[triangle]!]!.isOpen = true;
  }
  return bySize(pieces, pieceOf);
}

/** Piece numbers in order of appearance. A root never lies behind its triangle, so one pass forward flattens the forest. */
function numberPieces(
  { mesh, surfaceCount, loopOf }: Capped,
  { pieceRoot }: EdgePairs,
  loops: readonly Loop[],
): { pieceOf: Int32Array; seeds: number[] } {
  const pieceOf = new Int32Array(mesh.triangles.length / 3);
  const seeds: number[] = [];
  for (let t = 0; t < surfaceCount; t++) {
    const parent = pieceRoot[t]!;
    if (parent === t) {
      pieceOf[t] = seeds.length;
      seeds.push(t);
    } else pieceOf[t] = pieceOf[parent]!;
  }
  for (let t = surfaceCount; t < pieceOf.length; t++)
    pieceOf[t] = pieceOf[loops[loopOf[t - surfaceCount]!]!.triangle]!;
  return { pieceOf, seeds };
}

/** Places in a piece's row of sums: six bounds, then area, six times the volume, the triangles, and the area of cuts. */
const [AREA, SIXFOLD, COUNT, CUT_AREA, ROW] = [6, 7, 8, 9, 10];

/**
 * Area, signed volume and bounds of every piece, in one pass. Six times the signed volume of the tetrahedra from a local origin (a corner of the
 * first triangle), summed over a closed surface, is six times what it holds (divergence theorem); far from the origin digits would cancel.
 */
function sumPieces(
  { mesh, surfaceCount }: Capped,
  pieceOf: Int32Array,
  seeds: number[],
  isCutVertex: ((vertex: number) => boolean) | undefined,
): Piece[] {
  const { positions: p, triangles } = mesh;
  const first = 3 * triangles[0]!;
  const ox = p[first]!;
  const oy = p[first + 1]!;
  const oz = p[first + 2]!;
  const sums = emptyRows(seeds.length);
  for (let t = 0; t < pieceOf.length; t++) {
    const row = ROW * pieceOf[t]!;
    // Plain constants, no destructuring: this is the hottest loop of a measure.
    const va = triangles[3 * t]!;
    const vb = triangles[3 * t + 1]!;
    const vc = triangles[3 * t + 2]!;
    const ax = p[3 * va]! - ox;
    const ay = p[3 * va + 1]! - oy;
    const az = p[3 * va + 2]! - oz;
    const bx = p[3 * vb]! - ox;
    const by = p[3 * vb + 1]! - oy;
    const bz = p[3 * vb + 2]! - oz;
    const cx = p[3 * vc]! - ox;
    const cy = p[3 * vc + 1]! - oy;
    const cz = p[3 * vc + 2]! - oz;
    const nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
    const ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
    const nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    sums[row + SIXFOLD]! += ax * nx + ay * ny + az * nz;
    if (t >= surfaceCount) continue;
    sums[row + COUNT]!++;
    widen(sums, row, ax, ay, az);
    widen(sums, row, bx, by, bz);
    widen(sums, row, cx, cy, cz);
    const isCut = isCutVertex !== undefined && isCutVertex(va) && isCutVertex(vb) && isCutVertex(vc);
    sums[row + (isCut ? CUT_AREA : AREA)]! += Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
  }
  return seeds.map((seed, piece) => pieceFrom(sums, ROW * piece, seed, [ox, oy, oz]));
}

function emptyRows(count: number): Float64Array {
  const sums = new Float64Array(ROW * count);
  for (let row = 0; row < sums.length; row += ROW) {
    sums.fill(Infinity, row, row + 3);
    sums.fill(-Infinity, row + 3, row + 6);
  }
  return sums;
}

function widen(sums: Float64Array, row: number, x: number, y: number, z: number): void {
  if (x < sums[row]!) sums[row] = x;
  if (y < sums[row + 1]!) sums[row + 1] = y;
  if (z < sums[row + 2]!) sums[row + 2] = z;
  if (x > sums[row + 3]!) sums[row + 3] = x;
  if (y > sums[row + 4]!) sums[row + 4] = y;
  if (z > sums[row + 5]!) sums[row + 5] = z;
}

function pieceFrom(sums: Float64Array, row: number, seed: number, origin: [number, number, number]): Piece {
  const end = (at: number): [number, number, number] => [
    sums[row + at]! + origin[0],
    sums[row + at + 1]! + origin[1],
    sums[row + at + 2]! + origin[2],
  ];
  return {
    areaMm2: sums[row + AREA]!,
    cutAreaMm2: sums[row + CUT_AREA]!,
    volumeMm3: sums[row + SIXFOLD]! / 6,
    triangles: sums[row + COUNT]!,
    bounds: { min: end(0), max: end(3) },
    seed,
    isOpen: false,
  };
}

function bySize(pieces: Piece[], pieceOf: Int32Array): PieceTable {
  if (pieces.length === 1) return { pieces, pieceOf };
  const order = pieces.map((_, i) => i).sort((a, b) => pieces[b]!.areaMm2 - pieces[a]!.areaMm2 || a - b);
  const rank = new Int32Array(pieces.length);
  order.forEach((piece, place) => (rank[piece] = place));
  for (let t = 0; t < pieceOf.length; t++) pieceOf[t] = rank[pieceOf[t]!]!;
  return { pieces: order.map((i) => pieces[i]!), pieceOf };
}

/** Volume inside a closed, outward mesh, in the cube of its unit. Meaningless (but finite) for an open one. */
export function divergenceVolume(mesh: TriangleMesh): number {
  const surfaceCount = mesh.triangles.length / 3;
  if (surfaceCount === 0) return 0;
  const capped: Capped = { mesh, surfaceCount, loopOf: new Int32Array(0) };
  return sumPieces(capped, new Int32Array(surfaceCount), [0], undefined)[0]!.volumeMm3;
}
