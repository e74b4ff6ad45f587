import { diagonalOf, type Bounds, type TriangleMesh } from '../triangleMesh';
import type { Piece, PieceTable } from './pieces';
import type { PieceWish } from './pieceWish';
import { windingNumber } from './windingNumber';

/**
 * What a piece is. `body`: solid, counted. `void`: an inner surface wound inward, taken off. `inner solid`: lies whole inside
 * a solid and is wound outward, so it adds nothing beyond it. `island`: scan noise, left out. `sheet`: encloses nothing, or
 * nothing that its rims do not put in doubt, left out. `left out` and `filled` (a void that is not taken off): by a wish.
 */
export type Role = 'body' | 'void' | 'inner solid' | 'island' | 'sheet' | 'left out' | 'filled';

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

/** Facets of a piece that are tested before it is called nested: fewer where the piece around it is large. */
const MOST_PROBES = 25;
const FEWEST_PROBES = 7;
const PROBE_WORK = 2e6;

/** Solid angles that nesting may cost in all, some seconds. Beyond it a piece keeps the way it faces in the file. */
const NESTING_WORK = 2e8;

/** A nested piece may stick out of the bounds around it by this share of their diagonal: rims are ragged, voids touch. */
const OUTSIDE_SHARE = 0.03;

export interface Roles {
  role: Role[];
  /** 1 where the piece was inside out and is turned over. */
  turned: Uint8Array;
  /** 1 for what the rule would leave out as a speck. */
  isSpeck: Uint8Array;
  /** 1 for solids that are hollows by a wish. */
  hollowed: Uint8Array;
  /** The largest piece that is not left out. */
  main: number;
}

/** A wish with its pieces found: 1 for each that is left out. */
export interface RoleWish extends Omit<PieceWish, 'leaveOut'> {
  leftOut?: Uint8Array;
}

/**
 * Decides what every piece is and which way it faces. A piece inside no other must hold a positive volume. `capDoubtsMm3` gives
 * what the caps of every piece could change; it is asked only where an open piece is not the only body.
 */
export function assignRoles(
  mesh: TriangleMesh,
  table: PieceTable,
  capDoubtsMm3?: () => Float64Array,
  wish: RoleWish = {},
): Roles {
  const { pieces } = table;
  const roles = firstRoles(pieces, wish);
  const { role, turned } = roles;
  const candidates = pieces.map((_, i) => i).filter((i) => role[i] === 'body');
  if (capDoubtsMm3 !== undefined && candidates.length > 1 && candidates.some((i) => pieces[i]!.isOpen))
    for (const i of untrusted(pieces, candidates, capDoubtsMm3())) role[i] = 'sheet';
  const bodies = candidates.filter((i) => role[i] === 'body');
  const byVolume = [...bodies].sort(
    (a, b) => Math.abs(pieces[b]!.volumeMm3) - Math.abs(pieces[a]!.volumeMm3) || a - b,
  );
  const nesting: Nesting = { mesh, pieces, lists: trianglesByPiece(table), workLeft: NESTING_WORK };
  byVolume.forEach((i, rank) => {
    const larger = byVolume.slice(0, rank).filter((k) => role[k] !== 'filled');
    const around = container(nesting, i, larger);
    const facesIn = pieces[i]!.volumeMm3 < 0;
    if (around === 'too much work') {
      // Not decided: the file's own word stands, and the winding lines still watch over it.
      if (facesIn) role[i] = wish.fillHollows === true ? 'filled' : 'void';
      return;
    }
    if (around === undefined) {
      turned[i] = facesIn ? 1 : 0;
      return;
    }
    turned[i] = turned[around]!;
    const inward = facesIn !== (turned[i] === 1);
    if (role[around] === 'void') turned[i] = facesIn ? 1 : 0;
    else if (inward) role[i] = wish.fillHollows === true ? 'filled' : 'void';
    else if (wish.hollowInner === true) hollowOut(roles, i);
    else role[i] = 'inner solid';
  });
  return roles;
}

/** What can be told of every piece by itself. */
function firstRoles(pieces: readonly Piece[], { leftOut, countSpecks }: RoleWish): Roles {
  const isOut = (i: number): boolean => leftOut?.[i] === 1;
  const main = Math.max(
    0,
    pieces.findIndex((_, i) => !isOut(i)),
  );
  const isSpeck = Uint8Array.from(pieces, (piece) => (isIsland(piece, pieces[main]!) ? 1 : 0));
  const role = pieces.map((piece, i): Role => {
    if (isOut(i)) return 'left out';
    if (isSpeck[i] === 1 && countSpecks !== true) return 'island';
    return isSheet(piece) ? 'sheet' : 'body';
  });
  return {
    role,
    turned: new Uint8Array(pieces.length),
    isSpeck,
    hollowed: new Uint8Array(pieces.length),
    main,
  };
}

/** A solid that faces as the one around it becomes a void: it is turned against it. */
function hollowOut({ role, turned, hollowed }: Roles, piece: number): void {
  role[piece] = 'void';
  hollowed[piece] = 1;
  turned[piece] = 1 - turned[piece]!;
}

const isSheet = (piece: Piece): boolean =>
  Math.abs(piece.volumeMm3) <=
  (piece.isOpen ? OPEN_SHEET_SHARE : SHEET_SHARE) * piece.areaMm2 * diagonalOf(piece.bounds);

/**
 * The open pieces whose caps could change more than they hold: a fin without thickness, curved, holds whatever its cap makes of
 * it. They go only beside a body that is larger than all they could hold: else they may be the sculpt itself, too open to
 * measure, and what is left a mere part of it.
 */
function untrusted(pieces: readonly Piece[], bodies: readonly number[], doubtsMm3: Float64Array): number[] {
  const heldMm3 = (i: number): number => Math.abs(pieces[i]!.volumeMm3);
  const found = bodies.filter((i) => pieces[i]!.isOpen && doubtsMm3[i]! > heldMm3(i));
  const mostMm3 = found.reduce((sum, i) => sum + heldMm3(i) + doubtsMm3[i]!, 0);
  const isOutweighed = bodies.some((i) => !found.includes(i) && heldMm3(i) > mostMm3);
  return isOutweighed ? found : [];
}

function isIsland(piece: Piece, main: Piece): boolean {
  return (
    diagonalOf(piece.bounds) < ISLAND_DIAGONAL_SHARE * diagonalOf(main.bounds) &&
    piece.areaMm2 < ISLAND_AREA_SHARE * main.areaMm2
  );
}

interface Nesting {
  mesh: TriangleMesh;
  pieces: readonly Piece[];
  /** Triangles of every piece, caps included. */
  lists: Int32Array[];
  workLeft: number;
}

function trianglesByPiece({ pieces, pieceOf }: PieceTable): Int32Array[] {
  const counts = new Int32Array(pieces.length);
  for (const piece of pieceOf) counts[piece]!++;
  const lists = [...counts].map((count) => new Int32Array(count));
  counts.fill(0);
  for (let t = 0; t < pieceOf.length; t++) lists[pieceOf[t]!]![counts[pieceOf[t]!]!++] = t;
  return lists;
}

/**
 * The smallest of the larger bodies that holds most of this one: the winding number about the middle of facets spread over it
 * decides by majority, as single points may lie on a cap or stick out.
 */
function container(nesting: Nesting, inner: number, larger: number[]): number | undefined | 'too much work' {
  const { mesh, pieces, lists } = nesting;
  for (let k = larger.length - 1; k >= 0; k--) {
    const outer = larger[k]!;
    if (!holds(pieces[outer]!.bounds, pieces[inner]!.bounds)) continue;
    const list = lists[outer]!;
    const probes = facetMiddles(mesh, lists[inner]!.subarray(0, pieces[inner]!.triangles), list.length);
    nesting.workLeft -= probes.length * list.length;
    if (nesting.workLeft < 0) return 'too much work';
    const inside = probes.filter((point) => Math.abs(windingNumber(mesh, point, list)) > 0.5).length;
    if (2 * inside > probes.length) return outer;
  }
  return undefined;
}

/** Middles of facets spread over a list (caps stand at its end and are left out by the caller). */
function facetMiddles(mesh: TriangleMesh, list: Int32Array, outerCount: number): [number, number, number][] {
  const { positions: p, triangles } = mesh;
  const wanted = Math.min(MOST_PROBES, Math.max(FEWEST_PROBES, Math.floor(PROBE_WORK / outerCount)));
  const count = Math.min(wanted, list.length);
  return Array.from({ length: count }, (_, i) => {
    const t = 3 * list[Math.floor(((i + 0.5) * list.length) / count)]!;
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    return [
      (p[a]! + p[b]! + p[c]!) / 3,
      (p[a + 1]! + p[b + 1]! + p[c + 1]!) / 3,
      (p[a + 2]! + p[b + 2]! + p[c + 2]!) / 3,
    ];
  });
}

function holds(outer: Bounds, inner: Bounds): boolean {
  const slack = OUTSIDE_SHARE * diagonalOf(outer);
  return [0, 1, 2].every(
    (k) => outer.min[k]! - slack <= inner.min[k]! && inner.max[k]! <= outer.max[k]! + slack,
  );
}
