import type { Estimate } from '../../estimate';
import { bad, finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { RULES } from '../rules';
import { ambientAtHeightKPa } from '../silicone/degas';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

/** What is known of the air of the day. A barometer of the place wins over its height. */
export interface AirOfDay {
  /** As a barometer on the bench shows it, not reduced to sea level. */
  stationKPa?: number;
  altitudeM?: number;
}

export interface StationAir extends Estimate {
  by: 'barometer' | 'altitude' | 'sea level';
  findings: Problem[];
}

/**
 * Station pressure, kPa, as read or from the height above the sea (US Standard Atmosphere 1976, the same as ISO 2533 below
 * 11 km) with the weather as its doubt. A reading that belongs to sea level at that height is asked about.
 */
export function stationAir({ stationKPa, altitudeM }: AirOfDay): Outcome<StationAir> {
  const sound = checkPour({}, { stationKPa, altitudeM });
  if (!sound.ok) return sound;
  if (stationKPa !== undefined) {
    const findings = altitudeM === undefined ? [] : reducedFindings(stationKPa, altitudeM);
    return good({ ...spread(stationKPa, R.barometer.value), from: 'given', by: 'barometer', findings });
  }
  const by = altitudeM === undefined ? 'sea level' : 'altitude';
  const value = ambientAtHeightKPa(altitudeM ?? 0);
  return good({ ...spread(value, R.weatherPressure.value), from: 'assumed', by, findings: [] });
}

/** Two standard deviations either way. */
const spread = (value: number, uKPa: number): Pick<Estimate, 'value' | 'low' | 'high'> => ({
  value,
  low: value - 2 * uKPa,
  high: value + 2 * uKPa,
});

/** Weather reports give the pressure reduced to sea level: at a height it is far too high for the bench. */
function reducedFindings(stationKPa: number, altitudeM: number): Problem[] {
  const standardKPa = ambientAtHeightKPa(altitudeM);
  if (Math.abs(stationKPa - standardKPa) <= R.reducedPressure.value) return [];
  return [finding('AIR_PRESSURE_UNLIKELY', 'look', { stationKPa, altitudeM, standardKPa })];
}

/** A foam that rose at one pressure and gas temperature, and what it would weigh at another. Temperatures of the gas, K. */
export interface FoamInAir {
  freeRiseKgM3: number;
  liquidKgM3: number;
  thenKPa: number;
  nowKPa: number;
  thenK?: number;
  nowK?: number;
}

/**
 * Free-rise density at another pressure and gas temperature, kg/m3: only the gas share of the volume changes, by p0/p and T/T0
 * (ideal gas, derived). Error: NOT_A_FOAM for a foam no lighter than its liquid.
 */
export function densityInAir(foam: FoamInAir): Outcome<number> {
  const { freeRiseKgM3, liquidKgM3, thenKPa, nowKPa } = foam;
  const { thenK = RULES.gasTemperature.value, nowK = thenK } = foam;
  const sound = firstBad(
    checkPour({ freeRiseKgM3, liquidKgM3, gasTempK: thenK }),
    checkPour({ stationKPa: thenKPa, gasTempK: nowK }),
    checkPour({ stationKPa: nowKPa }),
  );
  if (!sound.ok) return sound;
  if (freeRiseKgM3 >= liquidKgM3) {
    return bad('NOT_A_FOAM', { freeRiseKgM3, packFactor: 1, moldedKgM3: freeRiseKgM3, liquidKgM3 });
  }
  const gasM3PerKg = (1 / freeRiseKgM3 - 1 / liquidKgM3) * (thenKPa / nowKPa) * (nowK / thenK);
  return good(1 / (1 / liquidKgM3 + gasM3PerKg));
}

const firstBad = (...checks: Outcome<true>[]): Outcome<true> => checks.find(({ ok }) => !ok) ?? good(true);

/** d ln(density) / d ln(pressure): the gas share of the foam, 0.850 at 160 of 1070 kg/m3. A kPa less is 0.84 % lighter. */
export const pressureSensitivity = ({
  freeRiseKgM3,
  liquidKgM3,
}: {
  freeRiseKgM3: number;
  liquidKgM3: number;
}): number => 1 - freeRiseKgM3 / liquidKgM3;

export interface AirCorrectionInputs {
  freeRiseKgM3: number;
  liquidKgM3: number;
  /** A cup test of this day in this room has risen in this air with these ingredients: nothing is corrected then. */
  cupTestedToday: boolean;
  today: AirOfDay;
  /** The air and the ingredients the density holds for; left out, sea level and no difference in warmth. */
  then?: AirOfDay & { ingredientsC?: number };
  ingredientsC?: number;
}

export type AirApplied = 'pressure' | 'warmth';

export interface AirCorrection {
  freeRiseKgM3: Estimate;
  /** What was corrected for; empty when nothing was. */
  applied: AirApplied[];
  /** Why a correction was left out. */
  because: { left: AirApplied; why: 'same-day cup test' | 'not told' }[];
  stationKPa: StationAir;
  /** The air the density was taken to hold for. */
  thenKPa: StationAir;
  findings: Problem[];
}

/**
 * The free-rise density in the air of the day, with the warmth of the ingredients; never corrected twice: a cup test of the
 * same day and room already holds both. Warmth follows the gas at gel (350 K), and its range reaches to what is seen in
 * practice, 1 % a degree.
 */
export function correctForAir(inputs: AirCorrectionInputs): Outcome<AirCorrection> {
  const { freeRiseKgM3, liquidKgM3, cupTestedToday, today, then = {}, ingredientsC } = inputs;
  const sound = checkPour({ freeRiseKgM3, liquidKgM3 }, { ingredientsC });
  if (!sound.ok) return sound;
  const thenSound = checkPour({}, { ingredientsC: then.ingredientsC });
  if (!thenSound.ok) return thenSound;
  const now = stationAir(today);
  if (!now.ok) return now;
  const before = stationAir(then);
  if (!before.ok) return before;
  const findings = [...now.value.findings, ...before.value.findings];
  const told = {
    pressure: now.value.by !== 'sea level',
    warmth: ingredientsC !== undefined && then.ingredientsC !== undefined,
  };
  const applied = (['pressure', 'warmth'] as const).filter((what) => !cupTestedToday && told[what]);
  const because = (['pressure', 'warmth'] as const)
    .filter((what) => !applied.includes(what))
    .map((left) => ({ left, why: cupTestedToday ? ('same-day cup test' as const) : ('not told' as const) }));
  const warmerK = applied.includes('warmth') ? (ingredientsC ?? 0) - (then.ingredientsC ?? 0) : 0;
  const thenK = RULES.gasTemperature.value;
  const density = densityInAir({
    freeRiseKgM3,
    liquidKgM3,
    thenKPa: before.value.value,
    nowKPa: applied.includes('pressure') ? now.value.value : before.value.value,
    thenK,
    nowK: thenK + warmerK,
  });
  if (!density.ok) return density;
  const estimate = withRange(density.value, applied, { inputs, warmerK, air: now.value });
  return good({
    freeRiseKgM3: estimate,
    applied,
    because,
    stationKPa: now.value,
    thenKPa: before.value,
    findings,
  });
}

/** The doubt of the correction alone; that of the density itself is the batch's business. */
function withRange(
  value: number,
  applied: readonly AirApplied[],
  { inputs, warmerK, air }: { inputs: AirCorrectionInputs; warmerK: number; air: StationAir },
): Estimate {
  if (applied.length === 0) return { value, low: value, high: value, from: 'given' };
  const pressureShare = applied.includes('pressure')
    ? pressureSensitivity(inputs) * ((air.high - air.low) / 2 / air.value)
    : 0;
  const extraShare = (R.warmthPerK.high - R.warmthPerK.low) * warmerK;
  return {
    value,
    low: value * (1 - pressureShare - Math.max(0, extraShare)),
    high: value * (1 + pressureShare + Math.max(0, -extraShare)),
    from: 'assumed',
  };
}
