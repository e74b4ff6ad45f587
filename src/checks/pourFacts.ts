import { INPUT_BOUNDS, POUR_BOUNDS, WARMTH_BOUNDS } from '../yield';
import type { DayOrNotYet } from './dates';
import {
  isAboveZero,
  isCount,
  isDayOrNotYet,
  isShare,
  isWithin,
  isYesOrNo,
  isZeroOrMore,
  type IsUsable,
} from './usable';

/** Facts that are one of a few words; the form shows them in this order. */
export const POUR_CHOICES = {
  /** Water in the cavity since it was last known to be dry: a water fill, a wash. */
  moldWater: ['none', 'not confirmed dry', 'confirmed dry'],
  /** As `panelStress` answers. */
  panelVerdict: ['holds', 'may crack', 'cracks'],
  mixingMethod: ['hand', 'drill', 'hand then drill'],
  airPressureFrom: ['barometer', 'height above the sea', 'weather report'],
} as const;

/** About one pour. Where a figure is worked out, the plan does that with the formulas of `yield`. */
export interface PourFactKinds {
  /** As they will be weighed, and the step of that scale. */
  partAG: number;
  partBG: number;
  scaleStepG: number;
  /** The typed ratio is that of the card in the other order. */
  ratioReversed: boolean;
  /** The grams and which part is which were read back from the drum labels. */
  ratioReadBack: boolean;
  packFactor: number;
  /** Liquid mix in the fullest cup, and that cup up to its rim. */
  liquidCm3: number;
  cupCm3: number;
  /** What the pour takes, and what is left for it until the mix creams; its low end too. */
  pourTimeS: number;
  pourWindowS: number;
  pourWindowLowS: number;
  /** Of the inner surface, measured. */
  moldTempC: number;
  /** Holes for air beside the opening, and how wide they are. */
  ventCount: number;
  ventMm: number;
  /** The opening stays open, or is closed with a plug that lets air out. */
  openingOpen: boolean;
  /** Widest flat part of the jacket without rib or board; 0: it has none. What it may be at most, and whether it bears the pressure. */
  panelSpanMm: number;
  panelLargestMm: number;
  /** What each strap must be pulled to at its buckle, and what it may bear. */
  strapBuckleN: number;
  strapWorkingN: number;
  /** High end of the band. */
  coreTempC: number;
  /** When the part in use that was opened first was opened. */
  foamOpenedOn: DayOrNotYet;
  /** A cup of this lot, risen and weighed on the day of the pour in the same room. */
  cupTestedToday: boolean;
  /** Time on the card after which the mold may be opened. */
  cardOpenMin: number;
  /** Push of the foam on plug or lid; 0: there is none. */
  plugN: number;
  /** By clamp, strap or weight, not by hand. */
  plugHeld: boolean;
  plugVented: boolean;
  /** Of not filling the mold, 0..1. */
  shortFillChance: number;
  /** A test report says that this foam, as it will be used, meets what the place of use asks for. */
  castingFireRated: boolean;
}

export const POUR_USABLE: Readonly<Record<keyof PourFactKinds, IsUsable>> = {
  partAG: isAboveZero,
  partBG: isAboveZero,
  scaleStepG: isWithin(INPUT_BOUNDS.scaleStepG),
  ratioReversed: isYesOrNo,
  ratioReadBack: isYesOrNo,
  packFactor: isAboveZero,
  liquidCm3: isWithin(POUR_BOUNDS.liquidCm3),
  cupCm3: isWithin(POUR_BOUNDS.cupCm3),
  pourTimeS: isAboveZero,
  pourWindowS: isZeroOrMore,
  pourWindowLowS: isZeroOrMore,
  moldTempC: isWithin(WARMTH_BOUNDS.moldTempC),
  ventCount: isCount,
  ventMm: isWithin(POUR_BOUNDS.ventMm),
  openingOpen: isYesOrNo,
  panelSpanMm: isZeroOrMore,
  panelLargestMm: isAboveZero,
  strapBuckleN: isZeroOrMore,
  strapWorkingN: isAboveZero,
  coreTempC: isWithin(WARMTH_BOUNDS.bodyTempC),
  foamOpenedOn: isDayOrNotYet,
  cupTestedToday: isYesOrNo,
  cardOpenMin: isWithin(WARMTH_BOUNDS.openMin),
  plugN: isZeroOrMore,
  plugHeld: isYesOrNo,
  plugVented: isYesOrNo,
  shortFillChance: isShare,
  castingFireRated: isYesOrNo,
};
