import type { Estimate } from '../estimate';
import { good, type Outcome } from '../problem';
import { planBatch, type Batch, type BatchInputs, type Given } from '../yield';
import type { Size } from './sizeScan';

/** A measured scan or a volume known otherwise, and everything the batch can be told. */
export interface PourInputs extends Omit<BatchInputs, 'cavityCm3'> {
  cavity: { size: Size } | { volumeCm3: Given };
}

export interface Pour {
  cavityCm3: Estimate;
  batch: Batch;
}

/** Standard uncertainty of a volume that comes without a range, as a share: common practice, no source. */
export const VOLUME_U_SHARE = 0.015;

/** From a cavity to the grams of A and B: the one place where a shape becomes a batch. Errors: those of `planBatch`. */
export function planPour({ cavity, ...inputs }: PourInputs): Outcome<Pour> {
  const cavityCm3: Given = 'size' in cavity ? cavity.size.volumeCm3 : cavity.volumeCm3;
  const batch = planBatch({ ...inputs, cavityCm3 });
  if (!batch.ok) return batch;
  return good({ cavityCm3: asEstimate(cavityCm3), batch: batch.value });
}

function asEstimate({ value, from, low, high, u, uShare }: Given): Estimate {
  const half = 1.96 * (u ?? (uShare ?? VOLUME_U_SHARE) * value);
  return { value, low: low ?? Math.max(0, value - half), high: high ?? value + half, from };
}
