import { WARMTH_RULES } from '../yield';
import { ask, fine, look, type Check } from './check';

export type OpeningCase = 'usual' | 'sooner' | 'later';

/** The card's time counts; the common band only tells whether it may have been mistyped. */
export const OPENING_TIME: Check<OpeningCase> = {
  code: 'OPENING_TIME',
  title: 'Is it known when the mold may be opened?',
  when: 'pour',
  facts: ['cardOpenMin'],
  source: `the time: data sheet or card; the common band: ${WARMTH_RULES.openWarm.from}`,
  rule(facts) {
    const { cardOpenMin } = facts;
    const { low, high } = WARMTH_RULES.openWarm;
    if (cardOpenMin === undefined) return ask(facts, ['cardOpenMin'], { low, high });
    const values = { cardOpenMin, low, high };
    if (cardOpenMin < low) return look('sooner', values);
    return cardOpenMin > high ? look('later', values) : fine('usual', values);
  },
  examples: { fine: { cardOpenMin: 30 }, look: { cardOpenMin: 5 } },
};
