import type { OpeningPlan } from '../plan';

type Json = Record<string, unknown>;

/** The opening itself, its limits and what is not known of them. */
export function openingKeys({ opening }: OpeningPlan): Json {
  const { fineMm, shareMm, warnMm, baldMm, backPressureMm } = opening.band.limits;
  return {
    at_mm: opening.atMm,
    normal: opening.normal,
    diameter_mm: opening.diameterMm,
    placed_by: opening.placedBy,
    verdict: opening.verdict,
    limit: opening.band.mostBy,
    limits_mm: {
      fine: fineMm,
      share: shareMm,
      warn: warnMm,
      bald: baldMm,
      ...(backPressureMm === undefined ? {} : { back_pressure: backPressureMm }),
    },
    is_empty: opening.band.isEmpty,
    not_known: opening.band.notKnown.map((name) => NOT_KNOWN_KEYS[name]),
    ...(opening.roomMm === undefined ? {} : { room_mm: opening.roomMm }),
  };
}

const NOT_KNOWN_KEYS = {
  liquidCm3: 'liquid_cm3',
  withinS: 'pour_within_s',
  mixPaS: 'mix_viscosity_pa_s',
} as const;

/** Ways out of an empty band; nothing where it is not. */
export function offersJson({ opening: { offers } }: OpeningPlan): Json {
  if (offers === undefined) return {};
  const { plug, openings, slower } = offers;
  return {
    offers: {
      ...(plug === undefined
        ? {}
        : {
            plug: {
              mouth_mm: plug.mouthMm,
              mouth_cm2: plug.mouthCm2,
              gauge_kpa: plug.gaugeKPa,
              force_n: plug.forceN,
              like_kg: plug.likeKg,
            },
          }),
      openings:
        openings === 'none'
          ? 'none'
          : {
              count: openings.count,
              pouring: openings.pouring,
              least_mm: openings.leastMm,
              most_mm: openings.mostMm,
            },
      ...(slower === undefined
        ? {}
        : { slower: { at_mm: slower.atMm, needed_s: slower.neededS, longer_s: slower.longerS } }),
    },
  };
}
