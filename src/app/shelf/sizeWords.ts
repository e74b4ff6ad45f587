import type { SeenSculpt } from '../../job/seen';
import { SOURCES } from '../words/sources';
import { rangeText } from '../../words/rangeText';

/** "263 × 230 × 291 mm", wide, deep and tall as it stands. */
export const extentsWords = ({ extentsMm }: NonNullable<SeenSculpt['size']>): string =>
  `${extentsMm.map((mm) => (mm < 10 ? mm.toFixed(1) : mm.toFixed(0))).join(' × ')} mm`;

/** "4 427 cm³, 4 420 to 4 434, taped". */
export function volumeWords({ volumeCm3 }: NonNullable<SeenSculpt['size']>): string {
  const { value, low, high } = rangeText(volumeCm3);
  return `${value} cm³, ${low} to ${high}, ${SOURCES[volumeCm3.from].word}`;
}
