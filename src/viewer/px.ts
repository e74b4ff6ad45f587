/** A place on the card, px from its upper left corner. */
export interface Px {
  x: number;
  y: number;
}
