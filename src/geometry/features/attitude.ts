import type { TriangleMesh } from '../triangleMesh';
import { planeFrame } from '../measure/planeFrame';
import { dot, type Vector } from '../vector';
import { axisRuns, pocketsAlong, type AxisRuns } from './axisRuns';
import type { Mouth } from './mouth';

/*
 * The way up that shuts in the least air. Columns along three axes are made once; for a direction those of the nearest axis serve, their ends projected on
 * it. That is right to some percent, enough to rank, and takes a millisecond; the few best are then worked out with columns of their own. (Sorting voxels
 * by their height for every direction is 50 to 120 times dearer.)
 */

export interface Attitude {
  /** Unit vector in the axes of the mesh: up when poured. */
  up: Vector;
  /** About: pockets of ROUGHNESS_MM3 and more. */
  trappedMm3: number;
  /** Pockets that ask for a vent. */
  vents: number;
}

export interface AttitudeWish {
  mouth: Mouth;
  leastMm3: number;
  /** Directions over the part of the sphere that keeps the opening usable. */
  directions: number;
  onStep?: (() => void) | undefined;
}

/** Up and the way the opening faces are no further apart. Common practice, no source. */
export const MOST_TILT_DEGREES = 60;

/** A vent is worth this much air: chosen here, so that a liter less air is not bought with a dozen vents. */
export const VENT_MM3 = 1000;

/** Attitudes nearer to each other than this are one: chosen here. */
const APART_DEGREES = 20;

/** Best ones that are walked downhill, and the steps, degrees. */
const WALKED = 10;
const STEPS_DEGREES = [5, 1] as const;

/** Best attitudes first, at least APART_DEGREES from each other, `most` of them. Deterministic. */
export function searchAttitude(
  chain: TriangleMesh,
  { stepMm, most }: { stepMm: number; most: number },
  wish: AttitudeWish,
): Attitude[] {
  const runs = ([0, 1, 2] as const).map((axis) => axisRuns(chain, axis, stepMm, wish.mouth));
  const tried = directionsAround(wish.mouth.normal, wish.directions).map((up) => evaluate(runs, up, wish));
  tried.sort(byScore);
  const walked = tried.slice(0, WALKED).map((start) => downhill(start, runs, wish));
  const all = [...walked, ...tried].sort(byScore);
  const kept: Attitude[] = [];
  for (const one of all) {
    if (kept.length === most) break;
    if (kept.every(({ up }) => degreesBetween(up, one.up) >= APART_DEGREES)) kept.push(one);
  }
  return kept;
}

function evaluate(runs: readonly AxisRuns[], up: Vector, wish: AttitudeWish): Attitude {
  wish.onStep?.();
  const { pockets } = pocketsAlong(runs, up, wish.mouth);
  return {
    up,
    trappedMm3: pockets.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0),
    vents: pockets.filter(({ volumeMm3 }) => volumeMm3 >= wish.leastMm3).length,
  };
}

const score = ({ trappedMm3, vents }: Attitude): number => trappedMm3 + VENT_MM3 * vents;

const byScore = (a: Attitude, b: Attitude): number => score(a) - score(b);

export const degreesBetween = (a: Vector, b: Vector): number =>
  (Math.acos(Math.min(1, Math.max(-1, dot(a, b)))) * 180) / Math.PI;

/** Golden-angle spiral over the cap around the way the opening faces (the lattice of Vogel 1979, Math. Biosciences 44:179, on a sphere). */
function directionsAround(normal: Vector, count: number): Vector[] {
  const { u, v, n } = planeFrame(normal);
  const leastCosine = Math.cos((MOST_TILT_DEGREES * Math.PI) / 180);
  const around = Array.from({ length: count }, (_, i): Vector => {
    const along = 1 - ((i + 0.5) / count) * (1 - leastCosine);
    const aside = Math.sqrt(1 - along * along);
    const turn = i * Math.PI * (3 - Math.sqrt(5));
    const [a, b] = [aside * Math.cos(turn), aside * Math.sin(turn)];
    return [0, 1, 2].map((k) => {
      const at = k as 0 | 1 | 2;
      return along * n[at] + a * u[at] + b * v[at];
    }) as unknown as Vector;
  });
  return [n, ...around];
}

/** Six neighbors, as long as one of them is better; then closer ones. */
function downhill(start: Attitude, runs: readonly AxisRuns[], wish: AttitudeWish): Attitude {
  let best = start;
  for (const degrees of STEPS_DEGREES)
    for (let moved = true; moved;) {
      moved = false;
      for (const up of neighborsOf(best.up, degrees)) {
        if (degreesBetween(up, wish.mouth.normal) > MOST_TILT_DEGREES) continue;
        const one = evaluate(runs, up, wish);
        if (score(one) >= score(best) * (1 - 1e-9)) continue;
        best = one;
        moved = true;
      }
    }
  return best;
}

function neighborsOf(up: Vector, degrees: number): Vector[] {
  const { u, v, n } = planeFrame(up);
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return Array.from({ length: 6 }, (_, turn): Vector => {
    const [a, b] = [s * Math.cos((turn * Math.PI) / 3), s * Math.sin((turn * Math.PI) / 3)];
    return [c * n[0] + a * u[0] + b * v[0], c * n[1] + a * u[1] + b * v[1], c * n[2] + a * u[2] + b * v[2]];
  });
}
