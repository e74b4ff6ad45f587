import { describe, expect, it } from 'vitest';
import { answer, type Desk } from '../../src/worker/answer';
import { bodyWish } from '../../src/worker/bodyWish';
import type { Answers, SizeWish } from '../../src/worker/protocol';
import { expectClose } from '../support/close';
import { valueOf } from '../support/outcome';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

const taped = { along: 'tall', lengthMm: 200 } as const;
const second = { along: 'wide', lengthMm: 99 } as const;
const span = { from: [0, 0, 0], to: [100, 0, 0], lengthMm: 99 } as const;

describe('a wish without what only checks its scale', () => {
  it.each<[string, SizeWish, SizeWish]>([
    ['nothing to take away', { taped, up: '+z' }, { taped, up: '+z' }],
    ['a side that checks', { taped, second, scaleBy: 'tall', up: '+z' }, { taped, up: '+z' }],
    ['points that check a unit', { fileUnit: 'mm', second: span, scaleBy: 'file unit' }, { fileUnit: 'mm' }],
    ['a side that is the scale', { taped, second, scaleBy: 'wide' }, { second }],
    ['points that are the scale', { fileUnit: 'mm', second: span, scaleBy: 'span' }, { second: span }],
  ])('%s', (_, wish, body) => expect(bodyWish(wish)).toEqual(body));
});

describe('another check of the scale leaves the body on the desk', () => {
  const desk: Desk = {};
  const bytes = stlBytes(box([100, 100, 200])).slice().buffer;
  answer(desk, { kind: 'open', name: 'a.stl', bytes }, () => undefined);
  const size = (wish: SizeWish) =>
    valueOf(answer(desk, { kind: 'size', wish }, () => undefined) as Answers['size']).size;

  it('the same bench, a new agreement', () => {
    size({ taped });
    const { bench } = desk.measured!;
    const checked = size({ taped, second, scaleBy: 'tall' });
    expect(desk.measured!.bench).toBe(bench);
    expectClose(checked.scale.disagreements[0]!.share, -0.01, 1e-9);
    expectClose(checked.volumeCm3.value, 2000, 1e-12);
  });

  it('taken for the scale, it is another body', () => {
    const { bench } = desk.measured!;
    expectClose(size({ taped, second, scaleBy: 'wide' }).volumeCm3.value, 2000 * 0.99 ** 3, 1e-12);
    expect(desk.measured!.bench).not.toBe(bench);
  });
});
