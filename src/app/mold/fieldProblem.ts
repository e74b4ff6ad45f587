import type { Problem } from '../../problem';
import type { FieldName, OwnField } from '../ticket/fields';
import { isPicked, jacketField, moldField } from '../ticket/madeFields';
import { typeOf } from '../ticket/moldState';
import { jacketOf } from '../ticket/moldWishes';
import type { Ticket } from '../ticket/state';

type Place = FieldName | 'kits';

/** The box that an input of the engine is typed into. */
const FIELD_OF_INPUT: Readonly<Record<string, OwnField | 'kits'>> = {
  densityKgM3: 'siliconeDensity',
  siliconeKgM3: 'siliconeDensity',
  ratioPart: 'siliconeBase',
  potLifeMin: 'potLife',
  potLifeAtC: 'potLifeAt',
  roomC: 'room',
  roomTempC: 'room',
  containerCm3: 'mixingCup',
  wasteShare: 'siliconeWaste',
  cupLossG: 'cupLoss',
  scaleStepG: 'scaleStep',
  staysMm: 'stays',
  viscosityPaS: 'viscosity',
  pressureKPa: 'degasPressure',
  stockKg: 'stockBase',
  kitKg: 'kits',
  kitPrice: 'kits',
  kits: 'kits',
  sculptMassG: 'sculptMass',
  wallMm: 'boxWall',
  castingTempC: 'castingTemp',
  coreCm3: 'coreVolume',
  armatureCm3: 'armature',
  linearShrinkShare: 'sheetShrink',
  textureFactor: 'texture',
  coverageM2: 'paintCoverage',
  coats: 'paintCoats',
  adhesiveGPerM2: 'bondTakes',
  surfaceCm2: 'bondFace',
};

/** The parameter of a mold that a problem is about. */
const PARAMETER_OF_CODE: Partial<Record<Problem['code'], string>> = {
  COATS_DO_NOT_FIT: 'firstCoatMm',
  PARTING_OUTSIDE: 'partingMm',
};

/** The field by which a problem of the chosen mold is told, if it has one. */
export function fieldOfMold(ticket: Ticket, { code, values }: Problem): Place | undefined {
  const key = PARAMETER_OF_CODE[code] ?? (code === 'MOLD_PARAMETER' ? String(values.key) : undefined);
  if (key !== undefined) return parameterField(ticket, key);
  if (code === 'FLOW_NOT_LAMINAR') return 'viscosity';
  if (code === 'CORE_FILLS_MOLD') return 'coreVolume';
  if (code === 'POT_LIFE_TOO_SHORT') return 'potLife';
  if (code === 'MIX_BELOW_SCALE') return 'scaleStep';
  if (code === 'MIXES_TOO_MANY') return values.limitedBy === 'container' ? 'mixingCup' : 'potLife';
  const input = String(values.input ?? '');
  if (input === 'moldShrinkShare')
    return ticket.fields.measuredShrink.text.trim() === '' ? 'sheetShrink' : 'measuredShrink';
  const material = jacketOf(ticket.molding);
  if (material.parameters.some((parameter) => parameter.key === input))
    return jacketField(material.key, input);
  return FIELD_OF_INPUT[input] ?? parameterField(ticket, input);
}

function parameterField({ molding }: Ticket, key: string): FieldName | undefined {
  const type = typeOf(molding);
  const parameter = type.parameters.find((one) => one.key === key);
  return parameter === undefined || isPicked(parameter) ? undefined : moldField(type, parameter);
}
