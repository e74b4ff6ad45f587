import { extentsOf, turnBounds, type Bounds, type UpAxis } from '../../geometry';
import { amount } from '../../words/sentence';

/** The sides of the whole file with an axis up, in its units. */
export function upWords(boundsUnits: Bounds, up: UpAxis): string[] {
  const [wide, deep, tall] = extentsOf(turnBounds(boundsUnits, { up, mmPerUnit: 1 }));
  return [`${amount(tall)} tall`, `${amount(wide)} wide`, `${amount(deep)} deep`];
}
