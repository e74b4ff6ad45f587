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
};

const FIELD_OF_CODE: Partial<Record<Problem['code'], FieldName>> = {
  PACK_REFUSED: 'pack',
  RATIO_NOT_POSITIVE: 'partsA',
  RATIO_EXTREME: 'partsA',
  RATIO_REVERSED: 'partsA',
  PART_DENSITIES_NEEDED: 'densityA',
  PART_BELOW_SCALE: 'scaleStep',
  NOT_A_FOAM: 'freeRise',
};

/** The field by which a problem is told, if it has one. */
export function fieldOf({ code, values }: Problem): FieldName | undefined {
  return FIELD_OF_CODE[code] ?? FIELD_OF_INPUT[String(values.input ?? '')];
}
