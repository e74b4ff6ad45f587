import { ask, COMMON_PRACTICE, fine, look, type Check } from './check';

export type FireCase = 'tested' | 'not tested';

/** What a place of use asks for is its own affair and that of local codes: the check only makes sure that someone has asked. */
export const FIRE_RATING: Check<FireCase> = {
  code: 'FIRE_RATING',
  title: 'May the casting be used where it will be, by the fire rules there?',
  when: 'pour',
  facts: ['castingFireRated'],
  source: COMMON_PRACTICE,
  rule(facts) {
    const { castingFireRated } = facts;
    if (castingFireRated === undefined) return ask(facts, ['castingFireRated']);
    return castingFireRated ? fine('tested') : look('not tested');
  },
  examples: { fine: { castingFireRated: true }, look: { castingFireRated: false } },
};
