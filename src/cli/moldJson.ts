import type { Mold, SiliconePour } from '../plan';
import type { KitCover } from '../yield';
import { cautionsFor } from '../words/materialCautions';
import { cm3, surroundingsJson } from './moldShapeJson';

/** A mold as scripts know it: the keys of the contract first, in its order; a key that is not computed is absent. */
export function moldJson(
  mold: Mold,
  cautionKeys: readonly string[],
  withFinish: boolean,
): Record<string, unknown> {
  return {
    type: mold.type,
    ...siliconeKeys(mold),
    ...siliconeParts(mold),
    ...mixKeys(mold),
    parts: mold.shape.rubber.map(({ name, volumeMm3 }) => ({ name, volume_cm3: cm3(volumeMm3) })),
    ...clayKeys(mold),
    ...surroundingsJson(mold),
    casting: {
      cavity_cm3: mold.casting.cavityCm3.value,
      volume_share: mold.casting.volumeShare.value,
      shrink: mold.casting.shrink.value,
      casting_temp_c: mold.casting.castingTempC,
    },
    mold_g: mold.surroundings.moldG,
    outer_mm: mold.surroundings.outerMm,
    standing_box: {
      inner_mm: mold.surroundings.standing.innerMm,
      packing_cm3: mold.surroundings.standing.packingCm3,
    },
    smallest_mix_g: mold.silicone.smallestMixG,
    ...stockKeys(mold),
    ...(mold.areaTimesSkinCm3 === undefined ? {} : { area_times_skin_cm3: mold.areaTimesSkinCm3 }),
    ...(withFinish ? finishingKeys(mold) : {}),
    ...(mold.voxel === undefined ? {} : { voxel_mm: mold.voxel.voxelMm }),
    cautions: cautionsFor(cautionKeys).map(({ key, when, what }) => ({ key, when, what })),
  };
}

/** `range`: 95 of 100 for the shapes; the grams are those that the shape's range asks for. */
export const moldRange = ({
  siliconeCm3,
  silicone,
  casting,
}: Mold): Record<string, readonly [number, number]> => ({
  silicone_cm3: [siliconeCm3.low, siliconeCm3.high],
  silicone_g: silicone.rangeG,
  cavity_cm3: [casting.cavityCm3.low, casting.cavityCm3.high],
});

const siliconeKeys = ({ siliconeCm3, silicone }: Mold) => ({
  silicone_cm3: siliconeCm3.value,
  silicone_g: silicone.totalG,
  base_g: silicone.baseG,
  catalyst_g: silicone.catalystG,
});

/** Names of the parts of the rubber that have a key of their own; a poured skin calls its skin a gap. */
const PART_KEYS: Readonly<Record<string, string>> = {
  skin: 'skin_cm3',
  gap: 'skin_cm3',
  'undercut fill': 'undercut_fill_cm3',
  flange: 'flange_cm3',
};

function siliconeParts({ shape, surroundings }: Mold): Record<string, unknown> {
  const named = shape.rubber.flatMap(({ name, volumeMm3 }) => {
    const key = PART_KEYS[name];
    return key === undefined ? [] : [[key, cm3(volumeMm3)] as const];
  });
  return {
    ...Object.fromEntries(named),
    ...(shape.jacket === undefined ? {} : { jacket_cm3: cm3(shape.jacket.volumeMm3) }),
    ...(surroundings.wall === undefined || shape.box === undefined
      ? {}
      : { box_inner_mm: shape.box.innerMm }),
  };
}

function mixKeys({ shape, silicone }: Mold): Record<string, unknown> {
  const { pours, purchase } = silicone;
  return {
    ...(shape.coats === undefined ? {} : { coats: pours.flatMap(coatJson) }),
    mixes: pours.flatMap(({ name, order }) =>
      order.mixes.map((mix) => ({
        name,
        total_g: mix.totalG,
        base_g: mix.baseG,
        catalyst_g: mix.catalystG,
      })),
    ),
    ...(purchase === undefined
      ? {}
      : {
          purchase: {
            need_kg: purchase.needKg,
            ...coverJson(purchase),
            ...(purchase.nextCheaperWaste === undefined
              ? {}
              : { next_cheaper_waste: coverJson(purchase.nextCheaperWaste) }),
          },
        }),
  };
}

const coatJson = ({ coat, volumeCm3, order }: SiliconePour) =>
  coat === undefined
    ? []
    : [
        {
          to_mm: coat.outerMm,
          volume_cm3: volumeCm3,
          total_g: order.totalG,
          base_g: order.baseG,
          catalyst_g: order.catalystG,
          mixes: order.mixes.length,
        },
      ];

const coverJson = ({ kits, totalKg, surplusKg, price }: KitCover) => ({
  kits: kits.map(({ massKg, count, price: each }) => ({
    kg: massKg,
    count,
    ...(each === undefined ? {} : { price: each }),
  })),
  total_kg: totalKg,
  surplus_kg: surplusKg,
  ...(price === undefined ? {} : { price }),
});

const clayKeys = ({ clay }: Mold): Record<string, unknown> =>
  clay === undefined
    ? {}
    : { clay_cm3: clay.volumeCm3, clay_g: clay.massG.value, rubber_per_clay: clay.rubberPerClay.value };

const stockKeys = ({ silicone: { stock } }: Mold): Record<string, unknown> =>
  stock === undefined
    ? {}
    : {
        stock: {
          usable_kg: stock.usableKg,
          need_kg: stock.needKg,
          scarcer: stock.scarcer,
          left_base_kg: stock.leftBaseKg,
          left_catalyst_kg: stock.leftCatalystKg,
        },
      };

function finishingKeys({ finishing }: Mold): Record<string, unknown> {
  const { surfaceCm2, coatedCm2, textureFactor, paint, seal, bondG, poreFillG } = finishing;
  return {
    finishing: {
      surface_cm2: surfaceCm2,
      coated_cm2: coatedCm2,
      texture_factor: textureFactor,
      ...(paint === undefined ? {} : { paint }),
      ...(seal === undefined ? {} : { seal }),
      ...(bondG === undefined ? {} : { bond_g: bondG.value, bond_range_g: [bondG.low, bondG.high] }),
      ...(poreFillG === undefined ? {} : { pore_fill_g: poreFillG }),
    },
  };
}
