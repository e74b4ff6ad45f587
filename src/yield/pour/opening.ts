import { bad, finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { shareOfA } from '../foam';
import type { MassRatio } from '../foam';
import { RULES } from '../rules';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

/** A round opening: diameter, length of its tube, head of liquid above its mouth. */
export interface Sprue {
  sprueMm: number;
  sprueLengthMm: number;
  headMm: number;
}

export interface PouredLiquid {
  mixPaS: number;
  liquidKgM3: number;
}

export interface PourFlow {
  flowMlS: number;
  reynolds: number;
  limitedBy: 'tube' | 'counter-current air';
  findings: Problem[];
}

/** Flow of a liquid without friction through a hole under a head, mL/s: A sqrt(2 g h) (Torricelli); an upper bound only. */
export function freeJetMlS({
  sprueMm,
  headMm,
  gravityMS2 = RULES.gravity.value,
}: Pick<Sprue, 'sprueMm' | 'headMm'> & { gravityMS2?: number }): Outcome<number> {
  const sound = checkPour({ sprueMm, headMm });
  return sound.ok ? good(1e6 * areaM2(sprueMm) * Math.sqrt((2 * gravityMS2 * headMm) / 1000)) : sound;
}

/**
 * Flow into the mold, mL/s: laminar and inertial loss of the tube in series, Q = (-a + sqrt(a^2 + 4 b c)) / (2 b) with a = 128 mu
 * L/(pi D^4), b = rho (1 + K)/(2 A^2), c = rho g (h + L), K = 0.5 at the mouth. Without another path the air comes up through the
 * same opening: then Wallis' counter-current limit holds it back. A Reynolds number above 100 is a finding: the sum of losses
 * is then too rosy. Errors: INPUT_OUT_OF_BOUNDS, NO_HEAD.
 */
export function pourFlow({ vented, ...tube }: Sprue & PouredLiquid & { vented: boolean }): Outcome<PourFlow> {
  const { sprueMm, sprueLengthMm, headMm, mixPaS, liquidKgM3 } = tube;
  const sound = checkPour({ sprueMm, sprueLengthMm, headMm, mixPaS, liquidKgM3 });
  if (!sound.ok) return sound;
  if (headMm + sprueLengthMm <= 0) return bad('NO_HEAD', { headMm, sprueLengthMm });
  const inTubeMlS = tubeMlS(tube);
  const againstAirMlS = vented ? Infinity : counterCurrentMlS({ sprueMm, liquidKgM3 });
  const flowMlS = Math.min(inTubeMlS, againstAirMlS);
  const reynolds = reynoldsOf(flowMlS, tube);
  const most = R.laminarMix.value;
  const findings =
    reynolds > most ? [finding('OPENING_FLOW_FAST', 'look', { reynolds, most, sprueMm, mixPaS })] : [];
  const limitedBy = againstAirMlS < inTubeMlS ? 'counter-current air' : 'tube';
  return good({ flowMlS, reynolds, limitedBy, findings });
}

/** Time to pour that much liquid, s. */
export function pourTimeS({
  liquidCm3,
  ...flow
}: Sprue & PouredLiquid & { vented: boolean; liquidCm3: number }): Outcome<number> {
  const sound = checkPour({ liquidCm3 });
  if (!sound.ok) return sound;
  const found = pourFlow(flow);
  return found.ok ? good(liquidCm3 / found.value.flowMlS) : found;
}

/**
 * The narrowest opening, mm, through which the liquid runs in within a window: the flow solved for D by halving, as it grows with
 * D. Error: OPENING_NONE when even 300 mm are too narrow.
 */
export function leastSprueMm({
  liquidCm3,
  withinS,
  vented,
  ...tube
}: Omit<Sprue, 'sprueMm'> &
  PouredLiquid & { vented: boolean; liquidCm3: number; withinS: number }): Outcome<number> {
  const sound = checkPour({ liquidCm3, withinS });
  if (!sound.ok) return sound;
  const flowAt = (sprueMm: number): Outcome<PourFlow> => pourFlow({ ...tube, sprueMm, vented });
  const widest = flowAt(WIDEST_MM);
  if (!widest.ok) return widest;
  const neededMlS = liquidCm3 / withinS;
  if (widest.value.flowMlS < neededMlS)
    return bad('OPENING_NONE', { liquidCm3, withinS, widestMm: WIDEST_MM });
  let low = NARROWEST_MM;
  let high = WIDEST_MM;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    const flow = flowAt(middle);
    if (!flow.ok) return flow;
    if (flow.value.flowMlS < neededMlS) low = middle;
    else high = middle;
  }
  return good(high);
}

/** The bounds of `sprueMm`. */
const NARROWEST_MM = 1;
const WIDEST_MM = 300;
/** 300 / 2^50 is below the spacing of doubles near 10. */
const HALVINGS = 50;

/** Viscosity of the mix, Pa s: ln mu = sum of mass shares times ln mu of the parts (common practice, no source). */
export function mixedViscosityPaS({
  ratio,
  aPaS,
  bPaS,
}: {
  ratio: MassRatio;
  aPaS: number;
  bPaS: number;
}): Outcome<number> {
  for (const mixPaS of [aPaS, bPaS]) {
    const sound = checkPour({ mixPaS });
    if (!sound.ok) return sound;
  }
  const a = shareOfA(ratio);
  return good(Math.exp(a * Math.log(aPaS) + (1 - a) * Math.log(bPaS)));
}

function tubeMlS({ sprueMm, sprueLengthMm, headMm, mixPaS, liquidKgM3 }: Sprue & PouredLiquid): number {
  const a = (128 * mixPaS * (sprueLengthMm / 1000)) / (Math.PI * (sprueMm / 1000) ** 4);
  const b = (liquidKgM3 * (1 + R.entranceLoss.value)) / (2 * areaM2(sprueMm) ** 2);
  const c = (liquidKgM3 * RULES.gravity.value * (headMm + sprueLengthMm)) / 1000;
  // The same root without the difference of two near numbers in a long thin tube.
  return (1e6 * 2 * c) / (a + Math.sqrt(a * a + 4 * b * c));
}

/** Liquid down, air up, in one hole: Q = (C/(1 + (rho_air/rho)^(1/4)))^2 A sqrt(g D), Wallis, C = 0.725. */
function counterCurrentMlS({ sprueMm, liquidKgM3 }: { sprueMm: number; liquidKgM3: number }): number {
  const root = R.wallis.value / (1 + (R.airDensity.value / liquidKgM3) ** 0.25);
  return 1e6 * root ** 2 * areaM2(sprueMm) * Math.sqrt((RULES.gravity.value * sprueMm) / 1000);
}

function reynoldsOf(flowMlS: number, { sprueMm, mixPaS, liquidKgM3 }: Sprue & PouredLiquid): number {
  const speedMS = (1e-6 * flowMlS) / areaM2(sprueMm);
  return (liquidKgM3 * speedMS * sprueMm) / 1000 / mixPaS;
}

const areaM2 = (sprueMm: number): number => (Math.PI * (sprueMm / 1000) ** 2) / 4;
