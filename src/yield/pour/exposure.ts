import { good } from '../../problem';
import type { Outcome } from '../../problem';
import type { Rule } from '../rules';
import { checkPour } from './checkPour';

const NIOSH = 'NIOSH, documentation of IDLH 101-68-8 and pocket guide';

/** Limits of MDI in the air of a workplace, by volume. Exposure is for a licensed practice to measure; these are for the page. */
export const MDI_LIMITS = {
  nioshMean: { value: 0.005, unit: 'ppm', from: `mean of a shift; ${NIOSH}` },
  nioshCeiling: { value: 0.02, unit: 'ppm', from: `ceiling over 10 minutes; ${NIOSH}` },
  oshaCeiling: { value: 0.02, unit: 'ppm', from: `ceiling; OSHA limit as quoted by ${NIOSH}` },
} as const satisfies Record<string, Rule>;

/** Mass of MDI vapor in air of 25 C, mg/m3, from ppm by volume: x 250.25 / 24.45 (molar mass over molar volume). */
export function mdiMgPerM3(ppm: number): Outcome<number> {
  const sound = checkPour({ ppm });
  return sound.ok ? good((ppm * MDI_G_PER_MOL) / MOLAR_L_AT_25_C) : sound;
}

const MDI_G_PER_MOL = 250.25;
const MOLAR_L_AT_25_C = 24.45;
