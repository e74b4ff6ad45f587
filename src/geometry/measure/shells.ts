import type { Capped } from '../repair/closeCycle';
import type { Bounds } from '../triangleMesh';
import type { PieceTable } from './pieces';
import type { Roles } from './roles';

/** A solid of the scan that stands by itself and can be left out, or was. */
export interface Shell {
  isLeftOut: boolean;
  /** What it holds, whichever way it faces. */
  heldMm3: number;
  areaMm2: number;
  bounds: Bounds;
  /** A vertex by which it can be named in a wish: its own alone, and on no cut of ours. Undefined where it has none. */
  corner?: number;
}

/** Which pieces a wish leaves out, by piece; and how many of its vertices no piece has. */
export function leftOutPieces(
  { mesh, surfaceCount }: Capped,
  { pieces, pieceOf }: PieceTable,
  leaveOut: readonly number[],
): { leftOut: Uint8Array; lost: number } {
  const leftOut = new Uint8Array(pieces.length);
  if (leaveOut.length === 0) return { leftOut, lost: 0 };
  const found = new Map(leaveOut.map((vertex) => [vertex, false]));
  for (let c = 0; c < 3 * surfaceCount; c++) {
    const vertex = mesh.triangles[c]!;
    if (!found.has(vertex)) continue;
    found.set(vertex, true);
    leftOut[pieceOf[(c / 3) | 0]!] = 1;
  }
  return { leftOut, lost: [...found.values()].filter((is) => !is).length };
}

/** The solids that could be left out and those that are, largest area first. None where there is one solid alone. */
export function shellsOf(
  capped: Capped,
  table: PieceTable,
  { role, isSpeck }: Roles,
  isCutVertex: ((vertex: number) => boolean) | undefined,
): Shell[] {
  const { pieces } = table;
  const told = pieces
    .map((_, i) => i)
    .filter((i) => (role[i] === 'body' && isSpeck[i] === 0) || role[i] === 'left out');
  if (told.length < 2) return [];
  const corners = ownCorners(capped, table, isCutVertex);
  return told.map((i) => {
    const { volumeMm3, areaMm2, bounds } = pieces[i]!;
    const corner = corners[i]!;
    return {
      isLeftOut: role[i] === 'left out',
      heldMm3: Math.abs(volumeMm3),
      areaMm2,
      bounds,
      ...(corner < 0 ? {} : { corner }),
    };
  });
}

const NOBODY = -1;
const SEVERAL = -2;

/** The highest vertex of every piece that no other piece has: a cut that keeps what is above it leaves it. -1 where there is none. */
function ownCorners(
  { mesh, surfaceCount }: Capped,
  { pieces, pieceOf }: PieceTable,
  isCutVertex: ((vertex: number) => boolean) | undefined,
): Int32Array {
  const { positions, triangles } = mesh;
  const owner = new Int32Array(positions.length / 3).fill(NOBODY);
  for (let c = 0; c < 3 * surfaceCount; c++) {
    const vertex = triangles[c]!;
    const piece = pieceOf[(c / 3) | 0]!;
    if (owner[vertex] === NOBODY) owner[vertex] = piece;
    else if (owner[vertex] !== piece) owner[vertex] = SEVERAL;
  }
  const corners = new Int32Array(pieces.length).fill(-1);
  for (let v = 0; v < owner.length; v++) {
    const piece = owner[v]!;
    if (piece < 0 || isCutVertex?.(v) === true) continue;
    const best = corners[piece]!;
    if (best < 0 || positions[3 * v + 2]! > positions[3 * best + 2]!) corners[piece] = v;
  }
  return corners;
}
