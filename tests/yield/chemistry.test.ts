import { expect, it } from 'vitest';
import { isocyanateIndex, wallHoldUp } from '../../src/yield';
import { expectClose } from '../support/close';

it('T6 [calc from Jeffreys 1930, from memory]: a 12 cm wall of 0.05 m2 keeps 31.14 g of a 1 Pa s mix after 15 s', () => {
  const { meanFilmMm, massG } = wallHoldUp({
    viscosityPaS: 1,
    heightM: 0.12,
    drainS: 15,
    densityKgM3: 1070,
    wettedAreaM2: 0.05,
  });
  expectClose(meanFilmMm, 0.58211, 1e-5, 'mean film');
  expectClose(massG, 31.14, 2e-4, 'hold-up');
});

it('T8 [textbook, from memory]: 52 g of 13 % NCO against 100 g of hydroxyl number 60 with 0.55 g water is index 95.766411', () => {
  const index = isocyanateIndex({
    partAG: 52,
    ncoShare: 0.13,
    partBG: 100,
    hydroxylMgKohG: 60,
    waterG: 0.55,
  });
  expectClose(index, 95.766411, 1e-8, 'index');
});

it('the index follows A over B: leaving 5 of 300 g of A in its cup costs 1.67 %', () => {
  const parts = { ncoShare: 0.13, partBG: 577, hydroxylMgKohG: 60, waterG: 3.2 };
  const full = isocyanateIndex({ ...parts, partAG: 300 });
  expectClose(isocyanateIndex({ ...parts, partAG: 295 }) / full, 295 / 300, 1e-12, 'ratio of indices');
  expect(full).toBeGreaterThan(0);
});
