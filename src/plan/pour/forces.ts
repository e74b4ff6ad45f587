import type { Assumption } from '../../estimate';
import { good, type Outcome, type Problem } from '../../problem';
import {
  clampForce,
  lidForceN,
  peakPressure,
  planStraps,
  POUR_RULES,
  type Clamp,
  type PeakPressure,
  type StrapPlan,
} from '../../yield';
import type { Pour } from '../planPour';
import type { PourAsk } from './pourAsk';

/** What the foam does to the mold. Forces only where the areas are known. */
export interface Forces {
  pressureKPa: PeakPressure;
  clamp?: Clamp;
  straps?: StrapPlan;
  /** The same with ratchet straps. */
  ratchets?: StrapPlan;
  /** On a plug or lid in the opening, at the pressure the clamp is made for. */
  plugN?: number;
  assumptions: Assumption[];
  findings: Problem[];
}

/** Errors: those of `peakPressure`, `clampForce` and `planStraps`. */
export function forcesOf(
  { batch }: Pour,
  { clamp = {} }: PourAsk,
  ambientKPa: number | undefined,
): Outcome<Forces> {
  const pressure = peakPressure(
    {
      packFactor: batch.packFactor,
      freeRiseKgM3: batch.inputs.freeRiseKgM3,
      liquidKgM3: batch.liquidKgM3,
      ...(ambientKPa === undefined ? {} : { ambientKPa }),
    },
    clamp.measuredPeak,
  );
  if (!pressure.ok) return pressure;
  const gaugeKPa = pressure.value.designKPa;
  const { projectedCm2, lidG, plugCm2 } = clamp;
  const plug =
    plugCm2 === undefined ? undefined : plugCm2 === 0 ? good(0) : lidForceN({ gaugeKPa, lidCm2: plugCm2 });
  if (plug?.ok === false) return plug;
  const known = { pressureKPa: pressure.value, ...(plug === undefined ? {} : { plugN: plug.value }) };
  if (projectedCm2 === undefined) return good({ ...known, assumptions: [], findings: [] });
  const force = clampForce({ gaugeKPa, projectedCm2, ...(lidG === undefined ? {} : { lidG }) });
  if (!force.ok) return force;
  const straps = planStraps(force.value.clampN, clamp.straps ?? {});
  if (!straps.ok) return straps;
  const ratchets = planStraps(force.value.clampN, {
    ...clamp.straps,
    strapN: POUR_RULES.ratchetTension.value,
  });
  if (!ratchets.ok) return ratchets;
  return good({
    ...known,
    clamp: force.value,
    straps: straps.value,
    ratchets: ratchets.value,
    assumptions: straps.value.assumptions,
    findings: [],
  });
}
