import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { noteIn } from '../settleBatch';
import type { BatchAssumption } from '../settleBatch';
import { checkSilicone } from './checkSilicone';
import type { SiliconeRatio } from './checkSilicone';
import { orderInMixes } from './orderInMixes';
import type { OrderInMixes } from './orderInMixes';
import type { MixLimits } from './mixes';
import { SILICONE_RULES } from './rules';

export interface CoatInputs {
  skinMm: number;
  firstCoatMm?: number;
  coatMm?: number;
}

export interface CoatPlan {
  /** Thickness of the skin once each coat is on, mm; the last is the skin itself. */
  outerMm: number[];
  assumptions: BatchAssumption[];
}

/**
 * The coats of a brushed skin: a thin first one for the detail, then ceil((skin - first) / coat) equal ones, none thicker
 * than `coatMm`, so that no sliver is left for the last. Errors: INPUT_OUT_OF_BOUNDS, COATS_DO_NOT_FIT.
 */
export function planCoats({ skinMm, ...given }: CoatInputs): Outcome<CoatPlan> {
  const assumptions: BatchAssumption[] = [];
  const note = noteIn(assumptions);
  const firstCoatMm = given.firstCoatMm ?? note('first_coat_mm', SILICONE_RULES.firstCoat);
  const coatMm = given.coatMm ?? note('coat_mm', SILICONE_RULES.coat);
  const sound = checkSilicone({ skinMm, firstCoatMm, coatMm });
  if (!sound.ok) return sound;
  if (skinMm < firstCoatMm) return bad('COATS_DO_NOT_FIT', { skinMm, firstCoatMm });
  const more = Math.ceil(((skinMm - firstCoatMm) / coatMm) * (1 - 1e-12));
  const later = Array.from({ length: more }, (_, index) =>
    index + 1 === more ? skinMm : firstCoatMm + ((skinMm - firstCoatMm) * (index + 1)) / more,
  );
  return good({ outerMm: [firstCoatMm, ...later], assumptions });
}

export interface CoatMassInputs {
  outerMm: readonly number[];
  /** Volume of the skin at each of these thicknesses, cm3, as measured on the shape. */
  volumesCm3: readonly number[];
  densityKgM3: number;
  wasteShare?: number;
}

export interface Coat {
  outerMm: number;
  thicknessMm: number;
  volumeCm3: number;
  /** With waste, without what the cup keeps. */
  massG: number;
}

/**
 * Grams a coat: density x what the coat adds to the volume x (1 + waste). Later coats take more. Errors:
 * INPUT_OUT_OF_BOUNDS, INPUT_NOT_A_NUMBER.
 */
export function coatMasses({
  outerMm,
  volumesCm3,
  densityKgM3,
  ...given
}: CoatMassInputs): Outcome<{ coats: Coat[]; assumptions: BatchAssumption[] }> {
  if (outerMm.length !== volumesCm3.length)
    throw new Error(`coatMasses: expected ${outerMm.length} volumes, got ${volumesCm3.length}`);
  const sound = checkSilicone({ densityKgM3 }, given);
  if (!sound.ok) return sound;
  const assumptions: BatchAssumption[] = [];
  const wasteShare = given.wasteShare ?? noteIn(assumptions)('silicone_waste', SILICONE_RULES.wasteBrush);
  const coats: Coat[] = [];
  let [belowMm, belowCm3] = [0, 0];
  for (const [index, mm] of outerMm.entries()) {
    const cm3 = volumesCm3[index] ?? NaN;
    if (!(mm > belowMm && cm3 > belowCm3))
      throw new Error(
        `coatMasses: expected thicknesses and volumes that grow, got ${mm} mm and ${cm3} cm3 ` +
          `after ${belowMm} mm and ${belowCm3} cm3`,
      );
    const volumeCm3 = cm3 - belowCm3;
    const massG = (densityKgM3 / 1000) * volumeCm3 * (1 + wasteShare);
    coats.push({ outerMm: mm, thicknessMm: mm - belowMm, volumeCm3, massG });
    [belowMm, belowCm3] = [mm, cm3];
  }
  return good({ coats, assumptions });
}

/** Each coat is mixed for itself, as the one before must set first. Errors: those of `orderInMixes`. */
export function coatInMixes(
  { volumeCm3 }: Coat,
  silicone: {
    densityKgM3: number;
    ratio: SiliconeRatio;
    wasteShare?: number;
    cupLossG?: number;
    scaleStepG?: number;
  },
  limits: Omit<MixLimits, 'method'>,
): Outcome<OrderInMixes> {
  const range = { value: volumeCm3, low: volumeCm3, high: volumeCm3 };
  return orderInMixes({ ...silicone, volumeCm3: range, method: 'brush' }, { ...limits, method: 'brush' });
}
