import type { Code, Problem } from '../problem';
import { isWorse } from './statusWords';

/** Checks that say in their own words what a finding of the plan says already. */
const TWINS: Readonly<Partial<Record<Code, readonly Code[]>>> = {
  SHORT_FILL_RISK: ['SHORT_FILL_LIKELY'],
  PACK_RANGE: ['PACK_UNUSUAL'],
  CUP_TEST_TODAY: ['NO_CUP_TEST'],
  SCALE_STEP: ['SCALE_COARSE'],
  EXOTHERM: ['CORE_HOT'],
  OPENING_TIME: ['OPEN_TIME_UNKNOWN'],
  MOLD_TEMPERATURE: [
    'MOLD_TEMP_UNKNOWN',
    'MOLD_TEMP_COLD',
    'MOLD_TEMP_COOL',
    'MOLD_TEMP_WARM',
    'MOLD_TEMP_HOT',
  ],
};

/**
 * For a person: of a check and a finding that tell one thing the worse one stays, of two that are alike the finding. Scripts get all of
 * them.
 */
export const toldOnce = (findings: readonly Problem[]): Problem[] =>
  findings.filter((one) =>
    findings.every(
      (other) =>
        (TWINS[one.code]?.includes(other.code) !== true || isWorse(one.status, other.status)) &&
        (TWINS[other.code]?.includes(one.code) !== true || !isWorse(other.status, one.status)),
    ),
  );
