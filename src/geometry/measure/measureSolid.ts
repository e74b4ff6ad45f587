import { bad, good, type Outcome, type Problem } from '../../problem';
import type { TriangleMesh } from '../triangleMesh';
import { measureSoup } from './measureSoup';
import { measureSurface } from './measureSurface';
import { measureWelded } from './measureWelded';
import type { PieceWish } from './pieceWish';
import type { SolidMeasure } from './solidMeasure';

/** Where the caps of a welded scan leave more doubt than this, as where a seam stays open, the winding may leave less. Chosen here. */
const CLEAR_SHARE = 0.01;

export interface SolidOptions {
  /** Smallest step of the coordinates, mm: what rounding in the file could move the surface by. */
  coordinateStepMm: number;
  /** True for vertices made by a cut of ours: a rim of these alone is closed flat without doubt. */
  isCutVertex?: (vertex: number) => boolean;
  /** Facets that do not join are no pieces: there it decides nothing. */
  pieces?: PieceWish;
  onProgress?: (share: number) => void;
}

/**
 * Volume, area, size, pieces and rims of a scan, closed or not.
 * A closed, outward mesh without overlaps gets its exact volume by the divergence theorem; overlaps are found by winding along
 * lines and taken out. Only where the surface is too open as it is read, corners that lie close together are merged (`welded`
 * says so), and where that does not close it either, the winding number of the loose facets is asked (`soup` says so).
 * Errors: NO_TRIANGLES, BAD_NUMBER, DEGENERATE_ONLY, ZERO_VOLUME, NOT_CLOSED, NOT_ORIENTED, PRECISION, TOO_SMALL.
 */
export function measureSolid(mesh: TriangleMesh, options: SolidOptions): Outcome<SolidMeasure> {
  if (mesh.triangles.length === 0) return bad('NO_TRIANGLES');
  const broken = unfitCorner(mesh);
  if (broken !== undefined) return bad('BAD_NUMBER', { text: broken });
  const asRead = measureSurface(mesh, options);
  const outcome =
    asRead.ok || asRead.problem.code !== 'NOT_CLOSED' ? asRead : closeLoose(mesh, options, asRead);
  options.onProgress?.(1);
  return outcome;
}

/** What can still be done for a scan that is too open as it was read; the refusal where nothing helps. */
function closeLoose(
  mesh: TriangleMesh,
  options: SolidOptions,
  refused: { ok: false; problem: Problem },
): Outcome<SolidMeasure> {
  const weld = measureWelded(mesh, options);
  const welded = weld?.solid;
  if (welded !== undefined && welded.doubt.capsMm3 <= CLEAR_SHARE * welded.volumeMm3) return good(welded);
  // A section of ours would lie open in a soup, and what it cuts could not be told from what is missing.
  const soup = options.isCutVertex === undefined ? measureSoup(mesh, options.coordinateStepMm) : refused;
  if (soup.ok && (welded === undefined || doubtShare(soup.value) < doubtShare(welded) / 2)) return soup;
  if (welded !== undefined) return good(welded);
  const { problem } = refused;
  return weld === undefined ? refused : bad(problem.code, { ...problem.values, triedMm: weld.triedMm });
}

const doubtShare = ({ doubt, volumeMm3 }: SolidMeasure): number =>
  (doubt.capsMm3 + doubt.weldMm3) / volumeMm3;

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
