import type { Vector } from '../measure/planeFrame';
import { dot } from '../vector';
import { worstPassage } from './demoldPassage';
import type { SectionsOut } from './demoldSection';
import { radiiOf, type Radii } from './slitRadii';

/** A cut through the rubber, along the casting from the mouth inward, in one plane. Lengths mm. */
export interface SlitLine {
  /** Unit vector across the way, out of the body on the side of the slit. */
  side: Vector;
  /** Of that vector, counter-clockwise seen from outside the mouth, from the `u` of `planeFrame(way)`. */
  azimuthDeg: number;
  fromMm: Vector;
  toMm: Vector;
  /** Along the surface. */
  lengthMm: number;
  line: Vector[];
  /** How far the surface along the line is from flat and smooth. */
  harmMm: number;
  /** Keeps off all places it was told to. */
  isClear: boolean;
  /** Another side, more than 45 degrees away, is as good: choose by eye. */
  isTied: boolean;
  /** All sides that were tried and reach so far. */
  tried: { azimuthDeg: number; side: Vector; harmMm: number; isClear: boolean }[];
}

export interface SlitWish {
  /** How deep it goes, as `slitDepthMm` tells, or how long it is along the surface. */
  until: { alongMm: number } | { lengthMm: number };
  /** Places it keeps off by this radius: thin ones, faces. */
  keepOff?: readonly { atMm: Vector; radiusMm: number }[];
}

/** Sides tried, and rays looked at about the body: four to a side. Chosen here. */
const [SIDES, RAYS_A_SIDE] = [36, 4];
const RAYS = SIDES * RAYS_A_SIDE;

/** Across the line the surface is looked at 10 degrees to each side. Chosen here. */
const OFFSETS = Array.from({ length: 2 * RAYS_A_SIDE + 1 }, (_, i) => i - RAYS_A_SIDE);

/** Harms closer than this share, or than this, are the same; sides farther apart than this are others. Chosen here. */
const [TIE_SHARE, TIE_MM, APART_COSINE] = [0.1, 0.05, Math.SQRT1_2];

/** How deep a slit has to go: past the last neck whose bulb is more than `allowedRatio` times as wide. 0 where there is none. */
export function slitDepthMm(found: SectionsOut, allowedRatio: number): number {
  const { list, opening } = worstPassage(found);
  return [...list, ...(opening === undefined ? [] : [opening])]
    .filter(({ ratio }) => ratio > allowedRatio)
    .reduce((deepest, { neckAlongMm }) => Math.max(deepest, neckAlongMm), 0);
}

/**
 * The side on which a slit does least harm, of 36 about the way. The line is where a half plane about the straight axis of the sections meets
 * the body's outside. Harm, chosen here: the root mean square over the sections of two deviations, of the line from the cubic that
 * fits it best, and of the radii 10 degrees to each side from a steady slope; so ridges, hollows and detail count, and a round back or a plain
 * neck does not. Undefined where no half plane meets every section, as between two legs.
 */
export function slitLine(found: SectionsOut, { until, keepOff = [] }: SlitWish): SlitLine | undefined {
  const radii = radiiOf(found, 'alongMm' in until ? until.alongMm : Infinity, RAYS);
  const lines = Array.from({ length: SIDES }, (_, i) => lineOn(radii, i * RAYS_A_SIDE, until)).flatMap(
    (line) => line ?? [],
  );
  if (lines.length === 0) return undefined;
  const tried = lines.map((line) => ({
    ...line,
    isClear: keepOff.every((place) => isOff(line.line, place)),
  }));
  const best = tried.reduce((a, b) => (isBetter(b, a) ? b : a));
  const tieMm = best.harmMm + Math.max(TIE_MM, TIE_SHARE * best.harmMm);
  return {
    ...best,
    isTied: tried.some(
      ({ side, harmMm, isClear }) =>
        isClear === best.isClear && harmMm <= tieMm && dot(side, best.side) < APART_COSINE,
    ),
    tried: tried.map(({ azimuthDeg, side, harmMm, isClear }) => ({ azimuthDeg, side, harmMm, isClear })),
  };
}

interface Judged {
  harmMm: number;
  isClear: boolean;
}

const isBetter = (a: Judged, b: Judged): boolean =>
  a.isClear === b.isClear ? a.harmMm < b.harmMm : a.isClear;

type Line = Omit<SlitLine, 'isClear' | 'isTied' | 'tried'>;

/** Undefined where the ray, or one beside it, misses a section on the line. */
function lineOn(radii: Radii, ray: number, until: SlitWish['until']): Line | undefined {
  const { sections, outMm } = radii;
  const places = sections.map((_, i) => radii.placeAt(i, ray));
  const alongs = sections.map(({ alongMm }) => alongMm);
  const line =
    'alongMm' in until ? cutAtDepth(places, alongs, until.alongMm) : cutAtLength(places, until.lengthMm);
  const looked = Math.min(sections.length, line.length);
  const beside = OFFSETS.map((offset) => (ray + offset + RAYS) % RAYS);
  for (let i = 0; i < looked; i++) if (beside.some((at) => outMm[i]![at] === 0)) return undefined;
  const lengthMm = line.slice(1).reduce((sum, point, i) => sum + Math.hypot(...minus(point, line[i]!)), 0);
  const profile = outMm.slice(0, looked).map((out) => out[ray]!);
  const across = outMm.slice(0, looked).map((out) =>
    meanSquareOff(
      OFFSETS,
      beside.map((at) => out[at]!),
      1,
    ),
  );
  const squareMm2 =
    meanSquareOff(alongs.slice(0, looked), profile, 3) + across.reduce((a, b) => a + b, 0) / looked;
  return {
    side: radii.sideOf(ray),
    azimuthDeg: (360 * ray) / RAYS,
    fromMm: line[0]!,
    toMm: line[line.length - 1]!,
    lengthMm,
    line,
    harmMm: Math.sqrt(squareMm2),
  };
}

/** Mean square of what the best polynomial of a degree leaves, by orthogonal powers of the place in the list's range. */
function meanSquareOff(xs: readonly number[], ys: readonly number[], degree: number): number {
  const [low, high] = [xs[0]!, xs[xs.length - 1]!];
  const at = xs.map((x, i) => (high > low ? (2 * (x - low)) / (high - low) - 1 : i));
  const bases: number[][] = [];
  let left = ys;
  for (let power = 0; power <= Math.min(degree, xs.length - 1); power++) {
    const base = bases.reduce(
      without,
      at.map((x) => x ** power),
    );
    bases.push(base);
    left = without(left, base);
  }
  return left.reduce((sum, y) => sum + y * y, 0) / ys.length;
}

function without(ys: readonly number[], base: readonly number[]): number[] {
  const product = (as: readonly number[]): number => as.reduce((sum, a, i) => sum + a * base[i]!, 0);
  const share = product(ys) / product(base);
  return ys.map((y, i) => y - share * base[i]!);
}

/** Ends between two sections, at the depth. */
function cutAtDepth(places: readonly Vector[], alongs: readonly number[], alongMm: number): Vector[] {
  const last = alongs.findIndex((at) => at >= alongMm);
  if (last < 1) return places.slice(0, last === 0 ? 1 : places.length);
  const share = (alongMm - alongs[last - 1]!) / (alongs[last]! - alongs[last - 1]!);
  return [...places.slice(0, last), mixed(places[last - 1]!, places[last]!, share)];
}

function cutAtLength(places: readonly Vector[], lengthMm: number): Vector[] {
  let leftMm = lengthMm;
  for (let i = 1; i < places.length; i++) {
    const stepMm = Math.hypot(...minus(places[i]!, places[i - 1]!));
    if (stepMm >= leftMm) return [...places.slice(0, i), mixed(places[i - 1]!, places[i]!, leftMm / stepMm)];
    leftMm -= stepMm;
  }
  return [...places];
}

function isOff(line: readonly Vector[], { atMm, radiusMm }: { atMm: Vector; radiusMm: number }): boolean {
  return line.every((point, i) => {
    const from = line[Math.max(0, i - 1)]!;
    const step = minus(point, from);
    const square = dot(step, step);
    const share = square > 0 ? Math.min(1, Math.max(0, dot(minus(atMm, from), step) / square)) : 0;
    return Math.hypot(...minus(atMm, mixed(from, point, share))) >= radiusMm;
  });
}

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

const mixed = (a: Vector, b: Vector, share: number): Vector => [
  a[0] + share * (b[0] - a[0]),
  a[1] + share * (b[1] - a[1]),
  a[2] + share * (b[2] - a[2]),
];
