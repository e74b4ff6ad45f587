import type { CheckFacts } from '../../checks';
import type {
  AirOfDay,
  ColorShare,
  MeasuredPeak,
  PackLevels,
  PastCasting,
  PourPrices,
  StrapSettings,
  WallInAir,
} from '../../yield';
import type { PourInputs } from '../planPour';

/** What the data sheet says of the foam beside its density and ratio, or a log of one's own. */
export interface FoamFacts {
  creamS?: number;
  openMin?: number;
  /** Temperature that these times and the density hold for. */
  timesAtC?: number;
  /** Share of NCO in part A, of water in part B, by mass. */
  ncoShare?: number;
  waterShare?: number;
}

export type WarmAssumed = 'sides' | 'surroundings' | 'targetTempC';

/** Everything about a pour. Only `pour` is needed; what is left out is not reckoned, or assumed and said. */
export interface PourAsk {
  pour: PourInputs;
  foam?: FoamFacts;
  /** The air of the day, and what the density was found in. */
  air?: AirOfDay & { then?: AirOfDay };
  roomC?: number;
  /** Of A and B as they are mixed; the room's when left out. */
  ingredientsC?: number;
  moldC?: number;
  cups?: { cupCm3?: number; cupFillShare?: number; mixers?: number; mixS?: number; carryS?: number };
  clamp?: {
    /** Shadow of the cavity along the direction in which the mold opens, cm2. */
    projectedCm2?: number;
    lidG?: number;
    straps?: StrapSettings;
    measuredPeak?: MeasuredPeak;
    /** Thickness of the rigid jacket, for its flat parts. */
    jacketMm?: number;
    /** Area of a plug or lid that closes the opening; 0 says that there is none. */
    plugCm2?: number;
  };
  /** The mold's wall and what it is warmed in; starts at the room's temperature unless said. */
  warm?: Omit<WallInAir, 'startTempC'> & {
    startTempC?: number;
    targetTempC: number;
    toTempC?: number;
    /** What of it nobody has said: it is told as assumed. */
    assumed?: readonly WarmAssumed[];
  };
  /** Surface of the casting: for how much pack the skin alone takes. */
  castingCm2?: number;
  skinMm?: number;
  packs?: PackLevels;
  prices?: PourPrices;
  past?: readonly PastCasting[];
  colors?: readonly ColorShare[];
  core?: { coreCm3: number; coreG?: number; neckCm2?: number };
  facts?: CheckFacts;
}
