import type { ReactNode } from 'react';
import { DrawnChart, type Draw } from './DrawnChart';
import { saveCsv } from './saveCsv';
import type { Sheet } from './sheet';
import { SheetTable } from './SheetTable';

interface ChartProps {
  title: string;
  alt: string;
  draw: Draw;
  sheet: Sheet;
  /** Name of the file that the table is saved as, without its ending. */
  file: string;
  /** What the axis starts at, how many, what is not in it. */
  note: ReactNode;
}

/** A chart with its data under it: a table to open, and a file to take along. */
export function Chart({ title, alt, draw, sheet, file, note }: ChartProps) {
  return (
    <figure className="chart">
      <figcaption>{title}</figcaption>
      <DrawnChart draw={draw} alt={alt} />
      <p className="note quiet">{note}</p>
      <div className="chg">
        <details>
          <summary>Show the table</summary>
          <SheetTable sheet={sheet} label={title} />
        </details>
        <button type="button" className="act" onClick={() => saveCsv(`${file}.csv`, sheet)}>
          Save as CSV
        </button>
      </div>
    </figure>
  );
}

/** Its place while the figures are worked out: none of before is shown, and nothing below moves. */
export const ChartToCome = ({ title }: { title: string }) => (
  <figure className="chart" aria-busy>
    <figcaption>{title}</figcaption>
    <div className="plot">
      <p className="note quiet">working out …</p>
    </div>
  </figure>
);
