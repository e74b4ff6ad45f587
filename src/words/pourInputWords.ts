import type { POUR_BOUNDS } from '../yield';

/** Names that other lists have words for already. */
type Known = 'cavityCm3' | 'freeRiseKgM3' | 'liquidKgM3' | 'residueG' | 'scaleStepG' | 'ambientKPa';

/** What the numbers of the pour are called when one of them is refused. */
export const POUR_INPUT_WORDS: Readonly<
  Record<Exclude<keyof typeof POUR_BOUNDS, Known> | 'packFrom' | 'packTo' | 'measuredPackFactor', string>
> = {
  packFrom: 'First pack to compare',
  packTo: 'Last pack to compare',
  packStep: 'Step from pack to pack',
  measuredPackFactor: 'Pack at which the peak was measured',

  mixedG: 'Mixed mass',
  waterShare: 'Water in part B',
  ncoShare: 'NCO content of part A',
  gasTempK: 'Temperature of the gas',
  airTempK: 'Temperature of the air in the mold',
  gasCm3: 'Volume of the gas',
  gasGamma: 'Ratio of specific heats of the gas',
  gaugeKPa: 'Pressure in the mold',
  peakKPa: 'Peak pressure',
  trappedCm3: 'Trapped air',

  lidCm2: 'Area of the plug or lid',
  projectedCm2: 'Area of the shadow across the parting',
  lidG: 'Mass of the lid',
  safety: 'Safety factor',
  forceN: 'Clamp force',
  chordMm: 'Width of the cavity across the parting',
  strapHeightMm: 'Height of the cavity under straps',
  straps: 'Number of straps',
  strapN: 'Tension of a strap',
  strapFriction: 'Friction of the strap',
  strapWrapDegrees: 'Wrap of the strap',
  strapLossShare: 'Tension lost by creep',
  radiusMm: 'Radius of the jacket',
  pitchMm: 'Pitch of the straps',
  panelMm: 'Thickness of the jacket panel',
  panelSpanMm: 'Free span of the jacket panel',

  altitudeM: 'Height above the sea',
  stationKPa: 'Air pressure at the bench',
  ingredientsC: 'Temperature of the ingredients',

  timeS: 'Time of the data sheet',
  creamS: 'Cream time',
  openMin: 'Time until the mold is opened',
  statedAtC: 'Temperature of the data sheet',
  nowC: 'Temperature now',
  mixS: 'Time of mixing the foam',
  carryS: 'Time from bench to mold',
  marginS: 'Margin before creaming',

  startC: 'Temperature of the parts when mixed',
  coolingMin: 'Time of cooling',

  castingCm2: 'Surface of the casting',
  skinMm: 'Thickness of the skin',
  skinOverCore: 'Skin density over core density',
  packMargin: 'Margin of the pack',
  stiffnessPower: 'Power of the stiffness law',
  partPrice: 'Price of a part',
  failurePrice: 'Cost of a failed casting',

  cupCm3: 'Mixing cup',
  cupFillShare: 'Fill of the mixing cup',
  mixers: 'Number of persons mixing',
  pourGPerS: 'Mix poured in a second',

  colorShare: 'Share of a color',
  dropsG: 'Mass of the drops weighed',
  drops: 'Number of drops weighed',
  dropRadiusMm: 'Radius of the dropper tip',
  surfaceTensionMNM: 'Surface tension of the color',
  colorWaterG: 'Water in the color',
  waterC: 'Temperature of the water reaction',

  shellCm3: 'Volume of the outer shape',
  coreCm3: 'Volume of the core',
  armatureCm3: 'Volume of the armature',
  coreG: 'Mass of the core',
  moldedKgM3: 'Molded density',
  neckCm2: 'Neck of the core through the mold',

  sectionCm2: 'Largest section of the cavity across the opening',
  shareMost: 'Most that the opening may take of that section',
  wantedKPa: 'Pressure that the opening is to hold back',
  ventsPlaced: 'Number of vents placed',
  sprueMm: 'Diameter of the opening',
  sprueLengthMm: 'Length of the opening',
  headMm: 'Liquid above the opening',
  mixPaS: 'Viscosity of the foam mix',
  foamPaS: 'Viscosity of the rising foam',
  liquidCm3: 'Volume of the liquid mix',
  withinS: 'Time to pour in',
  riseS: 'Time of rising',
  vents: 'Number of vents',
  ventMm: 'Diameter of a vent',
  ventLengthMm: 'Length of a vent',
  ventPressurePa: 'Pressure before the vents',
  peakFlow: 'Peak flow over mean flow',

  poured: 'Castings poured',
  filled: 'Castings filled',
  ppm: 'MDI in the air',
};
