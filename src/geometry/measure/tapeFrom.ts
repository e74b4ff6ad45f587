import type { Bounds } from '../triangleMesh';
import type { Vector } from '../vector';

/** The piece's own sides: it faces +y, so its right is +x. */
export type Side = 'left' | 'right' | 'front' | 'back';

/** Distances to mark a spot by, mm. All are from the planes of the bounds, measured upright or level. */
export interface Tape {
  upMm: number;
  /** From the nearest of the four sides. */
  inMm: number;
  side: Side;
  /** From the nearest side of the other pair: with it the place is known in full. */
  acrossMm: number;
  acrossSide: Side;
}

/**
 * Where a spot is by tape: up from the base (the lowest z) and in from the nearest side, mm. Of equal distances the right and the
 * front go first. Below 0 where the spot is outside of the bounds.
 */
export function tapeFrom({ min, max }: Bounds, [x, y, z]: Vector): Tape {
  const width = nearer({ side: 'right', mm: max[0] - x }, { side: 'left', mm: x - min[0] });
  const depth = nearer({ side: 'front', mm: max[1] - y }, { side: 'back', mm: y - min[1] });
  const [one, other] = width.mm <= depth.mm ? [width, depth] : [depth, width];
  return { upMm: z - min[2], inMm: one.mm, side: one.side, acrossMm: other.mm, acrossSide: other.side };
}

interface FromSide {
  side: Side;
  mm: number;
}

const nearer = (one: FromSide, other: FromSide): FromSide => (one.mm <= other.mm ? one : other);
