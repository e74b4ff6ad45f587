import type { Problem } from '../../problem';
import { say } from '../../words/say';
import type { Sentence } from '../../words/sentence';

/** On the page the next step is a field or a button, not an option of a command. */
const HINTS: Partial<Record<Problem['code'], string>> = {
  SCALE_UNKNOWN: 'Tape one side of the piece, or choose the unit.',
  FLOOR_FOUND: 'If it is the table, cut it off; if it is the foot of the piece, leave it.',
  SCALE_OVERLOADED: 'Use a scale that takes more, or put right what it takes, in question 3.',
  UNSUPPORTED_FORMAT: 'Export the scan as STL, OBJ, PLY or 3MF.',
  MIN_FILL_UNKNOWN: 'A short pour tells it: the mass of the part over the volume it filled.',
};

/** A sentence names the option of a command in brackets, behind what it is in words. */
const withoutOptions = (words: string): string => words.replace(/ \(--[a-z][^)]*\)/g, '');

export function sayOnPage(problem: Problem): Sentence {
  const said = say(inPercent(problem));
  const [text, hint] = [withoutOptions(said.text), withoutOptions(said.hint)];
  if (problem.values.floorUnits !== undefined)
    return { text, hint: 'If it stands on a table, cut that off: question 4 has the button.' };
  return { text, hint: HINTS[problem.code] ?? hint };
}

/** A share is typed in percent on this page: its bounds are told in percent too. */
function inPercent(problem: Problem): Problem {
  const { input, value, low, high } = problem.values;
  if (problem.code !== 'INPUT_OUT_OF_BOUNDS' || !String(input).endsWith('Share')) return problem;
  const percent = (share: unknown): number => Number((100 * Number(share)).toPrecision(12));
  const told = { value: percent(value), low: percent(low), high: percent(high), unit: '%' };
  return { ...problem, values: { ...problem.values, ...told } };
}
