/**
 * A problem is plain data: what the user can fix is returned, never thrown. The sentence that says it lives in
 * `words/`, so that the app and the command line speak alike and a test can find a code without a sentence.
 */
import type { Code } from './codes';

export * from './codes';

/** `fine`: nothing to do. `look`: read it. `stop`: do not pour on this. `unknown`: a fact is missing ("Not checked"). */
export type Status = 'fine' | 'look' | 'stop' | 'unknown';

/** Where in the file or on the mesh: a line or byte of the file (counted from 1 and 0), or a point in mm. */
export interface Place {
  line?: number;
  byte?: number;
  xMm?: number;
  yMm?: number;
  zMm?: number;
}

/** `values` carry their unit in their name, as everything here does. */
export interface Problem {
  code: Code;
  status: Status;
  values: Readonly<Record<string, number | string>>;
  at?: Place;
}

/** Either the answer or the reason why there is none. */
export type Outcome<T> = { ok: true; value: T } | { ok: false; problem: Problem };

export const good = <T>(value: T): Outcome<T> => ({ ok: true, value });

export const bad = (
  code: Code,
  values: Problem['values'] = {},
  at?: Place,
): { ok: false; problem: Problem } => ({
  ok: false,
  problem: at === undefined ? { code, status: 'stop', values } : { code, status: 'stop', values, at },
});

export const finding = (code: Code, status: Status, values: Problem['values'] = {}, at?: Place): Problem =>
  at === undefined ? { code, status, values } : { code, status, values, at };
