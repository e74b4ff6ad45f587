import { describe, expect, it } from 'vitest';
import { heatTerms } from '../../../src/yield';
import type { HeatShape } from '../../../src/yield';
import { besselJ } from '../../../src/yield/warmth/bessel';
import { problemOf, valueOf } from '../../support/outcome';

/** Bi, then first root and weight of slab, cylinder and sphere: derived, and they match the table printed in heat transfer textbooks. */
const PRINTED: readonly (readonly number[])[] = [
  [0.01, 0.0998, 1.0017, 0.1412, 1.0025, 0.173, 1.003],
  [0.1, 0.3111, 1.0161, 0.4417, 1.0246, 0.5423, 1.0298],
  [0.5, 0.6533, 1.0701, 0.9408, 1.1143, 1.1656, 1.1441],
  [1, 0.8603, 1.1191, 1.2558, 1.2071, 1.5708, 1.2732],
  [2, 1.0769, 1.1785, 1.5994, 1.3384, 2.0288, 1.4793],
  [5, 1.3138, 1.2402, 1.9898, 1.5029, 2.5704, 1.787],
  [10, 1.4289, 1.262, 2.1795, 1.5677, 2.8363, 1.9249],
];
const SHAPES = ['slab', 'cylinder', 'sphere'] as const;
/** Half of the last printed digit. */
const LAST_DIGIT = 0.500001e-4;

const CASES = PRINTED.flatMap(([biot, ...columns]) =>
  SHAPES.map((shape, index) => [shape, biot!, columns[2 * index]!, columns[2 * index + 1]!] as const),
);

describe('roots and weights of the heat series', () => {
  it.each(CASES)('%s at Biot %d: root %d, weight %d, as printed', (shape, biot, root, weight) => {
    const [first] = valueOf(heatTerms({ shape, biot, rootCount: 1 }));
    expect(Math.abs(first!.root - root), `root ${first!.root}`).toBeLessThanOrEqual(LAST_DIGIT);
    expect(Math.abs(first!.weight - weight), `weight ${first!.weight}`).toBeLessThanOrEqual(LAST_DIGIT);
  });

  it('further roots at Biot 1 are those of Carslaw & Jaeger: slab 3.4256, 6.4373, 9.5293; cylinder 4.0795; sphere 4.7124', () => {
    const rootsOf = (shape: HeatShape): number[] =>
      valueOf(heatTerms({ shape, biot: 1, rootCount: 4 })).map(({ root }) => root);
    const [, ...slab] = rootsOf('slab');
    [3.4256, 6.4373, 9.5293].forEach((root, index) =>
      expect(Math.abs(slab[index]! - root)).toBeLessThanOrEqual(LAST_DIGIT),
    );
    expect(Math.abs(rootsOf('cylinder')[1]! - 4.0795)).toBeLessThanOrEqual(LAST_DIGIT);
    // 1 - z cot z = 1 has its roots where the cosine is 0: exact.
    rootsOf('sphere').forEach((root, index) => expect(root).toBeCloseTo((index + 0.5) * Math.PI, 10));
  });

  it.each(SHAPES)('%s: of 60 roots none is left out and each lies about pi after the one before', (shape) => {
    for (const biot of [1e-3, 0.7, 40, 5000]) {
      const roots = valueOf(heatTerms({ shape, biot, rootCount: 60 })).map(({ root }) => root);
      roots.slice(1).forEach((root, index) => {
        const step = root - roots[index]!;
        expect(step, `Biot ${biot}, root ${index + 2}`).toBeGreaterThan(0.7 * Math.PI);
        expect(step, `Biot ${biot}, root ${index + 2}`).toBeLessThan(1.5 * Math.PI);
      });
    }
  });

  it('for a sudden surface the roots are those of a fixed temperature: pi/2, 2.4048 and pi (Biot 10 000)', () => {
    [Math.PI / 2, 2.404825558, Math.PI].forEach((limit, index) => {
      const [first] = valueOf(heatTerms({ shape: SHAPES[index]!, biot: 1e4, rootCount: 1 }));
      expect(Math.abs(first!.root - limit)).toBeLessThan(4e-4);
    });
  });

  it.each([
    [0, 1, 'biot'],
    [-1, 1, 'biot'],
    [1e9, 1, 'biot'],
    [1, 0, 'rootCount'],
    [1, 2.5, 'rootCount'],
  ])('refuses Biot %d with %d roots', (biot, rootCount, input) => {
    expect(problemOf(heatTerms({ shape: 'slab', biot, rootCount }))).toMatchObject({
      code: 'INPUT_OUT_OF_BOUNDS',
      values: { input },
    });
  });
});

describe('Bessel functions against the tables of Abramowitz & Stegun (table 9.1)', () => {
  it.each([
    [0, 0, 1],
    [0, 1, 0.7651976866],
    [0, 5, -0.1775967713],
    [0, 10, -0.2459357645],
    [1, 0, 0],
    [1, 1, 0.4400505857],
    [1, 5, -0.3275791376],
    [1, 10, 0.0434727462],
  ])('J%d(%d) is %d', (order, x, printed) => {
    expect(Math.abs(besselJ(order, x) - printed)).toBeLessThan(0.51e-10);
  });

  it('its first zeros are the printed ones, and far out it is the cosine wave that every book gives', () => {
    for (const zero of [2.404825557695773, 5.520078110286311, 8.653727912911013]) {
      expect(Math.abs(besselJ(0, zero))).toBeLessThan(1e-14);
    }
    const x = 200;
    const wave = (order: number): number =>
      Math.sqrt(2 / (Math.PI * x)) * Math.cos(x - (order * Math.PI) / 2 - Math.PI / 4);
    expect(Math.abs(besselJ(0, x) - wave(0))).toBeLessThan(1e-4);
    expect(Math.abs(besselJ(1, x) - wave(1))).toBeLessThan(2e-4);
  });
});
