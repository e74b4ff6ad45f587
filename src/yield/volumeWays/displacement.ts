import type { Estimate } from '../../estimate';
import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkVolume, COVER } from './checkVolume';
import { VOLUME_BOUNDS, VOLUME_RULES as R } from './rules';
import { volumeOfWater } from './waterFill';
import type { FillingWater } from './waterFill';

/** Volume of a sculpt from the water it pushes over a full rim, cm3: as the water fill, with the film and the spout in doubt. */
export function displacedByOverflow(water: FillingWater): Outcome<Estimate> {
  const volume = volumeOfWater(water, R.overflowU.value);
  return volume.ok ? good({ ...volume.value, from: 'weighed' }) : volume;
}

/** Levels in a measuring vessel without and with the sculpt under the surface, cm3. */
export interface VesselLevels {
  medium: 'water' | 'rice';
  beforeCm3: number;
  afterCm3: number;
  /** Smallest step that can be read; a fiftieth of the higher level when left out. */
  readingCm3?: number;
}

/**
 * Volume of a sculpt from the rise of a level, cm3, with the range meant for 95 of 100. Both readings are in doubt, and the medium by a
 * share of all it holds: so a small sculpt in a large vessel is known badly, in rice worst. Errors: INPUT_OUT_OF_BOUNDS where the
 * level did not rise.
 */
export function displacedByLevel({
  medium,
  beforeCm3,
  afterCm3,
  readingCm3,
}: VesselLevels): Outcome<Estimate> {
  const sound = checkVolume({ beforeCm3, afterCm3 }, { readingCm3 });
  if (!sound.ok) return sound;
  if (afterCm3 <= beforeCm3) {
    const { high } = VOLUME_BOUNDS.afterCm3;
    return bad('INPUT_OUT_OF_BOUNDS', {
      input: 'afterCm3',
      value: afterCm3,
      low: beforeCm3,
      high,
      unit: 'cm3',
    });
  }
  const value = afterCm3 - beforeCm3;
  const step = readingCm3 ?? afterCm3 / R.vesselMarks.value;
  // Two readings, each anywhere within its step.
  const readingU = step / Math.sqrt(6);
  const mediumU = (medium === 'rice' ? R.riceU.value : R.levelU.value) * afterCm3;
  const half = COVER * Math.hypot(readingU, mediumU);
  return good({ value, low: Math.max(0, value - half), high: value + half, from: 'given' });
}
