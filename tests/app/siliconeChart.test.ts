import { describe, expect, it } from 'vitest';
import {
  siliconeChartAlt,
  siliconeChartOf,
  siliconeCurve,
  siliconeSheet,
} from '../../src/app/mold/siliconeChart';
import { ladderBench, measureLadders, siliconeAt } from '../../src/plan';
import { benchOf } from '../support/moldBench';
import { BOX } from '../support/moldSamples';
import { valueOf } from '../support/outcome';

const ladder = valueOf(measureLadders(ladderBench(benchOf(BOX)), { block: {} }))[0]!;
const at =
  (stock?: { baseKg: number; catalystKg: number }) =>
  (mm: number): ReturnType<typeof siliconeAt> =>
    siliconeAt(ladder, mm, {
      silicone: {
        kits: [{ massKg: 0.2 }, { massKg: 0.5 }],
        ...(stock === undefined ? {} : { stock: [stock] }),
      },
      work: {},
    });
const chartAt = (mm: number, stock?: { baseKg: number; catalystKg: number }) =>
  siliconeChartOf(siliconeCurve(ladder, at(stock)), {
    label: 'Wall around the sculpt',
    mm,
    need: valueOf(at(stock)(mm)),
    isAbout: true,
  });

describe('the chart of silicone against thickness', () => {
  const chart = chartAt(12);

  it('has a dot for each measured rung that is drawn, at what is mixed there', () => {
    expect(chart.dots.map(({ mm }) => mm)).toEqual(
      ladder.rungs.map(({ thicknessMm }) => thicknessMm).filter((mm) => mm <= chart.topMm),
    );
    for (const { mm, kg } of chart.dots) expect(kg).toBe(valueOf(at()(mm)).totalG / 1000);
  });

  it('marks this mold, within what is drawn, also at either end of the slider', () => {
    for (const mm of [3, 12, 60, 100]) {
      const { here, topMm, topKg } = chartAt(mm);
      expect(here).toEqual({ mm, kg: valueOf(at()(mm)).totalG / 1000, isAbout: true });
      expect(topMm).toBeGreaterThanOrEqual(mm);
      expect(topKg).toBeGreaterThan(here.kg);
    }
  });

  it('has a curve only through six dots or more, from the first to the last of them', () => {
    expect(chart.dots.length).toBeGreaterThanOrEqual(6);
    expect([chart.curve[0], chart.curve.at(-1)]).toEqual([chart.dots[0], chart.dots.at(-1)]);
    const few = { ...ladder, rungs: ladder.rungs.slice(0, 5) };
    const short = siliconeChartOf(siliconeCurve(few, at()), {
      label: 'Wall',
      mm: 6,
      need: valueOf(at()(6)),
      isAbout: false,
    });
    expect(short.curve).toEqual([]);
  });

  it('draws what the kits hold, never less than this mold takes', () => {
    expect(chart.holds).toHaveLength(1);
    expect(chart.holds[0]!.kg).toBeGreaterThanOrEqual(chart.here.kg);
  });

  it('draws what a small stock makes and with the kits holds; a large one is told in words', () => {
    const small = chartAt(12, { baseKg: 0.1, catalystKg: 0.01 });
    expect(small.holds.map(({ text }) => text)[0]).toBe('the stock makes 0.11 kg');
    expect(small.holds).toHaveLength(2);
    const large = chartAt(12, { baseKg: 500, catalystKg: 50 });
    expect(large.above.map(({ text }) => text)).toEqual(['the stock makes 550 kg']);
    expect(large.holds).toEqual([]);
  });

  it('is a table too, with every rung, also those not drawn', () => {
    const { heads, rows } = siliconeSheet(chart);
    expect(heads).toEqual(['What', 'Thickness, mm', 'Silicone, kg']);
    expect(rows.filter(([what]) => what === 'measured')).toHaveLength(ladder.rungs.length);
    expect(rows.find(([what]) => what === 'this mold, about')?.[1]).toBe(12);
    for (const row of rows) expect(row).toHaveLength(heads.length);
  });

  it('says in words what is in it', () => {
    const alt = siliconeChartAlt(chart);
    expect(alt).toContain('Wall around the sculpt and silicone:');
    expect(alt).toContain('this mold, 12 mm: about ');
    expect(alt).toContain(chart.holds[0]!.text);
  });
});
