import type { Estimate } from '../../estimate';
import { finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { shareOfA } from '../foam';
import type { MassRatio } from '../foam';
import { checkPour } from './checkPour';
import { NCO_G_PER_EQ, WATER_G_PER_MOL } from './molar';
import { POUR_RULES as R } from './rules';

/** What the data sheet says of the parts. What it does not say stays unknown: it is not guessed. */
export interface ExothermInputs {
  ratio: MassRatio;
  /** NCO content of A, share of its mass. */
  ncoShare?: number;
  /** Water in B, share of its mass. */
  waterShare?: number;
  /** Ingredients as they are mixed. */
  startC?: number;
}

export type ExothermMissing = 'ncoShare' | 'waterShare' | 'startC';

export interface Exotherm {
  known: true;
  riseK: Estimate;
  /** Core of a thick part, where nothing cools while it foams. */
  coreC: Estimate;
  findings: Problem[];
}

/** Not known, and what would have to be looked up. */
export interface ExothermUnknown {
  known: false;
  missing: ExothermMissing[];
}

/** Reactive content per kg of mix: NCO in equivalents, water in moles. */
export interface ReactiveContent {
  ncoEqPerKg: number;
  waterMolPerKg: number;
}

/**
 * Heat of a mix, kJ/kg: (NCO - 2 water) x heat of urethane + water x heat of the water reaction, at the low and the high end
 * of what is published. All NCO is taken to react, hydroxyl in excess.
 */
export function heatKJPerKg({ ncoEqPerKg, waterMolPerKg }: ReactiveContent): Estimate {
  const of = (urethane: number, water: number): number =>
    Math.max(0, ncoEqPerKg - 2 * waterMolPerKg) * urethane + waterMolPerKg * water;
  const { heatUrethane, heatWater } = R;
  return {
    value: of(heatUrethane.value, heatWater.value),
    low: of(heatUrethane.low, heatWater.low),
    high: of(heatUrethane.high, heatWater.high),
    from: 'assumed',
  };
}

/** NCO and water of a mix from the parts' data: equivalents of 42.0168 g NCO, moles of 18.01528 g water. */
export function reactiveContent({
  ratio,
  ncoShare,
  waterShare,
}: {
  ratio: MassRatio;
  ncoShare: number;
  waterShare: number;
}): ReactiveContent {
  const a = shareOfA(ratio);
  return {
    ncoEqPerKg: (1000 * a * ncoShare) / NCO_G_PER_EQ,
    waterMolPerKg: (1000 * (1 - a) * waterShare) / WATER_G_PER_MOL,
  };
}

/**
 * How hot the core gets, a band: heat over a heat capacity of 1800 J/kg K, on top of the ingredients. Adiabatic, which any part
 * thicker than some 40 mm is; a larger mass is no hotter, only longer so. Look over 140 C, Stop over 160 C, by the high end.
 * Errors: INPUT_OUT_OF_BOUNDS. Data that are missing make it "not known".
 */
export function exotherm(inputs: ExothermInputs): Outcome<Exotherm | ExothermUnknown> {
  const { ratio, ncoShare, waterShare, startC } = inputs;
  const sound = checkPour({}, { ncoShare, waterShare, startC });
  if (!sound.ok) return sound;
  if (ncoShare === undefined || waterShare === undefined || startC === undefined) {
    const missing = (['ncoShare', 'waterShare', 'startC'] as const).filter(
      (name) => inputs[name] === undefined,
    );
    return good({ known: false, missing });
  }
  const heat = heatKJPerKg(reactiveContent({ ratio, ncoShare, waterShare }));
  const riseK = scaled(heat, 1000 / R.heatCapacity.value);
  const coreC = {
    ...riseK,
    value: startC + riseK.value,
    low: startC + riseK.low,
    high: startC + riseK.high,
  };
  return good({ known: true, riseK, coreC, findings: coreFindings(coreC) });
}

const scaled = ({ value, low, high, from }: Estimate, by: number): Estimate => ({
  value: value * by,
  low: low * by,
  high: high * by,
  from,
});

function coreFindings({ low, high }: Estimate): Problem[] {
  const lookC = R.coreLook.value;
  const stopC = R.coreStop.value;
  if (high <= lookC) return [];
  return [
    finding('CORE_HOT', high > stopC ? 'stop' : 'look', { coreLowC: low, coreHighC: high, lookC, stopC }),
  ];
}

/**
 * How deep a foam has cooled from its face after so many minutes, mm: sqrt(alpha t), alpha = 2.083e-7 m2/s for 160 kg/m3 (heat
 * conduction). In half an hour some 19 mm: the core stays hot, so it is the skin that says when to open.
 */
export function cooledDepthMm(coolingMin: number): Outcome<number> {
  const sound = checkPour({ coolingMin });
  return sound.ok ? good(1000 * Math.sqrt(diffusivityM2S() * 60 * coolingMin)) : sound;
}

/** How long until a part of that half thickness has cooled to its middle, h: L^2 / alpha. */
export const coolingH = (depthMm: number): number => (depthMm / 1000) ** 2 / diffusivityM2S() / 3600;

const diffusivityM2S = (): number =>
  R.foamConductivity.value / (R.foamCooling.value * R.foamHeatCapacity.value);
