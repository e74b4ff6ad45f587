import { largestSection, type SolidMeasure, type TriangleMesh } from '../../geometry';
import { good, type Outcome, type Problem } from '../../problem';
import {
  idealGasGaugeKPa,
  openingBand,
  openingOffers,
  openingVerdict,
  POUR_RULES,
  pressureAtOpening,
  RULES,
  shareOfOpening,
  type HeldFoam,
  type OpeningBand,
  type OpeningOffers,
  type OpeningVerdict,
  type TimedPour,
} from '../../yield';
import type { Assumption } from '../../estimate';
import { MM3_PER_CM3 } from '../sizeDoubts';
import type { OpeningAsk, OpeningPour } from './openingAsk';
import type { OpeningPlace } from './placeOpening';

/** The opening and what is advised for it. */
export interface OpeningSize {
  diameterMm: number;
  areaCm2: number;
  largestSectionCm2: number;
  share: number;
  band: OpeningBand;
  verdict: OpeningVerdict;
  /** Only where no single opening suits and all of the pour is known. */
  offers?: OpeningOffers;
  /** Only for foam whose viscosity was learned: what an opening that stays open keeps. */
  kept?: { mouthKPa: number; gaugeKPa: number };
  /** That a closed, vented mold would reach. */
  idealKPa?: number;
  /** All the liquid, where foam and pack are known. */
  liquidCm3?: number;
  assumptions: Assumption[];
  findings: Problem[];
}

/** Errors: those of `openingBand`, `openingOffers` and `idealGasGaugeKPa`. */
export function openingSizeOf(
  {
    chain,
    solid,
    place,
    vented,
  }: { chain: TriangleMesh; solid: SolidMeasure; place: OpeningPlace; vented: boolean },
  ask: OpeningAsk,
): Outcome<OpeningSize> {
  const { opening = {}, pour = {} } = ask;
  const largestSectionCm2 = largestSection(chain, place.normal).areaMm2 / 100;
  const cavityCm3 = solid.volumeMm3 / MM3_PER_CM3;
  const assumptions: Assumption[] = [];
  const assumed = <T extends number>(name: string, unit: string, given: T | undefined, value: T): T => {
    if (given === undefined) assumptions.push({ name, value, unit, from: 'assumed' });
    return given ?? value;
  };
  const liquidKgM3 = assumed('liquid_density', 'kg/m3', pour.liquidKgM3, RULES.liquidDensity.value);
  const packFactor = assumed('pack', '', pour.packFactor, RULES.packFactor.value);
  const sprueLengthMm = assumed('opening_length', 'mm', pour.sprueLengthMm, POUR_RULES.openingLength.value);
  const headMm = assumed('head', 'mm', pour.headMm, POUR_RULES.openingHead.value);
  const ideal = idealOf(pour, { liquidKgM3, packFactor });
  if (!ideal.ok) return ideal;
  const liquidCm3 = liquidOf(pour, { liquidKgM3, packFactor, cavityCm3 });
  const hold = heldBy(pour, { sprueLengthMm, packFactor, cavityCm3, idealKPa: ideal.value });
  const through = {
    ...(liquidCm3 === undefined ? {} : { liquidCm3 }),
    ...(pour.withinS === undefined ? {} : { withinS: pour.withinS }),
    ...(pour.mixPaS === undefined ? {} : { mixPaS: pour.mixPaS }),
    liquidKgM3,
    sprueLengthMm,
    headMm,
    vented,
  };
  const band = openingBand({
    sectionCm2: largestSectionCm2,
    castingCm2: solid.areaMm2 / 100,
    ...(opening.shareMost === undefined ? {} : { shareMost: opening.shareMost }),
    ...(hold === undefined ? {} : { hold }),
    pour: through,
  });
  if (!band.ok) return band;
  const diameterMm = assumed('opening_diameter', 'mm', opening.diameterMm, advisedMm(band.value, place));
  const areaCm2 = (Math.PI * diameterMm ** 2) / 400;
  const share = shareOfOpening({ openingMm: diameterMm, areaCm2: largestSectionCm2 });
  const { leastMm, mostMm, isEmpty } = band.value;
  const ways = isEmpty
    ? openingOffers(band.value, through as TimedPour, {
        ...(ideal.value === undefined ? {} : { gaugeKPa: ideal.value }),
        ...(hold === undefined ? {} : { hold }),
      })
    : good(undefined);
  if (!ways.ok) return ways;
  const offers = ways.value === undefined ? undefined : withRoom(ways.value, place);
  const kept = hold === undefined ? good(undefined) : pressureAtOpening({ openingMm: diameterMm, hold });
  if (!kept.ok) return kept;
  const isUsed = ({ name }: Assumption): boolean =>
    name === 'opening_diameter' ||
    band.value.notKnown.length === 0 ||
    (name === 'pack' && liquidCm3 !== undefined);
  return good({
    diameterMm,
    areaCm2,
    largestSectionCm2,
    share,
    band: band.value,
    verdict: openingVerdict({
      openingMm: diameterMm,
      share,
      mostMm,
      ...(leastMm === undefined ? {} : { leastMm }),
    }),
    ...(offers === undefined ? {} : { offers }),
    ...(kept.value === undefined
      ? {}
      : { kept: { mouthKPa: kept.value.mouthKPa, gaugeKPa: kept.value.gaugeKPa } }),
    ...(ideal.value === undefined ? {} : { idealKPa: ideal.value }),
    ...(liquidCm3 === undefined ? {} : { liquidCm3 }),
    assumptions: assumptions.filter(isUsed),
    findings: [...band.value.findings, ...(kept.value?.findings ?? [])],
  });
}

/** Within the band and, as far as that goes, fine: whole millimeters. */
function advisedMm({ leastMm, mostMm, limits }: OpeningBand, { roomMm = Infinity }: OpeningPlace): number {
  const wish = Math.min(mostMm, Math.max(limits.fineMm, leastMm ?? 0), roomMm);
  const whole = Math.max(1, Math.floor(wish));
  if (leastMm === undefined || whole >= leastMm) return whole;
  const wider = Math.ceil(leastMm);
  return wider <= Math.min(mostMm, roomMm) ? wider : wish;
}

/** A mouth wider than its face has room for is no way out. */
function withRoom({ plug, ...others }: OpeningOffers, { roomMm = Infinity }: OpeningPlace): OpeningOffers {
  return plug === undefined || plug.mouthMm > roomMm ? others : { plug, ...others };
}

const idealOf = (
  { freeRiseKgM3 }: OpeningPour,
  foam: { liquidKgM3: number; packFactor: number },
): Outcome<number | undefined> =>
  freeRiseKgM3 === undefined ? good(undefined) : idealGasGaugeKPa({ freeRiseKgM3, ...foam });

const liquidOf = (
  { liquidCm3, freeRiseKgM3 }: OpeningPour,
  { liquidKgM3, packFactor, cavityCm3 }: { liquidKgM3: number; packFactor: number; cavityCm3: number },
): number | undefined =>
  liquidCm3 ??
  (freeRiseKgM3 === undefined ? undefined : (packFactor * freeRiseKgM3 * cavityCm3) / liquidKgM3);

function heldBy(
  { foamPaS, riseS }: OpeningPour,
  rest: { sprueLengthMm: number; packFactor: number; cavityCm3: number; idealKPa: number | undefined },
): HeldFoam | undefined {
  const { idealKPa } = rest;
  return foamPaS === undefined || riseS === undefined || idealKPa === undefined
    ? undefined
    : { ...rest, idealKPa, foamPaS, riseS };
}
