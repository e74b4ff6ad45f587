import type { BaseChoice, Vector } from '../../geometry';

/** How one mold is opened, vented, poured and pulled off. Places in mm on the placed piece, its base on the board. What is left out is chosen and said. */
export interface OpeningAsk {
  base?: BaseChoice;
  opening?: {
    /** Moved onto the surface. Left out: the middle of the face on the board, else the highest point. */
    atMm?: Vector;
    diameterMm?: number;
    /** Largest share of the section across it that it may take. */
    shareMost?: number;
  };
  /** Up when poured, any length; left out: the way the opening faces. */
  pourUp?: Vector;
  /** Vents that are planned already. */
  vents?: readonly Vector[];
  ventMm?: number;
  /** Foam thinner than this is thin. */
  thinMm?: number;
  /** Also look for the way up that shuts in the least air. */
  searchUp?: boolean;
  pour?: OpeningPour;
  rubber?: {
    /** As the data sheet says; 3 is 300 %. */
    elongationAtBreak?: number;
    /** Share of its girth that the foam gives when squeezed. */
    squash?: number;
    /** The rubber around the opening stays on while the casting is pulled through it. */
    staysOn?: boolean;
  };
}

/** What is known of the pour. */
export interface OpeningPour {
  freeRiseKgM3?: number;
  packFactor?: number;
  liquidKgM3?: number;
  /** Liquid that is poured; left out: from free rise, pack and the cavity. */
  liquidCm3?: number;
  /** Time left to pour. */
  withinS?: number;
  mixPaS?: number;
  /** Length of the opening's tube and height of the liquid over it. */
  sprueLengthMm?: number;
  headMm?: number;
  /** From full to still. */
  riseS?: number;
  /** Apparent viscosity of the rising foam: only what trimmed risers taught. */
  foamPaS?: number;
}
