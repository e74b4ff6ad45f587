import { RULES } from '../yield';
import { ask, fine, look, stop, type Check } from './check';

export type PackCase = 'usual' | 'light' | 'heavy' | 'too heavy' | 'does not fill';

const { low, high } = RULES.packFine;
const stopAbove = RULES.packStopAbove.value;
const least = RULES.packFactor.low;

export const PACK_RANGE: Check<PackCase> = {
  code: 'PACK_RANGE',
  title: 'Is the pack factor in the usual range?',
  when: 'pour',
  facts: ['packFactor'],
  source: `${RULES.packFine.from}; stop: ${RULES.packStopAbove.from}`,
  rule(facts) {
    const { packFactor } = facts;
    if (packFactor === undefined) return ask(facts, ['packFactor']);
    const values = { packFactor, low, high, least, stopAbove };
    if (packFactor < least) return stop('does not fill', values);
    if (packFactor > stopAbove) return stop('too heavy', values);
    if (packFactor > high) return look('heavy', values);
    return packFactor < low ? look('light', values) : fine('usual', values);
  },
  examples: { fine: { packFactor: 1.3 }, look: { packFactor: 1.7 }, stop: { packFactor: 2.2 } },
};
