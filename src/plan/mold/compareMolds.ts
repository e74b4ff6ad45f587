import { MOLD_TYPES, type MoldKey } from '../../geometry';
import { good, type Outcome, type Problem } from '../../problem';
import type { MoldBench } from './moldBench';
import type { MoldAsk } from './moldWish';
import { planMold, type Mold } from './planMold';

/** One type at one thickness, or why there is none. */
export interface Compared {
  type: MoldKey;
  title: string;
  /** Wall or skin. */
  thicknessMm: number;
  isUsual: boolean;
  mold: Outcome<Mold>;
}

/** Thinner and thicker than usual by this factor. Chosen here: it spans the ranges of common practice. */
const THICKNESSES = [0.75, 1, 1.5] as const;

/** Which parameter is the thickness of a type: the first of these it has. */
const THICKNESS_KEYS = ['skinMm', 'wallMm'] as const;

/**
 * The types side by side, each at three thicknesses around what was asked or is usual. A type that does not fit this sculpt stands there with its
 * reason. Parameters go to the types that have them. Errors: STOPPED, and a parameter that no type has.
 */
export function compareMolds(bench: MoldBench, ask: Omit<MoldAsk, 'type'>): Outcome<Compared[]> {
  const rows: Compared[] = [];
  const settings = ask.settings ?? {};
  const foreign = Object.keys(settings).find(
    (key) => !MOLD_TYPES.some((type) => type.parameters.some((p) => p.key === key)),
  );
  if (foreign !== undefined)
    return planMold(bench, { ...ask, type: MOLD_TYPES[0]!.key }) as { ok: false; problem: Problem };
  for (const type of MOLD_TYPES) {
    const own = Object.fromEntries(
      Object.entries(settings).filter(([key]) => type.parameters.some((p) => p.key === key)),
    );
    const parameter = THICKNESS_KEYS.map((key) => type.parameters.find((p) => p.key === key)).find(
      (p) => p !== undefined,
    );
    if (parameter === undefined) throw new Error(`compareMolds: expected a thickness of ${type.key}`);
    const usual = Number(own[parameter.key] ?? parameter.default);
    for (const factor of THICKNESSES) {
      const thicknessMm = Number((usual * factor).toPrecision(3));
      // Thicker walls come with a thicker cover.
      const cover =
        parameter.key === 'wallMm' && own.coverMm === undefined
          ? { coverMm: thicknessMm, underMm: thicknessMm }
          : {};
      const mold = planMold(bench, {
        ...ask,
        type: type.key,
        settings: { ...cover, ...own, [parameter.key]: thicknessMm },
      });
      if (!mold.ok && mold.problem.code === 'STOPPED') return mold;
      rows.push({ type: type.key, title: type.title, thicknessMm, isUsual: factor === 1, mold });
    }
  }
  return good(rows);
}
