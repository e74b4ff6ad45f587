import type { Filled } from '../../plan';
import { formatVolume } from '../../units';
import { rangeText } from '../../words/rangeText';

/** What is left for foam where something stands in the cavity; nothing where nothing does. */
export function insideWords(filled: Filled | undefined): string {
  if (filled === undefined) return '';
  const { coreCm3 = 0, armatureCm3 = 0, volumeCm3 } = filled;
  const less = [
    ...(coreCm3 > 0 ? [`its core of ${formatVolume(coreCm3)}`] : []),
    ...(armatureCm3 > 0 ? [`the armature of ${formatVolume(armatureCm3)}`] : []),
  ];
  if (less.length === 0) return '';
  const { value, low, high } = rangeText(volumeCm3);
  return `Less ${less.join(' and ')}, ${value} cm³ are left for foam (${low} to ${high}).`;
}
