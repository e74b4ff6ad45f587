import type { Assumption } from '../estimate';
import type { Problem } from '../problem';
import { say } from '../words/say';

/** The JSON that others script against. Keys come in this order; a key that is not computed is absent. */
export interface Envelope {
  schema: string;
  inputs: Record<string, unknown>;
  assumptions: AssumptionJson[];
  findings: FindingJson[];
  result: Record<string, unknown>;
  range: Record<string, readonly [number, number]>;
  because: string[];
}

/** `basis`: where an assumed figure comes from, if anything is known of that. */
interface AssumptionJson {
  name: string;
  value: number | string;
  unit: string;
  from: string;
  basis?: string;
}

export interface FindingJson {
  code: string;
  status: string;
  text: string;
  count?: number;
  effect_cm3?: number;
  at_mm?: [number, number, number];
}

export function findingJson(problem: Problem): FindingJson {
  const { text, hint } = say(problem);
  const { count, effectCm3 } = problem.values;
  const at = problem.at;
  return {
    code: problem.code,
    status: problem.status,
    text: `${text} ${hint}`,
    ...(typeof count === 'number' ? { count } : {}),
    ...(typeof effectCm3 === 'number' ? { effect_cm3: effectCm3 } : {}),
    ...(at?.xMm !== undefined && at.yMm !== undefined && at.zMm !== undefined
      ? { at_mm: [at.xMm, at.yMm, at.zMm] as [number, number, number] }
      : {}),
  };
}

export const assumptionJson = ({
  name,
  value,
  unit,
  from,
  basis,
}: Assumption & { basis?: string }): AssumptionJson => ({
  name,
  value,
  unit,
  from,
  ...(basis === undefined ? {} : { basis }),
});

export function errorJson(problem: Problem, file?: string): string {
  const { text, hint } = say(problem);
  return JSON.stringify({
    schema: 'risewright/error@1',
    ...(file === undefined ? {} : { inputs: { file } }),
    error: { code: problem.code, text, hint },
  });
}
