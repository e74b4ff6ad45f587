import { bad, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { noteIn } from '../settleBatch';
import type { BatchAssumption, Note } from '../settleBatch';
import { checkRatioParts, checkSilicone } from './checkSilicone';
import type { SiliconeRatio } from './checkSilicone';
import { containerLimitG } from './degas';
import type { Method } from './order';
import { potLifeAtRoomMin } from './potLife';
import { roundMix } from './roundMix';
import type { Mix } from './roundMix';
import { SILICONE_RULES } from './rules';
import { smallMixFindings } from './smallestMix';

/** What bounds one mix: the time it may take, and the cup it is stirred and degassed in. */
export interface MixLimits {
  potLifeMin: number;
  potLifeAtC?: number;
  /** Temperature of the room; left out, the pot life is taken as it stands. */
  roomC?: number;
  method: Method;
  degassed: boolean;
  applyGPerMin?: number;
  mixMin?: number;
  degasMin?: number;
  containerCm3?: number;
  frothRatio?: number;
}

export interface MixPlanInputs extends MixLimits {
  /** All that is mixed, cup losses included. */
  totalG: number;
  ratio: SiliconeRatio;
  stepG: number;
  densityKgM3: number;
}

export interface MixPlan {
  mixes: Mix[];
  /** (base/catalyst as weighed) / (base/catalyst wanted) - 1; positive is too little catalyst. */
  ratioErrorShare: number;
  /** The most one mix may be, g, and why. */
  largestMixG: number;
  limitedBy: 'pot life' | 'container';
  /** At the room's temperature. */
  potLifeMin: number;
  /** What is left of it for brushing or pouring, once mixed and degassed. */
  applyMin: number;
  assumptions: BatchAssumption[];
  findings: Problem[];
}

/**
 * Equal mixes that are each applied within the pot life and fit the cup: the largest is rate x (pot life - mixing -
 * degassing), or what the cup takes. Each is rounded up to the step of the scale, so together they are never less than
 * `totalG`. Errors: INPUT_OUT_OF_BOUNDS (a pot life of 0), POT_LIFE_TOO_SHORT, MIXES_TOO_MANY, MIX_BELOW_SCALE.
 */
export function planMixes(inputs: MixPlanInputs): Outcome<MixPlan> {
  const sound = checkMixes(inputs);
  if (!sound.ok) return sound;
  const assumptions: BatchAssumption[] = [];
  const limit = largestMix(inputs, noteIn(assumptions));
  if (!limit.ok) return limit;
  const { totalG, ratio, stepG } = inputs;
  const { largestMixG } = limit.value;
  const most = SILICONE_RULES.mostMixes.value;
  for (let count = Math.ceil((totalG / largestMixG) * (1 - 1e-12)); count <= most; count += 1) {
    const rounded = roundMix({ neededG: totalG / count, ratio, stepG, mostG: largestMixG });
    if (!rounded.ok) return rounded;
    const { ratioErrorShare, ...mix } = rounded.value;
    // Rounding up may lift a mix over the limit; then one more is needed.
    if (mix.totalG > largestMixG * (1 + 1e-12)) continue;
    const mixes = Array.from({ length: count }, () => ({ ...mix }));
    const findings = smallMixFindings({ mixG: mix.totalG, ratio, stepG });
    return good({ ...limit.value, mixes, ratioErrorShare, assumptions, findings });
  }
  return bad('MIXES_TOO_MANY', { totalG, largestMixG, most, limitedBy: limit.value.limitedBy });
}

type Limit = Pick<MixPlan, 'largestMixG' | 'limitedBy' | 'potLifeMin' | 'applyMin'>;

function largestMix(inputs: MixPlanInputs, note: Note): Outcome<Limit> {
  const potLifeMin = roomPotLifeMin(inputs, note);
  const mixMin = inputs.mixMin ?? note('silicone_mix_min', SILICONE_RULES.mixTime);
  const degasMin = inputs.degassed
    ? (inputs.degasMin ?? note('silicone_degas_min', SILICONE_RULES.degasTime))
    : 0;
  const applyMin = potLifeMin - mixMin - degasMin;
  if (applyMin <= 0) return bad('POT_LIFE_TOO_SHORT', { potLifeMin, mixMin, degasMin });
  const rate = inputs.method === 'brush' ? SILICONE_RULES.brushRate : SILICONE_RULES.pourRate;
  const gPerMin = inputs.applyGPerMin ?? note(`silicone_${inputs.method}_g_per_min`, rate);
  const inTimeG = gPerMin * applyMin;
  const inCupG = cupLimitG(inputs, note);
  const limitedBy = inCupG < inTimeG ? 'container' : 'pot life';
  return good({ largestMixG: Math.min(inCupG, inTimeG), limitedBy, potLifeMin, applyMin });
}

function roomPotLifeMin({ potLifeMin, potLifeAtC, roomC }: MixPlanInputs, note: Note): number {
  const atC = potLifeAtC ?? note('pot_life_at_c', SILICONE_RULES.potLifeTemperature);
  if (roomC === undefined) {
    note('room_c', {
      value: atC,
      unit: 'C',
      from: 'the room is taken to be as warm as the pot life holds at',
    });
    return potLifeMin;
  }
  if (atC !== roomC) note('pot_life_halves_k', SILICONE_RULES.potLifeHalves);
  return potLifeAtRoomMin({ potLifeMin, atC, roomC });
}

function cupLimitG({ containerCm3, degassed, frothRatio, densityKgM3 }: MixPlanInputs, note: Note): number {
  if (containerCm3 === undefined) return Infinity;
  const swell = degassed
    ? (frothRatio ?? note('silicone_froth_ratio', SILICONE_RULES.frothRatio))
    : note('silicone_stir_ratio', SILICONE_RULES.stirRatio);
  return containerLimitG({ containerCm3, densityKgM3, frothRatio: swell });
}

function checkMixes(inputs: MixPlanInputs): Outcome<true> {
  const parts = checkRatioParts(inputs.ratio);
  if (!parts.ok) return parts;
  const { totalG, stepG, densityKgM3, potLifeMin, potLifeAtC, roomC } = inputs;
  const { applyGPerMin, mixMin, degasMin, containerCm3, frothRatio } = inputs;
  return checkSilicone(
    { totalG, scaleStepG: stepG, densityKgM3, potLifeMin },
    { potLifeAtC, roomC, applyGPerMin, mixMin, degasMin, containerCm3, frothRatio },
  );
}
