import type { Rule } from '../rules';
import { INPUT_BOUNDS } from '../rules';

const CHOSEN = 'Chosen here';

/** How far each way to a volume is trusted. */
export const VOLUME_RULES = {
  waterFillU: {
    value: 0.003,
    unit: '',
    from: `${CHOSEN}: rim, bubbles and drops left behind; the air's lift on the water, 0.1 %, is within it`,
  },
  waterTempU: { value: 2, unit: 'K', from: `${CHOSEN}: a thermometer held into the jug` },
  waterTemp: {
    value: 20,
    low: 5,
    high: 35,
    unit: 'C',
    from: `${CHOSEN}: tap water that stood, when nobody measured it`,
  },
  overflowU: { value: 0.01, unit: '', from: `${CHOSEN}: the film on the sculpt and the bulge at the spout` },
  levelU: { value: 0.005, unit: '', from: `${CHOSEN}: marks of a measuring jug, of what it holds` },
  vesselMarks: {
    value: 50,
    unit: '',
    from: `${CHOSEN}: a jug has some 50 marks up to its level`,
  },
  riceU: {
    value: 0.03,
    unit: '',
    from: `${CHOSEN}: rice settles otherwise each time it is poured, of what it holds`,
  },
  tapeU: { value: 3, unit: 'mm', from: `${CHOSEN}: a soft tape on a soft sculpt` },
  roundness: {
    value: 1.2,
    low: 1,
    high: 1.5,
    unit: '',
    from: `${CHOSEN}: width over depth of a limb; of all sections of one girth the circle holds most`,
  },
  boxFill: {
    value: 0.95,
    low: 0.85,
    high: 1,
    unit: '',
    from: `${CHOSEN}: what rounded edges leave of a box`,
  },
} as const satisfies Record<string, Rule>;

/** Bounds of sense for what is typed (chosen by us, no source). */
export const VOLUME_BOUNDS = {
  fillWaterG: { low: 0.1, high: 1e7, unit: 'g' },
  waterTempC: { low: 1, high: 40, unit: '\u00b0C' },
  scaleStepG: INPUT_BOUNDS.scaleStepG,
  beforeCm3: { low: 0, high: 1e7, unit: 'cm3' },
  afterCm3: { low: 0.1, high: 1e7, unit: 'cm3' },
  readingCm3: { low: 0, high: 1e5, unit: 'cm3' },
  tapedLengthMm: { low: 1, high: 1e4, unit: 'mm' },
  girthMm: { low: 5, high: 3e4, unit: 'mm' },
  tapedHeightMm: { low: 1, high: 1e4, unit: 'mm' },
  tapedWidthMm: { low: 1, high: 1e4, unit: 'mm' },
  tapedDepthMm: { low: 1, high: 1e4, unit: 'mm' },
} as const satisfies Record<string, { low: number; high: number; unit: string }>;

export type VolumeInput = keyof typeof VOLUME_BOUNDS;
