import type { Mold } from '../plan';
import type { JacketAmounts } from '../yield';

/** What is around the rubber, as scripts know it: jacket, undercuts, box, keys and flange; absent where there is none. */
export const surroundingsJson = (mold: Mold): Record<string, unknown> => ({
  ...jacketKeys(mold),
  ...undercutKeys(mold),
  ...boxKeys(mold),
  ...floatingKeys(mold),
  ...flangeKeys(mold),
});

const MM3_PER_CM3 = 1000;
export const cm3 = (mm3: number): number => mm3 / MM3_PER_CM3;

function jacketKeys({ shape, surroundings }: Mold): Record<string, unknown> {
  const { jacket } = surroundings;
  if (jacket === undefined || shape.jacket === undefined) return {};
  return {
    jacket: {
      material: jacket.material,
      items: jacket.items.map(itemJson),
      dry_g: jacket.dryMassG,
      wet_g: jacket.wetMassG,
      pieces: shape.jacket.pieces,
      parting_mm: shape.jacket.partingMm,
      thickness_mm: jacket.thicknessMm,
      ...(jacket.layers === undefined ? {} : { layers: jacket.layers }),
      inner_cm2: shape.jacket.innerMm2 / 100,
      outer_cm2: shape.jacket.outerMm2 / 100,
    },
  };
}

const itemJson = ({ name, massG, volumeMl, areaCm2 }: JacketAmounts['items'][number]) => ({
  name,
  ...(massG === undefined ? {} : { mass_g: massG }),
  ...(volumeMl === undefined ? {} : { volume_cm3: volumeMl }),
  ...(areaCm2 === undefined ? {} : { area_cm2: areaCm2 }),
});

function undercutKeys({ shape }: Mold): Record<string, unknown> {
  const { undercut } = shape;
  if (undercut === undefined) return {};
  const skinMm3 = shape.rubber[0]!.volumeMm3;
  return {
    undercut: {
      pull: undercut.pull,
      pieces: undercut.pieces,
      fill_cm3: cm3(undercut.fillMm3),
      share: undercut.fillMm3 / (skinMm3 + undercut.fillMm3),
      searched: undercut.wasSearched,
      places: undercut.places.map(({ atMm, volumeMm3, sizeMm }) => ({
        at_mm: atMm,
        volume_cm3: cm3(volumeMm3),
        size_mm: sizeMm,
      })),
      compared: undercut.compared.map(({ pull, pieces, fillMm3 }) => ({
        pull,
        pieces,
        fill_cm3: cm3(fillMm3),
      })),
    },
  };
}

function boxKeys({ shape, surroundings }: Mold): Record<string, unknown> {
  const { box } = shape;
  const { wall } = surroundings;
  if (box === undefined) return {};
  return {
    box: {
      kind: box.kind,
      inner_mm: box.innerMm,
      turn_degrees: box.turnDegrees,
      volume_cm3: cm3(box.volumeMm3),
      others: box.others.map(({ kind, innerMm, turnDegrees, volumeMm3 }) => ({
        kind,
        inner_mm: innerMm,
        turn_degrees: turnDegrees,
        volume_cm3: cm3(volumeMm3),
      })),
    },
    ...(shape.partingOverMm === undefined ? {} : { parting_over_mm: shape.partingOverMm }),
    ...(wall === undefined
      ? {}
      : {
          wall: {
            material: wall.material,
            wall_mm: wall.wallMm,
            pressure_kpa: wall.pressureKPa,
            // A cylinder is stretched, not bent.
            ...(box.kind === 'cylinder'
              ? {}
              : {
                  span_mm: wall.wallWidthMm,
                  force_n: wall.forceN,
                  force_height_mm: wall.forceHeightMm,
                  bulge_mm: wall.bulgeMm.value,
                  extra_rubber_cm3: wall.extraRubberCm3.value,
                  needed_wall_mm: wall.neededWallMm,
                  largest_span_mm: wall.largestSpanMm,
                }),
          },
        }),
  };
}

const floatingKeys = ({ surroundings: { floating } }: Mold): Record<string, unknown> =>
  floating === undefined ? {} : { floating: { force_n: floating.forceN, weight_kg: floating.weightKg } };

const flangeKeys = ({ shape: { keys, flange } }: Mold): Record<string, unknown> => ({
  ...(keys === undefined ? {} : { keys: { count: keys.count, radius_mm: keys.radiusMm } }),
  ...(flange === undefined
    ? {}
    : {
        flange: {
          width_mm: flange.widthMm,
          outline_mm: flange.outlineMm,
          area_cm2: flange.areaMm2 / 100,
        },
      }),
});
