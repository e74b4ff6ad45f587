import { finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { RULES } from '../rules';
import { checkBounds } from './checkBounds';
import { MOLDMAKING_RULES } from './rules';

/** A sculpt under poured rubber. `sculptMassG` is the whole sculpt with what is fixed to it; leave it out if unknown. */
export interface Submerged {
  siliconeKgM3: number;
  submergedCm3: number;
  sculptMassG?: number;
}

export interface Floating {
  /** Up if above 0: what a screw or a weight must hold. */
  forceN: number;
  /** The same as a weight, kg. */
  weightKg: number;
}

/**
 * Lift on a sculpt under rubber: (rho V - m) g (Archimedes). Holds once rubber gets beneath the sculpt; one that sits
 * tight on its board is pressed down until then, so count on it.
 */
export const floatForceN = ({ siliconeKgM3, submergedCm3, sculptMassG }: Required<Submerged>): number =>
  balanceG({ siliconeKgM3, submergedCm3 }) * G_TO_N - sculptMassG * G_TO_N;

/** Whether the sculpt floats, and what holds it. A sculpt of unknown mass is "Not checked", with the mass that would stay. */
export function floatCheck(sculpt: Submerged): Outcome<{ floating?: Floating; findings: Problem[] }> {
  const { siliconeKgM3, submergedCm3, sculptMassG } = sculpt;
  const checked = checkBounds({ siliconeKgM3, submergedCm3 }, { sculptMassG });
  if (!checked.ok) return checked;
  const needG = balanceG(sculpt);
  if (sculptMassG === undefined) {
    return good({ findings: [finding('SCULPT_MASS_UNKNOWN', 'unknown', { needG, submergedCm3 })] });
  }
  const forceN = floatForceN({ siliconeKgM3, submergedCm3, sculptMassG });
  const weightKg = forceN / RULES.gravity.value;
  const safety = MOLDMAKING_RULES.holdDown.value;
  const findings =
    forceN > 0
      ? [
          finding('SCULPT_FLOATS', 'look', {
            forceN,
            weightKg,
            safety,
            holdN: safety * forceN,
            holdKg: safety * weightKg,
          }),
        ]
      : [];
  return good({ floating: { forceN, weightKg }, findings });
}

const G_TO_N = RULES.gravity.value / 1000;

/** Mass of the rubber that the sculpt displaces, g: a sculpt of this mass neither rises nor sinks. */
const balanceG = ({ siliconeKgM3, submergedCm3 }: Submerged): number => (siliconeKgM3 * submergedCm3) / 1000;
