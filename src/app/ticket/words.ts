import type { UpAxis } from '../../geometry';
import type { Along, FileUnit } from '../../plan';
import { blankFields, type Fields } from './fields';
import { newFoam, type FoamSaid } from './foamState';
import { newMeasuring, type Measuring } from './measuringState';
import { newMolding, type Molding } from './moldState';
import { newPouring, type Pouring } from './pourState';
import { newFilling, newSizing, type Filling, type Sizing } from './sizingState';
import { newVenting, type Venting } from './ventingState';

export type CutChoice = { by: 'floor'; atUnits: number } | { by: 'height' };

/** What the user said: kept, undone, and in the backup. A blank one: nobody has said so. */
export interface Words {
  fields: Fields;
  /** The name of the scan among those that are kept. Its facets are not words: they are read again. */
  scanId: string | undefined;
  up: { axis: UpAxis; confirmed: boolean };
  scaleWay: 'tape' | 'unit';
  along: Along;
  fileUnit: FileUnit | undefined;
  cut: CutChoice | undefined;
  keep: 'above' | 'below';
  measuring: Measuring;
  sizing: Sizing;
  filling: Filling;
  foam: FoamSaid;
  molding: Molding;
  pouring: Pouring;
  venting: Venting;
}

export const newWords = (): Words => ({
  fields: blankFields(),
  scanId: undefined,
  up: { axis: '+z', confirmed: false },
  scaleWay: 'tape',
  along: 'tall',
  fileUnit: undefined,
  cut: undefined,
  keep: 'above',
  measuring: newMeasuring(),
  sizing: newSizing(),
  filling: newFilling(),
  foam: newFoam(),
  molding: newMolding(),
  pouring: newPouring(),
  venting: newVenting(),
});

const WORD_KEYS = Object.keys(newWords()) as (keyof Words)[];

/** The words alone, of a ticket that has more. */
export const wordsOf = (ticket: Words): Words =>
  Object.fromEntries(WORD_KEYS.map((key) => [key, ticket[key]])) as unknown as Words;

/** Nothing else was said: the same objects, for a ticket is never changed in place. */
export const isSameWords = (one: Words, other: Words): boolean =>
  WORD_KEYS.every((key) => one[key] === other[key]);
