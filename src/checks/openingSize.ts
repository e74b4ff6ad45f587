import type { Problem } from '../problem';
import { isFarTooWide, isTooNarrow, openingVerdict, POUR_RULES, RULES, type OpeningVerdict } from '../yield';
import { ask, fine, look, stop, type Check } from './check';
import type { CheckFacts } from './facts';

/** What cannot be checked is asked for, so it is no case. */
export type OpeningSizeCase = Exclude<OpeningVerdict, 'time not checked'>;

const warnShare = RULES.openingShare.high;

/** Wide enough to pour in time, narrow enough to hold the foam back. */
export const OPENING_SIZE: Check<OpeningSizeCase> = {
  code: 'OPENING_SIZE',
  title: 'Is the pour opening wide enough to pour in time, and not too wide for the skin?',
  when: 'opening',
  facts: ['openingMm', 'openingLeastMm', 'openingMostMm', 'openingShare'],
  source:
    `time: losses of a tube in series, textbook; shares of section and surface, and that too wide an opening gives a worse ` +
    `skin: ${RULES.openingShare.from}; pressure kept in the mold: ${POUR_RULES.mouthWasted.from}`,
  rule(facts) {
    const { openingMm, openingLeastMm: leastMm, openingMostMm: mostMm, openingShare: share } = facts;
    const values = known(facts);
    if (openingMm === undefined) return ask(facts, OPENING_SIZE.facts, values);
    if (share !== undefined && isFarTooWide(share)) return stop('far too wide', values);
    if (isTooNarrow({ openingMm, leastMm })) return stop('too narrow to pour in time', values);
    if (leastMm === undefined || mostMm === undefined || share === undefined)
      return ask(facts, OPENING_SIZE.facts, values);
    const verdict = openingVerdict({ openingMm, share, mostMm, leastMm });
    return verdict === 'wider than advised' ? look(verdict, values) : fine('fits', values);
  },
  examples: {
    fine: { openingMm: 25, openingLeastMm: 20.3, openingMostMm: 39.4, openingShare: 0.0202 },
    look: { openingMm: 45, openingLeastMm: 20.3, openingMostMm: 39.4, openingShare: 0.0653 },
    stop: { openingMm: 70, openingShare: 0.158 },
  },
};

function known(facts: CheckFacts): Problem['values'] {
  const { openingMm, openingLeastMm: leastMm, openingMostMm: mostMm, openingShare: share } = facts;
  const given = Object.entries({ openingMm, leastMm, mostMm, share }).filter(
    (one): one is [string, number] => one[1] !== undefined,
  );
  return { ...Object.fromEntries(given), warnShare };
}
