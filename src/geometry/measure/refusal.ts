import { bad, type Outcome } from '../../problem';
import { boundsOf, diagonalOf, type TriangleMesh } from '../triangleMesh';
import type { ClosedSurface, RepairCounts } from './closedSurface';
import { longestLoop } from './longestLoop';
import type { SolidMeasure } from './solidMeasure';
import type { PieceTable } from './pieces';

/** A volume whose caps could change it by more than this share is not one to pour on. Chosen here. */
export const DOUBT_LIMIT = 0.25;

/** The same for what coordinates written too coarsely could change. */
const PRECISION_LIMIT = 0.02;

/**
 * Facets of which more than this share of edges stand open are no surface yet, whatever little of them closes. Chosen here: a
 * surface that lost 40 % of its facets at random has 40 % of the edges of the others open.
 */
const OPEN_LIMIT = 0.5;

/** Why there is no trustworthy volume, if there is none. */
export function refusal(
  solid: SolidMeasure,
  surface: ClosedSurface,
  table: PieceTable,
): Outcome<never> | undefined {
  const totalArea = table.pieces.reduce((s, p) => s + p.areaMm2, 0);
  const { openEdges, loose, oneSidedEdges } = surface.counts;
  const open = openEdges > 0;
  const values = {
    openEdges,
    pieces: solid.pieces,
    sheets: solid.byRole.sheet.count,
    ...(solid.byRole['left out'].count === 0 ? {} : { leftOut: solid.byRole['left out'].count }),
    ...longestLoop(surface.capped.mesh.positions, surface.loops, diagonalOf(solid.scanBounds)),
  };
  if (open && surface.oneSidedArea > totalArea / 2) return bad('NOT_ORIENTED', { ...values, oneSidedEdges });
  const openShare = (openEdges + 3 * loose) / (3 * (surface.capped.surfaceCount + loose));
  if (openShare > OPEN_LIMIT)
    return bad('NOT_CLOSED', { ...values, openEdges: openEdges + 3 * loose, openShare });
  if (solid.byRole.body.count === 0 || !(solid.volumeMm3 > 0))
    return bad(open ? 'NOT_CLOSED' : 'ZERO_VOLUME', values);
  const capShare = solid.doubt.capsMm3 / solid.volumeMm3;
  if (capShare > DOUBT_LIMIT) {
    return bad('NOT_CLOSED', {
      ...values,
      doubtCm3: solid.doubt.capsMm3 / 1000,
      volumeCm3: solid.volumeMm3 / 1000,
      doubtShare: capShare,
    });
  }
  const stepShare = solid.doubt.coordinatesMm3 / solid.volumeMm3;
  if (stepShare > PRECISION_LIMIT) return bad('PRECISION', { doubtShare: stepShare });
  return undefined;
}

/** Why no facet is left to measure: all were loose, cancelled each other, or had collapsed. */
export function nothingLeft(counts: RepairCounts, mesh: TriangleMesh): Outcome<never> {
  if (counts.loose === 0) return bad(counts.cancelled > 0 ? 'ZERO_VOLUME' : 'DEGENERATE_ONLY', { ...counts });
  return bad('NOT_CLOSED', {
    openEdges: 3 * counts.loose,
    pieces: counts.loose,
    openShare: 1,
    ...longestLoop(mesh.positions, facetRims(mesh), diagonalOf(boundsOf(mesh))),
  });
}

function* facetRims({ triangles }: TriangleMesh): Iterable<{ vertices: Int32Array }> {
  for (let h = 0; h < triangles.length; h += 3) yield { vertices: triangles.subarray(h, h + 3) };
}
