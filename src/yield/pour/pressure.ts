import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkPack } from '../packFactor';
import { RULES } from '../rules';
import { checkPour } from './checkPour';
import { WATER_G_PER_MOL } from './molar';
import { POUR_RULES as R } from './rules';

/** A foam in a closed mold. `ambientKPa` is the air it rose in, 101.325 when left out. */
export interface PackedFoam {
  freeRiseKgM3: number;
  liquidKgM3: number;
  packFactor: number;
  ambientKPa?: number;
}

/**
 * Gauge pressure, kPa, of a packed foam: p0 k (1 - phi)/(1 - k phi) - p0 with phi = free rise / liquid density. The gas of
 * the free rise, at its temperature, in less room (ideal gas, derived). No strict upper bound: see `peakPressure.ts`.
 * Errors: PACK_REFUSED, NOT_A_FOAM where no room is left for gas, INPUT_OUT_OF_BOUNDS.
 */
export function idealGasGaugeKPa(foam: PackedFoam): Outcome<number> {
  const { freeRiseKgM3, liquidKgM3, packFactor, ambientKPa = RULES.standardPressure.value } = foam;
  const sound = checkPour({ freeRiseKgM3, liquidKgM3, ambientKPa });
  if (!sound.ok) return sound;
  const pack = checkPack(packFactor);
  if (!pack.ok) return pack;
  const phi = freeRiseKgM3 / liquidKgM3;
  if (packFactor * phi >= 1) {
    return bad('NOT_A_FOAM', {
      freeRiseKgM3,
      packFactor,
      moldedKgM3: packFactor * freeRiseKgM3,
      liquidKgM3,
    });
  }
  return good(ambientKPa * ((packFactor * (1 - phi)) / (1 - packFactor * phi) - 1));
}

/** The pack factor that gives this gauge pressure: r/((1 - phi) + r phi), r = absolute over ambient; the formula inverted. */
export function packAtGauge({
  freeRiseKgM3,
  liquidKgM3,
  gaugeKPa,
  ambientKPa = RULES.standardPressure.value,
}: Omit<PackedFoam, 'packFactor'> & { gaugeKPa: number }): Outcome<number> {
  const sound = checkPour({ freeRiseKgM3, liquidKgM3, gaugeKPa, ambientKPa });
  if (!sound.ok) return sound;
  if (freeRiseKgM3 >= liquidKgM3) {
    return bad('NOT_A_FOAM', { freeRiseKgM3, packFactor: 1, moldedKgM3: freeRiseKgM3, liquidKgM3 });
  }
  const phi = freeRiseKgM3 / liquidKgM3;
  const r = 1 + gaugeKPa / ambientKPa;
  return good(r / (1 - phi + r * phi));
}

/**
 * The same with closed cells that keep their gas, kPa: p0 [(1/rho_f - 1/rho_s)/(1/rho_m - 1/rho_s) - 1], the solid polymer of
 * 1100 kg/m3 in place of the liquid (isothermal, sealed, nothing lost; derived). It is the ideal-gas formula with another
 * density of what is not gas.
 */
export const closedCellGaugeKPa = ({
  solidKgM3 = R.closedCellSolid.value,
  ...foam
}: Omit<PackedFoam, 'liquidKgM3'> & { solidKgM3?: number }): Outcome<number> =>
  idealGasGaugeKPa({ ...foam, liquidKgM3: solidKgM3 });

/**
 * Gauge pressure, kPa, when the air of the mold cannot leave: the foam's own gas and the air, warmed from `airTempK` to
 * `gasTempK` in the same room, add up (Dalton). About six times the vented figure at pack 1.2: never seal a mold.
 */
export function unventedGaugeKPa({
  gasTempK = RULES.gasTemperature.value,
  airTempK = R.airAtPour.value,
  ...foam
}: PackedFoam & { gasTempK?: number; airTempK?: number }): Outcome<number> {
  const sound = checkPour({ gasTempK, airTempK });
  if (!sound.ok) return sound;
  const gauge = idealGasGaugeKPa(foam);
  if (!gauge.ok) return gauge;
  const ambientKPa = foam.ambientKPa ?? RULES.standardPressure.value;
  return good(gauge.value + (ambientKPa * gasTempK) / airTempK);
}

/**
 * Absolute pressure, kPa, that all the water of a mix can make: n R T / (V - m/rho), every mole of water a mole of carbon
 * dioxide, none dissolved or lost. A strict cap on the gas of the foam itself; trapped air comes on top.
 */
export function waterCapKPa({
  mixedG,
  waterShare,
  gasTempK,
  cavityCm3,
  liquidKgM3,
}: {
  mixedG: number;
  waterShare: number;
  gasTempK: number;
  cavityCm3: number;
  liquidKgM3: number;
}): Outcome<number> {
  const sound = checkPour({ mixedG, waterShare, gasTempK, cavityCm3, liquidKgM3 });
  if (!sound.ok) return sound;
  const gasCm3 = cavityCm3 - (1000 * mixedG) / liquidKgM3;
  if (gasCm3 <= 0) return bad('LIQUID_OVER_CAVITY', { mixedG, cavityCm3, liquidCm3: cavityCm3 - gasCm3 });
  const moles = (mixedG * waterShare) / WATER_G_PER_MOL;
  // J/cm3 is MPa.
  return good((1000 * moles * R.gasConstant.value * gasTempK) / gasCm3);
}
