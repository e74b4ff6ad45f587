import { DEMOLD_RULES } from '../yield';
import { ask, fine, look, type Check } from './check';

export type SlenderCase = 'sturdy' | 'slender';

const most = DEMOLD_RULES.slenderLook.value;

export const SLENDER: Check<SlenderCase> = {
  code: 'SLENDER',
  title: 'Are ears, fingers and fins sturdy enough to be pulled out?',
  when: 'opening',
  facts: ['slenderness'],
  source: DEMOLD_RULES.slenderLook.from,
  rule(facts) {
    const { slenderness } = facts;
    if (slenderness === undefined) return ask(facts, ['slenderness']);
    const values = { slenderness, most };
    return slenderness > most ? look('slender', values) : fine('sturdy', values);
  },
  examples: { fine: { slenderness: 3 }, look: { slenderness: 8 } },
};
