import { MOLD_TYPES, type MoldKey, type MoldParameter, type MoldType, type MoldWish } from '../../geometry';
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
  const settings = ask.settings ?? {};
  const foreign = Object.keys(settings).find(
    (key) => !MOLD_TYPES.some((type) => type.parameters.some((p) => p.key === key)),
  );
  if (foreign !== undefined)
    return planMold(bench, { ...ask, type: MOLD_TYPES[0]!.key }) as { ok: false; problem: Problem };
  const wishes = MOLD_TYPES.flatMap((type) => wishesFor(type, settings));
  const molds = new Map<Wish, Outcome<Mold>>();
  // The widest first: the field that it needs then stands for all.
  for (const wish of [...wishes].sort((a, b) => b.aroundMm - a.aroundMm)) {
    const mold = planMold(bench, { ...ask, type: wish.type.key, settings: wish.settings });
    if (!mold.ok && mold.problem.code === 'STOPPED') return mold;
    molds.set(wish, mold);
  }
  return good(
    wishes.map((wish) => ({
      type: wish.type.key,
      title: wish.type.title,
      thicknessMm: wish.thicknessMm,
      isUsual: wish.isUsual,
      mold: molds.get(wish)!,
    })),
  );
}

interface Wish {
  type: MoldType;
  settings: MoldWish;
  thicknessMm: number;
  isUsual: boolean;
  /** Skin and jacket. */
  aroundMm: number;
}

function wishesFor(type: MoldType, settings: MoldWish): Wish[] {
  const find = (key: string): MoldParameter | undefined => type.parameters.find((p) => p.key === key);
  const own = Object.fromEntries(Object.entries(settings).filter(([key]) => find(key) !== undefined));
  const parameter = THICKNESS_KEYS.map(find).find((p) => p !== undefined);
  if (parameter === undefined) throw new Error(`compareMolds: expected a thickness of ${type.key}`);
  const usual = Number(own[parameter.key] ?? parameter.default);
  return THICKNESSES.map((factor) => {
    const thicknessMm = Number((usual * factor).toPrecision(3));
    // Thicker walls come with a thicker cover.
    const isWall = parameter.key === 'wallMm' && own.coverMm === undefined;
    const cover = isWall ? { coverMm: thicknessMm, underMm: thicknessMm } : {};
    return {
      type,
      settings: { ...cover, ...own, [parameter.key]: thicknessMm },
      thicknessMm,
      isUsual: factor === 1,
      aroundMm: isWall ? 0 : thicknessMm + Number(own.jacketMm ?? find('jacketMm')?.default ?? 0),
    };
  });
}
