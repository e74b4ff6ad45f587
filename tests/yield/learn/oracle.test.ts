import { describe, expect, it } from 'vitest';
import type { OraclePour } from './oracleShop';
import { pourOracle } from './oracleShop';

const WANTED = 0.95;

/** Each pour is predicted from the book of those before it, then the truth it never saw is looked up. */
describe('200 shops of ten pours whose truth is known', () => {
  const shops = Array.from({ length: 200 }, (_, i) => pourOracle(i + 1, WANTED));
  const pours = shops.flat();
  const at = (no: number): OraclePour[] => shops.map((shop) => shop[no - 1]!);
  const share = (some: readonly OraclePour[], of: (pour: OraclePour) => boolean): number =>
    some.filter(of).length / some.length;
  const mean = (some: readonly OraclePour[], of: (pour: OraclePour) => number): number =>
    some.reduce((sum, pour) => sum + of(pour), 0) / some.length;

  it('the 90 % range holds 88 to 92 % of 2 000 pours, and misses on both sides', () => {
    expect(pours.length).toBe(2000);
    const isIn = ({ neededG, planned: { leastMixedG } }: OraclePour): boolean =>
      neededG >= leastMixedG.low && neededG <= leastMixedG.high;
    const held = share(pours, isIn);
    expect(held).toBeGreaterThan(0.88);
    expect(held).toBeLessThan(0.92);
    const under = share(pours, ({ neededG, planned }) => neededG < planned.leastMixedG.low);
    expect(under).toBeGreaterThan(0.03);
    expect(under).toBeLessThan(0.07);
  });

  it('after five pours the batch fills at the wanted chance (1 000 pours: three standard errors are 2 %)', () => {
    const later = shops.flatMap((shop) => shop.slice(5));
    expect(Math.abs(share(later, ({ filled }) => filled) - WANTED)).toBeLessThan(0.021);
  });

  it('and with half the spare of the first, planned and real, in grams and as a share', () => {
    const spares: ((pour: OraclePour) => number)[] = [
      ({ planned }) => planned.spareG,
      ({ planned }) => planned.spareG / planned.leastMixedG.value,
      ({ planned, neededG }) => planned.mixedG / neededG - 1,
    ];
    for (const spare of spares) expect(mean(at(6), spare)).toBeLessThan(0.6 * mean(at(1), spare));
  });

  it('under three pours the prior plans, from three on the book does', () => {
    expect(at(3).every(({ planned }) => planned.leastMixedG.from !== 'learned')).toBe(true);
    expect(at(4).every(({ planned }) => planned.leastMixedG.from === 'learned')).toBe(true);
  });
});
