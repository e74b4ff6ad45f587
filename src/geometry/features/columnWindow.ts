import { columnsThrough, type ColumnGrid, type Columns, type UprightBody } from './columns';

/** A stretch of a grid, finer by a whole factor: every column of the coarse grid is one of the fine one too. */
export interface ColumnWindow {
  fine: Columns;
  factor: number;
  /** Coarse place and row of the first fine column. */
  place0: number;
  row0: number;
}

/** Coarse places and rows, both ends included. */
export interface Stretch {
  place0: number;
  place1: number;
  row0: number;
  row1: number;
}

/** The columns of a stretch of a grid, made `factor` times as dense. */
export function windowOn(
  body: UprightBody,
  grid: ColumnGrid,
  { place0, place1, row0, row1 }: Stretch,
  factor: number,
): ColumnWindow {
  const stepMm = grid.stepMm / factor;
  const fine = columnsThrough(body, {
    stepMm,
    u0: grid.u0 + place0 * grid.stepMm,
    v0: grid.v0 + row0 * grid.stepMm,
    columns: (place1 - place0) * factor + 1,
    rows: (row1 - row0) * factor + 1,
  });
  return { fine, factor, place0, row0 };
}

/**
 * Marks of the coarse runs carried over to the fine columns that stand in the same places: those have the same runs, as the crossings are the same. Where
 * rounding makes them differ in number, nothing is carried.
 */
export function carryMarks(
  { fine, factor, place0, row0 }: ColumnWindow,
  coarse: Columns,
  markOf: (run: number) => number,
): Uint8Array {
  const marks = new Uint8Array(fine.count);
  for (let row = 0; row < fine.grid.rows; row += factor)
    for (let place = 0; place < fine.grid.columns; place += factor) {
      const i = place0 + place / factor;
      const j = row0 + row / factor;
      if (i < 0 || j < 0 || i >= coarse.grid.columns || j >= coarse.grid.rows) continue;
      const from = j * coarse.grid.columns + i;
      const to = row * fine.grid.columns + place;
      const count = coarse.start[from + 1]! - coarse.start[from]!;
      if (fine.start[to + 1]! - fine.start[to]! !== count) continue;
      for (let n = 0; n < count; n++) marks[fine.start[to]! + n] = markOf(coarse.start[from]! + n);
    }
  return marks;
}
