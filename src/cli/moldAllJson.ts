import { MOLD_TYPES } from '../geometry';
import type { Compared } from '../plan';
import { moldBecause } from '../words/moldBecause';
import { say } from '../words/say';
import type { Problem } from '../problem';
import { assumptionJson, findingJson } from './envelope';
import { assumedFor, cautionsOf } from './moldCall';
import { moldJson, moldRange } from './moldJson';
import type { MoldCall } from './moldOptions';

/**
 * `molds[]`: one entry a type, planned at the thickness that was asked for or is usual, with range, assumptions, findings and reasons of its own;
 * `thicknesses[]` has the three side by side. A type that does not fit stands there with its `error`.
 */
export const comparedJson = (compared: readonly Compared[], call: MoldCall): Record<string, unknown>[] =>
  MOLD_TYPES.map(({ key, title, goodFor }) => {
    const rows = compared.filter(({ type }) => type === key);
    const usual = rows.find(({ isUsual }) => isUsual)!;
    return {
      type: key,
      title,
      good_for: goodFor,
      ...(usual.mold.ok ? wholeOf(usual.mold.value, call) : { error: errorOf(usual.mold.problem) }),
      thicknesses: rows.map(rowJson),
    };
  });

function wholeOf(mold: Parameters<typeof moldJson>[0], call: MoldCall): Record<string, unknown> {
  return {
    ...moldJson(mold, cautionsOf(mold, call), call.ask.finish !== undefined),
    range: moldRange(mold),
    assumptions: assumedFor(mold, call).map(assumptionJson),
    findings: mold.findings.map(findingJson),
    because: moldBecause(mold),
  };
}

function rowJson({ thicknessMm, isUsual, mold }: Compared): Record<string, unknown> {
  const row = { thickness_mm: thicknessMm, is_usual: isUsual };
  if (!mold.ok) return { ...row, error: errorOf(mold.problem) };
  const { siliconeCm3, silicone, shape, surroundings } = mold.value;
  const { purchase } = silicone;
  return {
    ...row,
    silicone_cm3: siliconeCm3.value,
    silicone_g: silicone.totalG,
    ...(purchase === undefined
      ? {}
      : {
          kits: purchase.kits.map(({ massKg, count }) => ({ kg: massKg, count })),
          ...(purchase.price === undefined ? {} : { price: purchase.price }),
        }),
    ...(shape.jacket === undefined ? {} : { jacket_cm3: shape.jacket.volumeMm3 / 1000 }),
    mold_g: surroundings.moldG,
  };
}

function errorOf(problem: Problem): { code: string; text: string; hint: string } {
  const { text, hint } = say(problem);
  return { code: problem.code, text, hint };
}
