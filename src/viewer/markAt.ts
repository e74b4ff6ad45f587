import type { Mark } from './mark';
import type { LabelSeats } from './seatLabels';

/** A press this near to a dot or its number means it: half of a finger's 44 px. */
const NEAR_PX = 22;

/** The numbered mark nearest to a press, by its dot or its number; none where none is near. */
export function markAt(
  marks: readonly Mark[],
  { dots, labels }: Pick<LabelSeats, 'dots' | 'labels'>,
  { x, y }: { x: number; y: number },
): Mark | undefined {
  let [best, least] = [-1, NEAR_PX];
  marks.forEach((mark, i) => {
    if (mark.isRow !== true) return;
    const far = Math.min(
      Math.hypot(x - dots[2 * i]!, y - dots[2 * i + 1]!),
      Math.hypot(x - labels[2 * i]!, y - labels[2 * i + 1]!),
    );
    if (far < least) [best, least] = [i, far];
  });
  return marks[best];
}

/** The next or previous numbered mark, round and round. */
export function markBeside(
  marks: readonly Mark[],
  picked: string | undefined,
  step: 1 | -1,
): Mark | undefined {
  const rows = marks.filter(({ isRow }) => isRow === true);
  const at = rows.findIndex(({ label }) => label === picked);
  if (at < 0) return step === 1 ? rows[0] : rows[rows.length - 1];
  return rows[(at + step + rows.length) % rows.length];
}
