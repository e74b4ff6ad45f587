import type { CheckFacts } from '../../checks';
import type { OpeningAsk } from './openingAsk';
import type { OpeningPlan } from './openingPlan';

/** For the checks of the opening: what was not measured is not told. */
export function openingFacts(
  found: Pick<OpeningPlan, 'opening' | 'filling' | 'casting' | 'rubber' | 'demold'>,
  { rubber = {} }: OpeningAsk,
): CheckFacts {
  const { opening, filling, casting, rubber: webs, demold } = found;
  const { leastMm, mostMm } = opening.band;
  const finite = (mm: number | undefined): number | undefined => (Number.isFinite(mm) ? mm : undefined);
  const thinnest = finite(casting?.minMm);
  const web = webs === undefined ? undefined : (webs.places[0]?.thicknessMm ?? webs.cappedMm);
  const slender =
    casting === undefined ? undefined : Math.max(0, ...casting.places.map((p) => p.slenderness));
  return {
    openingMm: opening.diameterMm,
    ...(leastMm === undefined ? {} : { openingLeastMm: leastMm }),
    openingMostMm: mostMm,
    openingShare: opening.share,
    trappedCm3: filling.trappedCm3.value,
    trapLeftCm3: filling.leftCm3,
    flatCeilingCm2: filling.flat.areaCm2,
    ...(opening.liquidCm3 === undefined ? {} : { pouredLiquidCm3: opening.liquidCm3 }),
    holdCm3: filling.holdCm3,
    ...(thinnest === undefined ? {} : { castingThinnestMm: thinnest }),
    ...(web === undefined ? {} : { rubberThinnestMm: web }),
    ...(slender === undefined ? {} : { slenderness: slender }),
    ...(demold === undefined ? {} : { demoldStretch: demold.worst.stretch }),
    ...(rubber.elongationAtBreak === undefined ? {} : { elongationAtBreak: rubber.elongationAtBreak }),
    ...(demold?.slit === undefined ? {} : { slitMm: demold.slit.lengthMm }),
  };
}
