import { bad, good, type Outcome } from '../../problem';
import { adhesiveG, amountByCoverage, MOLDMAKING_RULES, poreFillGPerM2, realAreaM2 } from '../../yield';
import type { Estimate } from '../../estimate';
import type { FinishWish } from './moldWish';

/** Paint, sealer and glue for the casting, by the user's own figures; only what was asked for. */
export interface Finishing {
  /** Of the scan, and with its texture. */
  surfaceCm2: number;
  coatedCm2: number;
  textureFactor: number;
  paint?: { amount: number; coats: number };
  seal?: { amount: number; coats: number };
  bondG?: Estimate;
  /** Sealer that open cells swallow where the skin is missing. */
  poreFillG?: number;
}

/** Errors: INPUT_OUT_OF_BOUNDS, INPUT_NOT_A_NUMBER. Amounts are in the unit that the coverage was given for, L or kg. */
export function finishingOf(surfaceCm2: number, wish: FinishWish): Outcome<Finishing> {
  const textureFactor = wish.textureFactor ?? MOLDMAKING_RULES.texture.value;
  const surface = { surfaceCm2, textureFactor };
  const area = realAreaM2(surface);
  if (!area.ok) return area;
  const { openShare } = wish;
  if (openShare !== undefined && !(openShare >= 0 && openShare <= 1))
    return bad('INPUT_OUT_OF_BOUNDS', { input: 'openShare', value: openShare, low: 0, high: 1, unit: '' });
  const paint = wish.paint === undefined ? undefined : amountByCoverage({ ...surface, ...wish.paint });
  if (paint !== undefined && !paint.ok) return paint;
  const seal = wish.seal === undefined ? undefined : amountByCoverage({ ...surface, ...wish.seal });
  if (seal !== undefined && !seal.ok) return seal;
  const bond = wish.bond === undefined ? undefined : bondOf(wish.bond);
  if (bond !== undefined && !bond.ok) return bond;
  const pores = openShare === undefined ? undefined : poreFillGPerM2();
  if (pores !== undefined && !pores.ok) return pores;
  return good({
    surfaceCm2,
    coatedCm2: surfaceCm2 * textureFactor,
    textureFactor,
    ...(paint === undefined ? {} : { paint: { amount: paint.value, coats: wish.paint!.coats } }),
    ...(seal === undefined ? {} : { seal: { amount: seal.value, coats: wish.seal!.coats } }),
    ...(bond === undefined ? {} : { bondG: bond.value }),
    ...(pores === undefined
      ? {}
      : { poreFillG: (pores.value * openShare! * surfaceCm2 * textureFactor) / 1e4 }),
  });
}

const bondOf = ({ faceCm2, gPerM2 }: NonNullable<FinishWish['bond']>): Outcome<Estimate> =>
  adhesiveG({ surfaceCm2: faceCm2, ...(gPerM2 === undefined ? {} : { adhesiveGPerM2: gPerM2 }) });
