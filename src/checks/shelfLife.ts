import { ask, COMMON_PRACTICE, contradicts, fine, look, stop, type Check } from './check';
import { NOT_YET, wholeMonths } from './dates';
import { CHECK_FIGURES } from './figures';

export type ShelfCase = 'unopened' | 'fresh' | 'aging' | 'old, patch cured' | 'old';

const lookMonths = CHECK_FIGURES.openedLook.value;
const stopMonths = CHECK_FIGURES.openedStop.value;

export const SHELF_LIFE: Check<ShelfCase> = {
  code: 'SHELF_LIFE',
  title: 'Is the opened silicone still young enough?',
  when: 'mold',
  facts: ['siliconeOpenedOn', 'today', 'patchTested'],
  source: COMMON_PRACTICE,
  rule(facts) {
    const { siliconeOpenedOn, today, patchTested } = facts;
    if (siliconeOpenedOn === NOT_YET) return fine('unopened', { lookMonths });
    if (siliconeOpenedOn === undefined || today === undefined)
      return ask(facts, ['siliconeOpenedOn', 'today']);
    const months = wholeMonths(siliconeOpenedOn, today);
    if (months < 0) return contradicts('siliconeOpenedOn');
    const values = { months, lookMonths, stopMonths };
    if (months < lookMonths) return fine('fresh', values);
    if (months < stopMonths) return look('aging', values);
    if (patchTested === undefined) return ask(facts, ['patchTested'], values);
    return patchTested ? look('old, patch cured', values) : stop('old', values);
  },
  examples: {
    fine: { siliconeOpenedOn: '2025-03-10', today: '2025-06-10' },
    look: { siliconeOpenedOn: '2024-10-10', today: '2025-06-10' },
    stop: { siliconeOpenedOn: '2024-03-10', today: '2025-06-10', patchTested: false },
  },
};
