import type { MaterialFacts } from '../../checks';
import type { MoldKey, MoldWish } from '../../geometry';
import type { JacketSettings, KnownShrink, SiliconeCard, SiliconeStock } from '../../yield';

/** What is known of the rubber: the card of the shop, or its figures typed in. */
export type SiliconeWish = Partial<Omit<SiliconeCard, 'name' | 'kits'>> & {
  name?: string;
  kits?: SiliconeCard['kits'];
  stock?: readonly SiliconeStock[];
};

/** How the shop works; what is left out is assumed and said so. */
export interface WorkWish {
  wasteShare?: number;
  cupLossG?: number;
  scaleStepG?: number;
  roomC?: number;
  /** Cup or pail that is mixed in. */
  containerCm3?: number;
  degassed?: boolean;
  /** Absolute, of the vacuum it is degassed at. */
  degasPressureKPa?: number;
  /** What stays on an upright stick for a minute, mm: tells how thick a coat may be. */
  staysMm?: number;
}

export interface MoldAsk {
  type: MoldKey;
  /** Parameters of the type, by key. */
  settings?: MoldWish;
  silicone?: SiliconeWish;
  work?: WorkWish;
  jacketMaterial?: string;
  jacketSettings?: JacketSettings;
  /** Mass of the sculpt with what is fixed to it. */
  sculptMassG?: number;
  box?: { material?: string; wallMm?: number };
  /** For the size of the cavity when the foam is poured. */
  castingTempC?: number;
  measuredShrink?: KnownShrink;
  facts?: MaterialFacts;
  finish?: FinishWish;
}

/** Paint, sealer and glue by the user's own figures. */
export interface FinishWish {
  textureFactor?: number;
  paint?: { coverageM2: number; coats: number };
  seal?: { coverageM2: number; coats: number };
  /** Faces to be bonded, and what one square meter of face takes. */
  bond?: { faceCm2: number; gPerM2?: number };
  /** Share of the surface without a closed skin. */
  openShare?: number;
}

/** A volume of the mold with its range. */
