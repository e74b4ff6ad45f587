import { BIN, BINS, SAMPLED, SUM } from './levels';

/*
 * From sums to a volume.
 *
 * Bias. Plane fractions at voxel centers sum to V + A' h^2 / 24, where A' is the change of the level's area with the distance, wherever that
 * area changes evenly, creases included: the fraction less the step at the center has a first moment of h^2 / 24 (derived here). A' comes from the
 * second difference of the fractions; planes need no correction and get none.
 *
 * Octants. The lattice of the voxels is right to about 1e-5 on smooth bodies; creases and thin remainders need octants. So the columns of
 * a sample (by a hash of their feet, independent of the shape) are counted both ways: the mean difference, scaled up,
 * corrects the sum, and its scatter says how well. Only where that is not good enough are all octants counted. A column is the set of voxels with
 * one foot: taking single voxels instead would cut columns apart, and their bias only cancels along a whole one (measured: mixing
 * voxels and octants by a smoothness test was off by 0.009 and 0.025 % where either alone is within 0.001 %).
 */

export interface LevelVolume {
  volumeMm3: number;
  /** What the lattice itself may be off by, mm3, at about 95 of 100. */
  doubtMm3: number;
  areaMm2: number;
}

/**
 * A sample is good enough when what it finds is below this share of the volume, or of a layer over the level this many octants' edges thick: about
 * what is kept as doubt anyway. The sample's scatter is mostly its own; the sum itself is right to 1e-5 (medians of 22 bodies).
 */
const GOOD_SHARE = 2e-4;
const GOOD_LAYER = 1.5e-3;

/** Voxels and octants can agree by luck: of the scatter of the sample this much is kept as doubt. Measured over 267 bodies. */
const ERROR_SHARE = 0.2;

/** Of what second fronts changed, this much is kept as doubt. Chosen here. */
const CLIPPED_SHARE = 0.1;

export interface Sampled {
  coarseMm3: number;
  /** The sample's estimate of (octants - voxels), and its standard error. */
  differenceMm3: number;
  errorMm3: number;
  /** What second fronts took or filled: their faces are flat only about. */
  clippedMm3: number;
  areaMm2: number;
}

/** @param stepMm edge of the voxels; octants have half of it */
export function sampledVolume(sums: Float64Array, stepMm: number): Sampled {
  const half = stepMm / 2;
  const bias = biasPerBend(stepMm);
  const coarseMm3 = (sums[SUM.full]! + sums[SUM.share]!) * stepMm ** 3 - bias * stepMm ** 2 * sums[SUM.bend]!;
  const differences = Array.from({ length: SAMPLED }, (_, bin) => {
    const at = SUM.bins + BIN.width * bin;
    const [octants, share, bend] = [sums[at + BIN.octants]!, sums[at + BIN.share]!, sums[at + BIN.bend]!];
    return octants * half ** 3 - share * stepMm ** 3 + bias * bend * (stepMm ** 2 - half ** 2);
  });
  const mean = differences.reduce((sum, d) => sum + d, 0) / SAMPLED;
  const variance = differences.reduce((sum, d) => sum + (d - mean) ** 2, 0) / (SAMPLED - 1);
  return {
    coarseMm3,
    differenceMm3: BINS * mean,
    // Sampling without putting back (Cochran, Sampling Techniques, 2.6, from memory).
    errorMm3: BINS * Math.sqrt((variance / SAMPLED) * (1 - SAMPLED / BINS)),
    clippedMm3: sums[SUM.clipped]! * stepMm ** 3,
    areaMm2: sums[SUM.slope]! * stepMm ** 2,
  };
}

/** A' h^2 / 24 per unit of bend and of h^2: bend is the second difference over half a step, in voxels. */
const biasPerBend = (stepMm: number): number => stepMm ** 3 / (stepMm / 2) ** 2 / 24;

/** @param octantMm edge of the octants */
export function isGoodEnough(
  { coarseMm3, differenceMm3, errorMm3, areaMm2 }: Sampled,
  octantMm: number,
): boolean {
  return (
    Math.hypot(differenceMm3, 2 * errorMm3) <=
    Math.max(GOOD_SHARE * coarseMm3, GOOD_LAYER * octantMm * areaMm2)
  );
}

/** The volume from the sample: its correction counts as far as it stands out of its own scatter. */
export function fromSample(sampled: Sampled): LevelVolume {
  const { coarseMm3, differenceMm3, errorMm3, clippedMm3, areaMm2 } = sampled;
  // Counts as far as it stands out of twice its scatter (positive part of a shrunk estimate).
  const weight = differenceMm3 === 0 ? 0 : Math.max(0, 1 - ((2 * errorMm3) / differenceMm3) ** 2);
  return {
    volumeMm3: Math.max(0, coarseMm3 + weight * differenceMm3),
    doubtMm3: Math.hypot((1 - weight) * differenceMm3, 2 * errorMm3, CLIPPED_SHARE * clippedMm3),
    areaMm2,
  };
}

/** The volume from every octant. */
export function fromOctants(sums: Float64Array, stepMm: number): LevelVolume {
  const half = stepMm / 2;
  let octants = sums[SUM.rest]!;
  for (let bin = 0; bin < SAMPLED; bin++) octants += sums[SUM.bins + BIN.width * bin + BIN.octants]!;
  const summedMm3 =
    sums[SUM.full]! * stepMm ** 3 + octants * half ** 3 - biasPerBend(stepMm) * half ** 2 * sums[SUM.bend]!;
  const { coarseMm3, errorMm3, clippedMm3, areaMm2 } = sampledVolume(sums, stepMm);
  // The error falls by four or more with every halving of the voxel; half of what the halving changed is kept as doubt.
  return {
    volumeMm3: Math.max(0, summedMm3),
    doubtMm3: Math.hypot((summedMm3 - coarseMm3) / 2, ERROR_SHARE * errorMm3, CLIPPED_SHARE * clippedMm3),
    areaMm2,
  };
}
