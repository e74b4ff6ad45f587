import { bad, good, type Outcome } from '../../problem';
import type { Field } from '../field/buildField';
import { distanceFunction } from '../field/distanceAt';
import { watched, type Watched } from '../field/runTogether';
import { ballsOf } from './thicknessBalls';
import { coverSamples } from './thicknessCover';
import { neighborsOf } from './thicknessNeighbors';
import { roughnessMm } from './thicknessNoise';
import { thinnestValleys, type Covered, type Valley } from './thicknessPlaces';
import { ballRoom, type BallRoom } from './thicknessRoom';
import { surfaceSamples, type SurfaceSide, type SurfaceSamples } from './thicknessSamples';
import { summaryOf, type Thickness } from './thicknessSummary';

export { shareThinner, type Thickness, type ThinPlace } from './thicknessSummary';

export interface ThicknessOptions extends Watched {
  /** `inside`: of the body. `outside`: of the gaps between its parts, where the mold has a web of rubber. */
  side?: SurfaceSide;
  /** Thicker than this is told as this; by default what the field can tell. */
  mostMm?: number;
  /** Height of the flat face where the sculpt was cut off its base, in the scan's axes (z). Its outline is no thin place. */
  baseMm?: number;
}

/** Chosen here. */
const MOST_PLACES = 10;

/**
 * A sample counts as touched by a ball up to this share of the grid step beyond it; on a rough surface up to this many times its root mean square:
 * noise spread evenly reaches 1.7 times that to either side of the surface. Chosen here.
 */
const [TOLERANCE_STEPS, TOLERANCE_ROUGH] = [0.1, 5];

/** Share of the work after which the samples stand; and looks a sample after that. */
const [SAMPLED, LOOKS] = [0.1, 0.05];

/**
 * Thickness by the largest ball inside that covers a point (Hildebrand and Ruegsegger 1997), at points about one grid step (two voxels) apart. The field
 * must be built for it: `inside` with a level of minus half of the smallest extent of the body (no ball can be larger), or less deep to
 * save time: what is thicker than twice that is then told as `cappedMm`. `outside` with a level of half of the widest gap asked for.
 * Errors: STOPPED. The result does not depend on the number of threads.
 */
export function measureThickness(field: Field, options: ThicknessOptions = {}): Outcome<Thickness> {
  const { side = 'inside', mostMm, baseMm } = options;
  const room = ballRoom(field, { side, mostMm, baseMm });
  const isLeftOut = side === 'outside' ? room.isOnBase : emptyBase(field, room);
  const { nz } = field.grid;
  const samples = watched(options, [0, SAMPLED], 2 * nz, (onStep) =>
    surfaceSamples(field, side, isLeftOut, onStep),
  );
  if (samples === undefined) return bad('STOPPED');
  const found = watched(options, [SAMPLED, 1], LOOKS * samples.count, (onStep) =>
    findThickness(room, samples, onStep),
  );
  if (found === undefined) return bad('STOPPED');
  const { roughnessMm, toleranceMm, covered } = found;
  return good({ ...summaryOf(field, found), cappedMm: covered.cappedMm, roughnessMm, toleranceMm });
}

/** Above the base, in voxels, where the body must be if the base is a face of it. Chosen here. */
const ABOVE_BASE = 0.3;

/**
 * A ring cut level is closed by two discs, one turned over: over its hole they lie on each other and bound nothing. A place on the base with no body over
 * it is no surface.
 */
function emptyBase(field: Field, { isOnBase }: BallRoom): (x: number, y: number, z: number) => boolean {
  const { rows, originMm } = field.surface.frame;
  const aboveMm = ABOVE_BASE * field.voxelMm;
  let distance: ReturnType<typeof distanceFunction> | undefined;
  return (x, y, z) => {
    if (!isOnBase(x, y, z)) return false;
    distance ??= distanceFunction(field);
    const at = (a: 0 | 1 | 2): number => rows[a] * x + rows[a + 3]! * y + rows[a + 6]! * z + originMm[a];
    return distance(at(0), at(1), at(2) + aboveMm) > 0;
  };
}

function findThickness(
  room: BallRoom,
  samples: SurfaceSamples,
  onStep: () => void,
): { roughnessMm: number; toleranceMm: number; covered: Covered; valleys: Valley[] } {
  const neighbors = neighborsOf(samples, onStep);
  const roughMm = roughnessMm(samples, neighbors, onStep);
  const toleranceMm = Math.max(TOLERANCE_STEPS * room.grid.spacingMm, TOLERANCE_ROUGH * roughMm);
  const balls = ballsOf(room, samples, roughMm, onStep);
  const coveredBy = coverSamples(samples, balls, toleranceMm, onStep);
  const thicknessMm = Float32Array.from(coveredBy, (b) => (b < 0 ? NaN : 2 * balls.radiusMm[b]!));
  // As the single precision of the balls has it, so that what is capped equals it.
  const cappedMm = 2 * Math.fround(room.mostRadiusMm);
  const covered = { samples, balls, coveredBy, thicknessMm, neighbors, cappedMm };
  return {
    roughnessMm: roughMm,
    toleranceMm,
    covered,
    valleys: thinnestValleys(covered, MOST_PLACES, onStep),
  };
}
