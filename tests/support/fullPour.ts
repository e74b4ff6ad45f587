import type { PourAsk } from '../../src/plan';

/** Something told in every question, so that every figure is there. The values are examples. */
export const FULL_POUR: PourAsk = {
  pour: {
    cavity: { volumeCm3: { value: 4500, low: 4440, high: 4560, from: 'taped' } },
    freeRiseKgM3: { value: 96, from: 'data-sheet' },
    ratio: { a: 100, b: 50, by: 'volume' },
    partDensities: { aKgM3: 1100, bKgM3: 1200 },
    packFactor: { value: 1.25, from: 'chosen' },
  },
  air: { altitudeM: 800 },
  roomC: 21,
  moldC: 34,
  foam: { creamS: 45, openMin: 30, timesAtC: 23, ncoShare: 0.13, waterShare: 0.0055 },
  cups: { cupCm3: 2000, mixS: 15 },
  clamp: { projectedCm2: 300, plugCm2: 20, lidG: 3000, jacketMm: 12 },
  warm: { wallMm: 8, sides: 1, surroundings: 'still box', airTempC: 45, targetTempC: 36 },
  packs: { list: [1.15, 1.25, 1.45] },
  prices: { aPerKg: 9, bPerKg: 7, failurePrice: 80 },
  past: [
    { packFactor: 1.25, filled: true },
    { packFactor: 1.26, filled: false },
  ],
  castingCm2: 1660,
  colors: [{ name: 'Moss', share: 0.02, of: 'B' }],
  facts: { pigmentShare: (0.02 * 60) / 170, panelSpanMm: 90 },
};
