import { tapeFrom } from '../geometry';
import type { LevelFill, MarkedPlace, OpeningPlan, ThicknessFound, ThinSpot, Trap } from '../plan';
import { demoldJson } from './openingDemoldJson';
import { offersJson, openingKeys } from './openingSizeJson';
import { openingCautions } from '../words/openingCautions';
import { attitudeRows, bestUpOf } from '../words/openingAttitudes';

type Json = Record<string, unknown>;

/** An opening as scripts know it: the keys of the contract first, in its order; a key that is not computed is absent. */
export const openingJson = (plan: OpeningPlan): Json => ({
  ...contractKeys(plan),
  opening: openingKeys(plan),
  ...offersJson(plan),
  ...pressureKeys(plan),
  vent_diameter_mm: plan.ventMm,
  ...ventFlowJson(plan),
  ...fillKeys(plan),
  ...siliconeKeys(plan),
  ...thinKeys(plan),
  ...attitudesJson(plan),
  places: plan.places.map((place) => placeJson(plan, place)),
  column_step_mm: plan.columnStepMm,
  cautions: openingCautions(plan).map(({ key, when, what }) => ({ key, when, what })),
});

function contractKeys(plan: OpeningPlan): Json {
  const { opening, filling, casting, demold } = plan;
  const { leastMm, mostMm } = opening.band;
  return {
    opening_area_cm2: opening.areaCm2,
    largest_section_cm2: opening.largestSectionCm2,
    opening_share: opening.share,
    ...(leastMm === undefined ? {} : { diameter_min_mm: leastMm }),
    diameter_max_mm: mostMm,
    traps: filling.traps.map(trapJson),
    trapped_cm3: filling.trappedCm3.value,
    vents: ventsJson(filling),
    ...bestUpJson(plan),
    ...(casting === undefined
      ? {}
      : { thin: casting.places.map(thinJson), thickness_mm: thicknessJson(casting) }),
    ...(demold === undefined ? {} : { demold: demoldJson(demold) }),
  };
}

const pressureKeys = ({ opening: { kept, idealKPa, liquidCm3 } }: OpeningPlan): Json => ({
  ...(kept === undefined ? {} : { kept: { mouth_kpa: kept.mouthKPa, gauge_kpa: kept.gaugeKPa } }),
  ...(idealKPa === undefined ? {} : { ideal_kpa: idealKPa }),
  ...(liquidCm3 === undefined ? {} : { liquid_cm3: liquidCm3 }),
});

function fillKeys({ filling }: OpeningPlan): Json {
  const { up, tiltDegrees, holdCm3, leftCm3, flat, apart } = filling;
  return {
    // Filled to a level: foam, which rises as a dome, can shut in more. The same for pockets, vents and range.
    trapped_is_lower_bound: true,
    up,
    tilt_degrees: tiltDegrees,
    hold_cm3: holdCm3,
    left_cm3: leftCm3,
    flat_ceiling_cm2: flat.areaCm2,
    ...(flat.largest === undefined
      ? {}
      : { flat_ceiling: { area_cm2: flat.largest.areaCm2, at_mm: flat.largest.atMm } }),
    pinholes: pinholesJson(filling),
    ...(apart.count === 0 ? {} : { apart: { count: apart.count, volume_cm3: apart.volumeCm3 } }),
  };
}

const siliconeKeys = ({ underSilicone }: OpeningPlan): Json =>
  underSilicone === undefined
    ? {}
    : {
        under_silicone: {
          traps: underSilicone.traps.map(trapJson),
          trapped_cm3: underSilicone.trappedCm3.value,
          pinholes: pinholesJson(underSilicone),
        },
      };

const thinKeys = ({ casting, rubber }: OpeningPlan): Json => ({
  ...(casting === undefined ? {} : { thin_below_mm: casting.thinMm, thin_share: casting.shareThin }),
  ...(rubber === undefined ? {} : { rubber: { webs: rubber.places.map(thinJson) } }),
});

/** `range`: what the columns leave open of the pockets. */
export const openingRange = ({
  filling: { trappedCm3 },
}: OpeningPlan): Record<string, readonly [number, number]> => ({
  trapped_cm3: [trappedCm3.low, trappedCm3.high],
});

const trapJson = ({ topMm, saddleMm, volumeCm3, riseMm }: Trap): Json => ({
  top_mm: topMm,
  saddle_mm: saddleMm,
  volume_cm3: volumeCm3,
  rise_mm: riseMm,
});

const ventsJson = ({ vents }: LevelFill): Json[] =>
  vents.map(({ atMm, curesCm3 }) => ({ at_mm: atMm, cures_cm3: curesCm3 }));

const pinholesJson = ({ pinholes }: Pick<LevelFill, 'pinholes'>): Json => ({
  count: pinholes.count,
  volume_cm3: pinholes.volumeCm3,
});

const thinJson = ({ atMm, thicknessMm, areaCm2, lengthMm, slenderness }: ThinSpot): Json => ({
  at_mm: atMm,
  thickness_mm: thicknessMm,
  area_cm2: areaCm2,
  length_mm: lengthMm,
  slenderness,
});

/** Where nothing could be measured a figure is not finite, and left out. */
const thicknessJson = ({ minMm, p05Mm, medianMm, cappedMm, notMeasuredShare }: ThicknessFound): Json =>
  Object.fromEntries(
    Object.entries({
      ...{ min: minMm, p05: p05Mm, median: medianMm, capped: cappedMm },
      measured_share: 1 - notMeasuredShare,
    }).filter(([, figure]) => Number.isFinite(figure)),
  );

function ventFlowJson({ ventFlow }: OpeningPlan): Json {
  if (ventFlow === undefined) return {};
  const { count, bleed } = ventFlow;
  return {
    vent_flow: {
      ...{ needed: count.needed, placed: count.placed, is_enough: count.isEnough },
      ...{ area_mm2: count.areaMm2, pressure_pa: count.ventPressurePa },
      ...(bleed === undefined
        ? {}
        : {
            ...{ vent_mm: bleed.ventMm, vent_g: bleed.ventG },
            ...{ wide_mm: bleed.wideMm, wide_g: bleed.wideG },
          }),
    },
  };
}

function bestUpJson(plan: OpeningPlan): Json {
  const up = bestUpOf(plan);
  return up === undefined ? {} : { best_up: up };
}

function attitudesJson(plan: OpeningPlan): Json {
  const rows = attitudeRows(plan);
  if (rows === undefined) return {};
  return {
    attitudes: rows.map(({ fill, isToday, isBest }) => ({
      up: fill.up,
      is_today: isToday,
      is_best: isBest,
      tilt_degrees: fill.tiltDegrees,
      trapped_cm3: fill.trappedCm3.value,
      left_cm3: fill.leftCm3,
      flat_ceiling_cm2: fill.flat.areaCm2,
      vents: ventsJson(fill),
      hold_cm3: fill.holdCm3,
    })),
  };
}

const placeJson = ({ card }: OpeningPlan, { n, kind, atMm, normal }: MarkedPlace): Json => {
  const { upMm, inMm, side, acrossMm, acrossSide } = tapeFrom(card.boundsMm, atMm);
  return {
    n,
    kind,
    at_mm: atMm,
    normal,
    up_mm: upMm,
    in_mm: inMm,
    in_from: side,
    across_mm: acrossMm,
    across_from: acrossSide,
  };
};
