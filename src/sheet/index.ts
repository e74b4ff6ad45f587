/** The pour sheet: what the caster holds, as HTML text. */
export { pourSheet, type SheetMeta } from './pourSheet';
export { moldSheet, type MoldSheetMeta } from './moldSheet';
export type { SectionFaces } from './sectionDrawing';
export { openingCard, type OpeningCardMeta } from './openingCard';
export { placeCard, type CardWarning, type PlaceCardMeta } from './placeCard';
