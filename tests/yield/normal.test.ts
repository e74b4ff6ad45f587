import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from '../../src/yield/normal';
import { expectClose } from '../support/close';

/** Published tables (Abramowitz and Stegun, tables 26.1 and 26.5), to the digits they print. */
describe('normal distribution against published tables', () => {
  it.each([
    [0.5, 0.691462461274013],
    [1, 0.841344746068543],
    [1.96, 0.97500210485178],
    [2, 0.977249868051821],
    [3, 0.99865010196837],
    [4, 0.999968328758167],
  ])('share below %d', (z, published) => expectClose(normalCdf(z), published, 1e-12));

  it.each([
    [-3, 1.349898031630095e-3],
    [-5, 2.866515718791939e-7],
  ])('small tail below %d', (z, published) => {
    expectClose(normalCdf(z), published, 1e-9);
  });

  it.each([
    [-6, 9.865876450377e-10],
    [-8, 6.220960574271786e-16],
    [-10, 7.61985302416e-24],
    [-20, 2.7536241186e-89],
    [-30, 4.906713927e-198],
  ])('far tail below %d', (z, published) => {
    expectClose(normalCdf(z), published, 1e-9);
  });

  it.each([
    [0.9, 1.281551565545],
    [0.95, 1.644853626951],
    [0.975, 1.95996398454],
    [0.99, 2.326347874041],
    [0.001, -3.090232306168],
  ])('quantile of %d', (p, published) => expectClose(normalQuantile(p), published, 1e-11));

  it('is the reverse of itself from 1e-6 to 1 - 1e-6', () => {
    for (const p of [1e-6, 1e-4, 0.01, 0.3, 0.7, 0.99, 1 - 1e-6])
      expectClose(normalCdf(normalQuantile(p)), p, 1e-9);
  });

  it('stays within 0 and 1 in the far tails, and refuses a share that is none', () => {
    expect(normalCdf(-60)).toBe(0);
    expect(normalCdf(60)).toBe(1);
    expect(() => normalQuantile(0)).toThrow('normalQuantile: expected 0 < p < 1, got 0');
    expect(() => normalQuantile(Number.NaN)).toThrow('got NaN');
  });
});
