import type { FieldName } from '../ticket/fields';

/** What a field holds, where its label is not beside it. */
export const FIELD_WORDS: Record<FieldName, string> = {
  tape: 'The taped length',
  cutHeight: 'The cut',
  freeRise: 'The free rise',
  partsA: 'The parts of A',
  partsB: 'The parts of B',
  densityA: 'The density of A',
  densityB: 'The density of B',
  pack: 'The pack factor',
  riser: 'The riser',
  vents: 'The vents',
  residue: 'The residue',
  scaleStep: 'The scale step',
};

export const lowerFirst = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
