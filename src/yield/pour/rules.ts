import type { Rule } from '../rules';

const COMMON = 'common practice, no source';
const MEMORY = 'from memory, not verified';
const SIMULATOR =
  'input of the Baser-kinetics example of the open foam simulator MoDeNa (European project 604271)';

/** Every default and limit of the pour beyond the batch. Each is shown as assumed until the user confirms it. */
export const POUR_RULES = {
  gasConstant: { value: 8.31446261815324, unit: 'J/(mol K)', from: 'SI of 2019, exact' },

  closedCellSolid: { value: 1100, unit: 'kg/m3', from: `density of the polymer itself; ${SIMULATOR}` },
  pressureFactor: {
    value: 2,
    unit: '',
    from: 'engineering choice: the ideal-gas pressure may be off by so much either way until a peak was measured',
  },
  measuredPeakDoubt: {
    value: 0.25,
    unit: '',
    from: 'chosen here: a peak measured once, carried to another pour of the same mold and foam',
  },
  airAtPour: { value: 293.15, unit: 'K', from: 'a room of 20 °C' },
  gasGamma: { value: 1.3, unit: '', from: `ratio of specific heats of carbon dioxide, textbook; ${MEMORY}` },

  strapFriction: { value: 0.3, low: 0.2, high: 0.4, unit: '', from: `strap on a rigid jacket; ${COMMON}` },
  strapWrap: {
    value: 90,
    low: 90,
    high: 180,
    unit: 'degrees',
    from: 'one corner between the buckle and a crossing of the parting, buckles on alternate sides: engineering choice',
  },
  strapLoss: {
    value: 0.2,
    low: 0.2,
    high: 0.5,
    unit: '',
    from: `tension lost by creep after it was tightened again before the pour; up to half within the first hour without that; ${COMMON}`,
  },
  strapTension: {
    value: 200,
    low: 100,
    high: 300,
    unit: 'N',
    from: `strap with a hand cam buckle; ${MEMORY}`,
  },
  ratchetTension: { value: 2000, low: 1000, high: 3000, unit: 'N', from: `ratchet strap; ${MEMORY}` },
  strapRetighten: { value: 5, unit: 'min', from: `after the first tightening, before the pour; ${COMMON}` },

  panelBend: {
    value: 0.31,
    unit: '',
    from: `square plate held at its edges under even pressure, Roark and Timoshenko; ${MEMORY}`,
  },
  panelStrength: {
    value: 1.5,
    low: 0.75,
    high: 3,
    unit: 'MPa',
    from: `gypsum in tension, dry 1.5 to 3, wet about half; ${MEMORY}`,
  },
  panelSpan: { value: 150, unit: 'mm', from: `flat panel without rib or board; ${COMMON}` },
  flangeBoltPitch: { value: 80, low: 80, high: 100, unit: 'mm', from: COMMON },

  weatherPressure: { value: 1.5, unit: 'kPa', from: 'one standard deviation of the weather: assumption' },
  barometer: { value: 0.3, unit: 'kPa', from: 'one standard deviation of a reading: assumption' },
  reducedPressure: {
    value: 5,
    unit: 'kPa',
    from: 'chosen here: more than that above the standard atmosphere of the height is no weather',
  },
  warmthPerK: {
    value: 0.0028,
    low: 0.0024,
    high: 0.01,
    unit: '1/K',
    from: `density a degree of warmer ingredients: 1.2 % in 5 K by the gas alone, 2 to 5 % in practice; ${COMMON}`,
  },

  gelActivation: { value: 35.14, unit: 'kJ/mol', from: `gelling; ${SIMULATOR}` },
  blowActivation: { value: 27.04, unit: 'kJ/mol', from: `blowing; ${SIMULATOR}` },
  quickening: { value: 1.5, low: 1.4, high: 2, unit: '', from: `faster in 10 K; ${COMMON}` },
  folkQuickening: { value: 2, unit: '', from: `"halves in 10 degrees"; ${COMMON}` },
  mixTime: { value: 20, low: 15, high: 30, unit: 's', from: `mixed by hand; ${COMMON}` },
  carryTime: { value: 5, low: 3, high: 10, unit: 's', from: 'from the bench to the mold: assumption' },
  pourMargin: { value: 5, unit: 's', from: COMMON },

  heatUrethane: {
    value: 84.25,
    low: 68.5,
    high: 100,
    unit: 'kJ/mol',
    from: `low: ${SIMULATOR}; high: classical literature, ${MEMORY}; value: the middle`,
  },
  heatWater: {
    value: 139.25,
    low: 81.5,
    high: 197,
    unit: 'kJ/mol',
    from: `a mole of water with two of isocyanate; low: ${SIMULATOR}; high: classical literature, ${MEMORY}`,
  },
  heatCapacity: { value: 1800, unit: 'J/(kg K)', from: SIMULATOR },
  coreLook: {
    value: 140,
    unit: 'C',
    from: 'engineering choice, below the slabstock figure of CA 2011177 A1',
  },
  coreStop: {
    value: 160,
    unit: 'C',
    from: 'engineering choice; slabstock above 149 °C can discolor or light itself (CA 2011177 A1)',
  },
  foamConductivity: { value: 0.05, unit: 'W/(m K)', from: `at 160 kg/m3, textbook; ${MEMORY}` },
  foamHeatCapacity: { value: 1500, unit: 'J/(kg K)', from: `textbook; ${MEMORY}` },
  foamCooling: { value: 160, unit: 'kg/m3', from: 'density at which the cooling is reckoned' },

  skinDepth: { value: 1, low: 0.5, high: 2, unit: 'mm', from: `an assumption to be tuned; ${COMMON}` },
  skinOverCore: { value: 4, unit: '', from: `skin density over core density; ${COMMON}` },
  packMargin: { value: 0.2, unit: '', from: 'chosen here: beyond what the skin alone takes' },

  stiffnessPower: {
    value: 2,
    low: 1.5,
    high: 2.5,
    unit: '',
    from: `open cells, E goes with density squared (Gibson and Ashby, Cellular Solids); range ${MEMORY}`,
  },
  morePack: { value: 0.05, unit: '', from: 'chosen here: the step beside which a failed casting is priced' },
  mostLevels: { value: 40, unit: '', from: 'chosen here: more columns than anyone reads' },
  samePack: {
    value: 0.025,
    unit: '',
    from: 'chosen here: a past casting this close counts as of that level',
  },
  mouthWasted: {
    value: 0.25,
    unit: '',
    from: 'engineering choice: below this share of the ideal-gas pressure an open mouth lets the extra pack out',
  },

  cupFill: {
    value: 1 / 3,
    low: 1 / 3,
    high: 0.5,
    unit: '',
    from: `liquid a third to half of the cup; ${COMMON}`,
  },
  pourRate: { value: 80, low: 40, high: 150, unit: 'g/s', from: `by hand from a cup; ${COMMON}` },
  mostCups: { value: 60, unit: '', from: 'chosen here: more is another way of casting' },

  uCupTest: { value: 0.015, unit: '', from: `same day, 3 cups or more; ${COMMON}` },
  uWaterFill: { value: 0.005, unit: '', from: 'water weighed in the closed mold: assumption' },
  uRiserMeasured: { value: 0.02, unit: '', from: 'riser filled with water or weighed: assumption' },
  uWeighedBack: { value: 1, unit: 'g', from: 'cup or trimmings weighed after a pour: assumption' },
  uBarometerShare: { value: 0.0025, unit: '', from: '0.3 kPa of a barometer through the ideal gas law' },
  uGasMeasured: { value: 0.002, unit: '', from: 'weight lost while rising, on a fine scale: assumption' },
  fineStep: { value: 0.1, unit: 'g', from: 'a finer scale' },

  drop: { value: 0.022, low: 0.015, high: 0.05, unit: 'g', from: `weigh 20 of yours; ${COMMON}` },
  tateFactor: { value: 0.65, unit: '', from: `Tate with the factor of Harkins and Brown; ${MEMORY}` },

  entranceLoss: { value: 0.5, unit: '', from: `sharp entrance of a tube, textbook; ${MEMORY}` },
  laminarMix: {
    value: 100,
    unit: '',
    from: 'engineering choice: Reynolds number up to which the sum of losses holds',
  },
  wallis: { value: 0.725, unit: '', from: `counter-current limit, Wallis; ${MEMORY}` },
  airDensity: { value: 1.2, unit: 'kg/m3', from: 'air at 20 °C and 101.3 kPa, ideal gas law' },
  ventDischarge: { value: 0.6, unit: '', from: `sharp-edged hole, textbook; ${MEMORY}` },
  ventPressure: {
    value: 200,
    unit: 'Pa',
    from: 'chosen here: air before the vents; about a hundredth of what the foam itself reaches',
  },
  openingBald: {
    value: 0.01,
    unit: '',
    from: `opening over the surface of the casting: the bald spot it leaves; ${COMMON}`,
  },
  mostOpenings: {
    value: 4,
    unit: '',
    from: 'chosen here: more than one pair of hands and a helper can serve',
  },
  ventLength: { value: 15, unit: 'mm', from: 'chosen here: the rubber that a vent goes through' },
  wideVent: {
    value: 6,
    unit: 'mm',
    from: 'chosen here: the single wide vent that several small ones are compared with',
  },
  openingLength: { value: 50, unit: 'mm', from: 'chosen here: the tube that is poured through' },
  openingHead: {
    value: 30,
    unit: 'mm',
    from: 'chosen here: liquid over it, as a hand holds a cup over a mold',
  },
  foamViscosity: {
    value: 50,
    low: 10,
    high: 1000,
    unit: 'Pa s',
    from: 'foam near gel: not known, to be learned from the weight of trimmed risers; assumption',
  },
} as const satisfies Record<string, Rule>;
