import { CHECK_CODES, MOLD_CODES, type Problem } from '../../problem';
import type { Mold } from '../../plan';

const BEAR: readonly string[] = CHECK_CODES;
const CAVITY: readonly string[] = ['SHRINK_ASSUMED'];
const HOLD: readonly string[] = [
  ...MOLD_CODES,
  'SCULPT_FLOATS',
  'SCULPT_MASS_UNKNOWN',
  'WALL_BULGES',
  'BOX_LEAKS',
  'LIFT_HEAVY',
];

/** Which question tells a finding: every one of them in exactly one. */
export type Part = 'hold' | 'silicone' | 'bear' | 'cavity';

const partOf = ({ code }: Problem): Part =>
  BEAR.includes(code) ? 'bear' : CAVITY.includes(code) ? 'cavity' : HOLD.includes(code) ? 'hold' : 'silicone';

export const findingsOf = ({ findings }: Mold, part: Part): Problem[] =>
  findings.filter((one) => partOf(one) === part);
