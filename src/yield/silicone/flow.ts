import { bad, finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { RULES } from '../rules';
import { checkSilicone } from './checkSilicone';
import { SILICONE_RULES } from './rules';

export interface TubeFlow {
  diameterMm: number;
  densityKgM3: number;
  viscosityPaS: number;
}

/**
 * What runs through a full upright tube under its own weight, mL/s: pi D^4 rho g / (128 mu), Hagen and Poiseuille. Holds
 * while the flow is laminar and the tube runs full without a head above it; a thixotropic mix is slower. Errors:
 * INPUT_OUT_OF_BOUNDS, FLOW_NOT_LAMINAR.
 */
export function tubeFlowMlS(tube: TubeFlow): Outcome<number> {
  const { diameterMm, densityKgM3, viscosityPaS } = tube;
  const sound = checkSilicone({ diameterMm, densityKgM3, viscosityPaS });
  if (!sound.ok) return sound;
  const flowMlS = flowFactor(densityKgM3, viscosityPaS) * diameterMm ** 4;
  const speedMS = (4e-6 * flowMlS) / (Math.PI * (diameterMm / 1000) ** 2);
  const reynolds = (densityKgM3 * speedMS * diameterMm) / 1000 / viscosityPaS;
  const most = SILICONE_RULES.laminarReynolds.value;
  return reynolds <= most
    ? good(flowMlS)
    : bad('FLOW_NOT_LAMINAR', { reynolds, most, diameterMm, viscosityPaS });
}

export const fillTimeMin = ({ volumeCm3, flowMlS }: { volumeCm3: number; flowMlS: number }): number =>
  volumeCm3 / flowMlS / 60;

/** The narrowest tube, mm, through which a volume runs in so many minutes: the flow solved for D. */
export const leastTubeMm = ({
  volumeCm3,
  withinMin,
  densityKgM3,
  viscosityPaS,
}: {
  volumeCm3: number;
  withinMin: number;
  densityKgM3: number;
  viscosityPaS: number;
}): number => (volumeCm3 / (60 * withinMin) / flowFactor(densityKgM3, viscosityPaS)) ** (1 / 4);

/** Stop when the rubber would set in the funnel: filling takes longer than what is left of the pot life. */
export function fillFindings({
  volumeCm3,
  leftMin,
  ...tube
}: TubeFlow & { volumeCm3: number; leftMin: number }): Outcome<Problem[]> {
  const sound = checkSilicone({ volumeCm3, leftMin });
  if (!sound.ok) return sound;
  const flow = tubeFlowMlS(tube);
  if (!flow.ok) return flow;
  const fillMin = fillTimeMin({ volumeCm3, flowMlS: flow.value });
  if (fillMin <= leftMin) return good([]);
  const leastMm = leastTubeMm({ ...tube, volumeCm3, withinMin: leftMin });
  const { diameterMm } = tube;
  return good([finding('FILL_TOO_SLOW', 'stop', { fillMin, leftMin, diameterMm, leastTubeMm: leastMm })]);
}

/** mL/s per mm^4: D in mm gives 1e-12 m^4, and a cubic meter is 1e6 mL. */
const flowFactor = (densityKgM3: number, viscosityPaS: number): number =>
  (1e-6 * Math.PI * densityKgM3 * RULES.gravity.value) / (128 * viscosityPaS);
