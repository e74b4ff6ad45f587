/** Checks of materials: will these things bear each other? A new check is one file and one line of the list. */
import { finding, type Problem } from '../problem';
import type { Check, Unanswered } from './check';
import { CURE_INHIBITION } from './cureInhibition';
import { isAbsent, isUsable, type FactName, type MaterialFacts } from './facts';
import { GLOVES } from './gloves';
import { MOLD_LIFE } from './moldLife';
import { PAINT_FLEX } from './paintFlex';
import { PIGMENT } from './pigment';
import { RELEASE_FOR_PAINT } from './releaseForPaint';
import { SHELF_LIFE } from './shelfLife';
import { THICK_CONDENSATION } from './thickCondensation';

export { CHOICES, NOT_YET } from './facts';
export type { FactName, MaterialFacts } from './facts';
export type { Check } from './check';
export { CHECK_FIGURES } from './figures';

/** In the order of the job: silicone, mold, foam, finish. */
export const CHECKS: readonly Check[] = [
  CURE_INHIBITION,
  GLOVES,
  THICK_CONDENSATION,
  SHELF_LIFE,
  MOLD_LIFE,
  PIGMENT,
  RELEASE_FOR_PAINT,
  PAINT_FLEX,
];

/** One finding a check, in the order of the list, fine ones and unanswered ones too: never silence. */
export const runChecks = (facts: MaterialFacts): Problem[] => CHECKS.map((check) => runCheck(check, facts));

/**
 * `values.because` is the case it met, `values.source` where that comes from. An unanswered one has the status `unknown`
 * and names its facts in `values.missing` (nobody gave them) and `values.unusable` (no such word, day or number).
 */
export function runCheck(check: Check, facts: MaterialFacts): Problem {
  const given = check.facts.filter((name) => !isAbsent(facts[name]));
  const usable = given.filter((name) => isUsable(name, facts[name]));
  const verdict = check.rule(Object.fromEntries(usable.map((name) => [name, facts[name]])));
  if (verdict.status === 'unknown') return unanswered(check, verdict, facts);
  const { status, because, values } = verdict;
  return finding(check.code, status, { source: check.source, ...values, because });
}

/** A fact that was given and could not be used is not missing: it has to be put right. */
function unanswered(check: Check, verdict: Unanswered, facts: MaterialFacts): Problem {
  const unusable = [...verdict.unusable, ...verdict.missing.filter((name) => !isAbsent(facts[name]))];
  const missing = verdict.missing.filter((name) => isAbsent(facts[name]));
  return finding(check.code, 'unknown', {
    source: check.source,
    ...verdict.values,
    because: 'not checked',
    missing: listed(missing),
    unusable: listed(unusable),
    ...(unusable[0] === undefined ? {} : { said: String(facts[unusable[0]]) }),
  });
}

const listed = (names: readonly FactName[]): string => names.join(', ');
