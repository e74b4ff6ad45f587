import { cavityOf, type BookRow } from '../../job/book';
import type { Piece } from '../../job/piece';
import { seenSculpt } from '../../job/seen';
import { learnScanFactor, type ScanFactor } from '../../yield';

/** A piece of which both the scan was measured and the mold filled with water. */
export interface ScannedPiece {
  piece: Piece;
  scanCm3: number;
  cavityCm3: number;
}

export interface ScanFactors {
  pieces: ScannedPiece[];
  /** Of the shop. */
  factor: ScanFactor | undefined;
}

/** Mold against scan, piece by piece. A piece that something stands in is left out: its cavity is not its sculpt. */
export function scanFactors(
  pieces: readonly Piece[],
  rows: readonly BookRow[],
  version: string,
): ScanFactors {
  const filled = pieces.flatMap((piece): ScannedPiece[] => {
    const scanCm3 = seenSculpt(piece, version)?.size?.volumeCm3.value;
    const isFilled = rows.some((row) => row.kind === 'fill' && row.piece === piece.id);
    const cavityCm3 = isFilled ? cavityOf({ piece: piece.id }, rows) : undefined;
    return scanCm3 === undefined || cavityCm3 === undefined || hasInside(piece)
      ? []
      : [{ piece, scanCm3, cavityCm3 }];
  });
  const learned = learnScanFactor(filled);
  return { pieces: filled, factor: learned.ok ? learned.value : undefined };
}

const hasInside = ({ molds }: Piece): boolean =>
  Object.values(molds).some(({ fields }) =>
    ['coreVolume', 'armature'].some((name) => (fields[name]?.text ?? '').trim() !== ''),
  );
