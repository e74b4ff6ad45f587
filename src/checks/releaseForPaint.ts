import { ask, COMMON_PRACTICE, fine, look, stop, type Check } from './check';

export type ReleaseCase = 'no paint' | 'silicone-free' | 'no release' | 'wash it off' | 'silicone';

export const RELEASE_FOR_PAINT: Check<ReleaseCase> = {
  code: 'RELEASE_FOR_PAINT',
  title: 'Will paint hold over what the release leaves behind?',
  when: 'mold',
  facts: ['willPaint', 'release'],
  source: COMMON_PRACTICE,
  rule(facts) {
    const { willPaint, release } = facts;
    if (willPaint === false) return fine('no paint');
    if (willPaint === undefined || release === undefined) return ask(facts, ['willPaint', 'release']);
    switch (release) {
      case 'silicone':
        return stop('silicone');
      case 'wax or polyurethane type':
        return look('wash it off');
      case 'silicone-free':
        return fine('silicone-free');
      case 'none':
        return fine('no release');
    }
  },
  examples: {
    fine: { willPaint: true, release: 'silicone-free' },
    look: { willPaint: true, release: 'wax or polyurethane type' },
    stop: { willPaint: true, release: 'silicone' },
  },
};
