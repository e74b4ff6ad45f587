import { describe, expect, it } from 'vitest';
import type { Mark } from '../../src/viewer/mark';
import { markAt, markBeside } from '../../src/viewer/markAt';
import { moveOf } from '../../src/viewer/moves';
import { LABEL_HALF_PX, openSeats, seatLabels } from '../../src/viewer/seatLabels';

const CARD = { width: 300, height: 270 };
const row = (label: string): Mark => ({ label, at: [0, 0, 0], isRow: true });

describe('numbers find a seat beside their dots', () => {
  /** Twelve places on a ring and in a heap. */
  const seats = openSeats(Array.from({ length: 12 }, () => 11));
  seats.dots.set(
    Array.from({ length: 12 }, (_, i) =>
      i < 8 ? [150 + 70 * Math.cos(i), 135 + 70 * Math.sin(i)] : [150 + 6 * i, 135],
    ).flat(),
  );
  seatLabels(seats, CARD);

  it('none over another', () => {
    const { labels } = seats;
    for (let i = 0; i < 12; i++)
      for (let j = 0; j < i; j++) {
        const isClear =
          Math.abs(labels[2 * i]! - labels[2 * j]!) >= 22 ||
          Math.abs(labels[2 * i + 1]! - labels[2 * j + 1]!) >= 2 * LABEL_HALF_PX;
        expect(isClear, `${i} over ${j}`).toBe(true);
      }
  });

  it('and keeps it while the eye turns a little', () => {
    const before = seats.seat.slice();
    for (let i = 0; i < seats.dots.length; i++) seats.dots[i]! += 1;
    seatLabels(seats, CARD);
    expect(seats.seat).toEqual(before);
  });

  it('outward of the middle, inside of the card', () => {
    const one = openSeats([11]);
    one.dots.set([250, 135]);
    seatLabels(one, CARD);
    expect(one.labels[0]).toBeGreaterThan(265);
    one.dots.set([295, 135]);
    seatLabels(one, CARD);
    expect(one.labels[0]).toBeLessThanOrEqual(289);
  });
});

describe('a press means the nearest number', () => {
  const marks = [row('1'), { label: '1', at: [0, 0, 0] } as Mark, row('2')];
  const at = {
    dots: Float32Array.from([50, 50, 100, 50, 120, 50]),
    labels: Float32Array.from([50, 20, 100, 20, 180, 90]),
  };
  it.each([
    ['on a dot', { x: 52, y: 49 }, '1'],
    ['on a number away from its dot', { x: 190, y: 95 }, '2'],
    ['between two, nearer to the second', { x: 105, y: 50 }, '2'],
    ['22 px off', { x: 50, y: 72 }, undefined],
    ['21 px off', { x: 50, y: 71 }, '1'],
  ])('%s', (_, px, label) => expect(markAt(marks, at, px)?.label).toBe(label));

  it('a picked point is no row', () => expect(markAt([marks[1]!], at, { x: 50, y: 50 })).toBeUndefined());
});

describe('n and p go round', () => {
  const marks = [{ label: '1', at: [0, 0, 0] } as Mark, row('1'), row('2'), row('2.1')];
  it.each([
    [undefined, 1, '1'],
    [undefined, -1, '2.1'],
    ['1', 1, '2'],
    ['2.1', 1, '1'],
    ['1', -1, '2.1'],
    ['gone', 1, '1'],
  ] as const)('from %s by %i is %s', (picked, step, label) =>
    expect(markBeside(marks, picked, step)?.label).toBe(label),
  );
  it('nowhere without rows', () => expect(markBeside([], undefined, 1)).toBeUndefined());
});

describe('keys of the eye', () => {
  it.each([
    ['ArrowLeft', false, 'Turn left'],
    ['ArrowLeft', true, 'Move left'],
    ['ArrowDown', true, 'Move down'],
    ['+', true, 'Closer'],
    ['+', false, 'Closer'],
    ['_', true, 'Farther'],
    ['0', false, 'Fit'],
  ])('%s, Shift %s: %s', (key, isShifted, word) => expect(moveOf(key, isShifted)?.word).toBe(word));
  it('no other', () => expect(moveOf('n', false)).toBeUndefined());
});
