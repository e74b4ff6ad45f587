import { finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { checkWarmth } from './checkWarmth';
import { WARMTH_RULES as R } from './rules';

export type MoldTemperatureBand = 'cold' | 'cool' | 'fine' | 'warm' | 'hot' | 'too hot' | 'unknown';

/**
 * The band a mold's inner surface lies in when foam is poured: fine from 27 to 45 C; below 20 cold, over 60 too hot (Stop).
 * Common practice, no source; the data sheet wins. Without a measured temperature it is unknown. Error: bounds.
 */
export function moldTemperatureBand(
  tempC: number | undefined,
): Outcome<{ band: MoldTemperatureBand; findings: Problem[] }> {
  const { low, high } = R.moldFine;
  if (tempC === undefined) {
    return good({ band: 'unknown', findings: [finding('MOLD_TEMP_UNKNOWN', 'unknown', { low, high })] });
  }
  const checked = checkWarmth({ moldTempC: tempC });
  if (!checked.ok) return checked;
  const look = (code: 'MOLD_TEMP_COLD' | 'MOLD_TEMP_COOL' | 'MOLD_TEMP_WARM'): Problem[] => [
    finding(code, 'look', { tempC, low, high }),
  ];
  const hot = finding('MOLD_TEMP_HOT', tempC > R.surfaceStop.value ? 'stop' : 'look', { tempC, low, high });
  if (tempC < R.moldCold.value) return good({ band: 'cold', findings: look('MOLD_TEMP_COLD') });
  if (tempC < low) return good({ band: 'cool', findings: look('MOLD_TEMP_COOL') });
  if (tempC <= high) return good({ band: 'fine', findings: [] });
  if (tempC <= R.surfaceLook.value) return good({ band: 'warm', findings: look('MOLD_TEMP_WARM') });
  return good({ band: hot.status === 'stop' ? 'too hot' : 'hot', findings: [hot] });
}

/**
 * When to open a casting that is still warm, min: the card's own time if it has one; if not, the time is unknown, and only
 * the common band is shown (20 to 60 min; common practice, no source). The skin decides, not the clock. Error: bounds.
 */
export function openWarmCastingBand({
  openMin,
}: {
  openMin?: number;
}): Outcome<{ cardMin?: number; commonMin: { low: number; high: number }; findings: Problem[] }> {
  const { low, high } = R.openWarm;
  const commonMin = { low, high };
  if (openMin === undefined) {
    return good({ commonMin, findings: [finding('OPEN_TIME_UNKNOWN', 'unknown', { low, high })] });
  }
  const checked = checkWarmth({ openMin });
  return checked.ok ? good({ cardMin: openMin, commonMin, findings: [] }) : checked;
}
