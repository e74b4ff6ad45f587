import type { Rule } from '../yield';

const COMMON = 'common practice, no source';

/** Every figure of the checks and of the cautions of materials, with where it comes from. The data sheet wins over all of them. */
export const CHECK_FIGURES = {
  barrierDry: { value: 30, unit: 'min', from: COMMON },
  inhibitedSkin: { value: 0.5, unit: 'mm', from: COMMON },
  thickSection: {
    value: 25,
    unit: 'mm',
    from: 'choice of this program, no source: about twice the usual wall of 12 mm',
  },
  openedLook: { value: 6, unit: 'months', from: COMMON },
  openedStop: { value: 12, unit: 'months', from: COMMON },
  foamOpenedLook: { value: 6, unit: 'months', from: COMMON },
  foamOpenedStop: { value: 12, unit: 'months', from: COMMON },
  condensationMoldLife: { value: 5, low: 1, high: 5, unit: 'years', from: COMMON },
  pigmentLook: { value: 0.02, unit: 'share of the mix', from: COMMON },
  pigmentStop: { value: 0.05, unit: 'share of the mix', from: COMMON },
  waterGas: {
    value: 1.36,
    unit: 'L/g',
    from: 'derived: one CO2 for each H2O, ideal gas at 25 °C and 101.325 kPa',
  },
  sealedPressure: {
    value: 6,
    unit: 'times',
    from: 'derived: air of 20 °C warmed to 350 K beside foam of 160 kg/m3 packed 1.2 times (Dalton, ideal gas), over the foam alone',
  },
  trapSmall: {
    value: 0.2,
    unit: 'cm3',
    from: 'engineering choice: a bubble this small is a pinhole at worst',
  },
  trapStop: { value: 1, unit: 'cm3', from: 'chosen here: a void as large as a ball of 12 mm shows' },
  ceilingTilt: { value: 10, unit: 'degrees', from: COMMON },
  ceilingLook: { value: 1, unit: 'cm2', from: 'chosen here: a level spot about as large as a fingertip' },
  heavyLift: { value: 15, low: 15, high: 20, unit: 'kg', from: COMMON },
  hotSurface: { value: 44, unit: 'C', from: 'from memory, not verified' },
  respirableSilica: { value: 0.05, unit: 'mg/m3', from: 'from memory, not verified' },
} as const satisfies Readonly<Record<string, Rule>>;
