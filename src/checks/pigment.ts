import { ask, fine, look, stop, type Check } from './check';
import { CHECK_FIGURES } from './figures';

export type PigmentCase =
  'none' | 'silicone' | 'oil' | 'water' | 'little' | 'of unknown make' | 'much' | 'too much';

const lookShare = CHECK_FIGURES.pigmentLook.value;
const stopShare = CHECK_FIGURES.pigmentStop.value;

/** Pigment in the foam itself. Its mass counts as filler: the ratio A:B stays as it is. */
export const PIGMENT: Check<PigmentCase> = {
  code: 'PIGMENT',
  title: 'Does the foam bear the pigment?',
  when: 'both',
  facts: ['pigmentKind', 'pigmentShare'],
  source:
    'limits: common practice, no source. The surfactant that holds the cells: Zhang, Macosko, Davis, Nikolov, Wasan, J. Colloid Interface Sci. 215 (1999) 270-279; that silicone oil displaces it: from memory, not verified. Gas from water: derived.',
  rule(facts) {
    const { pigmentKind, pigmentShare: share } = facts;
    if (pigmentKind === undefined) return ask(facts, ['pigmentKind', 'pigmentShare']);
    switch (pigmentKind) {
      case 'none':
        return fine('none');
      case 'silicone based':
        return stop('silicone');
      case 'oil color':
        return stop('oil');
      case 'water based':
        return stop('water', { gasLPerG: CHECK_FIGURES.waterGas.value });
      case 'paste in polyol or plasticizer':
      case 'other': {
        if (share === undefined) return ask(facts, ['pigmentShare']);
        const values = { share, lookShare, stopShare };
        if (share > stopShare) return stop('too much', values);
        if (share > lookShare) return look('much', values);
        return pigmentKind === 'other' ? look('of unknown make', values) : fine('little', values);
      }
    }
  },
  examples: {
    fine: { pigmentKind: 'paste in polyol or plasticizer', pigmentShare: 0.01 },
    look: { pigmentKind: 'paste in polyol or plasticizer', pigmentShare: 0.03 },
    stop: { pigmentKind: 'silicone based' },
  },
};
