/** The library: one engine for the app, the command line and your own program. A table of contents. */
export * from './units';
export * from './problem';
export * from './estimate';
export * from './yield';
export * from './geometry';
export * from './geometry/solids';
export * from './plan';
export { offsetSurface } from './plan/offsetSurface';
export { readShop, foamNamed, siliconeNamed, stockOf, type Shop } from './job/shop';
export * from './checks';
export {
  moldSheet,
  openingCard,
  placeCard,
  pourSheet,
  type CardWarning,
  type MoldSheetMeta,
  type OpeningCardMeta,
  type PlaceCardMeta,
  type SectionFaces,
  type SheetMeta,
} from './sheet';
export { say } from './words/say';
export type * from './apiTypes';
