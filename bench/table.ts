import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { isMet, resultsFile, verdict, versionOf, type Row } from './report';

/** One table of what the benches measured last in this version: on the screen, and as CSV beside the single measurements. */
const BENCHES = ['size', 'offsets', 'mold', 'opening'];

const root = process.argv[2]!;
const lines = BENCHES.filter((bench) => existsSync(resultsFile(root, bench))).flatMap((bench) => {
  const { rows, machine } = JSON.parse(readFileSync(resultsFile(root, bench), 'utf8')) as {
    rows: Row[];
    machine: string;
  };
  return rows.map((row) => ({ bench, ...cellsOf(row), machine }));
});
writeFileSync(
  join(root, 'bench', 'results', `${versionOf(root)}.csv`),
  `${Papa.unparse(lines, { newline: '\n' })}\n`,
);

const COLUMNS = ['bench', 'what', 'ours', 'unit', 'baseline', 'ratio', 'wanted', 'verdict'] as const;
const shown = [COLUMNS, ...lines.map((line) => COLUMNS.map((column) => line[column]))];
const widths = COLUMNS.map((_, i) => Math.max(...shown.map((row) => row[i]!.length)));
console.log(`\n${shown.map((row) => row.map((cell, i) => cell.padEnd(widths[i]!)).join('  ')).join('\n')}`);

function cellsOf(row: Row) {
  const { what, ours, unit, baseline = '', ratio, wanted } = row;
  const met = isMet(row);
  return {
    what,
    ours: shortest(ours),
    unit,
    baseline,
    ratio: ratio === undefined ? '' : shortest(ratio),
    wanted:
      wanted === undefined
        ? ''
        : `${wanted.of} ${'atMost' in wanted ? `<= ${wanted.atMost}` : `>= ${wanted.atLeast}`}`,
    verdict: met === undefined ? (wanted === undefined ? '' : 'not measured') : verdict(met),
  };
}

/** Three digits, or all before the point. */
function shortest(value: number): string {
  return value >= 100 ? value.toFixed(0) : String(Number(value.toPrecision(3)));
}
