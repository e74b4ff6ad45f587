import type { TypedField } from '../../yield';

/** What every row of the book may say. `id` is a text without a meaning, of that row alone. */
interface AnyRow {
  id: string;
  /** YYYY-MM-DD. */
  day?: string;
  note?: string;
}

/** Of a lot: its foam card by name, and what stands on the containers; `lotB` where B is of another lot. */
interface OfFoam {
  foam?: string;
  lot?: string;
  lotB?: string;
  roomC?: number;
}

/** A pour as it was weighed back. Whatever was not weighed or looked at is left out. */
export interface PourRow extends AnyRow, OfFoam {
  kind: 'pour';
  /** Of the casting: TROLL-13 is 13. */
  no?: number;
  /** Piece and mold by id or by name. */
  piece?: string;
  mold?: string;
  casting?: string;
  /** Molded over free-rise density, as it was planned. */
  pack?: number;
  moldC?: number;
  opening?: 'open' | 'plug';
  /** A and B together as they were planned, of a pour of which nobody knows A and B apart: a mix in the wrong unit is seen by it. */
  plannedG?: number;
  /** As it was planned with; a water fill in the book wins over it. */
  cavityCm3?: number;
  aG?: number;
  bG?: number;
  /** In the cup beside A and B; the mix is weighed with it. */
  colorG?: number;
  mixedG?: number;
  residueG?: number;
  castingG?: number;
  trimG?: number;
  filled?: 'full' | 'short';
  /** What was missing of a short one. */
  voidCm3?: number;
  /** From 1 to 5. */
  skin?: number;
  /** Nothing is learned from it, and nothing asked; it stays in the book. */
  isLeftOut?: boolean;
  /** What was asked about and is to stay as it was typed: not asked again, and nothing is learned from it. */
  keptAsTyped?: AskedField[];
  /** Of the casting, by its id among the shop's photos. */
  photo?: string;
}

/** What a question can be about: one field, or that the weights do not add up. */
export type AskedField = TypedField | 'balance';

/** Cups of one test, level with the rim: what the cup holds of water, and the foam of each. */
export interface CupRow extends AnyRow, OfFoam {
  kind: 'cup';
  waterG?: number;
  waterTempC?: number;
  foamsG?: number[];
}

/** A mold filled with water to the rim. */
export interface FillRow extends AnyRow {
  kind: 'fill';
  piece?: string;
  mold?: string;
  waterG?: number;
  waterTempC?: number;
}

export type BookRow = PourRow | CupRow | FillRow;
