import type { Floor, ScanFile, SolidMeasure } from '../geometry';
import type { Cut } from './cuts';
import type { Offsets } from './offsets';
import type { Scale } from './scale';
import type { PieceEffects, ScanShell } from './scanPieces';
import type { SizeDoubts } from './sizeDoubts';

/** What the findings of a size are told from. */
export interface SizeFacts {
  scan: ScanFile;
  solid: SolidMeasure;
  scale: Scale;
  doubts: SizeDoubts;
  cuts: readonly Cut[];
  floor: Floor | undefined;
  removedCm3: number | undefined;
  /** As `solid.shells`, in the same order. */
  shells: readonly ScanShell[];
  pieceEffects: PieceEffects;
  offsets: Offsets | undefined;
  offsetsWanted: boolean;
}
