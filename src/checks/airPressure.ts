import { RULES } from '../yield';
import { ask, fine, look, type Check } from './check';

export type AirCase = 'in the cup test' | 'measured' | 'height only' | 'weather report';

const doubtShare = RULES.uStationPressure.value;

/** Thin air lets foam rise more. A cup of the same day in the same room has it in it: it is never corrected twice. */
export const AIR_PRESSURE: Check<AirCase> = {
  code: 'AIR_PRESSURE',
  title: 'Is the air pressure at the bench known?',
  when: 'pour',
  facts: ['cupTestedToday', 'airPressureFrom'],
  source: `air over height: US Standard Atmosphere 1976; weather: ${RULES.uStationPressure.from}`,
  rule(facts) {
    const { cupTestedToday, airPressureFrom } = facts;
    if (cupTestedToday === true) return fine('in the cup test');
    if (airPressureFrom === 'barometer') return fine('measured');
    if (cupTestedToday === undefined || airPressureFrom === undefined)
      return ask(facts, ['cupTestedToday', 'airPressureFrom'], { doubtShare });
    return look(airPressureFrom === 'weather report' ? 'weather report' : 'height only', { doubtShare });
  },
  examples: {
    fine: { airPressureFrom: 'barometer' },
    look: { cupTestedToday: false, airPressureFrom: 'height above the sea' },
  },
};
