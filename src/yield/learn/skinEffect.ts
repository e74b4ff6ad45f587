import type { Estimate } from '../../estimate';
import { dot, flatPrior, learnRows, unknownsOf } from './normalInverseGamma';
import { LEARN_RULES as R } from './rules';
import { studentRange } from './studentT';
import { settingOf } from './triedPour';
import type { Factor, TriedPour } from './triedPour';

/**
 * What a change of one setting should do to the skin score, by least squares over the log: skin on the pack and on that setting (on
 * the pack alone, when it is the pack). The range holds 9 times of 10; where the setting moved together with others it is stretched
 * to take in nothing at all, since the others may have done it. Undefined where the log cannot carry the line.
 */
export function skinEffect(
  pours: readonly TriedPour[],
  { factor, by, isConfounded }: { factor: Factor; by: number; isConfounded: boolean },
): Estimate | undefined {
  const columns: Factor[] = factor === 'packFactor' ? [factor] : [factor, 'packFactor'];
  const rows = pours.flatMap((pour) => {
    const settings = columns.map((column) => settingOf(pour, column));
    const isWhole = pour.skin !== undefined && settings.every((value) => value !== undefined);
    return isWhole ? [{ x: [1, ...settings], y: pour.skin! }] : [];
  });
  if (rows.length < columns.length + R.leastPours.value) return undefined;
  const centered = centerOn(rows);
  const model = learnRows(flatPrior(columns.length + 1), centered);
  const slope = model === undefined ? undefined : unknownsOf(model)?.[1];
  if (slope === undefined) return undefined;
  const ends = studentRange(R.rangeShare.value, slope).map((end) => end * by);
  const reach = isConfounded ? [...ends, 0] : ends;
  return { value: slope.location * by, low: Math.min(...reach), high: Math.max(...reach), from: 'learned' };
}

/** About the means: the slopes stay what they are, and the digits with them. */
function centerOn<Row extends { x: number[]; y: number }>(rows: readonly Row[]): Row[] {
  const mean = (k: number): number =>
    dot(
      rows.map(() => 1 / rows.length),
      rows.map(({ x }) => x[k]!),
    );
  const means = rows[0]!.x.map((_value, k) => (k === 0 ? 0 : mean(k)));
  return rows.map((row) => ({ ...row, x: row.x.map((value, k) => value - means[k]!) }));
}
