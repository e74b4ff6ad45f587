import { RULES } from '../yield';
import { ask, fine, look, stop, type Check } from './check';

export type ShortFillCase = 'unlikely' | 'possible' | 'likely';

const lookChance = RULES.shortFillLook.value;
const stopChance = RULES.shortFillStop.value;
/** A pack made for just that chance gives it back within the last digits of a double. */
const SAME = 1 + 1e-9;

export const SHORT_FILL_RISK: Check<ShortFillCase> = {
  code: 'SHORT_FILL_RISK',
  title: 'Will the foam fill the mold?',
  when: 'pour',
  facts: ['shortFillChance'],
  source: `look: ${RULES.shortFillLook.from}; stop: ${RULES.shortFillStop.from}`,
  rule(facts) {
    const { shortFillChance: chance } = facts;
    if (chance === undefined) return ask(facts, ['shortFillChance']);
    const values = { chance, lookChance, stopChance };
    if (chance > stopChance * SAME) return stop('likely', values);
    return chance > lookChance * SAME ? look('possible', values) : fine('unlikely', values);
  },
  examples: {
    fine: { shortFillChance: 0.005 },
    look: { shortFillChance: 0.05 },
    stop: { shortFillChance: 0.3 },
  },
};
