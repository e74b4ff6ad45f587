import { expect, it } from 'vitest';
import { kitUnits } from '../../../src/yield/silicone/kitUnits';
import { expectClose } from '../../support/close';

const units = (needKg: number, ...masses: number[]) =>
  kitUnits(
    masses.map((massKg) => ({ massKg })),
    needKg,
  );

it('1.1 and 5.5 kg are counted in 1.1 kg: 12 kg are 11 of them, 11 kg just 10', () => {
  const found = units(12, 1.1, 5.5);
  expectClose(found.unitKg, 1.1, 1e-12);
  expect(found).toMatchObject({ kits: [1, 5], need: 11, rounded: false });
  expect(units(11, 5.5, 1.1)).toMatchObject({ kits: [5, 1], need: 10, rounded: false });
});

it('kits that share no divisor are counted in 0.1 g, rounded down, and the need up: pi / 10 and e / 10 kg', () => {
  expect(units(1.00001, Math.PI / 10, Math.E / 10)).toEqual({
    ...{ unitKg: 0.0001, kits: [3141, 2718], need: 10_001, rounded: true },
  });
});

it('and in grams where 0.1 g would make more than three million of them', () => {
  const sum = Math.PI / 10;
  expect(units(299.9 - sum, Math.PI / 10, Math.E / 10).unitKg).toBe(0.0001);
  expect(units(300.1 - sum, Math.PI / 10, Math.E / 10)).toMatchObject({
    ...{ unitKg: 0.001, kits: [314, 271], need: 299_786, rounded: true },
  });
});
