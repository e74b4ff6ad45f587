import { bad, type Outcome } from '../../problem';
import type { ClosedSurface, RepairCounts } from './closedSurface';
import type { SolidMeasure } from './solidMeasure';
import type { PieceTable } from './pieces';

/** A volume whose caps could change it by more than this share is not one to pour on. Chosen here. */
const DOUBT_LIMIT = 0.25;

/** The same for what coordinates written too coarsely could change. */
const PRECISION_LIMIT = 0.02;

/** Why there is no trustworthy volume, if there is none. */
export function refusal(
  solid: SolidMeasure,
  surface: ClosedSurface,
  table: PieceTable,
): Outcome<never> | undefined {
  const totalArea = table.pieces.reduce((s, p) => s + p.areaMm2, 0);
  const open = surface.counts.openEdges > 0;
  const values = {
    openEdges: surface.counts.openEdges,
    pieces: solid.pieces,
    sheets: solid.byRole.sheet.count,
  };
  if (open && surface.oneSidedArea > totalArea / 2)
    return bad('NOT_ORIENTED', { ...values, oneSidedEdges: surface.counts.oneSidedEdges });
  if (solid.byRole.body.count === 0 || !(solid.volumeMm3 > 0))
    return bad(open ? 'NOT_CLOSED' : 'ZERO_VOLUME', values);
  const capShare = solid.doubt.capsMm3 / solid.volumeMm3;
  if (capShare > DOUBT_LIMIT) {
    return bad('NOT_CLOSED', {
      ...values,
      doubtCm3: solid.doubt.capsMm3 / 1000,
      volumeCm3: solid.volumeMm3 / 1000,
      doubtShare: capShare,
      largestRimMm: solid.rims[0]?.lengthMm ?? 0,
    });
  }
  const stepShare = solid.doubt.coordinatesMm3 / solid.volumeMm3;
  if (stepShare > PRECISION_LIMIT) return bad('PRECISION', { doubtShare: stepShare });
  return undefined;
}

/** Why no facet is left to measure: all were loose, cancelled each other, or had collapsed. */
export function nothingLeft(counts: RepairCounts): Outcome<never> {
  if (counts.loose > 0) return bad('NOT_CLOSED', { openEdges: 3 * counts.loose, pieces: counts.loose });
  return bad(counts.cancelled > 0 ? 'ZERO_VOLUME' : 'DEGENERATE_ONLY', { ...counts });
}
