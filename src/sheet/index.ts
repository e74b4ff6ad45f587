/** The pour sheet: what the caster holds, as HTML text. */
export { pourSheet, type SheetMeta } from './pourSheet';
export { placeCard, type PlaceCardMeta } from './placeCard';
