/** From a cavity and everything told to a pour that is ready. */
export { hollowCavity, type HollowCavity, type HollowWish } from './hollow';
export { figuresOf, type OpenedFigure } from './figures';
export type { AirStep } from './air';
export type { Forces } from './forces';
export type { FoamFacts, PourAsk } from './pourAsk';
export { preparePour, type PreparedPour } from './preparePour';
export type { Times } from './times';
export type { Warmth } from './warmth';
