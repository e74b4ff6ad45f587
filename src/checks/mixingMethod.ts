import { ask, COMMON_PRACTICE, fine, look, type Check } from './check';

export type MixingCase = 'drill' | 'hand alone';

export const MIXING_METHOD: Check<MixingCase> = {
  code: 'MIXING_METHOD',
  title: 'Does the mixing give an even foam?',
  when: 'pour',
  facts: ['mixingMethod'],
  source: COMMON_PRACTICE,
  rule(facts) {
    const { mixingMethod } = facts;
    if (mixingMethod === undefined) return ask(facts, ['mixingMethod']);
    return mixingMethod === 'hand' ? look('hand alone') : fine('drill');
  },
  examples: { fine: { mixingMethod: 'drill' }, look: { mixingMethod: 'hand' } },
};
