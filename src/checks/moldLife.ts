import { ask, COMMON_PRACTICE, contradicts, fine, look, type Check } from './check';
import { NOT_YET, wholeMonths } from './dates';
import { CHECK_FIGURES } from './figures';

export type MoldAgeCase = 'addition' | 'not made' | 'young' | 'aging' | 'past the usual';

const { low: fromYears, high: toYears } = CHECK_FIGURES.condensationMoldLife;

/** Rubber of condensation cure hardens and tears with age; that of addition cure keeps longer, no figure is known. */
export const MOLD_LIFE: Check<MoldAgeCase> = {
  code: 'MOLD_LIFE',
  title: 'Is the mold young enough to come off without a tear?',
  when: 'mold',
  facts: ['siliconeCure', 'moldMadeOn', 'today'],
  source: COMMON_PRACTICE,
  rule(facts) {
    const { siliconeCure, moldMadeOn, today } = facts;
    if (moldMadeOn === NOT_YET) return fine('not made', { fromYears, toYears });
    if (siliconeCure === 'addition') return fine('addition');
    if (siliconeCure === undefined || moldMadeOn === undefined || today === undefined)
      return ask(facts, ['siliconeCure', 'moldMadeOn', 'today']);
    const months = wholeMonths(moldMadeOn, today);
    if (months < 0) return contradicts('moldMadeOn');
    const values = { years: months / 12, fromYears, toYears };
    if (months < 12 * fromYears) return fine('young', values);
    return look(months < 12 * toYears ? 'aging' : 'past the usual', values);
  },
  examples: {
    fine: { siliconeCure: 'condensation', moldMadeOn: '2025-01-10', today: '2025-06-10' },
    look: { siliconeCure: 'condensation', moldMadeOn: '2022-01-10', today: '2025-06-10' },
  },
};
