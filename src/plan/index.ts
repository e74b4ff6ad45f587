/** The one place where shapes meet numbers. */
export type { Cut } from './cuts';
export { planPour, type Pour, type PourInputs } from './planPour';
export {
  FILE_UNITS,
  TAPE_TOLERANCE_MM,
  type Along,
  type FileUnit,
  type Scale,
  type Span,
  type TapedExtent,
} from './scale';
export type { SizeDoubts } from './sizeDoubts';
export { sizeScan, type Size, type SizeOptions } from './sizeScan';
