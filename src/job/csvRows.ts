import Papa from 'papaparse';

/** A record of a file of comma-separated values, and the line it begins on, from 1. */
export interface CsvRow {
  line: number;
  cells: string[];
}

/**
 * Splits comma-separated values (RFC 4180) into records, by papaparse: a quoted cell may hold commas, line ends and doubled quotes, and
 * lines may end in LF or CR alone, all in the same way. What is broken is refused with its line, never patched up. A quote within a cell that is not
 * quoted stays what it is, as in 6" nail.
 */
export function csvRows(text: string, separator: string): CsvRow[] | { line: number; why: string } {
  const input = text.replace(/^\ufeff/, '');
  const lineAt = lineCounter(input);
  const rows: CsvRow[] = [];
  let broken: { line: number; why: string } | undefined;
  let from = 0;
  Papa.parse<string[]>(input, {
    delimiter: separator,
    newline: NEWLINES.find((end) => input.includes(end)) ?? '\n',
    step: ({ data: cells, errors, meta: { cursor } }, parser) => {
      const line = lineAt(from);
      if (errors.length > 0) {
        broken = { line, why: WHY[errors[0]!.code] ?? errors[0]!.message };
        return parser.abort();
      }
      // Behind the last line end there is no record.
      if (from < input.length) rows.push({ line, cells });
      from = cursor;
    },
  });
  return broken ?? rows;
}

const NEWLINES = ['\r\n', '\n', '\r'] as const;

const WHY: Readonly<Record<string, string>> = {
  MissingQuotes: 'a quote is opened and never closed',
  InvalidQuotes: 'something stands behind a closing quote',
};

/** Of places that only go forward. */
function lineCounter(text: string): (at: number) => number {
  let line = 1;
  let done = 0;
  return (at) => {
    for (; done < at; done++)
      if (text[done] === '\n' || (text[done] === '\r' && text[done + 1] !== '\n')) line += 1;
    return line;
  };
}
