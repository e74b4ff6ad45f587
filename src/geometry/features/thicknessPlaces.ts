import { partOf } from '../parts';
import type { Balls } from './thicknessRoom';
import { measureReach } from './thicknessReach';
import { nearestSample, sampleCells, type Neighbors } from './thicknessNeighbors';
import type { SurfaceSamples } from './thicknessSamples';

/*
 * The thinnest places: valleys of the thickness over the surface. Samples are taken up from the thinnest; one that touches no valley begins one, one
 * that touches two joins the shallower to the deeper, unless both are thinner by a good share than where they meet. The two faces of a fin are one place: the
 * ball between them joins them.
 */

/** One thin place, in the field's frame. */
export interface Valley {
  /** A sample where it is thinnest, in the middle of where it is so. */
  sample: number;
  thicknessMm: number;
  areaMm2: number;
  lengthMm: number;
}

/**
 * The thin region of a place: around it, up to so many times its thickness. Two valleys that meet below so many times the thickness of the shallower are
 * one. Both times this share of a spacing more at least, as samples show no finer differences along a sharp edge. Chosen here.
 */
const [THIN, MEET, SPACINGS] = [1.5, 1.35, 0.5];

/**
 * A place is as large as its thickness squared at least (the tip of a cone, up to half as thick again, is larger), and as this many samples; less is a nick,
 * noise or a spot between edges. Chosen here.
 */
const LEAST_SAMPLES = 6;

/** What is thinner than this many times the thinnest is as thin. Chosen here. */
const AS_THIN = 1.03;

export interface Covered {
  samples: SurfaceSamples;
  balls: Balls;
  coveredBy: Int32Array;
  thicknessMm: Float32Array;
  neighbors: Neighbors;
  /** This thick, or thicker, is not known. */
  cappedMm: number;
}

/** At most `most` places, thinnest first. */
export function thinnestValleys(covered: Covered, most: number, onStep: () => void): Valley[] {
  const links = linksOf(covered, onStep);
  const bottomOf = valleys(covered, links, onStep);
  const bottoms = Array.from(bottomOf.keys()).filter((s) => bottomOf[s] === s);
  bottoms.sort((a, b) => covered.thicknessMm[a]! - covered.thicknessMm[b]! || a - b);
  const places: Valley[] = [];
  const isTaken = new Uint8Array(bottomOf.length);
  for (const bottom of bottoms) {
    onStep();
    const region = thinRegion(covered, links, bottomOf, bottom, isTaken);
    const thickness = covered.thicknessMm[bottom]!;
    const area = region.reduce((sum, s) => sum + covered.samples.areaMm2[s]!, 0);
    if (area < leastMm2(covered.samples, thickness)) continue;
    const sample = middleOf(covered, region, AS_THIN * thickness);
    if (places.some((other) => isSame(covered.samples, other, sample, thickness))) continue;
    places.push({
      sample,
      thicknessMm: thickness,
      areaMm2: area,
      lengthMm: measureReach(
        covered,
        region,
        {
          thicknessMm: thickness,
          thinMm: limitMm(covered.samples, thickness, THIN),
        },
        onStep,
      ),
    });
    if (places.length === most) break;
  }
  return places;
}

const limitMm = ({ spacingMm }: SurfaceSamples, thicknessMm: number, times: number): number =>
  Math.max(times * thicknessMm, thicknessMm + SPACINGS * spacingMm);

const leastMm2 = ({ spacingMm }: SurfaceSamples, thicknessMm: number): number =>
  Math.max(thicknessMm ** 2, LEAST_SAMPLES * spacingMm ** 2);

/** Two places closer than the thicker of them are one; places come thinnest first. */
function isSame({ at }: SurfaceSamples, other: Valley, sample: number, thicknessMm: number): boolean {
  return Math.hypot(...[0, 1, 2].map((c) => at[3 * other.sample + c]! - at[3 * sample + c]!)) < thicknessMm;
}

/** Samples joined across the body: each with the one opposite it on the ball that covers it. */
function linksOf({ samples, balls, coveredBy, thicknessMm }: Covered, onStep: () => void): Neighbors {
  const cells = sampleCells(samples, 2 * samples.spacingMm);
  const pairs: number[] = [];
  for (let s = 0; s < samples.count; s++) {
    if (s % 256 === 0) onStep();
    const b = coveredBy[s]!;
    if (b < 0) continue;
    const [x, y, z] = [0, 1, 2].map((a) => 2 * balls.at[3 * b + a]! - samples.at[3 * s + a]!);
    const other = nearestSample(cells, samples, x!, y!, z!);
    if (other >= 0 && other !== s && thicknessMm[other]! > 0) pairs.push(s, other);
  }
  return bothWays(samples.count, pairs);
}

function bothWays(count: number, pairs: readonly number[]): Neighbors {
  const start = new Int32Array(count + 1);
  for (const s of pairs) start[s + 1]!++;
  for (let s = 0; s < count; s++) start[s + 1]! += start[s]!;
  const fill = start.slice();
  const list = new Int32Array(pairs.length);
  for (let p = 0; p < pairs.length; p += 2) {
    list[fill[pairs[p]!]!++] = pairs[p + 1]!;
    list[fill[pairs[p + 1]!]!++] = pairs[p]!;
  }
  return { start, list };
}

/** Of every sample the thinnest of its valley; -1 where it has no thickness, or only as much as can be told. */
function valleys(
  { samples, thicknessMm, neighbors, cappedMm }: Covered,
  links: Neighbors,
  onStep: () => void,
): Int32Array {
  const order = Array.from(thicknessMm.keys()).filter((s) => thicknessMm[s]! < cappedMm);
  order.sort((a, b) => thicknessMm[a]! - thicknessMm[b]! || a - b);
  const rank = new Int32Array(thicknessMm.length);
  order.forEach((s, n) => (rank[s] = n));
  // Parent of a sample in its valley; a bottom is its own. -1: not taken up yet.
  const parent = new Int32Array(thicknessMm.length).fill(-1);
  // Area of the thin region of a valley.
  const thinMm2 = Float64Array.from(samples.areaMm2);
  const isPit = (bottom: number, levelMm: number): boolean =>
    levelMm > limitMm(samples, thicknessMm[bottom]!, THIN) &&
    thinMm2[bottom]! < leastMm2(samples, thicknessMm[bottom]!);
  for (const s of order) {
    parent[s] = s;
    if (s % 256 === 0) onStep();
    const level = thicknessMm[s]!;
    for (const { start, list } of [neighbors, links])
      for (let m = start[s]!; m < start[s + 1]!; m++) {
        if (parent[list[m]!] === -1) continue;
        const [here, there] = [partOf(parent, s), partOf(parent, list[m]!)];
        if (here === there) continue;
        const [deep, shallow] = rank[there]! < rank[here]! ? [there, here] : [here, there];
        if (isPit(deep, level)) parent[deep] = shallow;
        else if (level <= limitMm(samples, thicknessMm[shallow]!, MEET)) {
          parent[shallow] = deep;
          if (level <= limitMm(samples, thicknessMm[deep]!, THIN)) thinMm2[deep]! += thinMm2[shallow]!;
        }
      }
  }
  for (const s of order) parent[s] = partOf(parent, s);
  return parent;
}

/** The thin region around the bottom of a valley, joined through samples of its own; marked as taken. */
function thinRegion(
  { samples, thicknessMm, neighbors }: Covered,
  links: Neighbors,
  bottomOf: Int32Array,
  bottom: number,
  isTaken: Uint8Array,
): number[] {
  const limit = limitMm(samples, thicknessMm[bottom]!, THIN);
  const region = [bottom];
  isTaken[bottom] = 1;
  for (const s of region)
    for (const { start, list } of [neighbors, links])
      for (let m = start[s]!; m < start[s + 1]!; m++) {
        const other = list[m]!;
        if (bottomOf[other] !== bottom || thicknessMm[other]! > limit || isTaken[other] === 1) continue;
        isTaken[other] = 1;
        region.push(other);
      }
  return region;
}

/** The sample nearest to the mean of those of a region that are as thin as this. */
function middleOf(
  { samples: { at }, thicknessMm }: Covered,
  region: readonly number[],
  thinMm: number,
): number {
  const some = region.filter((s) => thicknessMm[s]! <= thinMm);
  const mean = [0, 1, 2].map((a) => some.reduce((sum, s) => sum + at[3 * s + a]!, 0) / some.length);
  const away = (s: number): number => Math.hypot(...mean.map((x, a) => at[3 * s + a]! - x));
  return some.reduce((best, s) => (away(s) < away(best) ? s : best));
}
