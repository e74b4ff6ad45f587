import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { RULES } from '../rules';
import { lidForceN } from './clamp';
import { leastSprueMm, pourTimeS } from './opening';
import type { OpeningBand, TimedPour } from './openingBand';
import { widestHoldingMm } from './openingLimits';
import type { HeldFoam } from './openingLimits';
import { POUR_RULES as R } from './rules';

/** A mouth wide enough to pour in time, closed with a vented plug right after. */
export interface PluggedMouth {
  mouthMm: number;
  mouthCm2: number;
  gaugeKPa: number;
  /** Push of the foam on the plug: it must be held, and nobody stands over it. */
  forceN: number;
  /** Mass whose weight that is. */
  likeKg: number;
}

/** So many equal openings, of which `pouring` take liquid at the same time; without vents one is left to the air. */
export interface MoreOpenings {
  count: number;
  pouring: number;
  leastMm: number;
  mostMm: number;
}

export interface OpeningOffers {
  /** Absent where no mouth is wide enough or the pressure is not known. */
  plug?: PluggedMouth;
  /** 'none': up to four openings do not pour in time within the limits either. */
  openings: MoreOpenings | 'none';
  /** The widest opening that is allowed, and the time to pour that a slower or cooler mix must leave for it. */
  slower?: { atMm: number; neededS: number; longerS: number };
}

/**
 * Ways out where a band is empty. The plug's force is gauge pressure times mouth area (statics). Errors: those of `pourFlow`,
 * INPUT_OUT_OF_BOUNDS for a pressure.
 */
export function openingOffers(
  band: OpeningBand,
  pour: TimedPour,
  { gaugeKPa, hold }: { gaugeKPa?: number | undefined; hold?: HeldFoam | undefined } = {},
): Outcome<OpeningOffers> {
  const plug = plugOf(band.leastMm, gaugeKPa);
  if (!plug.ok) return plug;
  const openings = moreOpenings(band, pour, hold);
  if (!openings.ok) return openings;
  const slower = slowerMix(band.mostMm, pour);
  if (!slower.ok) return slower;
  return good({
    ...(plug.value === undefined ? {} : { plug: plug.value }),
    openings: openings.value,
    ...(slower.value === undefined ? {} : { slower: slower.value }),
  });
}

function plugOf(
  mouthMm: number | undefined,
  gaugeKPa: number | undefined,
): Outcome<PluggedMouth | undefined> {
  if (mouthMm === undefined || gaugeKPa === undefined) return good(undefined);
  const mouthCm2 = (Math.PI * mouthMm ** 2) / 400;
  const force = lidForceN({ gaugeKPa, lidCm2: mouthCm2 });
  if (!force.ok) return force;
  const forceN = force.value;
  return good({ mouthMm, mouthCm2, gaugeKPa, forceN, likeKg: forceN / RULES.gravity.value });
}

/** The fewest that do. Together they take no more of section and surface than one would; each holds back its share of the foam. */
function moreOpenings(
  { limits }: OpeningBand,
  pour: TimedPour,
  hold: HeldFoam | undefined,
): Outcome<MoreOpenings | 'none'> {
  const oneMm = Math.min(limits.shareMm, limits.baldMm);
  for (let count = 2; count <= R.mostOpenings.value; count += 1) {
    const pouring = pour.vented ? count : count - 1;
    const held = hold === undefined ? good(undefined) : widestHoldingMm(hold, count);
    if (!held.ok) return held;
    const least = leastSprueMm({ ...pour, vented: true, liquidCm3: pour.liquidCm3 / pouring });
    if (!least.ok && least.problem.code !== 'OPENING_NONE') return least;
    const mostMm = Math.min(oneMm / Math.sqrt(count), held.value ?? Infinity);
    if (least.ok && least.value <= mostMm) return good({ count, pouring, leastMm: least.value, mostMm });
  }
  return good('none');
}

function slowerMix(atMm: number, pour: TimedPour): Outcome<OpeningOffers['slower']> {
  // Nothing runs through an opening below what `pourFlow` takes: no mix is slow enough.
  if (atMm < 1) return good(undefined);
  const needed = pourTimeS({ ...pour, sprueMm: atMm });
  if (!needed.ok) return needed;
  const neededS = needed.value;
  return good({ atMm, neededS, longerS: Math.max(0, neededS - pour.withinS) });
}
