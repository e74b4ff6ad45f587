import { RULES } from '../yield';
import { ask, COMMON_PRACTICE, fine, look, stop, type Check } from './check';

export type PlugCase = 'none' | 'held and vented' | 'held, not vented' | 'not held';

export const PLUG_FORCE: Check<PlugCase> = {
  code: 'PLUG_FORCE',
  title: 'Is the plug or lid held, and does it let air out?',
  when: 'pour',
  facts: ['plugN', 'plugHeld', 'plugVented'],
  source: `force: pressure times area (statics); held and vented: ${COMMON_PRACTICE}`,
  rule(facts) {
    const { plugN, plugHeld, plugVented } = facts;
    if (plugN === 0) return fine('none');
    if (plugN === undefined || plugHeld === undefined)
      return ask(facts, ['plugN', 'plugHeld', 'plugVented'], known(plugN));
    const values = known(plugN);
    if (!plugHeld) return stop('not held', values);
    if (plugVented === undefined) return ask(facts, ['plugVented'], values);
    return plugVented ? fine('held and vented', values) : look('held, not vented', values);
  },
  examples: {
    fine: { plugN: 150, plugHeld: true, plugVented: true },
    look: { plugN: 150, plugHeld: true, plugVented: false },
    stop: { plugN: 150, plugHeld: false },
  },
};

/** A newton tells few people anything: the mass whose weight it is, kg, stands beside it. */
const known = (plugN: number | undefined): Record<string, number> =>
  plugN === undefined ? {} : { plugN, likeKg: plugN / RULES.gravity.value };
