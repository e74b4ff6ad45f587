import { bad, type Code, type Outcome, type Place } from '../../problem';

/** Thrown inside a reader, to leave a grammar from any depth, and caught by `refusing` at its door: it never leaves this folder. */
export class Refusal extends Error {
  readonly code: Code;
  readonly values: Record<string, string | number>;
  readonly at: Place | undefined;
  constructor(code: Code, values: Record<string, string | number> = {}, at?: Place) {
    super(code);
    this.code = code;
    this.values = values;
    this.at = at;
  }
}

/** What the work returns, or the problem of the refusal it threw. */
export function refusing<T>(work: () => Outcome<T>): Outcome<T> {
  try {
    return work();
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    return bad(e.code, e.values, e.at);
  }
}
