import { DEMOLD_RULES } from '../yield';
import { ask, fine, look, stop, type Check } from './check';

export type DemoldCase = 'no stretch' | 'stretches' | 'slit' | 'beyond its break';

const allowedShareOfBreak = DEMOLD_RULES.allowedShare.value;
/** Rubber chosen for just that stretch gives it back within the last digits of a double. */
const SAME = 1 + 1e-9;

export const DEMOLD_STRETCH: Check<DemoldCase> = {
  code: 'DEMOLD_STRETCH',
  title: 'Does the rubber stretch enough to let the casting out?',
  when: 'opening',
  facts: ['demoldStretch', 'elongationAtBreak', 'slitMm'],
  source:
    `girths (geometry); squash of the foam: ${DEMOLD_RULES.foamSquash.from}; allowed: ${DEMOLD_RULES.allowedShare.from}; ` +
    `stretch at break: the data sheet, else ${DEMOLD_RULES.elongation.from}`,
  rule(facts) {
    const { demoldStretch: stretch, elongationAtBreak: breakShare, slitMm } = facts;
    if (stretch === undefined) return ask(facts, DEMOLD_STRETCH.facts);
    if (stretch <= 0) return fine('no stretch', { stretch });
    if (breakShare === undefined) return ask(facts, ['elongationAtBreak', 'slitMm'], { stretch });
    const values = { stretch, breakShare, allowedShare: allowedShareOfBreak * breakShare };
    if (stretch <= values.allowedShare * SAME) return fine('stretches', values);
    const withSlit = slitMm === undefined ? values : { ...values, slitMm };
    return stretch > breakShare ? stop('beyond its break', withSlit) : look('slit', withSlit);
  },
  examples: {
    fine: { demoldStretch: 0.526, elongationAtBreak: 3 },
    look: { demoldStretch: 1.133, elongationAtBreak: 3 },
    stop: { demoldStretch: 1.667, elongationAtBreak: 1.4 },
  },
};
