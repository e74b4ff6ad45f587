import { POUR_RULES } from '../yield';
import { ask, fine, look, stop, type Check } from './check';

export type CupCase = 'room' | 'little room' | 'no room';

const { low: third, high: half } = POUR_RULES.cupFill;
/** A cup chosen for just that share gives it back within the last digits of a double. */
const SAME = 1 + 1e-9;

/** Mix creams and climbs in the cup, and a drill throws it up the wall. */
export const CUP_ROOM: Check<CupCase> = {
  code: 'CUP_ROOM',
  title: 'Has the mixing cup room above the liquid?',
  when: 'pour',
  facts: ['liquidCm3', 'cupCm3'],
  source: POUR_RULES.cupFill.from,
  rule(facts) {
    const { liquidCm3, cupCm3 } = facts;
    if (liquidCm3 === undefined || cupCm3 === undefined) return ask(facts, ['liquidCm3', 'cupCm3']);
    const share = liquidCm3 / cupCm3;
    const values = { liquidCm3, cupCm3, share, thirdCupCm3: liquidCm3 / third, halfCupCm3: liquidCm3 / half };
    if (share > half * SAME) return stop('no room', values);
    return share > third * SAME ? look('little room', values) : fine('room', values);
  },
  examples: {
    fine: { liquidCm3: 600, cupCm3: 2000 },
    look: { liquidCm3: 800, cupCm3: 2000 },
    stop: { liquidCm3: 1200, cupCm3: 2000 },
  },
};
