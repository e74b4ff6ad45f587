import type { Outcome, Problem } from '../../src/problem';

/** The value of an outcome that must be good; the problem becomes the test's message. */
export function valueOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`expected a value, got ${JSON.stringify(outcome.problem)}`);
  return outcome.value;
}

/** The problem of an outcome that must be bad. */
export function problemOf<T>(outcome: Outcome<T>): Problem {
  if (outcome.ok) throw new Error(`expected a problem, got ${JSON.stringify(outcome.value)}`);
  return outcome.problem;
}
