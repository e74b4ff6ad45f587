import type { Problem } from '../../problem';

/** A finding says the same as a check that knows it too: the check's row tells it. */
const CHECK_OF: Partial<Record<Problem['code'], Problem['code']>> = {
  PACK_UNUSUAL: 'PACK_RANGE',
  SHORT_FILL_LIKELY: 'SHORT_FILL_RISK',
  NO_CUP_TEST: 'CUP_TEST_TODAY',
  SCALE_COARSE: 'SCALE_STEP',
  RATIO_REVERSED: 'RATIO_ORDER',
  MOLD_TEMP_UNKNOWN: 'MOLD_TEMPERATURE',
  MOLD_TEMP_COLD: 'MOLD_TEMPERATURE',
  MOLD_TEMP_COOL: 'MOLD_TEMPERATURE',
  MOLD_TEMP_WARM: 'MOLD_TEMPERATURE',
  MOLD_TEMP_HOT: 'MOLD_TEMPERATURE',
  CORE_HOT: 'EXOTHERM',
  OPEN_TIME_UNKNOWN: 'OPENING_TIME',
};

export const isCovered = ({ code }: Problem, checks: readonly Problem[]): boolean =>
  checks.some((check) => check.code === CHECK_OF[code]);

/** What a question of the pour tells beside its own figures. */
export const FOUND_IN = {
  day: ['AIR_PRESSURE_UNLIKELY'],
  cups: ['CUPS_TOGETHER', 'CUPS_OVER_HANDS', 'CUPS_NOT_CHECKED'],
  warm: ['WARM_SURFACE_HOT', 'WARM_JACKET_ON', 'WARM_LUMPED_WRONG'],
} as const satisfies Readonly<Record<string, readonly Problem['code'][]>>;

const ELSEWHERE: readonly string[] = Object.values(FOUND_IN).flat();

export const isToldElsewhere = ({ code }: Problem): boolean => ELSEWHERE.includes(code);

export const foundIn = (findings: readonly Problem[], part: keyof typeof FOUND_IN): Problem[] => {
  const codes: readonly string[] = FOUND_IN[part];
  return findings.filter(({ code }) => codes.includes(code));
};
