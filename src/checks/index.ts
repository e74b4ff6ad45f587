/** Checks of materials, of the opening and of the pour: will these things bear each other? A new check is one file and one line of the list. */
import { finding, type Problem } from '../problem';
import type { Check, Moment, Unanswered } from './check';
import { isAbsent, isUsable, type FactName, type CheckFacts } from './facts';
import { AIR_PRESSURE } from './airPressure';
import { AIR_TRAPPED } from './airTrapped';
import { CUP_ROOM } from './cupRoom';
import { CUP_TEST_TODAY } from './cupTestToday';
import { CURE_INHIBITION } from './cureInhibition';
import { DEMOLD_STRETCH } from './demoldStretch';
import { EXOTHERM } from './exotherm';
import { FIRE_RATING } from './fireRating';
import { FLAT_CEILING } from './flatCeiling';
import { FOAM_AGE } from './foamAge';
import { GLOVES } from './gloves';
import { JACKET_PANELS } from './jacketPanels';
import { LIQUID_STAYS } from './liquidStays';
import { MIXING_METHOD } from './mixingMethod';
import { MOLD_DAMP } from './moldDamp';
import { MOLD_LIFE } from './moldLife';
import { MOLD_SEALED } from './moldSealed';
import { MOLD_TEMPERATURE } from './moldTemperature';
import { OPENING_SIZE } from './openingSize';
import { OPENING_TIME } from './openingTime';
import { PACK_RANGE } from './packRange';
import { PAINT_FLEX } from './paintFlex';
import { PIGMENT } from './pigment';
import { PLUG_FORCE } from './plugForce';
import { POUR_WINDOW } from './pourWindow';
import { RATIO_ORDER } from './ratioOrder';
import { RELEASE_FOR_PAINT } from './releaseForPaint';
import { SCALE_STEP } from './scaleStep';
import { SHELF_LIFE } from './shelfLife';
import { SHORT_FILL_RISK } from './shortFillRisk';
import { SLENDER } from './slender';
import { STRAP_LOAD } from './strapLoad';
import { THICK_CONDENSATION } from './thickCondensation';
import { THIN_CASTING } from './thinCasting';
import { THIN_RUBBER } from './thinRubber';

export { NOT_YET } from './dates';
export { CHOICES } from './facts';
export type { CheckFacts, FactName, MaterialFacts, OpeningFactName, PourFactName } from './facts';
export type { Check } from './check';
export { CHECK_FIGURES } from './figures';
export { pourCautionKeys } from './pourCautionKeys';
export type { PourCautionWhere } from './pourCautionKeys';

/** In the order of the job: silicone, mold, its opening and demolding, foam in the cup, foam in the mold, finish. */
export const CHECKS: readonly Check[] = [
  CURE_INHIBITION,
  GLOVES,
  THICK_CONDENSATION,
  SHELF_LIFE,
  MOLD_LIFE,
  OPENING_SIZE,
  LIQUID_STAYS,
  AIR_TRAPPED,
  FLAT_CEILING,
  THIN_CASTING,
  SLENDER,
  THIN_RUBBER,
  DEMOLD_STRETCH,
  CUP_TEST_TODAY,
  FOAM_AGE,
  AIR_PRESSURE,
  PIGMENT,
  RATIO_ORDER,
  SCALE_STEP,
  PACK_RANGE,
  SHORT_FILL_RISK,
  CUP_ROOM,
  MIXING_METHOD,
  POUR_WINDOW,
  MOLD_TEMPERATURE,
  MOLD_DAMP,
  MOLD_SEALED,
  JACKET_PANELS,
  STRAP_LOAD,
  PLUG_FORCE,
  EXOTHERM,
  OPENING_TIME,
  FIRE_RATING,
  RELEASE_FOR_PAINT,
  PAINT_FLEX,
];

/** One finding a check of that moment, in the order of the list, fine ones and unanswered ones too: never silence. */
export const runChecks = (facts: CheckFacts, moment: Moment): Problem[] =>
  CHECKS.filter(({ when }) => when === moment || (when === 'both' && moment !== 'opening')).map((check) =>
    runCheck(check, facts),
  );

/**
 * `values.because` is the case it met, `values.source` where that comes from. An unanswered one has the status `unknown`
 * and names its facts in `values.missing` (nobody gave them) and `values.unusable` (no such word, day or number).
 */
export function runCheck(check: Check, facts: CheckFacts): Problem {
  const given = check.facts.filter((name) => !isAbsent(facts[name]));
  const usable = given.filter((name) => isUsable(name, facts[name]));
  const verdict = check.rule(Object.fromEntries(usable.map((name) => [name, facts[name]])));
  if (verdict.status === 'unknown') return unanswered(check, verdict, facts);
  const { status, because, values } = verdict;
  return finding(check.code, status, { source: check.source, ...values, because });
}

/** A fact that was given and could not be used is not missing: it has to be put right. */
function unanswered(check: Check, verdict: Unanswered, facts: CheckFacts): Problem {
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
