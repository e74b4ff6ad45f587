// The tables of accuracy and of speed in the README, made from what the benches wrote for this release.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { root } from '../setup.mjs';
import { table } from './table.mjs';

const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));

/** The lines of one file of results, a cell by its column. */
function linesOf(file) {
  const text = readFileSync(join(root, 'bench', 'results', file), 'utf8');
  return Papa.parse(text, { header: true, skipEmptyLines: true }).data;
}

export function accuracyTable() {
  const rows = linesOf(`accuracy-${version}.csv`).map((line) => [
    line.what,
    `${line.got} ${line.unit.replace('cm3', 'cm³')}`,
    `${line.truth} (${line['truth by']})`,
    `${line['error %']} %`,
    line['truth within the range'],
  ]);
  return table(['what', 'it says', 'truth', 'off by', 'its range holds the truth'], rows);
}

export function speedTable() {
  const rows = linesOf(`${version}.csv`).map((line) => [
    line.what,
    `${line.ours} ${line.unit}`,
    line.baseline,
    line.ratio,
    line.wanted,
    line.verdict,
  ]);
  return table(['what', 'ours', 'baseline', 'ratio', 'wanted', ''], rows);
}
