import { bad, good, type Outcome } from '../../problem';
import { measureRim, rimDoubtMm3, type Rim } from '../repair/rims';
import { boundsAround, diagonalOf, extentsOf, type TriangleMesh } from '../triangleMesh';
import { closeSurface, type ClosedSurface } from './closedSurface';
import { tabulatePieces, type Piece, type PieceTable } from './pieces';
import { assignRoles, type Role, type Roles } from './roles';
import { settleOverlaps, watchOverlaps } from './overlaps';
import { nothingLeft, refusal } from './refusal';
import type { PieceGroup, SolidMeasure } from './solidMeasure';

/** A piece smaller than this is not one: a micrometer across. */
const SMALLEST_MM = 1e-3;

export interface SolidOptions {
  /** Smallest step of the coordinates, mm: what rounding in the file could move the surface by. */
  coordinateStepMm: number;
  /** True for vertices made by a cut of ours: a rim of these alone is closed flat without doubt. */
  isCutVertex?: (vertex: number) => boolean;
  onProgress?: (share: number) => void;
}

/**
 * Volume, area, size, pieces and rims of a scan, closed or not.
 * A closed, outward mesh without overlaps gets its exact volume by the divergence theorem; overlaps are found by winding along
 * lines and taken out. Errors: NO_TRIANGLES, BAD_NUMBER, DEGENERATE_ONLY, ZERO_VOLUME, NOT_CLOSED, NOT_ORIENTED, PRECISION, TOO_SMALL.
 */
export function measureSolid(mesh: TriangleMesh, options: SolidOptions): Outcome<SolidMeasure> {
  const progress = options.onProgress ?? (() => undefined);
  if (mesh.triangles.length === 0) return bad('NO_TRIANGLES');
  const broken = unfitCorner(mesh);
  if (broken !== undefined) return bad('BAD_NUMBER', { text: broken });
  const surface = closeSurface(mesh);
  progress(0.5);
  if (surface.capped.surfaceCount === 0) return nothingLeft(surface.counts);
  const table = tabulatePieces(surface.capped, surface.pairs, surface.loops, options.isCutVertex);
  const scanBounds = boundsAround(table.pieces.map((piece) => piece.bounds));
  if (!(diagonalOf(scanBounds) > SMALLEST_MM))
    return bad('TOO_SMALL', { longestMm: Math.max(...extentsOf(scanBounds)) });
  const roles = assignRoles(surface.capped.mesh, table);
  progress(0.7);
  const rims = measureRims(surface, table, roles, options);
  const solid: SolidMeasure = { ...sumUp(surface, table, roles, rims, options), scanBounds };
  progress(1);
  return refusal(solid, surface, table) ?? good(solid);
}

/** A coordinate that a triangle uses and that is no finite number, as text. Readers refuse these; a caller's mesh may hold one. */
function unfitCorner({ positions, triangles }: TriangleMesh): string | undefined {
  // All vertices first, in order and fast; only where one is off does it matter whether a triangle uses it.
  if (allFinite(positions, 0, positions.length)) return undefined;
  const vertex = triangles.find((v) => !allFinite(positions, 3 * v, 3 * v + 3));
  return vertex === undefined ? undefined : [...positions.subarray(3 * vertex, 3 * vertex + 3)].join(', ');
}

function allFinite(numbers: Float64Array, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (!Number.isFinite(numbers[i]!)) return false;
  return true;
}

const isCounted = (role: Role): boolean => role === 'body' || role === 'void' || role === 'inner solid';

/** The rims of the pieces that count. */
function measureRims(surface: ClosedSurface, table: PieceTable, roles: Roles, options: SolidOptions): Rim[] {
  const { mesh } = surface.capped;
  const rims: Rim[] = [];
  for (const loop of surface.loops) {
    if (loop.vertices.length < 3 || !isCounted(roles.role[table.pieceOf[loop.triangle]!]!)) continue;
    const isCut = options.isCutVertex !== undefined && loop.vertices.every(options.isCutVertex);
    const isLoose = loop.vertices.length === 3 && isFacet(mesh, loop.triangle, loop.vertices);
    rims.push(measureRim(mesh, loop, isCut ? 'cut' : isLoose ? 'loose facet' : undefined));
  }
  return rims.sort((a, b) => b.areaMm2 - a.areaMm2);
}

function isFacet(mesh: TriangleMesh, t: number, vertices: readonly number[]): boolean {
  return [0, 1, 2].every((e) => vertices.includes(mesh.triangles[3 * t + e]!));
}

function sumUp(
  surface: ClosedSurface,
  table: PieceTable,
  roles: Roles,
  rims: Rim[],
  options: SolidOptions,
): Omit<SolidMeasure, 'scanBounds'> {
  const byRole = groupByRole(table.pieces, roles);
  const plainSumMm3 = byRole.body.volumeMm3 + byRole.void.volumeMm3 + byRole['inner solid'].volumeMm3;
  const counted = countedMesh(surface, table, roles);
  const bounds = boundsAround(table.pieces.filter((_, i) => isCounted(roles.role[i]!)).map((p) => p.bounds));
  const winding = watchOverlaps(counted, bounds, plainSumMm3);
  const sum = settleOverlaps(winding, plainSumMm3, byRole['inner solid'].volumeMm3);
  const areaMm2 = table.pieces.reduce(
    (total, p, i) => total + (isCounted(roles.role[i]!) ? p.areaMm2 : 0),
    0,
  );
  return {
    volumeMm3: sum.volumeMm3,
    doubt: {
      capsMm3: rims.reduce((total, rim) => total + rimDoubtMm3(rim), 0),
      islandsMm3: byRole.island.heldMm3,
      overlapMm3: sum.doubtMm3,
      coordinatesMm3: (options.coordinateStepMm * areaMm2) / 2,
    },
    areaMm2,
    cutAreaMm2:
      table.pieces.reduce((total, p) => total + p.cutAreaMm2, 0) +
      sectionAreaMm2(rims.filter((rim) => rim.kind === 'cut')),
    bounds,
    extentsMm: extentsOf(bounds),
    pieces: table.pieces.length + surface.counts.loose,
    byRole,
    turnedPieces: groupOf(table.pieces, roles.turned, (i) => roles.turned[i] === 1),
    isMainTurned: roles.turned[0] === 1,
    rims,
    repairs: surface.counts,
    closed: rims.every((rim) => rim.kind === 'cut'),
    method: sum.method,
    winding,
    plainSumMm3,
  };
}

/** Area of a section from the rims in its plane: those of hollows run the other way round and take theirs off. */
const sectionAreaMm2 = (rims: readonly Rim[]): number =>
  Math.hypot(...[0, 1, 2].map((k) => rims.reduce((sum, rim) => sum + rim.areaMm2 * rim.normal[k]!, 0)));

/** The closed chain of the pieces that count, each facing its settled way. */
function countedMesh(surface: ClosedSurface, table: PieceTable, roles: Roles): TriangleMesh {
  const { mesh } = surface.capped;
  if (roles.role.every(isCounted) && roles.turned.every((t) => t === 0)) return mesh;
  const kept: number[] = [];
  for (let t = 0; t < table.pieceOf.length; t++) {
    const piece = table.pieceOf[t]!;
    if (!isCounted(roles.role[piece]!)) continue;
    const [a, b, c] = [mesh.triangles[3 * t]!, mesh.triangles[3 * t + 1]!, mesh.triangles[3 * t + 2]!];
    if (roles.turned[piece] === 1) kept.push(a, c, b);
    else kept.push(a, b, c);
  }
  return { positions: mesh.positions, triangles: Int32Array.from(kept) };
}

function groupByRole(pieces: readonly Piece[], { role, turned }: Roles): Record<Role, PieceGroup> {
  const group = (wanted: Role): PieceGroup => groupOf(pieces, turned, (i) => role[i] === wanted);
  return {
    body: group('body'),
    void: group('void'),
    'inner solid': group('inner solid'),
    island: group('island'),
    sheet: group('sheet'),
  };
}

/** Signed as the pieces face once the turned ones are turned. */
function groupOf(pieces: readonly Piece[], turned: Uint8Array, belongs: (i: number) => boolean): PieceGroup {
  const group: PieceGroup = { count: 0, volumeMm3: 0, heldMm3: 0 };
  pieces.forEach(({ volumeMm3 }, i) => {
    if (!belongs(i)) return;
    group.count++;
    group.volumeMm3 += turned[i] === 1 ? -volumeMm3 : volumeMm3;
    group.heldMm3 += Math.abs(volumeMm3);
  });
  return group;
}
