import type { Outcome } from '../../problem';
import { planCups, type CupPlan } from '../../yield';
import type { Pour } from '../planPour';
import type { PourAsk } from './pourAsk';

/** The batch cup by cup: what goes into the mold, and a residue in each cup. Errors: those of `planCups`. */
export function cupsFor(
  { batch }: Pour,
  { cups = {}, foam, roomC, ingredientsC }: PourAsk,
): Outcome<CupPlan> {
  const { cupCm3, cupFillShare, mixers, mixS, carryS } = cups;
  const nowC = ingredientsC ?? roomC;
  const window =
    foam?.creamS === undefined
      ? undefined
      : {
          creamS: foam.creamS,
          ...(foam.timesAtC === undefined ? {} : { atC: foam.timesAtC }),
          ...(nowC === undefined ? {} : { nowC }),
          ...(mixS === undefined ? {} : { mixS }),
          ...(carryS === undefined ? {} : { carryS }),
        };
  return planCups(
    {
      // Unrounded, so that one cup comes out as the batch itself.
      inMoldG: batch.mixedG - batch.inputs.residueG,
      residueG: batch.inputs.residueG,
      ratio: batch.massRatio,
      stepG: batch.stepG,
      liquidKgM3: batch.liquidKgM3,
    },
    {
      ...(cupCm3 === undefined ? {} : { cupCm3 }),
      ...(cupFillShare === undefined ? {} : { cupFillShare }),
      ...(mixers === undefined ? {} : { mixers }),
      ...(window === undefined ? {} : { window }),
    },
  );
}
