import type { Rim } from '../repair/rims';
import type { Bounds } from '../triangleMesh';
import type { RepairCounts } from './closedSurface';
import type { Role } from './roles';
import type { WindingSums } from './windingLines';

/** What the volume could be off by, in mm3, each at about 95 of 100. */
export interface Doubt {
  capsMm3: number;
  islandsMm3: number;
  overlapMm3: number;
  coordinatesMm3: number;
}

export interface PieceGroup {
  count: number;
  /** Signed sum, as the pieces face. */
  volumeMm3: number;
  /** Sum of what each holds, whichever way it faces. */
  heldMm3: number;
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
}
