/** How a number is known. The words are those of the screens and of the JSON. */
export type Source =
  | 'given'
  | 'file'
  | 'taped'
  | 'weighed'
  | 'scanned'
  | 'water-fill'
  | 'data-sheet'
  | 'cup-test'
  | 'assumed'
  | 'learned'
  | 'chosen';

/** A number that is never shown without its range and its source. The unit is in the name of the field that holds it. */
export interface Estimate {
  value: number;
  low: number;
  high: number;
  from: Source;
}

/** Something taken for granted until the user says otherwise. `name` carries no unit, `unit` does; an axis has none. */
export interface Assumption {
  name: string;
  value: number | string;
  unit: string;
  from: Source;
}
