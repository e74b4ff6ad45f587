import type { Rim } from '../repair/rims';
import type { Bounds, TriangleMesh } from '../triangleMesh';
import type { RepairCounts } from './closedSurface';
import type { Role } from './roles';
import type { Shell } from './shells';
import type { WindingSums } from './windingLines';

/** What the volume could be off by, in mm3, each at about 95 of 100. */
export interface Doubt {
  capsMm3: number;
  islandsMm3: number;
  overlapMm3: number;
  coordinatesMm3: number;
  /** Of merging corners that lie close together. */
  weldMm3: number;
}

export interface PieceGroup {
  count: number;
  /** Signed sum, as the pieces face. */
  volumeMm3: number;
  /** Sum of what each holds, whichever way it faces. */
  heldMm3: number;
  /** Of all its facets. */
  areaMm2: number;
  /** Of the bounds of the largest of them, where there is one. */
  middleMm?: [number, number, number];
}

/** What was done to a scan whose neighbors do not share their corners. */
export interface WeldReport {
  /** Corners this close to a common place were merged there. */
  toleranceMm: number;
  cornersMoved: number;
  /** How far corners moved, averaged over the area of their facets. */
  meanMoveMm: number;
}

/** What was found of a scan whose facets do not close, by the winding number of all of them together. */
export interface SoupReport {
  /** Median winding number well inside: 1 less the share of the surface that is missing or turned over. */
  insideWinding: number;
  /** Volume of the places about which the facets wind more than half as much. */
  sampledMm3: number;
  /** Volume of the places that are neither clearly inside nor clearly outside. */
  unclearMm3: number;
}

/** The measured solid: everything in mm, nothing rounded, nothing done to it that `repairs` and `rims` do not name. */
export interface SolidMeasure {
  volumeMm3: number;
  doubt: Doubt;
  areaMm2: number;
  /** Of the flat faces of our own cuts; not in the area. */
  cutAreaMm2: number;
  /** Of the pieces that count: islands and sheets do not stretch it. */
  bounds: Bounds;
  /** Of everything in the scan. */
  scanBounds: Bounds;
  extentsMm: [number, number, number];
  pieces: number;
  byRole: Record<Role, PieceGroup>;
  /** Solids that stand by themselves, where there is more than one. */
  shells: Shell[];
  /** What a wish made of pieces that the rule takes otherwise; both are in `byRole` too. */
  wished: { specks: PieceGroup; hollowed: PieceGroup; lost: number };
  turnedPieces: PieceGroup;
  /** The largest piece faced inward in the file. */
  isMainTurned: boolean;
  rims: Rim[];
  repairs: RepairCounts;
  /** No rim but those of our own cuts: the pieces that count have no hole. */
  closed: boolean;
  method: 'exact' | 'field';
  winding: WindingSums;
  /** Signed sum of the counted pieces before overlaps were taken out. */
  plainSumMm3: number;
  /** Only where the surface as read was too open to be measured. */
  welded?: WeldReport;
  /** Only where merging corners did not close it either. */
  soup?: SoupReport;
  /** The pieces that count with their caps, each facing its settled way. */
  chain: TriangleMesh;
  /** The same without the voids; the same object where there are none. */
  envelope: TriangleMesh;
}
