import type { UpAxis } from '../geometry';
import type { Cut } from './cuts';
import type { OffsetOptions } from './offsets';
import type { FileUnit, ScaleMeasure, Span, TapedExtent } from './scale';
import type { ScanPieceWish } from './scanPieces';

/** How a scan is to be taken, and what to measure beside its volume. */
export interface SizeOptions {
  fileUnit?: FileUnit;
  taped?: readonly TapedExtent[];
  span?: Span;
  /** Which of these sets the scale, where it is not the first of span, tape and unit; the others check it. */
  scaleBy?: ScaleMeasure;
  /** Which axis of the file is up as poured; +z is assumed, and said, when it is not given. */
  up?: UpAxis;
  cuts?: readonly Cut[];
  /** What is decided of pieces of the scan, against the rule. */
  pieces?: ScanPieceWish;
  /** Volumes of the body grown (positive) or shrunk (negative) by these distances, all round. */
  offsetsMm?: readonly number[];
  accuracy?: OffsetOptions['accuracy'];
  /** Edge of the field's voxels; chosen from the piece when left out. */
  voxelMm?: number;
  /** Threads that help with the field. */
  crew?: OffsetOptions['crew'];
  /** Looked at while the field works, about every 10 ms; true ends in STOPPED. */
  shouldStop?: () => boolean;
  onProgress?: (share: number) => void;
  /** Also the area of the shadow along this axis: what pressure pushes a mold apart on that opens that way. */
  shadowAlong?: 'x' | 'y' | 'z';
}
