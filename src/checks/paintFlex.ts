import { ask, COMMON_PRACTICE, fine, look, type Check } from './check';

export type PaintCase = 'no paint' | 'flexible' | 'stiff';

export const PAINT_FLEX: Check<PaintCase> = {
  code: 'PAINT_FLEX',
  title: 'Does the paint bend with the foam?',
  when: 'mold',
  facts: ['willPaint', 'paintIsFlexible'],
  source: COMMON_PRACTICE,
  rule(facts) {
    const { willPaint, paintIsFlexible } = facts;
    if (willPaint === false) return fine('no paint');
    if (willPaint === undefined || paintIsFlexible === undefined)
      return ask(facts, ['willPaint', 'paintIsFlexible']);
    return paintIsFlexible ? fine('flexible') : look('stiff');
  },
  examples: {
    fine: { willPaint: true, paintIsFlexible: true },
    look: { willPaint: true, paintIsFlexible: false },
  },
};
