import { ask, COMMON_PRACTICE, fine, look, stop, type Check } from './check';

export type RatioOrderCase = 'read back' | 'not read back' | 'reversed';

/** A ratio in the wrong order is the dearest slip there is: 100:40 poured for 40:100 is two and a half times the A. */
export const RATIO_ORDER: Check<RatioOrderCase> = {
  code: 'RATIO_ORDER',
  title: 'Is A:B in the right order, and was it read back?',
  when: 'pour',
  facts: ['ratioReversed', 'ratioReadBack'],
  source: COMMON_PRACTICE,
  rule(facts) {
    const { ratioReversed, ratioReadBack } = facts;
    if (ratioReversed === true) return stop('reversed');
    if (ratioReversed === undefined || ratioReadBack === undefined)
      return ask(facts, ['ratioReversed', 'ratioReadBack']);
    return ratioReadBack ? fine('read back') : look('not read back');
  },
  examples: {
    fine: { ratioReversed: false, ratioReadBack: true },
    look: { ratioReversed: false, ratioReadBack: false },
    stop: { ratioReversed: true },
  },
};
