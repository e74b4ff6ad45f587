import { finding, type Problem } from '../problem';
import { STOP_SHARE } from './doubtStatus';
import { SAME_SCALE_SHARE } from './scale';
import { MM3_PER_CM3 } from './sizeDoubts';
import type { SizeFacts } from './sizeFacts';

/** Sizes a workshop does not cast in one piece: outside these the unit is asked about. Chosen here. */
const SMALLEST_MM = 25;
const LARGEST_MM = 3000;

/** A size that is hard to believe, and measures that disagree with the scale or could not be held against it. */
export function scaleFindings({ solid, scale }: SizeFacts): Problem[] {
  const found: Problem[] = [];
  const longestMm = Math.max(...solid.extentsMm);
  if (longestMm < SMALLEST_MM || longestMm > LARGEST_MM) {
    found.push(
      finding('UNITS_SUSPECT', 'look', { part: 'size', longestMm, unit: scale.fileUnit, effectCm3: 0 }),
    );
  }
  for (const { by, share } of scale.disagreements) {
    if (Math.abs(share) <= SAME_SCALE_SHARE) continue;
    found.push(
      finding('UNITS_SUSPECT', Math.abs(share) > STOP_SHARE ? 'stop' : 'look', {
        part: 'disagree',
        by,
        scaleBy: scale.by,
        share,
        // What the volume would change by, were it the scale.
        otherwiseCm3: (((1 + share) ** 3 - 1) * solid.volumeMm3) / MM3_PER_CM3,
      }),
    );
  }
  for (const by of scale.unreached)
    found.push(finding('UNITS_SUSPECT', 'unknown', { part: 'unreached', by }));
  return found;
}
