import { ask, fine, look, type Check } from './check';
import { CHECK_FIGURES } from './figures';

export type CeilingCase = 'none' | 'flat';

const degrees = CHECK_FIGURES.ceilingTilt.value;
const lookCm2 = CHECK_FIGURES.ceilingLook.value;

/** Foam that meets a level ceiling has nowhere to push the air. */
export const FLAT_CEILING: Check<CeilingCase> = {
  code: 'FLAT_CEILING',
  title: 'Do the ceilings of the cavity slope, as it is poured?',
  when: 'opening',
  facts: ['flatCeilingCm2'],
  source: `slope: ${CHECK_FIGURES.ceilingTilt.from}; area: ${CHECK_FIGURES.ceilingLook.from}`,
  rule(facts) {
    const { flatCeilingCm2 } = facts;
    if (flatCeilingCm2 === undefined) return ask(facts, ['flatCeilingCm2']);
    const values = { flatCeilingCm2, degrees, lookCm2 };
    return flatCeilingCm2 > lookCm2 ? look('flat', values) : fine('none', values);
  },
  examples: { fine: { flatCeilingCm2: 0.3 }, look: { flatCeilingCm2: 40 } },
};
