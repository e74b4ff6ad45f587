/** From a sculpt to its opening, vents, way up, thin places and the way out. */
export { attitudeScore } from './attitudes';
export type { Demold, Squeeze } from './demold';
export type { LevelFill, Trap } from './filling';
export type { OpeningAsk, OpeningPour } from './openingAsk';
export type { OpeningSize } from './openingSize';
export type { MarkedPlace, MarkedFacts } from './places';
export type { OpeningPlace } from './placeOpening';
export type { OpeningPlan } from './openingPlan';
export { paintThickness, type PaintedThickness } from './paintThickness';
export { planOpening } from './planOpening';
export type { ThicknessFound, ThinSpot } from './thin';
export type { VentFlow } from './ventFlow';
