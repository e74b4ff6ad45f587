import type { Estimate } from '../../estimate';
import { good, type Outcome } from '../../problem';
import { hollowCavityCm3 } from '../../yield';
import { VOLUME_U_SHARE } from '../planPour';

/** What stands in the cavity, cm3, as it was told. */
export interface StandsInside {
  coreCm3?: number;
  armatureCm3?: number;
}

/** What the foam fills, and of what it is the rest. */
export interface Filled extends StandsInside {
  outerCm3: Estimate;
  volumeCm3: Estimate;
}

/** Two standard deviations of a normal spread hold 95 of 100. */
const AT_95 = 1.96;

/**
 * What the foam fills of a cavity that something stands in, cm3. A told volume is taken with the range of any volume that comes without one (1.5 %, common
 * practice, no source). A core does not shrink with the mold: it is taken off what the mold holds. Errors: CORE_FILLS_MOLD, INPUT_OUT_OF_BOUNDS.
 */
export function filledVolume(outerCm3: Estimate, inside: StandsInside): Outcome<Filled> {
  const { coreCm3 = 0, armatureCm3 = 0 } = inside;
  if (coreCm3 === 0 && armatureCm3 === 0) return good({ outerCm3, volumeCm3: outerCm3 });
  const told = (value: number) => ({
    value,
    low: value * (1 - AT_95 * VOLUME_U_SHARE),
    high: value * (1 + AT_95 * VOLUME_U_SHARE),
  });
  const left = hollowCavityCm3({ outerCm3, coreCm3: told(coreCm3), armatureCm3: told(armatureCm3) });
  if (!left.ok) return left;
  return good({ ...inside, outerCm3, volumeCm3: { ...left.value, from: outerCm3.from } });
}
