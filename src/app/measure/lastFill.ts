import type { BookRow } from '../../job/book';
import type { Piece } from '../../job/piece';
import type { FillOfBook as Fill } from '../ticket/sizingState';

/** A water fill as the Book has it, and when. */
export interface FillInBook {
  fill: Fill;
  day?: string;
}

/** Of the mold in hand; a row that names no mold counts where the piece has but one. */
export function lastFill(rows: readonly BookRow[], { id, molds, hand }: Piece): FillInBook | undefined {
  const isOnly = Object.keys(molds).length === 1;
  const fills = rows.flatMap((row) =>
    row.kind === 'fill' &&
    row.waterG !== undefined &&
    row.piece === id &&
    (row.mold === hand.mold || (row.mold === undefined && isOnly))
      ? [{ ...row, waterG: row.waterG }]
      : [],
  );
  const last = fills.reduce<(typeof fills)[number] | undefined>(
    (newest, row) => (newest === undefined || (row.day ?? '') >= (newest.day ?? '') ? row : newest),
    undefined,
  );
  if (last === undefined) return undefined;
  const { waterG, waterTempC, day } = last;
  return {
    fill: { waterG, ...(waterTempC === undefined ? {} : { waterTempC }) },
    ...(day === undefined ? {} : { day }),
  };
}
