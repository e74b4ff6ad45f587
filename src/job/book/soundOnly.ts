import type { Outcome, Problem } from '../../problem';
import type { Evidence } from './evidence';

/** What a pour was left out of, and why. */
export interface LeftOut {
  no: number;
  of: 'residue' | 'free rise' | 'fill' | 'opening';
  problem: Problem;
}

/** Evidence that the reckoning takes row by row; the rest is told, so that one slip of the pen does not stop all learning. */
export function soundOnly<T>(
  rows: readonly Evidence<T>[],
  of: LeftOut['of'],
  takes: (row: T) => Outcome<unknown>,
): { used: T[]; leftOut: LeftOut[] } {
  const used: T[] = [];
  const leftOut: LeftOut[] = [];
  for (const { no, is } of rows) {
    const taken = takes(is);
    if (taken.ok) used.push(is);
    else leftOut.push({ no, of, problem: taken.problem });
  }
  return { used, leftOut };
}
