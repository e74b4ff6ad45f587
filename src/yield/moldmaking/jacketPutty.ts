import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { settleJacket } from './jacketMaterial';
import type { JacketAmounts, JacketMaterial, JacketSettings, JacketShape } from './jacketMaterial';
import { MOLDMAKING_RULES as R } from './rules';

/** Epoxy putty or paste: volume x density; nothing leaves when it hardens. */
export const jacketPutty: JacketMaterial = {
  key: 'putty',
  title: 'Epoxy putty',
  thickness: R.puttyWall,
  parameters: [{ key: 'puttyKgM3', title: 'Density of the putty', rule: R.puttyDensity }],
  build,
};

function build(shape: JacketShape, settings: JacketSettings = {}): Outcome<JacketAmounts> {
  const settled = settleJacket(shape, jacketPutty.parameters, settings);
  if (!settled.ok) return settled;
  const massG = (shape.jacketCm3 * settled.value.puttyKgM3!) / 1000;
  return good({
    material: 'putty',
    items: [{ name: 'epoxy putty', massG, volumeMl: shape.jacketCm3 }],
    wetMassG: massG,
    dryMassG: massG,
    thicknessMm: shape.jacketMm,
    cautions: ['putty-skin'],
  });
}
