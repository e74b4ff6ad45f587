import type { Problem } from '../../problem';
import type { FieldName } from '../ticket/fields';

/** The box that an input of the engine is typed into. */
const FIELD_OF_INPUT: Readonly<Record<string, FieldName>> = {
  freeRiseKgM3: 'freeRise',
  partDensityAKgM3: 'densityA',
  partDensityBKgM3: 'densityB',
  packFactor: 'pack',
  riserCm3: 'riser',
  ventsG: 'vents',
  residueG: 'residue',
  scaleStepG: 'scaleStep',
  scaleMaxG: 'scaleMost',

  partPrice: 'priceA',
  failurePrice: 'failPrice',
  skinMm: 'skinDepth',

  altitudeM: 'altitude',
  stationKPa: 'station',
  ingredientsC: 'ingredients',
  statedAtC: 'sheetTemp',
  nowC: 'pourRoom',
  startC: 'ingredients',
  mixTempC: 'ingredients',
  moldTempC: 'moldTemp',

  cupCm3: 'foamCup',
  cupFillShare: 'cupFill',
  mixers: 'hands',
  creamS: 'cream',
  mixS: 'mixTime',
  carryS: 'carryTime',

  projectedCm2: 'projected',
  lidCm2: 'plugArea',
  lidG: 'lidMass',
  strapN: 'strapTension',
  straps: 'strapCount',
  peakKPa: 'peakPressure',
  measuredPackFactor: 'peakPack',

  wallMm: 'warmWall',
  jacketMm: 'warmJacket',
  airTempC: 'warmAir',
  targetTempC: 'warmTarget',
  startTempC: 'pourRoom',

  ncoShare: 'nco',
  waterShare: 'water',
  openMin: 'openTime',
};

const FIELD_OF_CODE: Partial<Record<Problem['code'], FieldName>> = {
  PACK_REFUSED: 'pack',
  RATIO_NOT_POSITIVE: 'partsA',
  RATIO_EXTREME: 'partsA',
  RATIO_REVERSED: 'partsA',
  PART_DENSITIES_NEEDED: 'densityA',
  PART_BELOW_SCALE: 'scaleStep',
  NOT_A_FOAM: 'freeRise',
  POUR_WINDOW_NONE: 'cream',
  STRAPS_TOO_MANY: 'strapTension',
  WARM_UNREACHABLE: 'warmAir',
  WARM_ALREADY_THERE: 'warmTarget',
};

/** The field by which a problem is told, if it has one. */
export function fieldOf({ code, values }: Problem): FieldName | undefined {
  if (code === 'CUPS_TOO_MANY') return values.limitedBy === 'container' ? 'foamCup' : 'cream';
  return FIELD_OF_CODE[code] ?? FIELD_OF_INPUT[String(values.input ?? '')];
}
