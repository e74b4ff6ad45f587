import type { LearnedBook } from '../../job/book';
import { residueRows } from '../../job/book/evidence';
import { residueAt, type ResidueLine } from '../../yield';
import { amount } from '../../words/sentence';
import type { Sheet } from '../charts/sheet';
import { fromZero, type DotChart } from './dotChart';

/** Left in the cup against mixed: one ring a pour, and the line where there is one. */
export function residueChart({ pours, residue }: Pick<LearnedBook, 'pours' | 'residue'>): {
  chart: DotChart;
  sheet: Sheet;
  count: number;
} {
  const rows = residueRows(pours.filter(({ row }) => row.isLeftOut !== true));
  const mixed = rows.map(({ is }) => is.mixedG);
  const ends: [number, number] = [Math.min(...mixed), Math.max(...mixed)];
  return {
    count: rows.length,
    chart: {
      x: { label: 'g mixed', domain: fromZero(mixed) },
      y: { label: 'g left in the cup', domain: fromZero(rows.map(({ is }) => is.residueG)) },
      dots: rows.map(({ is }) => ({ x: is.mixedG, y: is.residueG })),
      ...lineOf(residue, ends),
    },
    sheet: {
      heads: ['Pour', 'Mixed, g', 'Left in the cup, g'],
      rows: rows.map(({ no, is }) => [String(no), is.mixedG, is.residueG]),
    },
  };
}

function lineOf(residue: ResidueLine, [low, high]: [number, number]): Pick<DotChart, 'line'> {
  const { way, fixedG, perMixed } = residue;
  if (way !== 'line' || fixedG === undefined || perMixed === undefined) return {};
  const at = (mixedG: number): [number, number] => [mixedG, residueAt(residue, mixedG).value];
  return {
    line: {
      from: at(low),
      to: at(high),
      words: `${amount(fixedG.value, 3)} g + ${amount(100 * perMixed.value, 2)} % of the mix`,
    },
  };
}
