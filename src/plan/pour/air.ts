import { good, type Outcome } from '../../problem';
import { correctForAir, RULES, type AirCorrection } from '../../yield';
import type { PourInputs } from '../planPour';
import type { PourAsk } from './pourAsk';

/** The free rise of the card in the air of the day. */
export interface AirStep {
  cardKgM3: number;
  correction: AirCorrection;
}

/**
 * The inputs of the batch with the free rise of the day. A cup test of the day already holds the day's air: it is left as it is. Where a
 * barometer was read, the doubt of the day's pressure is the barometer's.
 */
export function correctedInputs({
  pour,
  air,
  ingredientsC,
  roomC,
  foam,
}: PourAsk): Outcome<{ inputs: PourInputs; step?: AirStep }> {
  const warmC = ingredientsC ?? roomC;
  if (air === undefined && (warmC === undefined || foam?.timesAtC === undefined))
    return good({ inputs: pour });
  const { freeRiseKgM3 } = pour;
  const cardKgM3 = freeRiseKgM3.value;
  const correction = correctForAir({
    freeRiseKgM3: cardKgM3,
    liquidKgM3: pour.liquidKgM3?.value ?? RULES.liquidDensity.value,
    cupTestedToday: freeRiseKgM3.from === 'cup-test' && freeRiseKgM3.isOld !== true,
    today: { ...air },
    ...(warmC === undefined ? {} : { ingredientsC: warmC }),
    then: {
      ...air?.then,
      ...(foam?.timesAtC === undefined ? {} : { ingredientsC: foam.timesAtC }),
    },
  });
  if (!correction.ok) return correction;
  const { applied, stationKPa, freeRiseKgM3: corrected } = correction.value;
  const factor = corrected.value / cardKgM3;
  const known = applied.includes('pressure') && stationKPa.by === 'barometer';
  const uShare = (stationKPa.high - stationKPa.low) / 4 / stationKPa.value;
  return good({
    inputs: {
      ...pour,
      freeRiseKgM3: scaled(freeRiseKgM3, factor),
      ...(known ? { uStationPressureShare: { value: uShare, from: 'given' as const } } : {}),
    },
    step: { cardKgM3, correction: correction.value },
  });
}

/** A density and its doubt, in other air. */
function scaled(given: PourInputs['freeRiseKgM3'], factor: number): PourInputs['freeRiseKgM3'] {
  const { value, u, low, high } = given;
  return {
    ...given,
    value: value * factor,
    ...(u === undefined ? {} : { u: u * factor }),
    ...(low === undefined ? {} : { low: low * factor }),
    ...(high === undefined ? {} : { high: high * factor }),
  };
}
