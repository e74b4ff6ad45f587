import type { CheckCode, Problem } from '../problem';
import { isAbsent, type FactName, type CheckFacts } from './facts';

/** At which moment it is asked: while the mold is planned, while opening and vents are placed, before foam is poured. */
export type Moment = 'mold' | 'opening' | 'pour';

/**
 * A check is a table or a threshold, not physics. It answers from plain facts, or says which of them are missing. `because`
 * names the case it met and chooses the sentence in `words/`.
 */
export interface Check<Because extends string = string> {
  code: CheckCode;
  /** As a question that fine answers well. */
  title: string;
  /** `both`: of the mold and of the pour. */
  when: Moment | 'both';
  /** All that it may look at; the rule is shown no other fact. */
  facts: readonly FactName[];
  /** Shown on demand: a cited work, or "common practice, no source". */
  source: string;
  rule(facts: CheckFacts): Verdict<Because>;
  /** Facts that lead to each answer, none of them to spare: the tests run them, and drop each fact in turn. */
  examples: { fine: CheckFacts; look?: CheckFacts; stop?: CheckFacts };
}

export type Verdict<Because extends string = string> = Answer<Because> | Unanswered;

export interface Answer<Because extends string> {
  status: 'fine' | 'look' | 'stop';
  because: Because;
  values: Problem['values'];
}

/** `missing`: facts that nobody gave. `unusable`: facts that contradict the others. */
export interface Unanswered {
  status: 'unknown';
  missing: readonly FactName[];
  unusable: readonly FactName[];
  values: Problem['values'];
}

export const COMMON_PRACTICE = 'common practice, no source';

const answer =
  <S extends Answer<string>['status']>(status: S) =>
  <B extends string>(because: B, values: Problem['values'] = {}) => ({ status, because, values });

export const fine = answer('fine');
export const look = answer('look');
export const stop = answer('stop');

/** The answer hangs on these facts; those that were not given are named. */
export function ask(
  facts: CheckFacts,
  names: readonly FactName[],
  values: Problem['values'] = {},
): Unanswered {
  const missing = names.filter((name) => isAbsent(facts[name]));
  if (missing.length === 0)
    throw new Error(`ask: expected a missing fact among ${names.join(', ')}, got none`);
  return { status: 'unknown', missing, unusable: [], values };
}

/** The fact is well formed and cannot be true beside the others: a day after today. */
export const contradicts = (name: FactName): Unanswered => ({
  status: 'unknown',
  missing: [],
  unusable: [name],
  values: {},
});
