import type { Estimate } from '../estimate';
import { good, type Outcome } from '../problem';
import { volumeByGirth, VOLUME_RULES as R, type BatchAssumption, type TapedBody } from '../yield';
import type { OptionValues } from './command';
import { assumedOf } from './fillAssumed';
import { tapedBodies } from './girthBodies';

export interface Girth {
  volumeCm3: Estimate;
  /** Kind by kind, each in the order it was given. */
  parts: { body: TapedBody; volumeCm3: Estimate }[];
  assumptions: BatchAssumption[];
}

/** The volume of all bodies, and of each. Errors: BAD_CALL, INPUT_OUT_OF_BOUNDS. */
export function girthCall(options: OptionValues): Outcome<Girth> {
  const bodies = tapedBodies(options);
  if (!bodies.ok) return bodies;
  const volume = volumeByGirth(bodies.value);
  if (!volume.ok) return volume;
  const parts: Girth['parts'] = [];
  for (const body of bodies.value) {
    const one = volumeByGirth([body]);
    if (!one.ok) return one;
    parts.push({ body, volumeCm3: one.value });
  }
  const has = (isOne: (body: TapedBody) => boolean): boolean => bodies.value.some(isOne);
  return good({
    volumeCm3: volume.value,
    parts,
    assumptions: [
      ...(has(({ kind }) => kind !== 'box') ? [assumedOf('roundness', R.roundness)] : []),
      ...(has(({ kind }) => kind === 'box') ? [assumedOf('box_fill', R.boxFill)] : []),
      assumedOf('u_tape', R.tapeU),
    ],
  });
}
