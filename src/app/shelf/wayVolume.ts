import type { Piece } from '../../job/piece';
import { wordsOfPiece } from '../ticket/record';
import { displacedRead, fillRead, tapedRead } from '../ticket/wayReads';
import { VOLUME_BY, volumeText } from '../words/wayWords';

/** "4 478 cm³, 4 451 to 4 505, by the water fill": of a piece whose volume no scan tells. A sum: no engine is asked. */
export function wayVolumeWords(piece: Piece): string | undefined {
  const { words } = wordsOfPiece(piece);
  const { way } = words.sizing;
  const fill = fillRead(words);
  const by = fill.state === 'answered' ? 'fill' : way;
  const read = by === 'fill' ? fill : by === 'displace' ? displacedRead(words) : tapedRead(words);
  if (by === 'scan' || read.state !== 'answered') return undefined;
  const { value, low, high } = volumeText(by, read.answer);
  return `${value} cm³, ${low} to ${high}, by ${VOLUME_BY[by]}`;
}
