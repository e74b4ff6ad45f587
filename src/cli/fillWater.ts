import { good, type Outcome } from '../problem';
import { RULES, VOLUME_RULES, type BatchAssumption, type FillingWater } from '../yield';
import { shopOption } from './batchOptions';
import type { OptionSpec, OptionValues } from './command';
import { assumedOf } from './fillAssumed';
import type { Io } from './io';
import { defined, readFigures } from './moldFigures';

export const WATER_TEMP_OPTION: OptionSpec = {
  flags: '--water-temp <temperature>',
  about: 'temperature of the water (bare number: C; assumed 20)',
};
export const SCALE_STEP_OPTION: OptionSpec = {
  flags: '--scale-step <mass>',
  about: 'step of the scale (bare number: g; that of the shop, or 1 g)',
};

/** The water's temperature as told, or as assumed for the sum; then it is listed. */
export function waterTempOption(options: OptionValues): Outcome<{
  toldC?: number;
  usedC: number;
  assumptions: BatchAssumption[];
}> {
  const read = readFigures<'toldC'>(options, [
    { key: 'toldC', option: 'waterTemp', kind: 'temperature', bareUnit: 'C' },
  ]);
  if (!read.ok) return read;
  const { toldC } = read.value;
  if (toldC !== undefined)
    return good({
      toldC,
      usedC: toldC,
      assumptions: [assumedOf('u_water_temperature', VOLUME_RULES.waterTempU)],
    });
  return good({
    usedC: VOLUME_RULES.waterTemp.value,
    assumptions: [assumedOf('water_temperature', VOLUME_RULES.waterTemp)],
  });
}

export interface WeighedWater {
  water: FillingWater;
  waterTempC: number;
  assumptions: BatchAssumption[];
}

/** Water on the scale, in so many weighings, with all that its volume hangs on. Errors: BAD_CALL, those of the shop. */
export function weighedWater(
  weighings: readonly number[],
  options: OptionValues,
  io: Io,
): Outcome<WeighedWater> {
  const shop = shopOption(options, io);
  if (!shop.ok) return shop;
  const step = readFigures<'stepG'>(options, [
    { key: 'stepG', option: 'scaleStep', kind: 'mass', bareUnit: 'g' },
  ]);
  if (!step.ok) return step;
  const temperature = waterTempOption(options);
  if (!temperature.ok) return temperature;
  const toldG = step.value.stepG ?? shop.value?.scale?.stepG;
  const stepG = toldG ?? RULES.scaleStep.value;
  const { toldC, usedC, assumptions } = temperature.value;
  return good({
    water: {
      waterG: weighings.reduce((sum, massG) => sum + massG, 0),
      // Each weighing is rounded on its own.
      stepG: stepG * Math.sqrt(weighings.length),
      ...defined({ waterTempC: toldC }),
    },
    waterTempC: usedC,
    assumptions: [
      ...assumptions,
      ...(toldG === undefined ? [assumedOf('scale_step_g', RULES.scaleStep)] : []),
    ],
  });
}
