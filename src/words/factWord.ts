/** A fact in words: what it is, after "Not checked:", and what to enter for it. */
export interface FactWords {
  what: string;
  enter: string;
}
