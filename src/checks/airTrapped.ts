import { ask, fine, look, stop, type Check } from './check';
import { CHECK_FIGURES } from './figures';

export type TrapCase = 'none to speak of' | 'vents cure it' | 'some stays' | 'much stays';

const smallCm3 = CHECK_FIGURES.trapSmall.value;
const stopCm3 = CHECK_FIGURES.trapStop.value;

/** Level filling is the least that stays: foam rises as a dome and can close a pocket that a liquid would fill. */
export const AIR_TRAPPED: Check<TrapCase> = {
  code: 'AIR_TRAPPED',
  title: 'Does the air leave every high spot while the mold fills?',
  when: 'opening',
  facts: ['trappedCm3', 'trapLeftCm3'],
  source:
    `filling to a level (geometry), a lower bound for foam; small enough: ${CHECK_FIGURES.trapSmall.from}; ` +
    `stop: ${CHECK_FIGURES.trapStop.from}`,
  rule(facts) {
    const { trappedCm3, trapLeftCm3: leftCm3 } = facts;
    const limits = { smallCm3, stopCm3 };
    if (trappedCm3 === undefined) return ask(facts, ['trappedCm3', 'trapLeftCm3'], limits);
    if (trappedCm3 < smallCm3) return fine('none to speak of', { ...limits, trappedCm3 });
    if (leftCm3 === undefined) return ask(facts, ['trapLeftCm3'], { ...limits, trappedCm3 });
    const values = { ...limits, trappedCm3, leftCm3 };
    if (leftCm3 > stopCm3) return stop('much stays', values);
    return leftCm3 < smallCm3 ? look('vents cure it', values) : look('some stays', values);
  },
  examples: {
    fine: { trappedCm3: 0.1 },
    look: { trappedCm3: 6.7, trapLeftCm3: 0 },
    stop: { trappedCm3: 30, trapLeftCm3: 12 },
  },
};
