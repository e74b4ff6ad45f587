import type { Vector } from '../geometry';

/** A place on the picture with a short name, in the picture's units from its middle. A numbered row has a box; without `isRow` it is a point that was picked, a ring. */
export interface Mark {
  label: string;
  at: Vector;
  isRow?: boolean;
  /** Which way the surface faces there: tells near from far before anything is looked up. */
  normal?: Vector | undefined;
  /** A line from the place to here: a vent up to the outside. */
  upTo?: Vector | undefined;
  /** A ring of this true radius around the place, flat on `normal`: an opening. */
  ringRadius?: number | undefined;
}

/** Picks marks, and shows the one that is asked for. */
export interface Picking {
  /** The label of what is picked. */
  picked: string | undefined;
  /** The eye turns to it; `times` tells a second wish for the same one. */
  asked: { label: string; times: number } | undefined;
  onPick: (label: string) => void;
}
