import type { Vector } from '../measure/planeFrame';

/** A section of a casting across the way it is pulled out. */
export interface SectionOut {
  /** Depth, mm from the mouth into the mold. */
  alongMm: number;
  /** Around all outlines together, as a tape pulled taut: two legs share one. */
  girthMm: number;
  areaMm2: number;
  /** Outlines around solid that stand apart: overlapping shells share one, specks do not count. */
  outlineCount: number;
  /** Middle of what the tape goes round. */
  middleMm: Vector;
  /** As `sectionOf` gives them, seen from outside the mouth. */
  outlines: Float64Array[];
}

export interface SectionsOut {
  /** Unit vector out of the mold. */
  way: Vector;
  lengthMm: number;
  /** Between the first planes; a groove narrower than this can be missed. */
  stepMm: number;
  /** From the mouth inward. The first lies just inside the flat end, the last just before the far end. */
  sections: SectionOut[];
  /**
   * The body ends flat at the mouth. If it does not (a ball on its pole), sections there narrow to nothing and their ratios say
   * nothing about a mold: give the opening.
   */
  hasFlat: boolean;
  /** An opening around which the rubber stays on. */
  opening?: { alongMm: number; girthMm: number; atMm: Vector };
  /** Area, seen along the way, that faces out of the mold with rubber before it. */
  undercutMm2: number;
  /** Its share of all that faces out, the flat end included: 0 draws straight out. */
  undercutShare: number;
}

export interface WayOut {
  /** Out of the mold, any length above 0: usually the outward normal of the opening. */
  way: Vector;
  /**
   * A round opening. It counts only if the rubber around it `staysOn` while demolding; by default the casting comes out through its whole
   * end. One that is wider than the flat end does not count.
   */
  opening?: { atMm: Vector; diameterMm: number; staysOn?: boolean };
  /** Planes of the first look, at even steps. */
  count?: number;
  /** Called once a plane; it may throw to stop. */
  onStep?: () => void;
}
