import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { layersFor, meanFaceCm2, settleJacket } from './jacketMaterial';
import type { JacketAmounts, JacketMaterial, JacketSettings, JacketShape } from './jacketMaterial';
import { MOLDMAKING_RULES as R } from './rules';

/** Thickness of a laid layer, mm: its glass and its resin, without air. Example: 450 g/m2 and 2.5 of resin, 1.11 mm. */
export const glassLayerMm = ({
  glassGPerM2,
  resinPerGlass,
}: {
  glassGPerM2: number;
  resinPerGlass: number;
}): number => glassGPerM2 / R.glassDensity.value + (resinPerGlass * glassGPerM2) / R.resinDensity.value;

/** Glass mat laid by hand in polyester resin. */
export const jacketGlassMat: JacketMaterial = {
  key: 'glass-mat',
  title: 'Glass mat and polyester resin',
  thickness: R.glassWall,
  parameters: [
    { key: 'layers', title: 'Layers', rule: R.glassLayers, isDerived: true },
    { key: 'glassGPerM2', title: 'Glass mat', rule: R.glassMat },
    { key: 'resinPerGlass', title: 'Resin to glass, by mass', rule: R.resinPerGlass },
    { key: 'overlapFactor', title: 'Overlap', rule: R.glassOverlap },
    { key: 'gelcoatMm', title: 'Gelcoat', rule: R.gelcoat },
    { key: 'catalystShare', title: 'Catalyst, share of the resin', rule: R.catalystShare },
  ],
  build,
};

function build(shape: JacketShape, settings: JacketSettings = {}): Outcome<JacketAmounts> {
  const settled = settleJacket(shape, jacketGlassMat.parameters, settings);
  if (!settled.ok) return settled;
  const set = settled.value;
  const gelcoatMm = set.gelcoatMm!;
  const layerMm = glassLayerMm({ glassGPerM2: set.glassGPerM2!, resinPerGlass: set.resinPerGlass! });
  const layers = layersFor({ layers: set.layers, thicknessMm: shape.jacketMm - gelcoatMm, layerMm });
  if (!layers.ok) return layers;
  const areaCm2 = meanFaceCm2(shape) * layers.value * set.overlapFactor!;
  const glassG = (areaCm2 * set.glassGPerM2!) / CM2_PER_M2;
  const resinG = glassG * set.resinPerGlass!;
  // mm x cm2 is a tenth of a cm3, and kg/m3 a thousandth of g/cm3.
  const gelcoatG = (gelcoatMm * shape.jacketInnerCm2 * R.resinDensity.value) / 1e4;
  // The catalyst is left out of the mass: what it adds, about 1 %, the styrene that leaves takes away again.
  const massG = glassG + resinG + gelcoatG;
  return good({
    material: 'glass-mat',
    items: [
      { name: 'glass mat', massG: glassG, areaCm2 },
      { name: 'polyester resin', massG: resinG },
      ...(gelcoatG > 0 ? [{ name: 'gelcoat', massG: gelcoatG }] : []),
      { name: 'catalyst for the resin', massG: (resinG + gelcoatG) * set.catalystShare! },
    ],
    wetMassG: massG,
    dryMassG: massG,
    thicknessMm: gelcoatMm + layers.value * layerMm,
    layers: layers.value,
    cautions: ['polyester-styrene', 'polyester-catalyst', 'glass-dust'],
  });
}

const CM2_PER_M2 = 1e4;
