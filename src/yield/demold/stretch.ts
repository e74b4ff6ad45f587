import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkDemold } from './checkDemold';
import { DEMOLD_RULES as R } from './rules';

/** Girths, as a tape measures them: the casting where it is widest, and the rubber it has to come through. */
export interface PassedGirths {
  widestMm: number;
  tightestMm: number;
  /** Share of its girth by which the casting is squashed; 0 for a hard one, 0.2 when left out. */
  squash?: number;
}

/**
 * Stretch the rubber needs, as a share of its girth: (1 - squash) widest/tightest - 1 (geometry). Below 0 the casting comes out
 * without stretching it.
 */
export function stretchNeeded({
  widestMm,
  tightestMm,
  squash = R.foamSquash.value,
}: PassedGirths): Outcome<number> {
  const sound = checkDemold({ widestMm, tightestMm, squash });
  return sound.ok ? good(((1 - squash) * widestMm) / tightestMm - 1) : sound;
}

/** Stretch that the rubber is let: a third of its elongation at break (common practice, no source). Its range is that of unknown rubber. */
export function allowedStretch({
  elongationAtBreak,
}: { elongationAtBreak?: number } = {}): Outcome<Estimate> {
  const sound = checkDemold({}, { elongationAtBreak });
  if (!sound.ok) return sound;
  const share = R.allowedShare.value;
  if (elongationAtBreak === undefined) {
    const { value, low, high } = R.elongation;
    return good({ value: share * value, low: share * low, high: share * high, from: 'assumed' });
  }
  const value = share * elongationAtBreak;
  return good({ value, low: value, high: value, from: 'given' });
}

/**
 * Length of a slit, mm, from the tight place on, with which the allowed stretch is enough: each slit adds two edges to the girth, so
 * ((1 - squash) widest/(1 + allow) - tightest)/2, or 0 where none is needed (geometry).
 */
export function slitLengthMm({
  widestMm,
  tightestMm,
  allow,
  squash = R.foamSquash.value,
}: PassedGirths & { allow: number }): Outcome<number> {
  const sound = checkDemold({ widestMm, tightestMm, allow, squash });
  if (!sound.ok) return sound;
  return good(Math.max(0, (((1 - squash) * widestMm) / (1 + allow) - tightestMm) / 2));
}
