import { RULES } from '../yield';
import { coarsestStepG, ratioUncertaintyShare, smallestTotalG } from '../yield/scaleCheck';
import { ask, fine, look, stop, type Check } from './check';

export type ScaleCase = 'fine enough' | 'coarse' | 'too coarse';

const allowedShare = RULES.scaleRatioU2.value;
const stopShare = RULES.ratioStop.value;

export const SCALE_STEP: Check<ScaleCase> = {
  code: 'SCALE_STEP',
  title: 'Is the scale fine enough for the ratio of this batch?',
  when: 'pour',
  facts: ['partAG', 'partBG', 'scaleStepG'],
  source: `uncertainty of a ratio: JCGM 100 (GUM), 5.1.6; wanted: ${RULES.scaleRatioU2.from}; stop: ${RULES.ratioStop.from}`,
  rule({ partAG, partBG, scaleStepG }) {
    if (partAG === undefined || partBG === undefined || scaleStepG === undefined)
      return ask({ partAG, partBG, scaleStepG }, ['partAG', 'partBG', 'scaleStepG']);
    const twoUShare = 2 * ratioUncertaintyShare({ partAG, partBG, stepG: scaleStepG });
    const totalG = partAG + partBG;
    const values = { scaleStepG, totalG, twoUShare, allowedShare, stopShare };
    if (twoUShare <= allowedShare) return fine('fine enough', values);
    const ratio = { a: partAG, b: partBG, by: 'mass' as const };
    const wayOut = {
      neededStepG: coarsestStepG(ratio, totalG),
      smallestTotalG: smallestTotalG(ratio, scaleStepG),
    };
    return twoUShare > stopShare
      ? stop('too coarse', { ...values, ...wayOut })
      : look('coarse', { ...values, ...wayOut });
  },
  examples: {
    fine: { partAG: 200, partBG: 500, scaleStepG: 1 },
    look: { partAG: 20, partBG: 50, scaleStepG: 1 },
    stop: { partAG: 4, partBG: 10, scaleStepG: 1 },
  },
};
