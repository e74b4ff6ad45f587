import { RULES } from './rules';

/** J/(mol K); exact since the SI of 2019. */
const GAS_CONSTANT = 8.31446261815324;
/** g/mol, CO2 and H2O, from standard atomic weights (IUPAC). */
const CO2_G_PER_MOL = 44.0095;
const WATER_G_PER_MOL = 18.01528;

export interface FoamGas {
  foamKgM3: number;
  liquidKgM3: number;
  gasTempK: number;
  pressureKPa?: number;
}

/**
 * CO2 that blew a foam, in g per kg of mix: the ideal gas law on the volume the foam has beyond its liquid. Holds for
 * water-blown foam at the pressure it rose under; 0 where the foam is no lighter than its liquid.
 */
export function co2GPerKg({ foamKgM3, liquidKgM3, gasTempK, pressureKPa }: FoamGas): number {
  const pressurePa = 1000 * (pressureKPa ?? RULES.standardPressure.value);
  const gasM3PerKg = Math.max(0, 1 / foamKgM3 - 1 / liquidKgM3);
  return (CO2_G_PER_MOL * pressurePa * gasM3PerKg) / (GAS_CONSTANT * gasTempK);
}

/** Water that made that CO2, in g per kg of mix: one mole each. */
export const waterGPerKg = (gas: FoamGas): number => co2GPerKg(gas) * (WATER_G_PER_MOL / CO2_G_PER_MOL);

/** Share of the mix that leaves as gas when nothing better is known: all its CO2, taken at 350 K. */
export function gasLossFromDensity({
  freeRiseKgM3,
  liquidKgM3,
}: {
  freeRiseKgM3: number;
  liquidKgM3: number;
}): number {
  return co2GPerKg({ foamKgM3: freeRiseKgM3, liquidKgM3, gasTempK: RULES.gasTemperature.value }) / 1000;
}
