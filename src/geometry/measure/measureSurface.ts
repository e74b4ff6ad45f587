import { bad, good, type Outcome } from '../../problem';
import { measureRim, rimDoubtMm3, type Rim } from '../repair/rims';
import { boundsAround, centerOf, diagonalOf, extentsOf, type TriangleMesh } from '../triangleMesh';
import { capDoubts } from './capDoubts';
import { closeSurface, type ClosedSurface } from './closedSurface';
import { tabulatePieces, type Piece, type PieceTable } from './pieces';
import type { PieceWish } from './pieceWish';
import { assignRoles, type Role, type Roles } from './roles';
import { settleOverlaps, watchOverlaps } from './overlaps';
import { nothingLeft, refusal } from './refusal';
import { leftOutPieces, shellsOf } from './shells';
import type { PieceGroup, SolidMeasure } from './solidMeasure';

/** A piece smaller than this is not one: a micrometer across. Chosen here. */
const SMALLEST_MM = 1e-3;

export interface SurfaceOptions {
  coordinateStepMm: number;
  isCutVertex?: (vertex: number) => boolean;
  pieces?: PieceWish;
  onProgress?: (share: number) => void;
  /** Facets that run the same way along their common edge do not belong together there; none is turned over. */
  keepWinding?: boolean;
}

/** The solid that a surface bounds as its corners are: no corner is moved. Errors as `measureSolid`. */
export function measureSurface(mesh: TriangleMesh, options: SurfaceOptions): Outcome<SolidMeasure> {
  const progress = options.onProgress ?? (() => undefined);
  const surface = closeSurface(mesh, options.keepWinding);
  progress(0.5);
  if (surface.capped.surfaceCount === 0) return nothingLeft(surface.counts, mesh);
  const table = tabulatePieces(surface.capped, surface.pairs, surface.loops, options.isCutVertex);
  const scanBounds = boundsAround(table.pieces.map((piece) => piece.bounds));
  if (!(diagonalOf(scanBounds) > SMALLEST_MM))
    return bad('TOO_SMALL', { longestMm: Math.max(...extentsOf(scanBounds)) });
  const { leaveOut = [], ...wish } = options.pieces ?? {};
  const { leftOut, lost } = leftOutPieces(surface.capped, table, leaveOut);
  const roles = assignRoles(
    surface.capped.mesh,
    table,
    () => capDoubts(surface.capped.mesh, table, surface.loops, options.isCutVertex),
    { ...wish, leftOut },
  );
  progress(0.7);
  const rims = measureRims(surface, table, roles, options);
  const solid: SolidMeasure = {
    ...sumUp(surface, table, roles, rims, options),
    scanBounds,
    shells: shellsOf(surface.capped, table, roles, options.isCutVertex),
    wished: { ...wishedGroups(table.pieces, roles), lost },
  };
  return refusal(solid, surface, table) ?? good(solid);
}

const isCounted = (role: Role): boolean => role === 'body' || role === 'void' || role === 'inner solid';

/** The rims of the pieces that count. */
function measureRims(
  surface: ClosedSurface,
  table: PieceTable,
  roles: Roles,
  options: SurfaceOptions,
): Rim[] {
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
  options: SurfaceOptions,
): Omit<SolidMeasure, 'scanBounds' | 'shells' | 'wished'> {
  const byRole = groupByRole(table.pieces, roles);
  const plainSumMm3 = byRole.body.volumeMm3 + byRole.void.volumeMm3 + byRole['inner solid'].volumeMm3;
  const chain = countedChain(surface, table, roles, isCounted);
  const bounds = boundsAround(table.pieces.filter((_, i) => isCounted(roles.role[i]!)).map((p) => p.bounds));
  const winding = watchOverlaps(chain, bounds, plainSumMm3);
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
      weldMm3: 0,
    },
    areaMm2,
    cutAreaMm2:
      table.pieces.reduce((total, p) => total + p.cutAreaMm2, 0) +
      sectionAreaMm2(rims.filter((rim) => rim.kind === 'cut')),
    bounds,
    extentsMm: extentsOf(bounds),
    pieces: table.pieces.length + surface.counts.loose,
    byRole,
    turnedPieces: groupOf(
      table.pieces,
      roles.turned,
      (i) => roles.turned[i] === 1 && roles.hollowed[i] === 0,
    ),
    isMainTurned: roles.turned[roles.main] === 1,
    rims,
    repairs: surface.counts,
    closed: rims.every((rim) => rim.kind === 'cut'),
    method: sum.method,
    winding,
    plainSumMm3,
    chain,
    envelope:
      byRole.void.count === 0
        ? chain
        : countedChain(surface, table, roles, (role) => isCounted(role) && role !== 'void'),
  };
}

/** Area of a section from the rims in its plane: those of hollows run the other way round and take theirs off. */
const sectionAreaMm2 = (rims: readonly Rim[]): number =>
  Math.hypot(...[0, 1, 2].map((k) => rims.reduce((sum, rim) => sum + rim.areaMm2 * rim.normal[k]!, 0)));

/** The closed chain of the pieces that count (with or without the voids), each facing its settled way. */
function countedChain(
  { capped: { mesh } }: ClosedSurface,
  table: PieceTable,
  { role, turned }: Roles,
  isWanted: (role: Role) => boolean,
): TriangleMesh {
  if (role.every(isWanted) && turned.every((one) => one === 0)) return mesh;
  const kept: number[] = [];
  for (let t = 0; t < table.pieceOf.length; t++) {
    const piece = table.pieceOf[t]!;
    if (!isWanted(role[piece]!)) continue;
    const [a, b, c] = [mesh.triangles[3 * t]!, mesh.triangles[3 * t + 1]!, mesh.triangles[3 * t + 2]!];
    if (turned[piece] === 1) kept.push(a, c, b);
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
    'left out': group('left out'),
    filled: group('filled'),
  };
}

/** What only a wish made bodies and hollows. */
const wishedGroups = (
  pieces: readonly Piece[],
  { role, turned, isSpeck, hollowed }: Roles,
): Pick<SolidMeasure['wished'], 'specks' | 'hollowed'> => ({
  specks: groupOf(pieces, turned, (i) => isSpeck[i] === 1 && isCounted(role[i]!)),
  hollowed: groupOf(pieces, turned, (i) => hollowed[i] === 1),
});

/** Signed as the pieces face once the turned ones are turned. */
function groupOf(pieces: readonly Piece[], turned: Uint8Array, belongs: (i: number) => boolean): PieceGroup {
  const group: PieceGroup = { count: 0, volumeMm3: 0, heldMm3: 0, areaMm2: 0 };
  pieces.forEach(({ volumeMm3, areaMm2, bounds }, i) => {
    if (!belongs(i)) return;
    group.middleMm ??= centerOf(bounds);
    group.count++;
    group.volumeMm3 += turned[i] === 1 ? -volumeMm3 : volumeMm3;
    group.heldMm3 += Math.abs(volumeMm3);
    group.areaMm2 += areaMm2;
  });
  return group;
}
