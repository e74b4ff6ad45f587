import type { PreparedPour } from '../plan';
import type { Estimate } from '../estimate';
import { cautionsOfPour } from '../words/cautionsOfPour';
import type { PackColumn } from '../yield';
import type { Poured } from './pourCall';
import type { Cavity } from './pourCavity';

type Json = Record<string, unknown>;
type Range = readonly [number, number];

/** What is weighed, in all. One cup is the batch itself; several are the sums of what each of them says. */
export function weighedOf({ batch, cups }: PreparedPour): {
  totalG: number;
  partAG: number;
  partBG: number;
  mixes: { partAG: number; partBG: number; totalG: number }[];
} {
  const { totalG, partAG, partBG } = cups.cups.length > 1 ? cups : batch;
  return {
    totalG,
    partAG,
    partBG,
    mixes: cups.cups.length > 1 ? cups.cups : [{ partAG, partBG, totalG }],
  };
}

/** A pour as scripts know it: the keys of the contract first, in its order; a key that is not computed is absent. */
export function batchResult({ prepared, call }: Poured): Json {
  const { cavityCm3, batch, forces } = prepared;
  const { totalG, partAG, partBG, mixes } = weighedOf(prepared);
  return {
    cavity_cm3: cavityCm3.value,
    mixed_g: totalG,
    part_a_g: partAG,
    part_b_g: partBG,
    in_mold_g: batch.inMoldG,
    pack_factor: batch.packFactor,
    molded_density_kg_m3: batch.moldedDensityKgM3,
    short_fill_chance: batch.shortFillChance,
    pressure_kpa: forces.pressureKPa.value,
    ...(forces.clamp === undefined ? {} : { clamp_n: forces.clamp.clampN }),
    ...(forces.straps === undefined ? {} : { strap_n: forces.straps.buckleN }),
    mixes: mixes.map((mix) => ({ part_a_g: mix.partAG, part_b_g: mix.partBG })),
    uncertainty: batch.uncertainty.map(({ input, share }) => ({ input, share })),
    ...forceKeys(prepared),
    ...cupKeys(prepared),
    ...airKeys(prepared),
    ...timeKeys(prepared),
    ...warmKeys(prepared),
    ...cavityKeys(call.cavity, prepared),
    ...colorKeys(prepared),
    ...adviceKeys(prepared),
    ...levelKeys(prepared),
    cautions: cautionsOfPour(prepared).map(({ key, when, what }) => ({ key, when, what })),
  };
}

export const batchRange = ({ cavityCm3, batch }: PreparedPour): Record<string, Range> => ({
  cavity_cm3: [cavityCm3.low, cavityCm3.high],
  mixed_g: batch.mixedRangeG,
});

const rangeOf = ({ low, high }: Pick<Estimate, 'low' | 'high'>): Range => [low, high];

function forceKeys({ forces }: PreparedPour): Json {
  const { pressureKPa, clamp, straps, ratchets, plugN } = forces;
  return {
    pressure_range_kpa: rangeOf(pressureKPa),
    design_pressure_kpa: pressureKPa.designKPa,
    pressure_caveats: pressureKPa.caveats,
    ...(clamp === undefined ? {} : { push_n: clamp.pushN }),
    ...(straps === undefined
      ? {}
      : { straps: straps.straps, straps_needed: straps.strapsNeeded, straps_hold: straps.holds }),
    ...(ratchets === undefined ? {} : { ratchet_straps_needed: ratchets.strapsNeeded }),
    ...(plugN === undefined ? {} : { plug_n: plugN }),
  };
}

const cupKeys = ({ cups }: PreparedPour): Json => ({
  ...(cups.largestMixG === undefined ? {} : { largest_mix_g: cups.largestMixG }),
  limited_by: cups.limitedBy,
  rounds: cups.rounds,
});

function airKeys({ air, batch }: PreparedPour): Json {
  if (air === undefined) return {};
  const { correction, cardKgM3 } = air;
  return {
    air: {
      station_kpa: correction.stationKPa.value,
      station_range_kpa: rangeOf(correction.stationKPa),
      by: correction.stationKPa.by,
      applied: correction.applied,
      card_kg_m3: cardKgM3,
      free_rise_kg_m3: batch.inputs.freeRiseKgM3,
    },
  };
}

function timeKeys({ times }: PreparedPour): Json {
  const { window, openMin, openCommonMin, exotherm } = times;
  return {
    ...(window === undefined
      ? {}
      : {
          cream_s: window.creamS.value,
          cream_range_s: rangeOf(window.creamS),
          pour_window_s: window.pourWindowS.value,
          pour_window_range_s: rangeOf(window.pourWindowS),
        }),
    ...(openMin === undefined ? {} : { open_min: openMin.value, open_range_min: rangeOf(openMin) }),
    open_common_min: rangeOf(openCommonMin),
    ...(exotherm.known ? { core_c: exotherm.coreC.value, core_range_c: rangeOf(exotherm.coreC) } : {}),
  };
}

function warmKeys({ warmth }: PreparedPour): Json {
  const { band, warmUp, coolDown, contactC } = warmth;
  return {
    mold_temp_band: band,
    ...(contactC === undefined ? {} : { contact_c: contactC }),
    ...(warmUp === undefined
      ? {}
      : {
          warm_up: {
            deep_face_min: warmUp.deepFaceMin.value,
            deep_face_range_min: rangeOf(warmUp.deepFaceMin),
            heated_face_min: warmUp.heatedFaceMin.value,
            surface_c: warmUp.surfaceAtEndC.value,
            surface_range_c: rangeOf(warmUp.surfaceAtEndC),
            biot: warmUp.biot,
            lumped_min: warmUp.lumpedMin,
          },
        }),
    ...(coolDown === undefined ? {} : { pour_within_min: coolDown.pourWithinMin }),
  };
}

function cavityKeys({ casting, hollow, core, armatureCm3, size }: Cavity, { coreLift }: PreparedPour): Json {
  const wall = hollow?.wall;
  return {
    ...(casting === undefined
      ? {}
      : {
          casting: {
            sculpt_cm3: size!.volumeCm3.value,
            cavity_cm3: casting.cavityCm3.value,
            volume_share: casting.volumeShare.value,
            shrink: casting.shrink.value,
            casting_temp_c: casting.castingTempC,
          },
        }),
    ...(core === undefined && armatureCm3 === undefined
      ? {}
      : {
          hollow: {
            ...(size === undefined ? {} : { outer_cm3: (casting?.cavityCm3 ?? size.volumeCm3).value }),
            ...(core === undefined ? {} : { core_cm3: core.coreCm3 }),
            ...(armatureCm3 === undefined ? {} : { armature_cm3: armatureCm3 }),
            ...(wall === undefined
              ? {}
              : { thinnest_wall_mm: wall.thinnestMm, at_mm: wall.atMm, core_inside: wall.isInside }),
          },
        }),
    ...(coreLift === undefined
      ? {}
      : {
          core_lift: {
            in_foam_n: coreLift.inFoamN,
            in_liquid_n: coreLift.inLiquidN,
            neck_n: coreLift.neckN,
            hold_n: coreLift.holdN,
          },
        }),
    ...(size?.shadowCm2 === undefined ? {} : { projected_area_cm2: size.shadowCm2 }),
  };
}

const colorKeys = ({ color }: PreparedPour): Json =>
  color === undefined
    ? {}
    : {
        colors: color.items.map(({ name, massG, drops, dropG, dropFrom }) => ({
          name,
          mass_g: massG,
          drops,
          drop_g: dropG,
          drop_from: dropFrom,
        })),
        color_g: color.totalG,
      };

const adviceKeys = ({ sizeAware, bestMeasurement }: PreparedPour): Json => ({
  ...(sizeAware === undefined
    ? {}
    : { skin_pack: sizeAware.leastPack.value, advised_pack: sizeAware.advisedPack.value }),
  mixed_u_g: bestMeasurement.uG,
  measurements: bestMeasurement.gains.map(({ measurement, term, leftShare }) => ({
    measurement,
    input: term,
    left_share: leftShare,
  })),
});

/** What the level of this pack costs and what came of it before; only where that was told. */
function levelKeys({ packs }: PreparedPour): Json {
  const column = packs?.columns[0];
  if (column === undefined || column.refused !== undefined) return {};
  return { ...costKeys(column.cost), ...pastKeys(column.past) };
}

/** In the shop's own money. */
const costKeys = (cost: PackColumn['cost']): Json =>
  cost === undefined
    ? {}
    : {
        cost: cost.mixPrice,
        failure_cost: cost.failurePrice,
        expected_failure_cost: cost.expectedFailurePrice,
        more_pack_cost: cost.morePackPrice,
        more_pack_saves: cost.morePackSaves,
      };

/** Castings of that level, and what they say of the next one; none of that level is an empty list. */
function pastKeys(past: PackColumn['past']): Json {
  if (past === undefined) return {};
  const { poured, filled, mean, low } = past;
  return {
    past: poured === 0 ? [] : [{ poured, filled, fill_chance: mean, fill_chance_low: low }],
  };
}
