import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { settleJacket } from './jacketMaterial';
import type { JacketAmounts, JacketMaterial, JacketSettings, JacketShape } from './jacketMaterial';
import { MOLDMAKING_RULES as R } from './rules';

/**
 * Density of set and dried plaster, kg/m3, from water to plaster by mass: 1.186 / (1/2.70 + w) g/mL. The slurry keeps
 * its volume when it sets and the surplus water leaves pores. Within 1 % of casting plasters with w 0.38 to 0.74; the
 * densest gypsum stones (w 0.32) come out 10 % too light.
 */
export const dryPlasterKgM3 = (waterPerPlaster: number): number =>
  R.plasterGain.value * powderKgPerM3(waterPerPlaster);

/** Powder in a volume of slurry, kg/m3. */
const powderKgPerM3 = (waterPerPlaster: number): number =>
  1000 / (1000 / R.plasterParticle.value + waterPerPlaster);

/** Poured or laid plaster: powder and water fill the volume of the jacket together. No allowance for waste. */
export const jacketPlaster: JacketMaterial = {
  key: 'plaster',
  title: 'Plaster',
  thickness: R.plasterWall,
  parameters: [{ key: 'waterPerPlaster', title: 'Water to plaster, by mass', rule: R.plasterWater }],
  build,
};

function build(shape: JacketShape, settings: JacketSettings = {}): Outcome<JacketAmounts> {
  const settled = settleJacket(shape, jacketPlaster.parameters, settings);
  if (!settled.ok) return settled;
  const waterPerPlaster = settled.value.waterPerPlaster!;
  const powderG = (shape.jacketCm3 * powderKgPerM3(waterPerPlaster)) / 1000;
  const waterG = powderG * waterPerPlaster;
  return good({
    material: 'plaster',
    items: [
      { name: 'plaster powder', massG: powderG },
      { name: 'water', massG: waterG, volumeMl: waterG },
    ],
    wetMassG: powderG + waterG,
    dryMassG: (shape.jacketCm3 * dryPlasterKgM3(waterPerPlaster)) / 1000,
    thicknessMm: shape.jacketMm,
    cautions: ['plaster-heat', 'plaster-dust'],
  });
}
