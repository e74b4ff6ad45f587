import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkWarmth } from './checkWarmth';
import { WARMTH_RULES as R } from './rules';

/** What decides how heat moves in a material. */
export interface HeatMaterial {
  conductivityWMK: number;
  densityKgM3: number;
  heatCapacityJKgK: number;
}

/** The usual silicone of a mold; see `WARMTH_RULES` for its ranges. */
export const SILICONE_HEAT: HeatMaterial = {
  conductivityWMK: R.siliconeConductivity.value,
  densityKgM3: R.siliconeDensity.value,
  heatCapacityJKgK: R.siliconeHeatCapacity.value,
};

/** The liquid foam mix, before it reacts. */
export const MIX_HEAT: HeatMaterial = {
  conductivityWMK: R.mixConductivity.value,
  densityKgM3: R.mixDensity.value,
  heatCapacityJKgK: R.mixHeatCapacity.value,
};

/** k / (rho c), mm2/s: how quickly warmth spreads. Silicone 0.16. Error: INPUT_OUT_OF_BOUNDS. */
export function diffusivityMm2S(material: HeatMaterial): Outcome<number> {
  const checked = checkMaterial(material);
  return checked.ok ? good(diffusivityOf(material)) : checked;
}

/** sqrt(k rho c), W s^0.5/(m2 K): how strongly it draws warmth from what touches it. Error: INPUT_OUT_OF_BOUNDS. */
export function effusivity(material: HeatMaterial): Outcome<number> {
  const checked = checkMaterial(material);
  return checked.ok ? good(effusivityOf(material)) : checked;
}

export const checkMaterial = ({
  conductivityWMK,
  densityKgM3,
  heatCapacityJKgK,
}: HeatMaterial): Outcome<true> => checkWarmth({ conductivityWMK, densityKgM3, heatCapacityJKgK });

export const diffusivityOf = ({ conductivityWMK, densityKgM3, heatCapacityJKgK }: HeatMaterial): number =>
  (1e6 * conductivityWMK) / (densityKgM3 * heatCapacityJKgK);

export const effusivityOf = ({ conductivityWMK, densityKgM3, heatCapacityJKgK }: HeatMaterial): number =>
  Math.sqrt(conductivityWMK * densityKgM3 * heatCapacityJKgK);
