/** A number is right-aligned and goes into a file as one. */
export type Cell = string | number;

/** The data of a chart: what stands in the table under it and in the file. Units stand in the heads. */
export interface Sheet {
  heads: readonly string[];
  rows: readonly (readonly Cell[])[];
}

export const isNumberColumn = ({ rows }: Sheet, column: number): boolean =>
  rows.some((row) => typeof row[column] === 'number');
