import { describe, expect, it } from 'vitest';
import {
  amountForChance,
  flatPrior,
  learnRows,
  predictAt,
  unknownsOf,
} from '../../../src/yield/learn/normalInverseGamma';
import type { LearnedRow, NormalInverseGamma } from '../../../src/yield/learn/normalInverseGamma';
import { studentQuantile, studentRange } from '../../../src/yield/learn/studentT';
import { fillRate } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';
import { NORRIS } from './norris';

/** NIST StRD NoInt1: x 60 to 70, y 130 to 140, a line through the origin. */
const NO_INT_1: LearnedRow[] = Array.from({ length: 11 }, (_, i) => ({ x: [60 + i], y: 130 + i }));

function learned(prior: NormalInverseGamma, rows: readonly LearnedRow[]): NormalInverseGamma {
  const model = learnRows(prior, rows);
  if (model === undefined) throw new Error('expected a model');
  return model;
}

const priorOf = (mean: number[], diagonal: number[], shape: number, rate: number): NormalInverseGamma => ({
  mean,
  precision: diagonal.map((value, i) => diagonal.map((_, j) => (i === j ? value : 0))),
  shape,
  rate,
  rows: 0,
});

describe('T31: a flat prior gives the certified values of NIST StRD NoInt1', () => {
  const model = learned(flatPrior(1), NO_INT_1);
  const [slope] = unknownsOf(model)!;
  const next = predictAt(model, [65])!;

  it('slope, its deviation, the residual deviation and R2', () => {
    expectPrinted(slope!.location, '2.07438016528926');
    expectPrinted(slope!.scale, '0.0165289256198347');
    expectPrinted(Math.sqrt(model.rate / model.shape), '3.56753034006338');
    const total = NO_INT_1.reduce((sum, { y }) => sum + y * y, 0);
    expectPrinted(1 - (2 * model.rate) / total, '0.999365492298663');
    expect(model).toMatchObject({ shape: 5, rows: 11 });
    expectPrinted(model.rate, '63.6363636');
  });

  it('the next row at 65', () => {
    expectPrinted(next.location, '134.834710744');
    expectPrinted(next.scale, '3.725797293');
    expect(next.df).toBe(10);
    const [low, high] = studentRange(0.95, next);
    expectPrinted(low, '126.533117');
    expectPrinted(high, '143.136304');
    expectPrinted(amountForChance(model, [65], 0.95)!, '141.587573');
  });
});

it('T32: the same rows with a prior', () => {
  const model = learned(priorOf([2], [1000], 3, 20), NO_INT_1);
  expectPrinted(model.mean[0]!, '2.072817064');
  expectClose(1 / model.precision[0]![0]!, 2.10150257e-5, 1e-8);
  expect(model.shape).toBe(8.5);
  expectPrinted(model.rate, '86.34443627');
  expectPrinted(unknownsOf(model)![0]!.scale, '0.014610756');
  const next = predictAt(model, [65])!;
  expectPrinted(next.location, '134.733109');
  expectPrinted(next.scale, '3.325672');
  expect(next.df).toBe(17);
  expectPrinted(studentQuantile(0.95, next), '140.518471');
});

describe('T33: NIST StRD Norris, as the test data of SciPy 1.17 carries it', () => {
  const model = learned(
    flatPrior(2),
    NORRIS.map(([y, x]) => ({ x: [1, x], y })),
  );
  const [b0, b1] = unknownsOf(model)!;

  it('the certified line, to 12 digits', () => {
    expect(NORRIS.length).toBe(36);
    expectClose(b0!.location, -0.262323073774029, 1e-12);
    expectClose(b0!.scale, 0.232818234301152, 1e-12);
    expectClose(b1!.location, 1.00211681802045, 1e-14);
    expectClose(b1!.scale, 0.000429796848199937, 1e-12);
    expectClose(2 * model.rate, 26.6173985294224, 1e-12);
    const mean = NORRIS.reduce((sum, [y]) => sum + y, 0) / NORRIS.length;
    const total = NORRIS.reduce((sum, [y]) => sum + (y - mean) ** 2, 0);
    expectPrinted(1 - (2 * model.rate) / total, '0.999993745883712');
  });

  it('the next row at 500', () => {
    const next = predictAt(model, [1, 500])!;
    expectPrinted(next.location, '500.796086');
    expectPrinted(next.scale, '0.897673');
    expect(next.df).toBe(34);
    const [low, high] = studentRange(0.95, next);
    expectPrinted(low, '498.971794');
    expectPrinted(high, '502.620378');
  });
});

describe('T34: a made-up log of five pours', () => {
  const liters = [1.2, 2.5, 4.6, 5.1, 5.3];
  const rows = [262, 520, 930, 1010, 1075].map((y, i) => ({ x: [1, liters[i]!], y }));
  const prior = priorOf([30, 190], [0.25, 1], 3, 1200);

  it('fixed loss, density, scatter', () => {
    const model = learned(prior, rows);
    expectPrinted(model.mean[0]!, '30.53290865');
    expectPrinted(model.mean[1]!, '194.87712458');
    expect(model.shape).toBe(5.5);
    expectPrinted(model.rate, '1393.22027');
    expectPrinted(Math.sqrt(model.rate / model.shape), '15.9158');
    const [loss, density] = unknownsOf(model)!;
    expectPrinted(loss!.scale, '15.28287');
    expectPrinted(density!.scale, '3.82185');
  });

  it('what fills 5.2 L', () => {
    const model = learned(prior, rows);
    const next = predictAt(model, [1, 5.2])!;
    expectPrinted(next.location, '1043.8940');
    expectPrinted(next.scale, '18.45962');
    expect(next.df).toBe(11);
    expectPrinted(amountForChance(model, [1, 5.2], 0.9)!, '1069.0624');
    expectPrinted(amountForChance(model, [1, 5.2], 0.95)!, '1077.0453');
    expectPrinted(amountForChance(model, [1, 5.2], 0.99)!, '1094.0687');
  });

  it('the prior alone, and least squares alone', () => {
    const before = predictAt(prior, [1, 5.2])!;
    expectPrinted(before.location, '1018.0');
    expectPrinted(before.scale, '113.2078');
    expect(before.df).toBe(6);
    expectPrinted(studentQuantile(0.95, before), '1237.983');
    const squares = learned(flatPrior(2), rows);
    expectPrinted(squares.mean[0]!, '29.30095');
    expectPrinted(squares.mean[1]!, '195.21365');
    expectPrinted(Math.sqrt(squares.rate / squares.shape), '10.97127');
  });
});

describe('T35, T36: quantiles', () => {
  it.each([
    [4, 0.95, '2.131847'],
    [8, 0.95, '1.859548'],
    [10, 0.95, '1.812461'],
    [11, 0.95, '1.795885'],
    [4, 0.975, '2.776445'],
    [8, 0.975, '2.306004'],
    [10, 0.975, '2.228139'],
    [11, 0.975, '2.200985'],
  ] as const)('t of %d degrees at %d', (df, p, printed) => {
    expectPrinted(studentQuantile(p, { df, location: 0, scale: 1 }), printed);
    expectPrinted(-studentQuantile(1 - p, { df, location: 0, scale: 1 }), printed);
  });

  it('seven of eight filled, flat beta: mean 0.8, 5 % bound 0.570864', () => {
    const { mean, low } = valueOf(fillRate({ poured: 8, filled: 7 }));
    expectPrinted(mean, '0.8');
    expectPrinted(low, '0.570864');
  });
});

describe('what cannot be known is not made up', () => {
  it('two rows at one place settle no line; one row gives no spread', () => {
    const twice = [
      { x: [1, 5], y: 10 },
      { x: [1, 5], y: 11 },
    ];
    expect(learnRows(flatPrior(2), twice)).toBeUndefined();
    const one = learned(flatPrior(1), [{ x: [1], y: 3 }]);
    expect(predictAt(one, [1])).toBeUndefined();
    expect(unknownsOf(one)).toBeUndefined();
  });

  it('rows learned one by one are the rows learned together', () => {
    const prior = priorOf([2], [1000], 3, 20);
    const together = learned(prior, NO_INT_1);
    const oneByOne = NO_INT_1.reduce((model, row) => learned(model, [row]), prior);
    expectClose(oneByOne.mean[0]!, together.mean[0]!, 1e-13);
    expectClose(oneByOne.rate, together.rate, 1e-12);
    expect(oneByOne.rows).toBe(11);
  });

  it('a chance of 0 or 1 has no amount', () => {
    expect(() => studentQuantile(1, { df: 3, location: 0, scale: 1 })).toThrow('0 < p < 1');
  });
});
