/** The pour sheet: what the caster holds, as HTML text. */
export { pourSheet, type SheetMeta } from './pourSheet';
