import type { Field } from '../field/buildField';
import type { Samples } from '../field/sampleField';
import { shear } from '../molds/sheared';
import { sweptBy, toGrid, type Leaving } from '../molds/sweptBody';
import { gridAgain } from './gridAgain';

/** Filled by less than the first many steps is not filled but interpolated, by more than the second it is filled. Chosen here, from balls and boxes. */
const [NO_FILL, FILL] = [0.15, 0.4];

/**
 * The swept distance at the points of the field's grid. Along a pull askew to the grid it was interpolated there and back: where nothing is filled, the
 * distance itself is taken, which is exact near its levels.
 */
export function sweptGrid(field: Field, samples: Samples, leaving: Leaving): Float32Array {
  const sheared = shear(samples, { pull: toGrid(field, leaving.pull) });
  const swept = gridAgain(sheared, sweptBy(sheared, leaving), field.grid);
  if (sheared.slopeU === 0 && sheared.slopeV === 0) return swept;
  const { values } = samples;
  const step = field.grid.spacingMm;
  for (let v = 0; v < swept.length; v++) {
    const filled = (values[v]! - swept[v]!) / step;
    if (filled >= FILL) continue;
    const share = filled <= NO_FILL ? 0 : (filled - NO_FILL) / (FILL - NO_FILL);
    swept[v] = values[v]! - share * filled * step;
  }
  return swept;
}
