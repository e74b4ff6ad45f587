import { good, type Outcome } from '../../problem';
import { foamThroughVentG, POUR_RULES, RULES, ventsNeeded, type VentCount } from '../../yield';
import type { OpeningAsk } from './openingAsk';
import type { OpeningSize } from './openingSize';

/** What the air asks of the vents together, and why several small ones. */
export interface VentFlow {
  count: VentCount;
  /** Foam that bleeds through one vent of this width and through a wide one before they plug, g: only where the pressure is known. */
  bleed?: { ventMm: number; ventG: number; wideMm: number; wideG: number };
}

const WIDE_MM = POUR_RULES.wideVent.value;

/** Undefined while it is not known how much is poured and how long it rises. Errors: those of `ventsNeeded` and `foamThroughVentG`. */
export function ventFlowOf(
  { liquidCm3, idealKPa }: OpeningSize,
  { cavityCm3, vents, ventMm }: { cavityCm3: number; vents: number; ventMm: number },
  { pour = {} }: OpeningAsk,
): Outcome<VentFlow | undefined> {
  const {
    riseS,
    freeRiseKgM3,
    packFactor = RULES.packFactor.value,
    foamPaS = POUR_RULES.foamViscosity.value,
  } = pour;
  if (riseS === undefined || liquidCm3 === undefined) return good(undefined);
  const gasCm3 = Math.max(0, cavityCm3 - liquidCm3);
  const count = ventsNeeded({ gasCm3, riseS, ventsPlaced: vents, ventMm });
  if (!count.ok) return count;
  if (freeRiseKgM3 === undefined || idealKPa === undefined || idealKPa <= 0)
    return good({ count: count.value });
  const through = (widthMm: number): Outcome<number> =>
    foamThroughVentG({
      ventMm: widthMm,
      ventLengthMm: POUR_RULES.ventLength.value,
      gaugeKPa: idealKPa,
      riseS,
      moldedKgM3: packFactor * freeRiseKgM3,
      foamPaS,
    });
  const [small, wide] = [through(ventMm), through(WIDE_MM)];
  if (!small.ok) return small;
  if (!wide.ok) return wide;
  return good({
    count: count.value,
    bleed: { ventMm, ventG: small.value, wideMm: WIDE_MM, wideG: wide.value },
  });
}
