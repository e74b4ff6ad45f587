import { bad, good, type Outcome } from '../../problem';
import type { Field } from '../field/buildField';
import type { Samples } from '../field/sampleField';
import type { Vector } from '../measure/planeFrame';
import type { MoldSettings, UndercutShape } from './moldType';
import { POINTS_TO_COMPARE, roughlyLocked, searchPull, type PullChoice } from './pullSearch';
import type { Sculpt } from './sculpt';
import { numberIn, partsIn, readPull } from './settle';
import type { Leaving } from './sweptBody';

/** One piece is lifted at least this steeply, two go apart at most this steeply (sines of 6 and 20 degrees). Chosen here. */
const [LEAST_LIFT, MOST_TILT] = [0.1, 0.35];

/** A pull that no jacket can follow: one piece off a sculpt that it goes all round, or a piece that must pass through the board. */
export function barredPull(settings: MoldSettings, { boardMm }: Sculpt): ReturnType<typeof bad> | undefined {
  const pieces = partsIn(settings);
  if (boardMm === undefined) return pieces === 1 ? bad('JACKET_NOT_FREE') : undefined;
  const pull = settings.pull === 'best' ? undefined : readPull(String(settings.pull));
  if (pull === undefined) return undefined;
  const isBarred = pieces === 1 ? pull[2] < LEAST_LIFT : Math.abs(pull[2]) > MOST_TILT;
  return isBarred ? bad('PULL_THROUGH_BOARD', { pieces, x: pull[0], y: pull[1], z: pull[2] }) : undefined;
}

/** How the jacket leaves the rubber, as its settings say or as locks least, with the axes beside it. Errors: those of `searchPull`. */
export function jacketLeaving(
  { sculpt, field, pull: known }: { sculpt: Sculpt; field: Field; pull?: PullChoice | undefined },
  samples: Samples,
  settings: MoldSettings,
): Outcome<{ leaving: Leaving; search: PullFound; compared: UndercutShape['compared'] }> {
  const pieces = partsIn(settings);
  const draftDegrees = numberIn(settings, 'draftDegrees');
  const skinMm = numberIn(settings, 'skinMm');
  const roughly = (pull: Vector, count: 1 | 2): number =>
    Math.max(
      0,
      roughlyLocked(field, samples, { skinMm, pull, pieces: count, draftDegrees, points: POINTS_TO_COMPARE }),
    );
  const onBoard = sculpt.boardMm !== undefined;
  const compared = COMPARED.map((pull) => {
    // On a board two pieces go apart level and one goes up.
    const count: 1 | 2 = onBoard ? (pull[2] === 0 ? 2 : 1) : pieces;
    return { pull, pieces: count, fillMm3: roughly(pull, count) };
  });
  const pull =
    known === undefined && settings.pull === 'best' ? searchPull(field, { pieces, onBoard }) : good(known);
  if (!pull.ok) return pull;
  const search = settlePull(settings, pull.value, compared, (one) => roughly(one, pieces));
  return good({ leaving: { pull: search.pull, pieces, draftDegrees }, search, compared });
}

const COMPARED: readonly Vector[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
/** Where the pull comes from. */
export interface PullFound {
  pull: Vector;
  wasSearched: boolean;
  isTied: boolean;
}

/** The pull that was said, or the one found; an axis instead, where it locks less at this thickness by more than counts. */
function settlePull(
  settings: MoldSettings,
  known: PullChoice | undefined,
  axes: UndercutShape['compared'],
  lockedBy: (pull: Vector) => number,
): PullFound {
  const given = settings.pull === 'best' ? undefined : readPull(String(settings.pull));
  if (given !== undefined) return { pull: given, wasSearched: false, isTied: false };
  if (known === undefined) throw new Error('settlePull: expected a pull that was searched, got none');
  const pieces = partsIn(settings);
  const least = axes
    .filter((axis) => axis.pieces === pieces)
    .reduce<UndercutShape['compared'][number] | undefined>(
      (a, b) => (a === undefined || b.fillMm3 < a.fillMm3 ? b : a),
      undefined,
    );
  const isAxis = least !== undefined && least.fillMm3 < lockedBy(known.pull) - NO_MATTER_MM3;
  return { pull: isAxis ? least.pull : known.pull, wasSearched: true, isTied: known.isTied };
}

/** A difference of half a milliliter does not matter. Chosen here. */
export const NO_MATTER_MM3 = 500;
