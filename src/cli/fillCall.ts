import type { Estimate } from '../estimate';
import { bad, good, type Outcome } from '../problem';
import { VOLUME_RULES, waterFill, type BatchAssumption } from '../yield';
import type { OptionSpec, OptionValues } from './command';
import { assumedOf } from './fillAssumed';
import { massesOption } from './fillMasses';
import { SCALE_STEP_OPTION, WATER_TEMP_OPTION, weighedWater } from './fillWater';
import type { Io } from './io';

export const FILL_OPTIONS: readonly OptionSpec[] = [
  {
    flags: '--water <mass>',
    about: 'water that fills the mold to its rim (bare number: g); once for each jug, they are added up',
    repeat: true,
  },
  WATER_TEMP_OPTION,
  SCALE_STEP_OPTION,
];

export interface Filled {
  cavityCm3: Estimate;
  waterG: number;
  waterTempC: number;
  assumptions: BatchAssumption[];
}

/** The cavity of a mold from the water in it. Errors: BAD_CALL, those of the shop and of `waterFill`. */
export function fillCall(options: OptionValues, io: Io): Outcome<Filled> {
  const weighings = massesOption(options, 'water');
  if (!weighings.ok) return weighings;
  if (weighings.value.length === 0)
    return bad('BAD_CALL', {
      text: 'The mass of the water is missing.',
      hint: 'Give --water "4.47 kg": what it takes to fill the mold to its rim, weighed.',
    });
  const weighed = weighedWater(weighings.value, options, io);
  if (!weighed.ok) return weighed;
  const { water, waterTempC, assumptions } = weighed.value;
  const cavity = waterFill(water);
  if (!cavity.ok) return cavity;
  return good({
    cavityCm3: cavity.value,
    waterG: water.waterG,
    waterTempC,
    assumptions: [...assumptions, assumedOf('u_water_fill', VOLUME_RULES.waterFillU)],
  });
}
