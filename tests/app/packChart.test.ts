import { describe, expect, it } from 'vitest';
import { packChartOf, packSheet } from '../../src/app/pour/packChart';
import { packChartLayout } from '../../src/app/pour/packChartLayout';
import { pourNow } from '../../src/app/ticket/now';
import { readPastText } from '../../src/app/ticket/past';
import type { Ticket } from '../../src/app/ticket/state';
import { packChartAlt } from '../../src/app/words/packChartWords';
import { expectClose } from '../support/close';
import { poured, settle, step, type } from './pageEngine';

const PAST = '1.15 short, 1.25 filled 2, 1.25 short';

function chartOf(ticket: Ticket) {
  const pour = pourNow(ticket).answer!;
  const read = readPastText(ticket.pouring.past);
  return { pour, data: packChartOf(pour, read.ok ? read.past : []) };
}

const { ticket: bare, desk } = poured();
const told = settle(step(bare, { do: 'past', text: PAST }, ...type('pack', '1.4')), desk);

describe('the chart of the packs', () => {
  const { pour, data } = chartOf(told);

  it('has each pack of the table at its grams, and this pour at those that are weighed', () => {
    expect(data.packs.map(({ packFactor }) => packFactor)).toEqual([1.15, 1.25, 1.35, 1.4, 1.45]);
    const column = pour.packs!.columns.find(({ packFactor }) => packFactor === 1.35)!;
    expect(column.refused).toBeUndefined();
    expect(data.packs[2]!.massG).toBe('batch' in column ? column.batch.totalG : undefined);
    expect(data.here).toEqual({ packFactor: 1.4, massG: pour.batch.totalG });
  });

  it('puts castings of before where their pack lies for this mold: 1.25 times the free rise of the cavity, and what is lost', () => {
    const { freeRiseKgM3, cavityCm3, riserCm3, ventsG, gasLossShare, residueG } = pour.batch.inputs;
    const foamG = (freeRiseKgM3 * 1.25 * (cavityCm3 + riserCm3)) / 1000;
    const expected = (foamG + ventsG) / (1 - gasLossShare) + residueG;
    for (const dot of data.past.filter(({ packFactor }) => packFactor === 1.25))
      expectClose(dot.massG, expected, 1e-12, 'grams at 1.25');
    expect(data.past.map(({ packFactor, filled, count }) => [packFactor, filled, count])).toEqual([
      [1.15, false, 1],
      [1.25, true, 2],
      [1.25, false, 1],
    ]);
  });

  it('draws one dot for each casting, a ring for each that fell short', () => {
    const { dots } = packChartLayout(data, pour.batch.stepG, 600);
    expect([dots.packs.length, dots.filled.length, dots.short.length]).toEqual([5, 2, 2]);
  });

  it.each([320, 390, 700])('keeps every mark within %i px and every label inside', (widthPx) => {
    const layout = packChartLayout(data, pour.batch.stepG, widthPx);
    const { here, fills, dots, labels, heightPx } = layout;
    const marks = [
      here.xPx,
      fills!.lowPx,
      fills!.highPx,
      ...Object.values(dots).flatMap((d) => d.map((at) => at.xPx)),
    ];
    for (const x of [...marks, here.label.middlePx, ...labels.map(({ middlePx }) => middlePx)]) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(widthPx);
    }
    for (const { yPx } of labels) expect(yPx).toBeLessThan(heightPx);
  });

  it('is a table too: each mark is a row with its unit in the head', () => {
    const { heads, rows } = packSheet(data);
    expect(heads).toContain('Mixed, g');
    expect(rows).toHaveLength(3 + 5 + 3 + 1);
    expect(rows.at(-1)).toEqual(['this pour', 1.4, pour.batch.totalG, '']);
    for (const row of rows) expect(row).toHaveLength(heads.length);
  });

  it('says in words what is in it', () => {
    const alt = packChartAlt(data, pour.batch.stepG);
    expect(alt).toContain(
      `Just filling takes ${data.fills!.text.low} to ${data.fills!.text.high} g, 9 times in 10.`,
    );
    expect(alt).toContain('1 casting short at 1.15');
    expect(alt).toContain('2 castings filled at 1.25');
    expect(alt).toContain(`This pour, pack 1.40, is ${pour.batch.totalG} g.`);
  });

  it('has nothing to draw while another pack is worked out', () => {
    expect(pourNow(step(told, ...type('pack', '1.5'))).answer).toBeUndefined();
  });
});
