import { mixedMassG, type PastCasting } from '../../yield';
import type { PourOnPage } from '../../worker/pour';
import type { Sheet } from '../charts/sheet';
import { rangeText, type RangeText } from '../../words/rangeText';

/** One dot of the chart: a pack and the grams it means. */
export interface PackDot {
  packFactor: number;
  massG: number;
}

/** Castings of before of one pack that went alike. */
export interface PastDot extends PackDot {
  filled: boolean;
  count: number;
}

/** What the chart of the packs shows, in grams mixed in one cup. */
export interface PackChartData {
  /** What just fills, 9 times in 10, to the step of the scale in words. Left out where nobody can say. */
  fills?: { lowG: number; valueG: number; highG: number; text: RangeText };
  packs: readonly PackDot[];
  past: readonly PastDot[];
  here: PackDot;
}

export function packChartOf(
  { batch, packs, justFills }: PourOnPage,
  past: readonly PastCasting[],
): PackChartData {
  const massG = (packFactor: number): number => mixedMassG({ ...batch.inputs, packFactor });
  const columns = packs?.columns.filter((column) => column.refused === undefined) ?? [];
  return {
    ...(justFills === undefined ? {} : { fills: { ...justFills, text: fillsText(justFills, batch.stepG) } }),
    packs: columns.map(({ packFactor, batch: { totalG } }) => ({ packFactor, massG: totalG })),
    past: alike(past).map((one) => ({ ...one, massG: massG(one.packFactor) })),
    here: { packFactor: batch.packFactor, massG: batch.totalG },
  };
}

/** To the step of the scale, the ends rounded outward. */
export const fillsText = (
  { lowG, valueG, highG }: NonNullable<PourOnPage['justFills']>,
  stepG: number,
): RangeText => rangeText({ low: lowG, value: valueG, high: highG }, { step: stepG });

function alike(past: readonly PastCasting[]): Omit<PastDot, 'massG'>[] {
  const groups = new Map<string, Omit<PastDot, 'massG'>>();
  for (const { packFactor, filled } of past) {
    const key = `${packFactor} ${filled}`;
    groups.set(key, { packFactor, filled, count: (groups.get(key)?.count ?? 0) + 1 });
  }
  return [...groups.values()].sort((one, other) => one.packFactor - other.packFactor);
}

/** All that is drawn, as rows: for the table under the chart and for the file. */
export function packSheet({ fills, packs, past, here }: PackChartData): Sheet {
  const tenth = (massG: number): number => Number(massG.toFixed(1));
  return {
    heads: ['What', 'Pack factor', 'Mixed, g', 'Castings'],
    rows: [
      ...(fills === undefined
        ? []
        : [
            ['just fills, low end, 9 times in 10', '', tenth(fills.lowG), ''],
            ['just fills, middle', '', tenth(fills.valueG), ''],
            ['just fills, high end, 9 times in 10', '', tenth(fills.highG), ''],
          ]),
      ...packs.map(({ packFactor, massG }) => ['pack', packFactor, massG, '']),
      ...past.map(({ packFactor, massG, filled, count }) => [
        filled ? 'filled before' : 'short before',
        packFactor,
        tenth(massG),
        count,
      ]),
      ['this pour', here.packFactor, here.massG, ''],
    ],
  };
}
