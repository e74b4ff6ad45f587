import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkBounds } from './checkBounds';
import { MOLDMAKING_RULES as R } from './rules';

/** A surface to coat: area of the scan, and how much larger the real, textured one is. */
export interface CoatedSurface {
  surfaceCm2: number;
  textureFactor?: number;
}

/** Paint by its label: volume solids, dry film of a coat, and what is lost on brush, tray or in the air. */
export interface PaintByFilm extends CoatedSurface {
  coats: number;
  dryFilmUm: number;
  solidsShare: number;
  lossShare: number;
}

/** What 1 L of paint covers without loss, m2: 10 x volume solids in % over the dry film in um (a balance of volumes). */
export function spreadingRateM2PerL({
  solidsShare,
  dryFilmUm,
}: {
  solidsShare: number;
  dryFilmUm: number;
}): Outcome<number> {
  const checked = checkBounds({ solidsShare, dryFilmUm });
  return checked.ok ? good((1000 * solidsShare) / dryFilmUm) : checked;
}

/** Paint for all coats, L: area x coats / spreading rate / (1 - loss). */
export function paintLiters({
  coats,
  dryFilmUm,
  solidsShare,
  lossShare,
  ...surface
}: PaintByFilm): Outcome<number> {
  const areaM2 = realAreaM2(surface);
  if (!areaM2.ok) return areaM2;
  const checked = checkBounds({ coats, lossShare });
  if (!checked.ok) return checked;
  const rate = spreadingRateM2PerL({ solidsShare, dryFilmUm });
  return rate.ok ? good((areaM2.value * coats) / rate.value / (1 - lossShare)) : rate;
}

/**
 * Paint, sealer or anything else by the user's own figure: what 1 L or 1 kg covers in one coat, m2. Comes back in that
 * unit, L or kg. No loss on top: a figure of one's own holds one's own losses; give one only for a figure from a label.
 */
export function amountByCoverage({
  coverageM2,
  coats,
  lossShare = 0,
  ...surface
}: CoatedSurface & { coverageM2: number; coats: number; lossShare?: number }): Outcome<number> {
  const areaM2 = realAreaM2(surface);
  if (!areaM2.ok) return areaM2;
  const checked = checkBounds({ coverageM2, coats, lossShare });
  return checked.ok ? good((areaM2.value * coats) / coverageM2 / (1 - lossShare)) : checked;
}

/** Adhesive to bond halves, g: each face is coated, so a seam has two. */
export function adhesiveG({
  surfaceCm2,
  faces = 2,
  adhesiveGPerM2,
}: {
  surfaceCm2: number;
  faces?: number;
  adhesiveGPerM2?: number;
}): Outcome<Estimate> {
  const checked = checkBounds({ surfaceCm2, faces }, { adhesiveGPerM2 });
  if (!checked.ok) return checked;
  const grams = (gPerM2: number): number => (surfaceCm2 / CM2_PER_M2) * faces * gPerM2;
  if (adhesiveGPerM2 !== undefined) {
    const value = grams(adhesiveGPerM2);
    return good({ value, low: value, high: value, from: 'given' });
  }
  const { value, low, high } = R.adhesive;
  return good({ value: grams(value), low: grams(low), high: grams(high), from: 'assumed' });
}

/**
 * What open cells swallow where the skin is missing, g/m2: pore share x depth x density of the sealer. Depth is about the
 * radius of a cell; a thin sealer goes deeper. Derived, not measured.
 */
export function poreFillGPerM2({
  poreShare = R.poreShare.value,
  poreDepthMm = R.poreDepth.value,
  sealerKgM3 = R.sealerDensity.value,
}: {
  poreShare?: number;
  poreDepthMm?: number;
  sealerKgM3?: number;
} = {}): Outcome<number> {
  const checked = checkBounds({ poreShare, poreDepthMm, sealerKgM3 });
  // mm x kg/m3 is g/m2.
  return checked.ok ? good(poreShare * poreDepthMm * sealerKgM3) : checked;
}

const CM2_PER_M2 = 1e4;

/** The surface that paint meets, m2. A scan smooths: it shows less of it. Errors: INPUT_OUT_OF_BOUNDS. */
export function realAreaM2({ surfaceCm2, textureFactor = R.texture.value }: CoatedSurface): Outcome<number> {
  const checked = checkBounds({ surfaceCm2, textureFactor });
  return checked.ok ? good((surfaceCm2 * textureFactor) / CM2_PER_M2) : checked;
}
