import { ask, COMMON_PRACTICE, contradicts, fine, look, stop, type Check } from './check';
import { NOT_YET, wholeMonths } from './dates';
import { CHECK_FIGURES } from './figures';

export type FoamAgeCase = 'unopened' | 'fresh' | 'aging' | 'old, cup rose' | 'old';

const lookMonths = CHECK_FIGURES.foamOpenedLook.value;
const stopMonths = CHECK_FIGURES.foamOpenedStop.value;

/** Opened drums draw moisture: part A loses isocyanate and clouds, part B foams more than it should. */
export const FOAM_AGE: Check<FoamAgeCase> = {
  code: 'FOAM_AGE',
  title: 'Are the opened parts of the foam still young enough?',
  when: 'pour',
  facts: ['foamOpenedOn', 'today', 'cupTestedToday'],
  source: COMMON_PRACTICE,
  rule(facts) {
    const { foamOpenedOn, today, cupTestedToday } = facts;
    if (foamOpenedOn === NOT_YET) return fine('unopened', { lookMonths });
    if (foamOpenedOn === undefined || today === undefined) return ask(facts, ['foamOpenedOn', 'today']);
    const months = wholeMonths(foamOpenedOn, today);
    if (months < 0) return contradicts('foamOpenedOn');
    const values = { months, lookMonths, stopMonths };
    if (months < lookMonths) return fine('fresh', values);
    if (months < stopMonths) return look('aging', values);
    if (cupTestedToday === undefined) return ask(facts, ['cupTestedToday'], values);
    return cupTestedToday ? look('old, cup rose', values) : stop('old', values);
  },
  examples: {
    fine: { foamOpenedOn: '2025-03-10', today: '2025-06-10' },
    look: { foamOpenedOn: '2024-10-10', today: '2025-06-10' },
    stop: { foamOpenedOn: '2024-03-10', today: '2025-06-10', cupTestedToday: false },
  },
};
