import type { DEMOLD_BOUNDS } from '../yield';

/** What the numbers of taking a casting out are called when one of them is refused. */
export const DEMOLD_INPUT_WORDS: Readonly<Record<keyof typeof DEMOLD_BOUNDS, string>> = {
  widestMm: 'Widest girth of the casting',
  tightestMm: 'Girth of the tight place',
  squash: 'How far the foam is squashed',
  elongationAtBreak: 'Stretch of the rubber at break',
  allow: 'Allowed stretch',
  stretchShare: 'Stretch of the rubber',
  shoreA: 'Hardness in Shore A',
  lipMm: 'Thickness of the lip',
  lipGirthMm: 'Girth of the lip',
  thinMm: 'What counts as thin',
  placeMm: 'A coordinate of a place',
  modulusMPa: 'Stiffness of the rubber',
};
