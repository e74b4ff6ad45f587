import { ask, COMMON_PRACTICE, fine, look, stop, type Check } from './check';

export type GloveCase = 'right' | 'latex with addition cure' | 'latex' | 'bare hands';

export const GLOVES: Check<GloveCase> = {
  code: 'GLOVES',
  title: 'Do the gloves suit the silicone and the hands?',
  when: 'mold',
  facts: ['siliconeCure', 'gloves'],
  source: COMMON_PRACTICE,
  rule(facts) {
    const { siliconeCure, gloves } = facts;
    if (siliconeCure === undefined || gloves === undefined) return ask(facts, ['siliconeCure', 'gloves']);
    const values = { cure: siliconeCure, gloves };
    if (gloves === 'none') return look('bare hands', values);
    if (gloves !== 'latex') return fine('right', values);
    return siliconeCure === 'addition' ? stop('latex with addition cure', values) : look('latex', values);
  },
  examples: {
    fine: { siliconeCure: 'addition', gloves: 'nitrile' },
    look: { siliconeCure: 'condensation', gloves: 'none' },
    stop: { siliconeCure: 'addition', gloves: 'latex' },
  },
};
