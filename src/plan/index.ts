/** The one place where shapes meet numbers. */
export { ACCURACIES, type Accuracy } from './chooseVoxel';
export type { Cut } from './cuts';
export type { Offsets, OffsetVolume } from './offsets';
export { planPour, type Pour, type PourInputs } from './planPour';
export {
  FILE_UNITS,
  SAME_SCALE_SHARE,
  TAPE_TOLERANCE_MM,
  type Along,
  type FileUnit,
  type Scale,
  type ScaleMeasure,
  type Span,
  type TapedExtent,
} from './scale';
export type { ScanPieceWish, ScanShell } from './scanPieces';
export type { SizeDoubts } from './sizeDoubts';
export type { SizeOptions } from './sizeOptions';
export { sizeScan, type Size } from './sizeScan';
export * from './mold';
export * from './pour';
export * from './opening';
export type { CardDot, PlaceCard } from './placeCard';
