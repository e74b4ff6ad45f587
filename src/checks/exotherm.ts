import { POUR_RULES } from '../yield';
import { ask, fine, look, stop, type Check } from './check';

export type ExothermCase = 'cool enough' | 'may scorch' | 'too hot';

const lookC = POUR_RULES.coreLook.value;
const stopC = POUR_RULES.coreStop.value;

export const EXOTHERM: Check<ExothermCase> = {
  code: 'EXOTHERM',
  title: 'Does the core of the foam stay cool enough?',
  when: 'pour',
  facts: ['coreTempC'],
  source: `look: ${POUR_RULES.coreLook.from}; stop: ${POUR_RULES.coreStop.from}`,
  rule(facts) {
    const { coreTempC } = facts;
    const values = { lookC, stopC };
    if (coreTempC === undefined) return ask(facts, ['coreTempC'], values);
    if (coreTempC > stopC) return stop('too hot', { ...values, coreTempC });
    return coreTempC > lookC
      ? look('may scorch', { ...values, coreTempC })
      : fine('cool enough', { ...values, coreTempC });
  },
  examples: { fine: { coreTempC: 110 }, look: { coreTempC: 150 }, stop: { coreTempC: 170 } },
};
