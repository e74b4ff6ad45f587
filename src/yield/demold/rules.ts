import type { Rule } from '../rules';

const COMMON = 'common practice, no source';
const MEMORY = 'from memory, not verified';
const GENT = `Young's modulus from Shore A, Gent 1958; ${MEMORY}`;

/** Every default and limit of taking a casting out. Each is shown as assumed until the user confirms it. */
export const DEMOLD_RULES = {
  elongation: {
    value: 3,
    low: 1.4,
    high: 6.8,
    unit: '',
    from: `stretch of silicone at break; ends: table 2 of PMC11019708, a stiff and a soft one; value: ${MEMORY}`,
  },
  allowedShare: {
    value: 1 / 3,
    unit: '',
    from: `share of the stretch at break that is used, for notches and age; ${COMMON}`,
  },
  foamSquash: {
    value: 0.2,
    low: 0.1,
    high: 0.35,
    unit: '',
    from: `share of its girth that soft foam gives when squeezed; ${COMMON}`,
  },
  castingStop: { value: 6, unit: 'mm', from: `flexible foam this thin tears on the way out; ${COMMON}` },
  castingLook: { value: 10, unit: 'mm', from: `flexible foam this thin is weak; ${COMMON}` },
  rubberStop: { value: 3, unit: 'mm', from: `silicone between two parts of the casting; ${COMMON}` },
  rubberLooked: {
    value: 20,
    unit: 'mm',
    from: 'chosen here: rubber thicker than this between two parts is no web',
  },
  slenderLook: { value: 5, unit: '', from: `length over thickness of ears and fingers; ${COMMON}` },

  gentFactor: { value: 0.0981, unit: 'MPa', from: GENT },
  gentAtZero: { value: 56, unit: '', from: GENT },
  gentPerPoint: { value: 7.62336, unit: '', from: GENT },
  gentIndenter: { value: 0.137505, unit: '', from: GENT },
  gentFull: { value: 254, unit: '', from: GENT },
  gentFullPerPoint: { value: 2.54, unit: '', from: GENT },
} as const satisfies Record<string, Rule>;

/** Bounds of sense for what is typed or measured (chosen by us, no source): outside, it is refused by its name. */
export const DEMOLD_BOUNDS = {
  widestMm: { low: 1, high: 2e4, unit: 'mm' },
  tightestMm: { low: 1, high: 2e4, unit: 'mm' },
  squash: { low: 0, high: 0.6, unit: '' },
  elongationAtBreak: { low: 0.2, high: 15, unit: '' },
  allow: { low: 0, high: 5, unit: '' },
  stretchShare: { low: -1, high: 20, unit: '' },
  shoreA: { low: 0, high: 80, unit: '' },
  lipMm: { low: 0.5, high: 200, unit: 'mm' },
  lipGirthMm: { low: 1, high: 2e4, unit: 'mm' },
  thinMm: { low: 0.1, high: 1000, unit: 'mm' },
  /** Beyond this no mold is made: the sign of a wrong unit. */
  placeMm: { low: -1e5, high: 1e5, unit: 'mm' },
  modulusMPa: { low: 0.01, high: 50, unit: 'MPa' },
} as const satisfies Record<string, { low: number; high: number; unit: string }>;

export type DemoldInput = keyof typeof DEMOLD_BOUNDS;
