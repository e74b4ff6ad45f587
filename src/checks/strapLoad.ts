import { POUR_RULES } from '../yield';
import { ask, fine, stop, type Check } from './check';

export type StrapCase = 'bears it' | 'overloaded';

/** What the strap bears is on its label; the usual figures are no load that anyone vouches for. */
export const STRAP_LOAD: Check<StrapCase> = {
  code: 'STRAP_LOAD',
  title: 'Do the straps bear what they are pulled to?',
  when: 'pour',
  facts: ['strapBuckleN', 'strapWorkingN'],
  source: `the label of the strap; lost by friction: ${POUR_RULES.strapFriction.from}; lost by creep: ${POUR_RULES.strapLoss.from}`,
  rule(facts) {
    const { strapBuckleN, strapWorkingN } = facts;
    if (strapBuckleN === undefined || strapWorkingN === undefined)
      return ask(facts, ['strapBuckleN', 'strapWorkingN']);
    const values = { strapBuckleN, strapWorkingN, againMin: POUR_RULES.strapRetighten.value };
    return strapBuckleN > strapWorkingN
      ? stop('overloaded', { ...values, overN: strapBuckleN - strapWorkingN })
      : fine('bears it', values);
  },
  examples: {
    fine: { strapBuckleN: 180, strapWorkingN: 250 },
    stop: { strapBuckleN: 420, strapWorkingN: 250 },
  },
};
