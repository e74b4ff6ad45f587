import { dot, type Vector } from '../vector';

/*
 * In a square bar most samples see a side wall before the face across: their ball is small, and no two of its contacts face each other. Moved away from
 * all it touches, it grows until it is held from all sides: in the axis of the bar. An edge or a corner of something large lets it grow on. How fast a ball
 * grows is the distance of the origin from the hull of the directions to its contacts (the gradient of the distance function): for two it is the
 * cosine of half the angle between them, 0 where they face each other.
 */

/** A ball that would grow by less than this for a step is held: two contacts 130 degrees apart. */
const HELD = Math.cos((65 * Math.PI) / 180);

/** In radii: the first step, the finest one. How far a ball may grow before it is that of an edge, and in how many steps. Chosen here. */
const [FIRST_STEP, FINEST_STEP, MOST_GROWTH, MOST_STEPS] = [0.25, 0.02, 1.6, 40];

/** Contacts nearer to each other than this (cosine) are one. Chosen here: 18 degrees. */
const SAME_CONTACT = 0.95;
/** A step that grows the ball by this share less than it should has met another contact. Chosen here. */
const MET = 0.9;

const TRIED = new Float64Array(3);
const FOOT = new Float64Array(3);

/**
 * Radius of the ball where it is held, its middle moved there; 0 where nothing holds it.
 * @param middle is written
 * @param contacts unit vectors from the middle
 * @param nearest distance of a point from the surface, the nearest place written to `foot`
 * @param isBarred a ball that comes to touch this place is not told
 */
export function grownBall(
  middle: Float64Array,
  radius: number,
  contacts: Vector[],
  {
    nearest,
    isBarred,
  }: {
    nearest: (at: Float64Array, foot: Float64Array) => number;
    isBarred: (foot: Float64Array) => boolean;
  },
): number {
  let size = radius;
  let step = FIRST_STEP * size;
  for (let n = 0; n < MOST_STEPS; n++) {
    const toHull = nearestOfHull(contacts);
    const speed = Math.hypot(...toHull);
    if (speed < HELD) return size;
    for (let a = 0; a < 3; a++) TRIED[a] = middle[a]! - (step * toHull[a]!) / speed;
    const next = nearest(TRIED, FOOT);
    if (next - size < MET * speed * step) {
      const contact = toward(TRIED, FOOT, next);
      const isNew = contact !== undefined && contacts.every((one) => dot(one, contact) < SAME_CONTACT);
      if (step <= FINEST_STEP * size) {
        if (isBarred(FOOT)) return 0;
        if (!isNew) return next - size < HELD * step ? size : 0;
        contacts.push(contact);
        step = FIRST_STEP * size;
      } else step /= 2;
      continue;
    }
    middle.set(TRIED);
    size = next;
    if (size > MOST_GROWTH * radius) return 0;
  }
  return 0;
}

function toward(from: Float64Array, to: Float64Array, far: number): Vector | undefined {
  if (!(far > 0)) return undefined;
  return [(to[0]! - from[0]!) / far, (to[1]! - from[1]!) / far, (to[2]! - from[2]!) / far];
}

/** Rounds of the search for it; near enough for a handful of vectors. */
const ROUNDS = 24;

/** The point of the convex hull of unit vectors nearest to the origin, by steps toward the vector that lies farthest back (Frank and Wolfe 1956). */
function nearestOfHull(vectors: readonly Vector[]): Vector {
  let at: Vector = vectors[0]!;
  for (let round = 0; round < ROUNDS; round++) {
    const back = vectors.reduce((least, one) => (dot(one, at) < dot(least, at) ? one : least));
    const way: Vector = [back[0] - at[0], back[1] - at[1], back[2] - at[2]];
    const square = dot(way, way);
    if (square === 0) return at;
    const share = Math.min(1, Math.max(0, -dot(at, way) / square));
    if (share < 1e-9) return at;
    at = [at[0] + share * way[0], at[1] + share * way[1], at[2] + share * way[2]];
  }
  return at;
}
