import { diagonalOf, type Bounds, type TriangleMesh } from '../triangleMesh';
import type { Piece, PieceTable } from './pieces';
import { windingNumber } from './windingNumber';

/**
 * What a piece is. `body`: solid, counted. `void`: an inner surface wound inward, taken off. `inner solid`: lies whole inside
 * a solid and is wound outward, so it adds nothing beyond it. `island`: scan noise, left out. `sheet`: encloses nothing, left out.
 */
export type Role = 'body' | 'void' | 'inner solid' | 'island' | 'sheet';

/** An island is smaller than both shares of the largest piece (diagonal, area). Chosen here; every one is named and counted. */
const ISLAND_DIAGONAL_SHARE = 0.06;
const ISLAND_AREA_SHARE = 0.01;

/**
 * A closed piece that holds less than the first share of area x diagonal is a sheet (a 0.01 mm plate of 200 mm still holds
 * 1.8e-5). An open one is, below the second: a rough scan of a table top holds some 1e-3 by its noise, a dome of a tenth of its
 * width 2e-2. Chosen here.
 */
const SHEET_SHARE = 1e-6;
const OPEN_SHEET_SHARE = 2e-3;

/** Vertices of a piece that are tested before it is called nested. */
const PROBES = 12;

/** Pieces beyond this rank are not tested for nesting: they count as bodies, and the winding lines still watch over them. */
const NESTING_LIMIT = 64;

export interface Roles {
  role: Role[];
  /** 1 where the piece was inside out and is turned over. */
  turned: Uint8Array;
}

/** Decides what every piece is and which way it faces. A piece inside no other must hold a positive volume. */
export function assignRoles(mesh: TriangleMesh, table: PieceTable): Roles {
  const { pieces } = table;
  const main = pieces[0]!;
  const role = pieces.map((piece): Role =>
    isIsland(piece, main) ? 'island' : isSheet(piece) ? 'sheet' : 'body',
  );
  const turned = new Uint8Array(pieces.length);
  const bodies = pieces.map((_, i) => i).filter((i) => role[i] === 'body');
  const byVolume = [...bodies].sort(
    (a, b) => Math.abs(pieces[b]!.volumeMm3) - Math.abs(pieces[a]!.volumeMm3) || a - b,
  );
  byVolume.forEach((i, rank) => {
    const around = rank < NESTING_LIMIT ? container(mesh, table, i, byVolume.slice(0, rank)) : undefined;
    const facesIn = pieces[i]!.volumeMm3 < 0;
    if (around === undefined) {
      turned[i] = facesIn ? 1 : 0;
      return;
    }
    turned[i] = turned[around]!;
    const inward = facesIn !== (turned[i] === 1);
    if (role[around] === 'void') turned[i] = facesIn ? 1 : 0;
    else role[i] = inward ? 'void' : 'inner solid';
  });
  return { role, turned };
}

const isSheet = (piece: Piece): boolean =>
  Math.abs(piece.volumeMm3) <=
  (piece.isOpen ? OPEN_SHEET_SHARE : SHEET_SHARE) * piece.areaMm2 * diagonalOf(piece.bounds);

function isIsland(piece: Piece, main: Piece): boolean {
  return (
    diagonalOf(piece.bounds) < ISLAND_DIAGONAL_SHARE * diagonalOf(main.bounds) &&
    piece.areaMm2 < ISLAND_AREA_SHARE * main.areaMm2
  );
}

/** The smallest of the larger bodies that holds every probed vertex of this one. */
function container(
  mesh: TriangleMesh,
  table: PieceTable,
  inner: number,
  larger: number[],
): number | undefined {
  const { pieces, pieceOf } = table;
  const around = larger.filter((outer) => holds(pieces[outer]!.bounds, pieces[inner]!.bounds)).reverse();
  if (around.length === 0) return undefined;
  const probes = probePoints(mesh, table, inner);
  return around.find((outer) =>
    probes.every((q) => Math.abs(windingNumber(mesh, q, (t) => pieceOf[t] === outer)) > 0.5),
  );
}

/** Vertices spread over the piece, and those furthest out along each axis: a corner that sticks out is most likely one of them. */
function probePoints(mesh: TriangleMesh, table: PieceTable, piece: number): [number, number, number][] {
  const { positions: p, triangles } = mesh;
  const spread: number[] = [];
  const lowest = [0, 0, 0].map(() => 3 * triangles[3 * table.pieces[piece]!.seed]!);
  const highest = [...lowest];
  const stride = Math.max(1, Math.floor(table.pieces[piece]!.triangles / PROBES));
  for (let t = 0, seen = 0; t < table.pieceOf.length; t++) {
    if (table.pieceOf[t] !== piece) continue;
    if (seen++ % stride === 0) spread.push(3 * triangles[3 * t]!);
    for (let c = 3 * t; c < 3 * t + 3; c++) {
      const v = 3 * triangles[c]!;
      for (let k = 0; k < 3; k++) {
        if (p[v + k]! < p[lowest[k]! + k]!) lowest[k] = v;
        if (p[v + k]! > p[highest[k]! + k]!) highest[k] = v;
      }
    }
  }
  return [...spread, ...lowest, ...highest].map((v) => [p[v]!, p[v + 1]!, p[v + 2]!]);
}

const holds = (outer: Bounds, inner: Bounds): boolean =>
  [0, 1, 2].every((k) => outer.min[k]! <= inner.min[k]! && inner.max[k]! <= outer.max[k]!);
