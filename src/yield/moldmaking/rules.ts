import type { Rule } from '../rules';

const COMMON = 'common practice, no source';
const MEMORY = 'from memory, not verified';
const MEASURE_IT = `${COMMON}; measure one strip of yours`;

/** Every default of jacket, box, lift, shrink and finish. Each is shown as assumed until the user confirms it. */
export const MOLDMAKING_RULES = {
  plasterWall: { value: 15, low: 10, high: 25, unit: 'mm', from: COMMON },
  plasterWater: {
    value: 0.65,
    low: 0.38,
    high: 0.74,
    unit: '',
    from: `water to plaster by mass; ${COMMON}, see the bag`,
  },
  plasterParticle: { value: 2700, unit: 'kg/m3', from: `density of the powder itself, ${MEMORY}` },
  plasterGain: {
    value: 1.186,
    unit: '',
    from: 'water bound on setting, 1 + 1.5 x 18.015 / 145.15 by mass; standard atomic weights (IUPAC)',
  },

  bandageLayer: { value: 0.85, low: 0.7, high: 1, unit: 'mm', from: MEASURE_IT },
  bandageWet: { value: 1000, low: 900, high: 1100, unit: 'g/m2', from: MEASURE_IT },
  bandageDry: { value: 600, low: 500, high: 650, unit: 'g/m2', from: MEASURE_IT },
  bandageLayers: { value: 5, low: 4, high: 6, unit: '', from: COMMON },
  bandageOverlap: { value: 1.15, low: 1.1, high: 1.3, unit: '', from: COMMON },
  bandageWall: {
    value: 4.25,
    low: 2.8,
    high: 6,
    unit: 'mm',
    from: '4 to 6 layers; each figure common practice',
  },

  glassMat: { value: 450, low: 300, high: 600, unit: 'g/m2', from: COMMON },
  glassLayers: { value: 2, low: 2, high: 3, unit: '', from: COMMON },
  glassOverlap: { value: 1.1, low: 1, high: 1.25, unit: '', from: COMMON },
  resinPerGlass: {
    value: 2.5,
    low: 2,
    high: 3,
    unit: '',
    from: `by mass, chopped mat laid by hand; ${COMMON}`,
  },
  glassDensity: { value: 2560, unit: 'kg/m3', from: MEMORY },
  resinDensity: { value: 1200, low: 1100, high: 1250, unit: 'kg/m3', from: MEMORY },
  gelcoat: { value: 0, low: 0, high: 0.5, unit: 'mm', from: 'none unless asked for' },
  catalystShare: { value: 0.015, low: 0.01, high: 0.02, unit: '', from: `share of the resin; ${COMMON}` },
  glassWall: {
    value: 2.2,
    low: 2.2,
    high: 3.4,
    unit: 'mm',
    from: '2 to 3 layers; each figure common practice',
  },

  puttyWall: { value: 7, low: 6, high: 8, unit: 'mm', from: COMMON },
  puttyDensity: {
    value: 1350,
    low: 700,
    high: 1700,
    unit: 'kg/m3',
    from: `light pastes 700 to 900; ${MEMORY}`,
  },

  wallBulge: { value: 1, unit: 'mm', from: `${COMMON}: chosen` },
  wallGivesWay: {
    value: 0.1,
    unit: '',
    from: 'chosen here: share of the span where thin-plate formulas end',
  },
  acrylic: { value: 3, low: 2.8, high: 3.3, unit: 'GPa', from: MEMORY },
  foamBoard: { value: 0.2, low: 0.1, high: 0.3, unit: 'GPa', from: MEMORY },
  plywood: { value: 6, low: 4, high: 9, unit: 'GPa', from: `either way of the grain; ${MEMORY}` },
  mdf: { value: 2.7, low: 2, high: 3.5, unit: 'GPa', from: MEMORY },
  chipboard: { value: 2, low: 1.5, high: 3, unit: 'GPa', from: MEMORY },
  holdDown: { value: 2, unit: '', from: 'engineering choice, as for clamps' },

  liftLook: { value: 15, low: 15, high: 20, unit: 'kg', from: COMMON },

  shrinkAddition: {
    value: 0.0005,
    low: 0,
    high: 0.001,
    unit: '',
    from: `linear, below 0.1 %; ${COMMON}`,
  },
  shrinkCondensation: {
    value: 0.005,
    low: 0.002,
    high: 0.01,
    unit: '',
    from:
      'linear, chosen within what sources say: Blanpain, Driesmans & Benrubi 0.1 to 1 % by volume; ' +
      'loss of volatiles, Biomaterials 1992, doi 10.1016/0142-9612(92)90058-v',
  },
  shrinkSheetDoubt: {
    value: 0.5,
    unit: '',
    from: 'chosen here: a test bar of the data sheet is not your mold',
  },
  shrinkMeasuredDoubt: { value: 0.001, unit: '', from: 'chosen here: 0.3 mm in 300 mm, read with a rule' },
  growthPerK: {
    value: 2.4e-4,
    low: 2.0e-4,
    high: 2.6e-4,
    unit: '1/K',
    from: `linear; a third of 5.9 to 7.9e-4 by volume; ${COMMON}`,
  },
  roomTemp: { value: 23, unit: 'C', from: `temperature at which shrink is stated; ISO 23529, ${MEMORY}` },

  clayDensity: {
    value: 1700,
    low: 1500,
    high: 1900,
    unit: 'kg/m3',
    from: `modeling clay; weigh a known lump of yours; ${MEMORY}`,
  },
  boxWall: { value: 12, low: 6, high: 25, unit: 'mm', from: 'chosen here: half an inch of board' },
  texture: { value: 1.1, low: 1.05, high: 1.3, unit: '', from: COMMON },
  lossBrush: { value: 0.15, low: 0.1, high: 0.2, unit: '', from: `brush or roller; ${COMMON}` },
  lossAirless: { value: 0.35, low: 0.3, high: 0.4, unit: '', from: COMMON },
  lossAirbrush: { value: 0.5, low: 0.4, high: 0.6, unit: '', from: COMMON },
  adhesive: { value: 200, low: 150, high: 250, unit: 'g/m2', from: `contact adhesive, per face; ${COMMON}` },
  poreShare: {
    value: 0.9,
    unit: '',
    from: 'flexible foam of about 100 kg/m3 in a liquid of about 1070 kg/m3',
  },
  poreDepth: { value: 0.3, unit: 'mm', from: `radius of a cell; ${COMMON}` },
  sealerDensity: { value: 1050, unit: 'kg/m3', from: COMMON },

  keySpacing: { value: 65, low: 50, high: 80, unit: 'mm', from: COMMON },
  boxClearance: { value: 20, low: 10, high: 40, unit: 'mm', from: COMMON },
} as const satisfies Record<string, Rule>;

/** Bounds of sense for what is typed (chosen by us, no source): outside, the input is refused by its name. */
export const MOLDMAKING_BOUNDS = {
  jacketCm3: { low: 0.1, high: 1e7, unit: 'cm3' },
  jacketInnerCm2: { low: 0.1, high: 1e7, unit: 'cm2' },
  jacketOuterCm2: { low: 0.1, high: 1e7, unit: 'cm2' },
  jacketMm: { low: 0.3, high: 200, unit: 'mm' },
  waterPerPlaster: { low: 0.2, high: 1.5, unit: '' },
  layers: { low: 1, high: 30, unit: '' },
  layerMm: { low: 0.1, high: 5, unit: 'mm' },
  wetGPerM2: { low: 100, high: 5000, unit: 'g/m2' },
  dryGPerM2: { low: 50, high: 5000, unit: 'g/m2' },
  overlapFactor: { low: 1, high: 2, unit: '' },
  glassGPerM2: { low: 20, high: 1500, unit: 'g/m2' },
  resinPerGlass: { low: 0.4, high: 6, unit: '' },
  gelcoatMm: { low: 0, high: 2, unit: 'mm' },
  catalystShare: { low: 0.005, high: 0.04, unit: '' },
  puttyKgM3: { low: 200, high: 3000, unit: 'kg/m3' },

  rubberHeightMm: { low: 1, high: 3000, unit: 'mm' },
  wallWidthMm: { low: 1, high: 5000, unit: 'mm' },
  wallMm: { low: 0.5, high: 200, unit: 'mm' },
  wallStiffnessGPa: { low: 0.001, high: 300, unit: 'GPa' },
  siliconeKgM3: { low: 700, high: 2500, unit: 'kg/m3' },
  submergedCm3: { low: 0, high: 1e7, unit: 'cm3' },
  sculptMassG: { low: 0, high: 1e7, unit: 'g' },

  siliconeG: { low: 0, high: 1e7, unit: 'g' },
  jacketDryG: { low: 0, high: 1e7, unit: 'g' },
  castingG: { low: 0, high: 1e7, unit: 'g' },

  sculptCm3: { low: 0.1, high: 1e7, unit: 'cm3' },
  lengthMm: { low: 0.1, high: 1e5, unit: 'mm' },
  moldLengthMm: { low: 0.1, high: 1e5, unit: 'mm' },
  readingMm: { low: 0, high: 10, unit: 'mm' },
  moldShrinkShare: { low: -0.02, high: 0.1, unit: '' },
  castingShrinkShare: { low: -0.05, high: 0.2, unit: '' },
  growthPerK: { low: 0, high: 0.001, unit: '1/K' },
  castingTempC: { low: -10, high: 150, unit: '\u00b0C' },
  roomTempC: { low: -10, high: 50, unit: '\u00b0C' },

  surfaceCm2: { low: 0.01, high: 1e7, unit: 'cm2' },
  textureFactor: { low: 1, high: 3, unit: '' },
  coats: { low: 1, high: 50, unit: '' },
  dryFilmUm: { low: 1, high: 5000, unit: '\u00b5m' },
  solidsShare: { low: 0.01, high: 1, unit: '' },
  lossShare: { low: 0, high: 0.9, unit: '' },
  coverageM2: { low: 0.01, high: 100, unit: 'm2' },
  adhesiveGPerM2: { low: 1, high: 3000, unit: 'g/m2' },
  faces: { low: 1, high: 1000, unit: '' },
  poreShare: { low: 0, high: 1, unit: '' },
  poreDepthMm: { low: 0, high: 20, unit: 'mm' },
  sealerKgM3: { low: 500, high: 3000, unit: 'kg/m3' },

  outerXMm: { low: 1, high: 1e4, unit: 'mm' },
  outerYMm: { low: 1, high: 1e4, unit: 'mm' },
  outerZMm: { low: 1, high: 1e4, unit: 'mm' },
  rubberMm: { low: 0, high: 500, unit: 'mm' },
  flangeMm: { low: 0, high: 500, unit: 'mm' },
  clearanceMm: { low: 0, high: 1000, unit: 'mm' },
  outerCm3: { low: 0.1, high: 1e8, unit: 'cm3' },
  keySpacingMm: { low: 1, high: 1000, unit: 'mm' },
  seamMm: { low: 1, high: 1e5, unit: 'mm' },
  keyRows: { low: 1, high: 4, unit: '' },
} as const satisfies Record<string, { low: number; high: number; unit: string }>;

export type MoldmakingInput = keyof typeof MOLDMAKING_BOUNDS;
