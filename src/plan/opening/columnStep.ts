import { extentsOf, type Bounds } from '../../geometry';
import type { Accuracy } from '../chooseVoxel';

/** Columns over the longest side, at the most and at the least for 1 mm. Chosen here: 1 mm from a puppet's hand to a giant's head. */
const [MOST, FEWEST] = [500, 150];

/** Finer or coarser than normal. */
const TIMES: Record<Accuracy, number> = { fast: 2, normal: 1, fine: 0.5 };

/** Step of the columns in which air and liquid are followed, mm: 1 mm on usual pieces, in proportion on small and on large ones. */
export function columnStepMm(bounds: Bounds, accuracy: Accuracy, givenMm?: number): number {
  const longest = Math.max(...extentsOf(bounds));
  const finest = longest / (2 * MOST);
  if (givenMm !== undefined) return Math.max(finest, givenMm);
  return Math.max(finest, TIMES[accuracy] * Math.min(Math.max(1, longest / MOST), longest / FEWEST));
}
