import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkPack } from '../packFactor';
import { RULES } from '../rules';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

/** Foam that presses into an open riser. `foamPaS` is what trimmed risers taught, never the assumed figure. */
export interface HeldFoam {
  sprueLengthMm: number;
  packFactor: number;
  cavityCm3: number;
  riseS: number;
  foamPaS: number;
  /** Pressure this pack would give in a closed, vented mold. */
  idealKPa: number;
  /** What the mouth is to hold back; a quarter of the ideal pressure when left out. */
  wantedKPa?: number | undefined;
}

/** Diameter of a round opening that takes that share of an area: sqrt(4 share area / pi). */
export const diameterOfShareMm = ({ share, areaCm2 }: { share: number; areaCm2: number }): number =>
  Math.sqrt((400 * share * areaCm2) / Math.PI);

/** Share of an area that a round opening takes, and the reverse of `diameterOfShareMm`. */
export const shareOfOpening = ({ openingMm, areaCm2 }: { openingMm: number; areaCm2: number }): number =>
  (Math.PI * openingMm ** 2) / (400 * areaCm2);

/**
 * The widest riser, mm, that still holds the wanted pressure back: (128 mu L Q/(pi dp))^(1/4), Q = (k - 1) V / t (Hagen and
 * Poiseuille, solved for D). `openings` equal ones share the flow. Undefined where no pressure is wanted: any width does.
 */
export function widestHoldingMm(foam: HeldFoam, openings = 1): Outcome<number | undefined> {
  const { sprueLengthMm, packFactor, cavityCm3, riseS, foamPaS, idealKPa, wantedKPa } = foam;
  const sound = checkPour({ sprueLengthMm, cavityCm3, riseS, foamPaS, gaugeKPa: idealKPa }, { wantedKPa });
  if (!sound.ok) return sound;
  const pack = checkPack(packFactor);
  if (!pack.ok) return pack;
  const wantedPa = 1000 * (wantedKPa ?? R.mouthWasted.value * idealKPa);
  if (wantedPa === 0) return good(undefined);
  const flowM3S = ((packFactor - 1) * cavityCm3) / riseS / 1e6 / openings;
  const power4 = (128 * foamPaS * (sprueLengthMm / 1000) * flowM3S) / (Math.PI * wantedPa);
  return good(1000 * power4 ** 0.25);
}

/** Which rule sets the upper end. */
export type MostBy = 'share of the section' | 'bald area' | 'back pressure';

export interface OpeningLimits {
  /** Where the opening takes the fine, the wanted and the largest share of the section. */
  fineMm: number;
  shareMm: number;
  warnMm: number;
  /** Where it takes the wanted share of the casting's surface. */
  baldMm: number;
  /** Only where the viscosity of the foam was learned, and a pressure is wanted. */
  backPressureMm?: number;
}

export interface LimitedOpening {
  sectionCm2: number;
  castingCm2: number;
  /** Share of the section; 5 % when left out. */
  shareMost?: number | undefined;
  hold?: HeldFoam | undefined;
}

/** Every upper limit of one round opening, mm. */
export function openingLimits(opening: LimitedOpening): Outcome<OpeningLimits> {
  const { sectionCm2, castingCm2, shareMost, hold } = opening;
  const sound = checkPour({ sectionCm2, castingCm2 }, { shareMost });
  if (!sound.ok) return sound;
  const { value, low, high } = RULES.openingShare;
  const widthMm = (share: number): number => diameterOfShareMm({ share, areaCm2: sectionCm2 });
  const limits = {
    fineMm: widthMm(low),
    shareMm: widthMm(shareMost ?? value),
    warnMm: widthMm(high),
    baldMm: diameterOfShareMm({ share: R.openingBald.value, areaCm2: castingCm2 }),
  };
  if (hold === undefined) return good(limits);
  const held = widestHoldingMm(hold);
  if (!held.ok) return held;
  return good(held.value === undefined ? limits : { ...limits, backPressureMm: held.value });
}

/** The smallest upper limit and its name; the first of equals. */
export function smallestLimit({ shareMm, baldMm, backPressureMm }: OpeningLimits): {
  mostMm: number;
  mostBy: MostBy;
} {
  const named: readonly (readonly [number, MostBy])[] = [
    [shareMm, 'share of the section'],
    [baldMm, 'bald area'],
    [backPressureMm ?? Infinity, 'back pressure'],
  ];
  const [mostMm, mostBy] = named.reduce((least, one) => (one[0] < least[0] ? one : least));
  return { mostMm, mostBy };
}
