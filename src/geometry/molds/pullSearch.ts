import type { Field } from '../field/buildField';
import { bad, good, type Outcome } from '../../problem';
import { watched } from '../field/runTogether';
import { sampleField, type Samples } from '../field/sampleField';
import { unit } from '../measure/planeFrame';
import { cross, dot, type Vector } from '../vector';
import { shear, type Sheared } from './sheared';
import { sweptBy, toGrid, type Leaving } from './sweptBody';

/*
 * The pull that locks least. A thinned field, one of some 70 000 points, tells the locked volume of a direction in a few milliseconds and to about a
 * hundredth (by fill on tilted tori and scans), so a spread of directions is tried and the best ones are walked downhill. Many directions lock
 * nothing: a ring can be drawn at any tilt up to 60 degrees. Among those within a hundredth of the rubber, the one that locks
 * least with a draft wins, then the one nearest to an axis.
 */

export interface PullChoice {
  /** Unit vector in the scan's axes. */
  pull: Vector;
  /** Other directions lock as little. */
  isTied: boolean;
  tried: number;
}

/** Points of the thinned grid, for the search and for a comparison. */
const POINTS = 7e4;
export const POINTS_TO_COMPARE = 4e4;
/** Directions over the half sphere, and over the half circle of level pulls. */
const [SPHERE, CIRCLE] = [200, 72];
const STEPS_DEGREES = [4, 2, 1] as const;
const WALKED = 3;
/** Directions whose fills differ by less than this share of the rubber are as good. Chosen here. */
const TIE_SHARE = 0.01;
/** Directions further apart than this are different ones: cos 20 degrees. Chosen here. */
const APART_COSINE = 0.94;
/** Draft of the second criterion, degrees: common practice (2 to 5), no source. */
const DRAFT_DEGREES = 4;

/**
 * Skin for which the pull is sought, whatever the mold's own: so the pull is that of the sculpt and the pieces. Chosen here: between the usual 6
 * and 10 mm. What it locks is then measured at the mold's own thickness.
 */
const SEARCH_SKIN_MM = 8;

/** The best pull around a body with a standing field. Errors: STOPPED. */
export function searchPull(
  field: Field,
  { pieces, onBoard }: { pieces: 1 | 2; onBoard: boolean },
): Outcome<PullChoice> {
  // Farther distances are told to a step, which does for a draft that only ranks.
  const samples = sampleField(field, [SEARCH_SKIN_MM], field.options.levelsMm);
  if (!samples.ok) return samples;
  const wish = { skinMm: SEARCH_SKIN_MM, pieces, onBoard };
  const found = watched(field.options, [0, 1], DIRECTIONS_TRIED, (onStep) =>
    findPull(field, samples.value, { ...wish, onStep }),
  );
  return found === undefined ? bad('STOPPED') : good(found);
}

/** About how many directions are looked at, for the progress. */
const DIRECTIONS_TRIED = 300;

/**
 * @param skinMm thickness of the rubber around the body
 * @param onBoard the body stands on a board: one piece is lifted off it, two are drawn apart level, as neither can pass through it
 */
function findPull(
  field: Field,
  samples: Samples,
  {
    skinMm,
    pieces,
    onBoard,
    onStep,
  }: { skinMm: number; pieces: 1 | 2; onBoard: boolean; onStep: () => void },
): PullChoice {
  const known = new Map<string, number>();
  const lockedMm3 = (pull: Vector, draftDegrees = 0): number => {
    const key = [...pull, draftDegrees].join(' ');
    const before = known.get(key);
    if (before !== undefined) return before;
    onStep();
    const locked = roughlyLocked(field, samples, { skinMm, pull, pieces, draftDegrees });
    known.set(key, locked);
    return locked;
  };
  const starts = candidates(pieces, onBoard);
  const scored = starts.map((pull) => ({ pull, locked: lockedMm3(pull) }));
  scored.sort((a, b) => a.locked - b.locked);
  const isLevel = onBoard && pieces === 2;
  const walked = scored.slice(0, WALKED).map((start) => downhill(start, lockedMm3, isLevel));
  const all = [...walked, ...scored];
  const least = Math.min(...all.map(({ locked }) => locked));
  const upright = shear(samples, { pull: [0, 0, 1], every: thinnedBy(samples) });
  const tieMm3 = TIE_SHARE * roughVolume(upright, upright.values, skinMm);
  const tied = all.filter(({ locked }) => locked <= least + tieMm3);
  const best = bestOf(tied, (pull) => lockedMm3(pull, DRAFT_DEGREES), tieMm3);
  return {
    pull: best,
    isTied: tied.some(({ pull }) => Math.abs(dot(pull, best)) < APART_COSINE),
    tried: known.size,
  };
}

interface Scored {
  pull: Vector;
  locked: number;
}

/** Least with a draft; of those as good, the nearest to an axis of the scan. */
function bestOf(tied: readonly Scored[], withDraft: (pull: Vector) => number, tieMm3: number): Vector {
  const drafted = tied.map(({ pull }) => ({ pull, locked: withDraft(pull) }));
  const least = Math.min(...drafted.map(({ locked }) => locked));
  const good = drafted.filter(({ locked }) => locked <= least + tieMm3);
  const nearness = ({ pull }: Scored): number => Math.max(...pull.map(Math.abs));
  return good.reduce((best, one) => (nearness(one) > nearness(best) + 1e-9 ? one : best)).pull;
}

/** Six neighbors on the sphere (two on the level circle), steps halved when none is better. */
function downhill(start: Scored, lockedMm3: (pull: Vector) => number, isLevel: boolean): Scored {
  let best = start;
  for (const degrees of STEPS_DEGREES) {
    for (let moved = true; moved;) {
      moved = false;
      for (const pull of around(best.pull, (degrees * Math.PI) / 180, isLevel)) {
        const locked = lockedMm3(pull);
        if (locked >= best.locked * (1 - 1e-9)) continue;
        best = { pull, locked };
        moved = true;
      }
    }
  }
  return best;
}

function around(pull: Vector, angle: number, isLevel: boolean): Vector[] {
  const side = unit(Math.abs(pull[2]) < 0.9 ? [-pull[1], pull[0], 0] : [1, 0, -pull[0] / pull[2]]);
  const other = cross(pull, side);
  const turns = isLevel ? [0, Math.PI] : [0, 1, 2, 3, 4, 5].map((n) => (n * Math.PI) / 3);
  return turns.map((turn) => {
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const [a, b] = [Math.cos(angle), Math.sin(angle)];
    return unit([0, 1, 2].map((n) => a * pull[n]! + b * (c * side[n]! + s * other[n]!)) as unknown as Vector);
  });
}

function candidates(pieces: 1 | 2, onBoard: boolean): Vector[] {
  const axes: Vector[] = [
    [0, 0, 1],
    [1, 0, 0],
    [0, 1, 0],
  ];
  if (onBoard && pieces === 2) return [...axes.slice(1), ...circle()];
  const half = halfSphere();
  if (onBoard) return [axes[0]!, ...half.filter(([, , z]) => z > LEAST_LIFT)];
  const all = [...axes, ...half];
  // One piece without a board leaves either way; two leave both ways at once.
  return pieces === 2 ? all : [...all, ...all.map(([x, y, z]): Vector => [-x, -y, -z])];
}

/** A jacket lifted off the board goes up at least this steeply (sine of 30 degrees). Chosen here. */
const LEAST_LIFT = 0.5;

const circle = (): Vector[] =>
  Array.from({ length: CIRCLE }, (_, n): Vector => {
    const angle = (Math.PI * (n + 0.5)) / CIRCLE;
    return [Math.cos(angle), Math.sin(angle), 0];
  });

/** Golden-angle spiral over the upper half (the lattice of Vogel 1979, Math. Biosciences 44:179, on a sphere). */
const halfSphere = (): Vector[] =>
  Array.from({ length: SPHERE }, (_, n): Vector => {
    const z = (n + 0.5) / SPHERE;
    const angle = n * Math.PI * (3 - Math.sqrt(5));
    const r = Math.sqrt(1 - z * z);
    return [r * Math.cos(angle), r * Math.sin(angle), z];
  });

/** Every so many grid points are enough. */
const thinnedBy = ({ grid: { nx, ny, nz } }: Samples, points = POINTS): number =>
  Math.max(1, Math.round(Math.cbrt((nx * ny * nz) / points)));

/** What a pull locks, mm3, to about a hundredth of the skin: for a comparison. */
export function roughlyLocked(
  field: Field,
  samples: Samples,
  { skinMm, pull, pieces, draftDegrees, points }: { skinMm: number; points?: number } & Leaving,
): number {
  const sheared = shear(samples, { pull: toGrid(field, pull), every: thinnedBy(samples, points) });
  const swept = sweptBy(sheared, { pieces, draftDegrees });
  return roughVolume(sheared, swept, skinMm) - roughVolume(sheared, sheared.values, skinMm);
}

/** Volume within a level by a ramp over one step: right to a few thousandths, and quick. */
function roughVolume(
  { nu, nv, nw, spacingMm, height }: Sheared,
  values: Float32Array,
  levelMm: number,
): number {
  const perMm = 1 / spacingMm;
  let sum = 0;
  for (let k = 0, v = 0; k < nw; k++) {
    for (let j = 0; j < nv; j++) {
      let over = height === undefined ? 0 : height.atZero + height.perV * j + height.perW * k;
      const perU = height === undefined ? 0 : height.perU;
      for (let i = 0; i < nu; i++, v++, over += perU) {
        if (over <= -1) continue;
        const share = 0.5 - (values[v]! - levelMm) * perMm;
        if (share <= 0) continue;
        sum += (share >= 1 ? 1 : share) * (over >= 0 ? 1 : over + 1);
      }
    }
  }
  return sum * spacingMm ** 3;
}
