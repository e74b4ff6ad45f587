/** The one place where shapes meet numbers. */
export { planPour, type Pour, type PourInputs } from './planPour';
export {
  FILE_UNITS, TAPE_TOLERANCE_MM, type Along, type FileUnit, type Scale, type Span, type TapedExtent,
} from './scale';
export { sizeScan, type Size, type SizeDoubts, type SizeOptions } from './sizeScan';
