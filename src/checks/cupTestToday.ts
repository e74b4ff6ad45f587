import { RULES } from '../yield';
import { ask, fine, look, type Check } from './check';

export type CupTestCase = 'of today' | 'not of today';

const withShare = RULES.uFreeRiseCup.value;
const withoutShare = RULES.uFreeRiseLabel.value;

export const CUP_TEST_TODAY: Check<CupTestCase> = {
  code: 'CUP_TEST_TODAY',
  title: 'Was a cup of this foam tested today?',
  when: 'pour',
  facts: ['cupTestedToday'],
  source: `${RULES.uFreeRiseCup.from}; ${RULES.uFreeRiseLabel.from}`,
  rule(facts) {
    const { cupTestedToday } = facts;
    const values = { withShare, withoutShare };
    if (cupTestedToday === undefined) return ask(facts, ['cupTestedToday'], values);
    return cupTestedToday ? fine('of today', values) : look('not of today', values);
  },
  examples: { fine: { cupTestedToday: true }, look: { cupTestedToday: false } },
};
