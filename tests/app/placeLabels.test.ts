import { describe, expect, it } from 'vitest';
import { LETTER_PX, placeLabels, rowsOf } from '../../src/app/charts/placeLabels';
import { lcg } from '../support/lcg';

const span = ({ text, middlePx }: { text: string; middlePx: number }): [number, number] => {
  const half = (text.length * LETTER_PX) / 2;
  return [middlePx - half, middlePx + half];
};

describe('labels along a line', () => {
  it('stand over their places in one row where there is room', () => {
    const placed = placeLabels(
      [
        { text: '1.15', atPx: 50 },
        { text: '1.45', atPx: 200 },
      ],
      300,
    );
    expect(placed.map(({ middlePx, row }) => [middlePx, row])).toEqual([
      [50, 0],
      [200, 0],
    ]);
  });

  it('stay within the width', () => {
    for (const atPx of [0, 300]) {
      const [from, to] = span(placeLabels([{ text: 'this pour, 572', atPx }], 300)[0]!);
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeLessThanOrEqual(300);
    }
  });

  it('never touch another of their row, seed 11: five labels anywhere on a phone', () => {
    const draw = lcg(11);
    for (let round = 0; round < 200; round++) {
      const labels = Array.from({ length: 5 }, () => ({ text: '1.25', atPx: 300 * draw() }));
      const placed = placeLabels(labels, 300);
      for (let row = 0; row < rowsOf(placed); row++) {
        const spans = placed.filter((one) => one.row === row).map(span);
        spans.slice(1).forEach(([from], i) => expect(from).toBeGreaterThan(spans[i]![1]));
      }
      expect(placed).toHaveLength(5);
    }
  });
});
