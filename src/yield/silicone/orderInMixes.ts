import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { planMixes } from './mixes';
import type { MixLimits, MixPlan } from './mixes';
import { orderSilicone, timesMix } from './order';
import type { OrderInputs, SiliconeOrder } from './order';
import { SILICONE_RULES } from './rules';

/** What is mixed in all and cup by cup: `totalG`, `baseG` and `catalystG` are the sums of `mixes`. */
export interface OrderInMixes extends SiliconeOrder, MixPlan {}

/**
 * The order and its mixes together: each mix leaves a film in its cup, which asks for more silicone, which may ask for one
 * more mix. The number is raised until both agree. Errors: those of `orderSilicone` and `planMixes`.
 */
export function orderInMixes(inputs: Omit<OrderInputs, 'cups'>, limits: MixLimits): Outcome<OrderInMixes> {
  const { ratio, densityKgM3 } = inputs;
  let cups = 1;
  for (;;) {
    const order = orderSilicone({ ...inputs, cups });
    if (!order.ok) return order;
    const { stepG, neededG, cupLossG } = order.value;
    const plan = planMixes({ ...limits, totalG: neededG.value, ratio, stepG, densityKgM3 });
    if (!plan.ok) return plan;
    const { largestMixG, limitedBy } = plan.value;
    // Each further cup would lose all it adds.
    if (cupLossG >= largestMixG)
      return bad('MIXES_TOO_MANY', {
        totalG: neededG.value,
        largestMixG,
        most: SILICONE_RULES.mostMixes.value,
        limitedBy,
      });
    if (plan.value.mixes.length <= cups) return good(joined(order.value, plan.value));
    cups = plan.value.mixes.length;
  }
}

function joined(order: SiliconeOrder, plan: MixPlan): OrderInMixes {
  const mix = plan.mixes[0] ?? order.mix;
  return {
    ...order,
    ...plan,
    ...timesMix(mix, plan.mixes.length),
    mix,
    cups: plan.mixes.length,
    assumptions: [...order.assumptions, ...plan.assumptions],
  };
}
