import { POUR_RULES } from '../yield';
import { ask, fine, look, stop, type Check } from './check';

export type WindowCase = 'in time' | 'in time at best' | 'too late';

/** What is left to pour in is a range, as the cream time moves with the temperature. */
export const POUR_WINDOW: Check<WindowCase> = {
  code: 'POUR_WINDOW',
  title: 'Is the pour over before the mix creams?',
  when: 'pour',
  facts: ['pourTimeS', 'pourWindowS', 'pourWindowLowS'],
  source: `mixing, carrying and a margin off the cream time: ${POUR_RULES.pourMargin.from}`,
  rule(facts) {
    const { pourTimeS, pourWindowS, pourWindowLowS } = facts;
    if (pourTimeS === undefined || pourWindowS === undefined)
      return ask(facts, ['pourTimeS', 'pourWindowS', 'pourWindowLowS']);
    const values = { pourTimeS, pourWindowS, overS: pourTimeS - pourWindowS };
    if (pourTimeS > pourWindowS) return stop('too late', values);
    if (pourWindowLowS === undefined) return ask(facts, ['pourWindowLowS']);
    return pourTimeS > pourWindowLowS
      ? look('in time at best', { ...values, pourWindowLowS })
      : fine('in time', { ...values, pourWindowLowS });
  },
  examples: {
    fine: { pourTimeS: 10, pourWindowS: 20, pourWindowLowS: 12 },
    look: { pourTimeS: 15, pourWindowS: 20, pourWindowLowS: 12 },
    stop: { pourTimeS: 25, pourWindowS: 20 },
  },
};
