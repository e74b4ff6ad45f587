import type { Offsets } from '../plan';
import { formatLength, type Show } from '../units';
import { amount } from './sentence';

/** Why the field was as fine as it was, and what its offsets are of. */
export function offsetBecause({ voxel, accuracy, volumes, check }: Offsets, show: Show = 'both'): string[] {
  const edge = formatLength(voxel.voxelMm, show);
  const goes =
    voxel.isLimited === true ? `as far as accuracy ${accuracy} goes toward voxels by which` : 'so that';
  const why = {
    given: 'as you said',
    size: `from the size of the piece (accuracy ${accuracy})`,
    offset: `${goes} the offset nearest to the surface is told apart from it`,
    wall: `${goes} the thinnest walls are more than a voxel thick`,
  }[voxel.because];
  const field = `Offsets by a distance field of voxels of ${edge}, ${why}; the distances are exact, the voxels only add them up.`;
  const second = `The volume of the piece itself, by the field: ${amount(check.fieldCm3, 6)} cm³, ${amount(Math.abs(check.differenceCm3), 2)} cm³ ${check.differenceCm3 < 0 ? 'less' : 'more'} than above; they should agree within ${amount(check.toleranceCm3, 2)} cm³.`;
  if (volumes[0]?.envelopeCm3 === undefined) return [field, second];
  return [
    field,
    second,
    'The piece is hollow: an offset of the solid narrows its hollow too. Silicone and jacket go round the envelope, foam fills the solid; both are given.',
  ];
}
