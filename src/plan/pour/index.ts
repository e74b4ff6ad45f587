/** From a cavity and everything told to a pour that is ready. */
export { filledVolume, type Filled, type StandsInside } from './filledVolume';
export { hollowCavity, scannedCore, type Core, type HollowCavity, type HollowWish } from './hollow';
export { figuresOf, type OpenedFigure, type OpenedInput, type Shown } from './figures';
export { ENDS_Z, type JustFills } from './justFills';
export type { AirStep } from './air';
export type { Forces } from './forces';
export type { FoamFacts, PourAsk } from './pourAsk';
export { preparePour, type PreparedPour } from './preparePour';
export type { Times } from './times';
export { WARM_BASIS, type Warmth } from './warmth';
