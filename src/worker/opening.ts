import { planOpening, type LevelFill, type MoldBench, type OpeningAsk, type OpeningPlan } from '../plan';
import { good, type Outcome } from '../problem';
import { bestUpOf } from '../words/openingAttitudes';
import type { Help } from './sizeWish';
import { watchedBench } from './watchedBench';

/** Opening, vents, thin places and the way out, on the bench of the size. Thickness is measured once for it. Errors: those of `planOpening`. */
export const openingWish = (
  { bench }: { bench: MoldBench },
  ask: OpeningAsk,
  help: Help,
): Outcome<OpeningPlan> => planOpening(watchedBench(bench, help), ask);

/**
 * The ways up that shut in the least air and, beside them, the usual one, which the search leaves out: today's way is the page's to tell. Apart from
 * the rest, since it takes seconds and hangs on less. Errors: as above.
 */
export function bestUpWish(bench: { bench: MoldBench }, ask: OpeningAsk, help: Help): Outcome<LevelFill[]> {
  const plan = openingWish(bench, { ...ask, searchUp: true }, help);
  if (!plan.ok) return plan;
  const { best = [], filling } = plan.value;
  return good(bestUpOf(plan.value) === filling.up ? [filling, ...best] : [...best, filling]);
}
