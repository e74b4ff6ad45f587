import { ask, fine, stop, type Check } from './check';

export type LiquidCase = 'stays' | 'runs out';

/** Before it foams the mix is a liquid: it finds the lowest hole of a tilted mold. */
export const LIQUID_STAYS: Check<LiquidCase> = {
  code: 'LIQUID_STAYS',
  title: 'Does the liquid mix stay in the mold as it stands?',
  when: 'opening',
  facts: ['pouredLiquidCm3', 'holdCm3'],
  source: 'level of a liquid in the measured cavity (geometry)',
  rule(facts) {
    const { pouredLiquidCm3, holdCm3 } = facts;
    if (pouredLiquidCm3 === undefined || holdCm3 === undefined)
      return ask(facts, ['pouredLiquidCm3', 'holdCm3']);
    const values = { pouredLiquidCm3, holdCm3 };
    return pouredLiquidCm3 > holdCm3
      ? stop('runs out', { ...values, overCm3: pouredLiquidCm3 - holdCm3 })
      : fine('stays', values);
  },
  examples: {
    fine: { pouredLiquidCm3: 900, holdCm3: 5000 },
    stop: { pouredLiquidCm3: 900, holdCm3: 700 },
  },
};
