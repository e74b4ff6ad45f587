import type { Assumption } from '../estimate';
import { finding, good, type Outcome, type Problem } from '../problem';
import { planRun, type RunPlan } from '../yield';
import type { OptionValues } from './command';
import type { Io } from './io';
import { defined } from './moldFigures';
import { runCasting, type RunCasting } from './runCasting';
import { runOptions } from './runOptions';

export interface Run {
  plan: RunPlan;
  molds: number;
  casting: RunCasting;
  findings: Problem[];
  assumptions: Assumption[];
}

/** The plan of a run. Errors: BAD_CALL, those of the batch and of `planRun`. */
export function runCall(options: OptionValues, io: Io): Outcome<Run> {
  const casting = runCasting(options, io);
  if (!casting.ok) return casting;
  const { partAG, partBG, ratio, openMin, card, shop } = casting.value;
  const wish = runOptions(options, { card, shop, ratio });
  if (!wish.ok) return wish;
  const plan = planRun({ ...wish.value, batch: { partAG, partBG }, ratio, ...defined({ openMin }) });
  if (!plan.ok) return plan;
  const { buyKg, buy, assumptions } = plan.value;
  const noKits = buyKg !== undefined && buyKg > 0 && buy === undefined;
  return good({
    plan: plan.value,
    molds: wish.value.molds,
    casting: casting.value,
    findings: [
      ...casting.value.findings,
      ...(buy?.findings ?? []),
      ...(noKits ? [finding('KITS_UNKNOWN', 'unknown', { needKg: buyKg })] : []),
    ],
    assumptions: [...casting.value.assumptions, ...assumptions],
  });
}
