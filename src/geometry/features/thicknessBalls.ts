import { AT, FOUND, QUERY, searchNearest, testTriangle, type SearchSurface } from '../field/nearest';
import type { Vector } from '../vector';
import { grownBall } from './thicknessGrown';
import { isWithin, type BallRoom, type Balls } from './thicknessRoom';
import type { SurfaceSamples } from './thicknessSamples';

/*
 * One ball a sample: the largest that touches the surface there and holds no other part of it, by shrinking (Ma, Bae and Choi 2012, The Visual Computer
 * 28:7, from memory): through the sample and the surface point nearest to its middle, until nothing is nearer. Points low over the sample's tangent
 * plane are its own neighborhood, rough or faceted: they do not shrink the ball. Instead its radius in the end is the true distance of its middle, so that
 * every ball lies within the body whatever the surface is like; where they are nearer than the sample, the ball starts once more from them.
 */

/** A surface point this high over the tangent plane (sine of 30 degrees), seen from the sample, is another part of the surface. Chosen here. */
const HIGH = 0.5;
/** Points of its own neighborhood may reach this far into a ball, in radii, before they shrink it too. Chosen here. */
const MOST_INTO = 0.1;
/** A ball starts once more where they reach in farther than this, in radii; and at most so often. Chosen here. */
const [AGAIN_INTO, MOST_AGAIN] = [0.003, 2];
/** A ball has stopped shrinking when nothing is nearer than this, in radii. Chosen here. */
const TOUCHING = 5e-4;
const [MOST_ROUNDS, ROUNDS] = [40, 2];
/** The triangle of a seed is farther than the nearest one by so many grid steps at most: half the diagonal of the seeds asked. */
const SEED_STEPS = 3;
/** Smaller balls, in grid steps, are none: a sample on an edge has only those. Chosen here. */
const LEAST_STEPS = 1e-3;
/**
 * The nearest of the triangles named around need not lead to the nearest face. In balls smaller than the first many grid steps all are followed, in balls
 * smaller than the second once the ball stands. In larger ones that would change little. Chosen here.
 */
const [SMALL_STEPS, LARGE_STEPS] = [2, 8];
/** Both contacts are this close to the ball, in radii. Chosen here. */
const CONTACT = 0.06;
/**
 * Cosine between two contacts seen from the middle. 130 degrees: the faces of a wedge of 50 degrees face each other, the edges of a square or a triangular
 * bar do not. 150 where one of them is the cut base, so that only a plate along the base counts there and not every outline that leans. Chosen here.
 */
const [FACING, FACING_BASE] = [Math.cos((130 * Math.PI) / 180), -Math.cos(Math.PI / 6)];
/** Smaller balls on the cut base, in grid steps, stand in the wedge at its outline; around a body the board is no part of it. Chosen here. */
const LEAST_ON_BASE = 0.5;
/** Balls of fewer roughnesses than the first stand in a pit of the noise, those of more than the second share of the largest in no bar: neither is grown. Chosen here. */
const [GROWN_ROUGH, GROWN_MOST] = [60, 0.35];
/** To see a contact that was not found: the middle is moved away from the first one by this share of the radius. Chosen here. */
const PROBE = 0.05;

/** @param roughMm root mean square roughness of the surface */
export function ballsOf(room: BallRoom, samples: SurfaceSamples, roughMm: number, onStep: () => void): Balls {
  const { count, at: points, inward } = samples;
  const at = new Float32Array(3 * count);
  const radiusMm = new Float32Array(count);
  const ownMm = new Float32Array(count);
  let start = room.mostRadiusMm;
  for (let s = 0; s < count; s++) {
    if (s % 64 === 0) onStep();
    for (let a = 0; a < 3; a++) {
      POINT[a] = points[3 * s + a]!;
      AXIS[a] = inward[3 * s + a]!;
    }
    // The next sample lies beside the last one: its ball is often about as large.
    const radius = settleBall(room, start);
    ownMm[s] = 2 * radius;
    start = Math.min(room.mostRadiusMm, Math.max(1.5 * radius, room.grid.spacingMm));
    if (radius === 0) continue;
    const counted = counts(room, radius)
      ? isFaced
        ? radius
        : room.mostRadiusMm
      : radius > GROWN_ROUGH * roughMm && radius < GROWN_MOST * room.mostRadiusMm
        ? Math.min(room.mostRadiusMm, grown(room, radius))
        : 0;
    if (counted === 0) continue;
    at.set(MIDDLE, 3 * s);
    radiusMm[s] = counted;
  }
  return { at, radiusMm, ownMm };
}

/** The ball at work: where it starts and in which direction, its middle, its contacts on both sides. */
const POINT = new Float64Array(3);
const AXIS = new Float64Array(3);
const MIDDLE = new Float64Array(3);
const CLOSE = new Float64Array(3);
const FACE = new Float64Array(3);
let isFaced = false;
/** How far both contacts are from the middle, of those found in this round. */
let closeMm = 0;
let faceMm = 0;

/** Radius of the ball from POINT along AXIS, into MIDDLE, CLOSE and FACE. 0: there is none. */
function settleBall(room: BallRoom, first: number): number {
  let start = first;
  let inscribed = 0;
  for (let again = 0; again <= MOST_AGAIN; again++) {
    let radius = shrink(room, start);
    if (!isFaced && start < room.mostRadiusMm) radius = shrink(room, room.mostRadiusMm);
    if (radius === 0) return 0;
    const away = distanceTo(CLOSE);
    inscribed = Math.min(radius, away);
    if (radius - away < AGAIN_INTO * radius || away < 0.2 * radius) break;
    for (let a = 0; a < 3; a++) {
      POINT[a] = CLOSE[a]!;
      AXIS[a] = (MIDDLE[a]! - CLOSE[a]!) / away;
    }
    start = Math.min(room.mostRadiusMm, 2 * radius);
  }
  return inscribed;
}

const distanceTo = (to: Float64Array): number =>
  Math.hypot(to[0]! - MIDDLE[0]!, to[1]! - MIDDLE[1]!, to[2]! - MIDDLE[2]!);

/** Shrinks a ball from radius `start`. Returns its radius; `isFaced`: it touches FACE. CLOSE: the nearest point of the sample's own side. */
function shrink(room: BallRoom, start: number): number {
  const { search, grid } = room;
  let radius = start;
  isFaced = false;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    for (let a = 0; a < 3; a++) QUERY[a] = MIDDLE[a] = POINT[a]! + radius * AXIS[a]!;
    if (!isWithin(grid, QUERY)) {
      radius *= 0.7;
      continue;
    }
    lookAround(room);
    CLOSE.set(POINT);
    closeMm = radius;
    faceMm = Infinity;
    const shrunk = nextRadius(search, radius, grid.spacingMm);
    if (shrunk < 0) {
      isFaced = isFaced && distanceTo(FACE) <= radius * (1 + CONTACT);
      return radius;
    }
    if (shrunk < LEAST_STEPS * grid.spacingMm) return 0;
    radius = shrunk;
  }
  return 0;
}

/**
 * Radius of the ball through POINT and what lies in the ball of now; -1: nothing does. The seeds' triangles are not the nearest ones yet: those
 * that look nearest are followed first, and all of them where a small ball would stand.
 */
function nextRadius(search: SearchSurface, radius: number, stepMm: number): number {
  let shrunk = -1;
  if (radius >= SMALL_STEPS * stepMm) {
    if (bestFar >= 0 && leastFar < radius * (1 + CONTACT) + SEED_STEPS * stepMm)
      shrunk = radiusBy(search, bestFar, radius);
    if (shrunk < 0 && bestNear >= 0) shrunk = radiusBy(search, bestNear, radius);
    if (shrunk >= 0 || radius >= LARGE_STEPS * stepMm) return shrunk;
  }
  for (let n = 0; n < candidates && shrunk < 0; n++) shrunk = radiusBy(search, CANDIDATES[n]!, radius);
  return shrunk;
}

/** The nearest triangles seen from QUERY, of another part of the surface and of the sample's own: number and distance; -1: none. */
let bestFar = -1;
let leastFar = 0;
let bestNear = -1;
let leastNear = 0;
/** All triangles looked at. */
const CANDIDATES = new Int32Array(16);
let candidates = 0;

function lookAround({ search, site, grid }: BallRoom): void {
  const { nx, ny, spacingMm, ox, oy, oz } = grid;
  const { positions, triangles, nearest } = search;
  const i = Math.floor((QUERY[0]! - ox) / spacingMm);
  const j = Math.floor((QUERY[1]! - oy) / spacingMm);
  const k = Math.floor((QUERY[2]! - oz) / spacingMm);
  const corner = (k * ny + j) * nx + i;
  candidates = 0;
  bestFar = bestNear = -1;
  leastFar = leastNear = Infinity;
  let tried1 = -1;
  let tried2 = -1;
  // The eight grid points around, and the eight one step farther out: by the nearer ones alone a seed of the farther face may win by up to a step.
  for (let q = 0; q < 16; q++) {
    const wide = q < 8 ? 1 : 3;
    const base = q < 8 ? corner : corner - 1 - nx - nx * ny;
    const s = site[base + (q & 1 ? wide : 0) + (q & 2 ? wide * nx : 0) + (q & 4 ? wide * nx * ny : 0)]!;
    if (s < 0 || s === tried1 || s === tried2) continue;
    tried2 = tried1;
    tried1 = s;
    const t = nearest[s]! - 1;
    CANDIDATES[candidates++] = t;
    testTriangle(positions, triangles, t);
    const squared = FOUND[AT.squared]!;
    if (height() > HIGH) {
      if (squared < leastFar) {
        leastFar = squared;
        bestFar = t;
      }
    } else if (squared < leastNear) {
      leastNear = squared;
      bestNear = t;
    }
  }
  leastFar = Math.sqrt(leastFar);
  leastNear = Math.sqrt(leastNear);
}

/** Way from POINT to the foot in FOUND: its part along AXIS and its squared length, of the last `height`. */
let along = 0;
let length2 = 0;

/** Sine of the height of the foot over the tangent plane, seen from POINT. */
function height(): number {
  const x = QUERY[0]! + FOUND[AT.footX]! - POINT[0]!;
  const y = QUERY[1]! + FOUND[AT.footY]! - POINT[1]!;
  const z = QUERY[2]! + FOUND[AT.footZ]! - POINT[2]!;
  along = x * AXIS[0]! + y * AXIS[1]! + z * AXIS[2]!;
  length2 = x * x + y * y + z * z;
  return length2 === 0 ? 0 : along / Math.sqrt(length2);
}

/** Radius of the ball through POINT and what is nearest from triangle `t` on; -1 where that does not shrink it. Keeps the nearest contacts. */
function radiusBy(search: SearchSurface, t: number, radius: number): number {
  searchNearest(search, t, ROUNDS);
  const away = Math.sqrt(FOUND[AT.squared]!);
  const isFar = height() > HIGH;
  if (away < (isFar ? faceMm : closeMm)) {
    const contact = isFar ? FACE : CLOSE;
    for (let a = 0; a < 3; a++) contact[a] = QUERY[a]! + FOUND[AT.footX + a]!;
    if (isFar) {
      isFaced = true;
      faceMm = away;
    } else closeMm = away;
  }
  const limit = isFar ? 1 - TOUCHING : 1 - MOST_INTO;
  return away < radius * limit && along > 0 ? length2 / (2 * along) : -1;
}

/** Does the ball in MIDDLE touch two parts of the surface that face each other? */
function counts(room: BallRoom, radius: number): boolean {
  const { isOnBase, mostRadiusMm } = room;
  const ownMm = distanceTo(CLOSE);
  if (ownMm > radius * (1 + CONTACT)) return false;
  if (!isFaced) return radius > (1 - CONTACT) * mostRadiusMm;
  const byBase = isOnBase(CLOSE[0]!, CLOSE[1]!, CLOSE[2]!) || isOnBase(FACE[0]!, FACE[1]!, FACE[2]!);
  if (byBase && (room.isOutside || radius < LEAST_ON_BASE * room.grid.spacingMm)) return false;
  if (cosineBetween(ownMm) <= (byBase ? FACING_BASE : FACING)) return true;
  return !byBase && isBlocked(room, radius, ownMm);
}

/** Of the directions to CLOSE and FACE from the middle. */
function cosineBetween(ownMm: number): number {
  let product = 0;
  for (let a = 0; a < 3; a++) product += (CLOSE[a]! - MIDDLE[a]!) * (FACE[a]! - MIDDLE[a]!);
  return product / (ownMm * distanceTo(FACE));
}

/**
 * A ball that touches more than two parts may face another than the one found: then the surface comes nearer as the middle moves away from
 * the first contact, by at least half of the way (cosine of 60 degrees).
 */
function isBlocked(room: BallRoom, radius: number, ownMm: number): boolean {
  const { search, grid, isOnBase } = room;
  const way = (PROBE * radius) / ownMm;
  for (let a = 0; a < 3; a++) QUERY[a] = MIDDLE[a]! + way * (MIDDLE[a]! - CLOSE[a]!);
  if (!isWithin(grid, QUERY)) return false;
  lookAround(room);
  const t = leastFar <= leastNear ? bestFar : bestNear;
  if (t < 0) return false;
  searchNearest(search, t, ROUNDS);
  if (Math.sqrt(FOUND[AT.squared]!) > radius * (1 + FACING * PROBE)) return false;
  const [x, y, z] = [0, 1, 2].map((a) => QUERY[a]! + FOUND[AT.footX + a]!);
  return !isOnBase(x!, y!, z!);
}

/** The same ball grown until it is held from all sides (thicknessGrown.ts), its middle in MIDDLE; 0 where nothing holds it. */
function grown(room: BallRoom, radius: number): number {
  const { isOnBase } = room;
  const [toClose, toFace] = [distanceTo(CLOSE), distanceTo(FACE)];
  if (!isFaced || toClose > radius * (1 + CONTACT) || toClose === 0 || toFace === 0) return 0;
  if (isOnBase(CLOSE[0]!, CLOSE[1]!, CLOSE[2]!) || isOnBase(FACE[0]!, FACE[1]!, FACE[2]!)) return 0;
  const contacts = [CLOSE, FACE].map((to): Vector => {
    const far = distanceTo(to);
    return [(to[0]! - MIDDLE[0]!) / far, (to[1]! - MIDDLE[1]!) / far, (to[2]! - MIDDLE[2]!) / far];
  });
  return grownBall(MIDDLE, Math.min(toClose, toFace), contacts, {
    nearest: (at, foot) => nearestTo(room, at, foot),
    isBarred: (foot) => isOnBase(foot[0]!, foot[1]!, foot[2]!),
  });
}

/** Distance of a point from the surface, and the nearest place of it in `foot`; 0 outside of the grid. */
function nearestTo(room: BallRoom, at: Float64Array, foot: Float64Array): number {
  QUERY.set(at);
  if (!isWithin(room.grid, QUERY)) return 0;
  lookAround(room);
  let least = Infinity;
  for (let n = 0; n < candidates; n++) {
    searchNearest(room.search, CANDIDATES[n]!, ROUNDS);
    if (FOUND[AT.squared]! >= least) continue;
    least = FOUND[AT.squared]!;
    for (let a = 0; a < 3; a++) foot[a] = QUERY[a]! + FOUND[AT.footX + a]!;
  }
  return Math.sqrt(least);
}
