import { bestMeasurement, mixedMassG, normalQuantile, type Batch } from '../../yield';

/** What just fills the mold, g mixed in one cup, and the packs that these are. Between the ends it lies 9 times in 10. */
export interface JustFills {
  lowG: number;
  valueG: number;
  highG: number;
  lowPack: number;
  valuePack: number;
  highPack: number;
}

/** One pour in twenty falls short at the high end, nineteen at the low one. */
const TAIL = 0.05;

/** Standard deviations from the middle to either end. */
export const ENDS_Z = normalQuantile(1 - TAIL);

/**
 * The mix that just fills: the middle at the least pack, the high end where a short fill has a chance of 1 in 20, the low end as far
 * below the middle by ratio. Undefined where no pack within bounds is that sure.
 */
export function justFills(
  batch: Batch,
  inputs: Parameters<typeof bestMeasurement>[0],
): JustFills | undefined {
  const sure = bestMeasurement(inputs, TAIL);
  const highPack = sure.ok ? sure.value.packFactor : undefined;
  if (highPack === undefined) return undefined;
  const { leastPack: valuePack } = batch;
  const lowPack = valuePack ** 2 / highPack;
  const massG = (packFactor: number): number => mixedMassG({ ...batch.inputs, packFactor });
  return {
    lowG: massG(lowPack),
    valueG: massG(valuePack),
    highG: massG(highPack),
    lowPack,
    valuePack,
    highPack,
  };
}
