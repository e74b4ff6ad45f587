import type { MoldShape } from '../../geometry';
import type { MoldAsk } from './moldWish';
import type { Surroundings } from './surroundings';

/** Keys of the cautions that belong to the materials at hand: rubber by its cure (both, while that is unknown), clay, jacket, vacuum pot, weight. */
export function cautionKeys(
  shape: MoldShape,
  { jacket, findings }: Surroundings,
  { silicone, work }: MoldAsk,
): string[] {
  const cure = silicone?.cure;
  return [
    ...(cure === 'addition' ? [] : ['condensation-silicone']),
    ...(cure === 'condensation' ? [] : ['addition-silicone']),
    // Brushed rubber is thickened, and fillers dust.
    ...(shape.coats === undefined ? [] : ['silica-dust']),
    ...(shape.clay.length === 0 ? [] : ['clay']),
    ...(jacket?.cautions ?? []),
    ...(work?.degassed === true ? ['vacuum-pot'] : []),
    ...(findings.some(({ code }) => code === 'LIFT_HEAVY') ? ['heavy-lift'] : []),
  ];
}
