import { formatLength } from '../units';
import { amount, counted, type Sentence, type Values } from './sentence';

/** The codes of the plan that are about pieces. */
type PieceCode = 'PIECE_LEFT_OUT' | 'PIECES_TAKEN' | 'PIECE_LOST' | 'NOTHING_LEFT';

/** What was decided of pieces of the scan, and what could not be done of it. */
export const PIECE_WORDS: Record<PieceCode, (v: Values) => Sentence> = {
  PIECE_LEFT_OUT: (v) => ({
    text: `A separate piece is left out, as you said: ${pieceSizeWords(v)}.`,
    hint:
      v.effectCm3 === undefined
        ? 'What that changed is not known: with it the scan has no volume.'
        : `By itself it holds ${amount(v.holdsCm3)} cm³.`,
  }),
  PIECES_TAKEN: taken,
  PIECE_LOST: (v) => ({
    text: `${counted(v.count, 'piece')} that you left out ${v.count === 1 ? 'is' : 'are'} not found as ${v.count === 1 ? 'it was' : 'they were'}.`,
    hint: 'The cut may have taken a piece, or the part of it that named it. What is left of it counts: look at the pieces below, and leave it out again.',
  }),
  NOTHING_LEFT: (v) => ({
    text: `Without the ${counted(v.count, 'piece')} left out there is no volume.`,
    hint: 'Put one back: what is left is open or encloses nothing.',
  }),
};

function taken(v: Values): Sentence {
  const one = v.count === 1;
  if (v.part === 'specks')
    return {
      text: `${counted(v.count, 'floating speck')} count${one ? 's' : ''}, as you said.`,
      hint: 'By rule specks are scan noise and left out.',
    };
  if (v.part === 'filled')
    return {
      text: `${counted(v.count, 'inner surface')} ${one ? 'is' : 'are'} left out, as you said: the piece is taken as full.`,
      hint: 'By rule an inner surface is a hollow.',
    };
  return {
    text: `${counted(v.count, 'piece')} inside a solid ${one ? 'is' : 'are'} taken off as ${one ? 'a hollow' : 'hollows'}, as you said.`,
    hint: 'By rule a solid in a solid counts for nothing.',
  };
}

/** "30 mm (1.18 in) wide, …" */
export function pieceSizeWords({ wideMm, deepMm, tallMm }: Values): string {
  const [wide, deep, tall] = [wideMm, deepMm, tallMm].map((mm) => formatLength(Number(mm))) as [
    string,
    string,
    string,
  ];
  return `${wide} wide, ${deep} deep, ${tall} tall`;
}
