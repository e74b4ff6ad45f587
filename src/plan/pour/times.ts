import type { Assumption } from '../../estimate';
import { good, type Outcome, type Problem } from '../../problem';
import {
  exotherm,
  massRatio,
  openTimeMin,
  openWarmCastingBand,
  type CupPlan,
  type Exotherm,
  type ExothermUnknown,
  type PourWindow,
  type ShiftedTime,
} from '../../yield';
import type { PourAsk } from './pourAsk';

/** When to pour, when to open, and how hot the core gets. */
export interface Times {
  /** Only where a cream time is known. */
  window?: PourWindow;
  /** When the mold may be opened: the card's time in today's warmth, beside the common band. */
  openMin?: ShiftedTime;
  openCommonMin: { low: number; high: number };
  exotherm: Exotherm | ExothermUnknown;
  assumptions: Assumption[];
  findings: Problem[];
}

/** Errors: those of `openTimeMin` and `exotherm`. */
export function timesOf(
  { pour, foam = {}, roomC, ingredientsC, moldC }: PourAsk,
  cups: CupPlan,
): Outcome<Times> {
  const band = openWarmCastingBand(foam.openMin === undefined ? {} : { openMin: foam.openMin });
  if (!band.ok) return band;
  const nowC = moldC ?? roomC;
  const open =
    foam.openMin === undefined
      ? undefined
      : openTimeMin({
          openMin: foam.openMin,
          ...(foam.timesAtC === undefined ? {} : { atC: foam.timesAtC }),
          ...(nowC === undefined ? {} : { nowC }),
        });
  if (open?.ok === false) return open;
  const ratio = massRatio(pour.ratio, pour.partDensities);
  if (!ratio.ok) return ratio;
  const startC = ingredientsC ?? roomC;
  const heat = exotherm({
    ratio: ratio.value,
    ...(foam.ncoShare === undefined ? {} : { ncoShare: foam.ncoShare }),
    ...(foam.waterShare === undefined ? {} : { waterShare: foam.waterShare }),
    ...(startC === undefined ? {} : { startC }),
  });
  if (!heat.ok) return heat;
  return good({
    ...(cups.window === undefined ? {} : { window: cups.window }),
    ...(open === undefined ? {} : { openMin: open.value }),
    openCommonMin: band.value.commonMin,
    exotherm: heat.value,
    assumptions: [],
    findings: [...band.value.findings, ...(heat.value.known ? heat.value.findings : [])],
  });
}
