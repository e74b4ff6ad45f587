import { readScan } from '../../src/geometry';
import { sizeScan } from '../../src/plan';
import type { Estimate } from '../../src/estimate';
import type { OffsetTrial } from './offsetTrials';
import { stlBytes } from './writeMesh';
import { valueOf } from './outcome';

/** What one stated range says against the truth. */
export interface RangeCheck {
  offsetMm: number;
  trueCm3: number;
  /** (value - truth) / half-width: within -1..1 where the range holds the truth. */
  ratio: number;
  /** (value - truth) / truth. */
  errorShare: number;
  /** (high - low) / value. */
  widthShare: number;
}

export interface TrialResult {
  trial: OffsetTrial;
  voxelMm: number;
  /** Time of `sizeScan`. */
  ms: number;
  still: RangeCheck;
  grown: RangeCheck;
  shrunk: RangeCheck;
}

export const holds = ({ ratio }: RangeCheck): boolean => Math.abs(ratio) <= 1;
export const checksOf = ({ still, grown, shrunk }: TrialResult): RangeCheck[] => [still, grown, shrunk];

/** The program's own way, from the bytes of a binary STL. A refusal gives its code: then nothing false was said. */
export function runTrial(trial: OffsetTrial): TrialResult | { trial: OffsetTrial; refused: string } {
  const scan = valueOf(readScan({ bytes: stlBytes(trial.scan), name: 'trial.stl' }));
  const { outMm, inMm, voxelMm } = trial;
  const from = performance.now();
  const size = sizeScan(scan, {
    fileUnit: 'mm',
    up: '+z',
    offsetsMm: [outMm, inMm],
    ...(voxelMm === undefined ? { accuracy: 'fast' } : { voxelMm }),
  });
  const ms = performance.now() - from;
  if (!size.ok) return { trial, refused: size.problem.code };
  const { volumeCm3, offsets } = size.value;
  if (offsets === undefined) return { trial, refused: 'no surface' };
  const [grown, shrunk] = offsets.volumes;
  return {
    trial,
    voxelMm: offsets.voxel.voxelMm,
    ms,
    still: check(trial, 0, volumeCm3),
    grown: check(trial, outMm, grown!.volumeCm3),
    shrunk: check(trial, inMm, shrunk!.volumeCm3),
  };
}

function check({ volumeMm3 }: OffsetTrial, offsetMm: number, { value, low, high }: Estimate): RangeCheck {
  const trueCm3 = volumeMm3(offsetMm) / 1000;
  // The range may be cut off at zero: the nearer end counts.
  const half = value > trueCm3 ? value - low : high - value;
  return {
    offsetMm,
    trueCm3,
    ratio: (value - trueCm3) / half,
    errorShare: value / trueCm3 - 1,
    widthShare: (high - low) / value,
  };
}
