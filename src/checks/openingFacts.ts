import { DEMOLD_BOUNDS, POUR_BOUNDS } from '../yield';
import { isAboveZero, isWithin, isZeroOrMore, type IsUsable } from './usable';

/** About opening, vents and demolding of one mold. Every one is measured on the shape or worked out; the plan does that. */
export interface OpeningFactKinds {
  /** Diameter of the pour opening, and the band that is advised for it (`openingBand`). */
  openingMm: number;
  openingLeastMm: number;
  openingMostMm: number;
  /** Area of the opening over the largest section of the cavity across it, 0..1. */
  openingShare: number;
  /** Air that level filling leaves in high spots: with the vents as they are, and after the advised ones. */
  trappedCm3: number;
  trapLeftCm3: number;
  /** Ceiling of the cavity that is within ten degrees of level as it is poured. */
  flatCeilingCm2: number;
  /** All the liquid that is poured, and what the mold holds as it stands before some runs out. */
  pouredLiquidCm3: number;
  holdCm3: number;
  /** Thinnest place of the casting, and of the rubber between two of its parts. */
  castingThinnestMm: number;
  rubberThinnestMm: number;
  /** Length over thickness of the most slender part. */
  slenderness: number;
  /** Stretch that the rubber needs where it is tightest; below 0 the casting comes out without. */
  demoldStretch: number;
  /** Of this rubber, as its data sheet says; 3 is 300 %. */
  elongationAtBreak: number;
  /** Slit with which the allowed stretch is enough. */
  slitMm: number;
}

export const OPENING_USABLE: Readonly<Record<keyof OpeningFactKinds, IsUsable>> = {
  openingMm: isWithin(POUR_BOUNDS.sprueMm),
  openingLeastMm: isAboveZero,
  openingMostMm: isZeroOrMore,
  openingShare: isZeroOrMore,
  trappedCm3: isZeroOrMore,
  trapLeftCm3: isZeroOrMore,
  flatCeilingCm2: isZeroOrMore,
  pouredLiquidCm3: isWithin(POUR_BOUNDS.liquidCm3),
  holdCm3: isZeroOrMore,
  castingThinnestMm: isZeroOrMore,
  rubberThinnestMm: isZeroOrMore,
  slenderness: isZeroOrMore,
  demoldStretch: isWithin(DEMOLD_BOUNDS.stretchShare),
  elongationAtBreak: isWithin(DEMOLD_BOUNDS.elongationAtBreak),
  slitMm: isZeroOrMore,
};
