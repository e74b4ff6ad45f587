import type { Estimate } from '../../estimate';
import { finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { checkPack } from '../packFactor';
import { RULES } from '../rules';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

export interface OpenRiser {
  sprueMm: number;
  sprueLengthMm: number;
  packFactor: number;
  cavityCm3: number;
  /** From full to still. */
  riseS: number;
  /** Apparent viscosity of the foam near gel; not known until learned from trimmed risers. */
  foamPaS?: number;
}

/**
 * Pressure that an open mouth keeps in the mold, kPa: 128 mu L Q/(pi D^4), Q = (k - 1) V / t, the foam that must leave (Hagen and
 * Poiseuille). Falls with the fourth power of the width. The range is that of the foam's viscosity, 10 to 1000 Pa s.
 */
export function riserBackPressureKPa(riser: OpenRiser): Outcome<Estimate> {
  const { sprueMm, sprueLengthMm, packFactor, cavityCm3, riseS, foamPaS } = riser;
  const sound = checkPour({ sprueMm, sprueLengthMm, cavityCm3, riseS }, { foamPaS });
  if (!sound.ok) return sound;
  const pack = checkPack(packFactor);
  if (!pack.ok) return pack;
  const flowM3S = ((packFactor - 1) * cavityCm3) / riseS / 1e6;
  const tube = (128 * (sprueLengthMm / 1000) * flowM3S) / (Math.PI * (sprueMm / 1000) ** 4) / 1000;
  if (foamPaS !== undefined) {
    const value = tube * foamPaS;
    return good({ value, low: value, high: value, from: 'given' });
  }
  const { value, low, high } = R.foamViscosity;
  return good({ value: tube * value, low: tube * low, high: tube * high, from: 'assumed' });
}

/**
 * Pressure really reached with an open mouth, kPa: no more than the mouth holds back. Look when it is under a quarter of the
 * ideal-gas figure: the extra pack leaves through the mouth. A capped, vented mold keeps it.
 */
export function pressureWithMouth({
  idealKPa,
  mouthKPa,
}: {
  idealKPa: number;
  mouthKPa: number;
}): Outcome<{ gaugeKPa: number; findings: Problem[] }> {
  for (const gaugeKPa of [idealKPa, mouthKPa]) {
    const sound = checkPour({ gaugeKPa });
    if (!sound.ok) return sound;
  }
  const wastedShare = R.mouthWasted.value;
  const isWasted = mouthKPa < wastedShare * idealKPa;
  const findings = isWasted
    ? [finding('PACK_LOST_AT_MOUTH', 'look', { idealKPa, mouthKPa, wastedShare })]
    : [];
  return good({ gaugeKPa: Math.min(idealKPa, mouthKPa), findings });
}

export interface VentedRise {
  /** Air that the foam drives out, and how long it takes. */
  gasCm3: number;
  riseS: number;
  /** Peak over mean flow; 3 when left out. */
  peakFlow?: number;
}

export interface VentAir {
  /** In the jet, behind the narrowing; the mean in the hole is 0.6 of it. */
  jetMS: number;
  pressurePa: number;
}

/** Air out of so many round vents: speed of the jet, m/s, and pressure before it, Pa; dp = rho/2 (Q/(Cd A))^2, Cd 0.6. */
export function ventAir({
  vents,
  ventMm,
  ...rise
}: VentedRise & { vents: number; ventMm: number }): Outcome<VentAir> {
  const sound = checkPour({ vents, ventMm });
  if (!sound.ok) return sound;
  const flow = airM3S(rise);
  if (!flow.ok) return flow;
  const jetMS = flow.value / (R.ventDischarge.value * vents * holeM2(ventMm));
  return good({ jetMS, pressurePa: (R.airDensity.value / 2) * jetMS ** 2 });
}

/** Vent area that lets the air out at this pressure, mm2: Q / (Cd sqrt(2 dp / rho)). */
export function ventAreaMm2({
  ventPressurePa,
  ...rise
}: VentedRise & { ventPressurePa: number }): Outcome<number> {
  const sound = checkPour({ ventPressurePa });
  if (!sound.ok) return sound;
  const flow = airM3S(rise);
  if (!flow.ok) return flow;
  const jetMS = Math.sqrt((2 * ventPressurePa) / R.airDensity.value);
  return good((1e6 * flow.value) / (R.ventDischarge.value * jetMS));
}

/**
 * Foam that bleeds through one vent, g: pi D^4 dp t rho/(128 mu L) (Hagen and Poiseuille), before it plugs itself. Several small
 * vents lose far less than a large one.
 */
export function foamThroughVentG(vent: {
  ventMm: number;
  ventLengthMm: number;
  gaugeKPa: number;
  riseS: number;
  moldedKgM3: number;
  foamPaS?: number;
}): Outcome<number> {
  const { ventMm, ventLengthMm, gaugeKPa, riseS, moldedKgM3, foamPaS = R.foamViscosity.value } = vent;
  const sound = checkPour({ ventMm, ventLengthMm, gaugeKPa, riseS, moldedKgM3, foamPaS });
  if (!sound.ok) return sound;
  const flowM3S =
    (Math.PI * (ventMm / 1000) ** 4 * gaugeKPa * 1000) / (128 * foamPaS * (ventLengthMm / 1000));
  return good(1000 * flowM3S * riseS * moldedKgM3);
}

function airM3S({ gasCm3, riseS, peakFlow = RULES.ventPeakFlow.value }: VentedRise): Outcome<number> {
  const sound = checkPour({ gasCm3, riseS, peakFlow });
  return sound.ok ? good((peakFlow * gasCm3) / riseS / 1e6) : sound;
}

const holeM2 = (ventMm: number): number => (Math.PI * (ventMm / 1000) ** 2) / 4;
