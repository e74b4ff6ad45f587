import { mixedMassG, pouredMassG } from './mixedMass';
import type { MixedMassInputs } from './mixedMass';
import { scaleReadingUG } from './scaleCheck';
import { combineBudget } from './uncertainty';
import type { Budget } from './uncertainty';

export const BATCH_TERMS = [
  'free_rise',
  'cavity',
  'station_pressure',
  'riser',
  'residue',
  'gas_loss',
  'vents',
  'scale',
] as const;

export type BatchTerm = (typeof BATCH_TERMS)[number];

/** Standard uncertainties: shares of the value for densities, pressure and riser, else in the unit of the name. */
export interface BatchUncertainties {
  freeRiseShare: number;
  cavityCm3: number;
  stationPressureShare: number;
  riserCm3: number;
  residueG: number;
  gasLossShare: number;
  ventsG: number;
  scaleStepG: number;
}

/**
 * What each input's doubt does to the mixed mass. The pack factor is a choice, so it is not in the list. The gas loss
 * follows from the density when nobody measured it; that link is second order (under 0.1 g in 60) and left out.
 */
export function batchBudget(inputs: MixedMassInputs, u: BatchUncertainties): Budget<BatchTerm> {
  const perCm3G = (inputs.freeRiseKgM3 * inputs.packFactor) / 1000 / (1 - inputs.gasLossShare);
  const foamG = perCm3G * (inputs.cavityCm3 + inputs.riserCm3);
  const perGasShareG = pouredMassG(inputs) / (1 - inputs.gasLossShare);
  return combineBudget<BatchTerm>([
    { input: 'free_rise', contributionG: foamG * u.freeRiseShare },
    { input: 'cavity', contributionG: perCm3G * u.cavityCm3 },
    { input: 'station_pressure', contributionG: foamG * u.stationPressureShare },
    { input: 'riser', contributionG: perCm3G * u.riserCm3 },
    { input: 'residue', contributionG: u.residueG },
    { input: 'gas_loss', contributionG: perGasShareG * u.gasLossShare },
    { input: 'vents', contributionG: u.ventsG / (1 - inputs.gasLossShare) },
    { input: 'scale', contributionG: Math.SQRT2 * scaleReadingUG(u.scaleStepG) },
  ]);
}

/** Combined standard uncertainty as a share of the mixed mass. */
export const mixedSigmaShare = (inputs: MixedMassInputs, u: BatchUncertainties): number =>
  batchBudget(inputs, u).combinedG / mixedMassG(inputs);

/**
 * The same doubt as a share of the foam that stays in the mold: the relative uncertainty of the pack really reached.
 * Larger than that of the mix, and much larger where residue and vents take most of a small batch.
 */
export function packSigmaShare(inputs: MixedMassInputs, u: BatchUncertainties): number {
  const foamG = pouredMassG({ ...inputs, ventsG: 0 });
  return batchBudget(inputs, u).combinedG / foamG;
}
