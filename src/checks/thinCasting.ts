import { DEMOLD_RULES } from '../yield';
import { ask, fine, look, stop, type Check } from './check';

export type ThinCastingCase = 'thick enough' | 'weak' | 'tears';

const stopMm = DEMOLD_RULES.castingStop.value;
const lookMm = DEMOLD_RULES.castingLook.value;

export const THIN_CASTING: Check<ThinCastingCase> = {
  code: 'THIN_CASTING',
  title: 'Is the casting thick enough everywhere to be pulled out?',
  when: 'opening',
  facts: ['castingThinnestMm'],
  source: `stop: ${DEMOLD_RULES.castingStop.from}; look: ${DEMOLD_RULES.castingLook.from}`,
  rule(facts) {
    const { castingThinnestMm: thinnestMm } = facts;
    if (thinnestMm === undefined) return ask(facts, ['castingThinnestMm']);
    const values = { thinnestMm, stopMm, lookMm };
    if (thinnestMm < stopMm) return stop('tears', values);
    return thinnestMm < lookMm ? look('weak', values) : fine('thick enough', values);
  },
  examples: {
    fine: { castingThinnestMm: 14 },
    look: { castingThinnestMm: 8 },
    stop: { castingThinnestMm: 4 },
  },
};
