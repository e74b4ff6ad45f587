import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { layersFor, meanFaceCm2, settleJacket } from './jacketMaterial';
import type { JacketAmounts, JacketMaterial, JacketSettings, JacketShape } from './jacketMaterial';
import { MOLDMAKING_RULES as R } from './rules';

/** Plaster bandage: layers x area x overlap x what a layer weighs. The spread between brands is large: weigh a strip. */
export const jacketBandage: JacketMaterial = {
  key: 'bandage',
  title: 'Plaster bandage',
  thickness: R.bandageWall,
  parameters: [
    { key: 'layers', title: 'Layers', rule: R.bandageLayers, isDerived: true },
    { key: 'layerMm', title: 'Thickness of a layer', rule: R.bandageLayer },
    { key: 'wetGPerM2', title: 'A layer, wet', rule: R.bandageWet },
    { key: 'dryGPerM2', title: 'A layer, dry', rule: R.bandageDry },
    { key: 'overlapFactor', title: 'Overlap', rule: R.bandageOverlap },
  ],
  build,
};

function build(shape: JacketShape, settings: JacketSettings = {}): Outcome<JacketAmounts> {
  const settled = settleJacket(shape, jacketBandage.parameters, settings);
  if (!settled.ok) return settled;
  const set = settled.value;
  const layerMm = set.layerMm!;
  const layers = layersFor({ layers: set.layers, thicknessMm: shape.jacketMm, layerMm });
  if (!layers.ok) return layers;
  const areaCm2 = meanFaceCm2(shape) * layers.value * set.overlapFactor!;
  return good({
    material: 'bandage',
    items: [{ name: 'plaster bandage', areaCm2 }],
    wetMassG: (areaCm2 * set.wetGPerM2!) / CM2_PER_M2,
    dryMassG: (areaCm2 * set.dryGPerM2!) / CM2_PER_M2,
    thicknessMm: layers.value * layerMm,
    layers: layers.value,
    cautions: ['plaster-heat', 'plaster-dust'],
  });
}

const CM2_PER_M2 = 1e4;
