import type { Rule } from '../rules';

const CHOSEN = 'Chosen here';

/** Figures of a run of several castings. */
export const RUN_RULES = {
  spareShare: { value: 0.1, unit: '', from: `${CHOSEN}: one casting in ten may have to be done again` },
  cupG: { value: 60, unit: 'g', from: `${CHOSEN}: half a liter of light foam and what stays in its cup` },
  turnaroundMin: {
    value: 45,
    unit: 'min',
    from: `${CHOSEN}: clean, release, warm, close, weigh and pour, beside the wait`,
  },
  dayMin: { value: 480, unit: 'min', from: `${CHOSEN}: a day of eight hours` },
} as const satisfies Record<string, Rule>;

/** Bounds of sense for what is typed (chosen by us, no source). */
export const RUN_BOUNDS = {
  castings: { low: 1, high: 10_000, unit: '' },
  molds: { low: 1, high: 1000, unit: '' },
  partAG: { low: 0.1, high: 1e6, unit: 'g' },
  partBG: { low: 0.1, high: 1e6, unit: 'g' },
  spareShare: { low: 0, high: 1, unit: '' },
  cupTestG: { low: 0, high: 1e4, unit: 'g' },
  openMin: { low: 0.5, high: 10_080, unit: 'min' },
  turnaroundMin: { low: 0, high: 10_080, unit: 'min' },
  dayMin: { low: 10, high: 1440, unit: 'min' },
  foamStockKg: { low: 0, high: 1e5, unit: 'kg' },
  moldLife: { low: 1, high: 1e5, unit: '' },
  moldUsed: { low: 0, high: 1e5, unit: '' },
  foamPerKg: { low: 0, high: 1e6, unit: '' },
  otherPerCasting: { low: 0, high: 1e6, unit: '' },
} as const satisfies Record<string, { low: number; high: number; unit: string }>;

export type RunInput = keyof typeof RUN_BOUNDS;
