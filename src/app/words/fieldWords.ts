import type { FieldName, OwnField } from '../ticket/fields';
import { MADE_FIELDS, type MadeField } from '../ticket/madeFields';
import { OPENING_FIELD_WORDS } from './openingFieldWords';
import { POUR_FIELD_WORDS } from './pourFieldWords';
import { SIZING_FIELD_WORDS } from './sizingFieldWords';

const FIELD_WORDS: Record<OwnField, string> = {
  tape: 'The taped length',
  checkLength: 'The second distance',
  cutHeight: 'The cut',
  freeRise: 'The free rise',
  partsA: 'The parts of A',
  partsB: 'The parts of B',
  densityA: 'The density of A',
  densityB: 'The density of B',
  pack: 'The pack factor',
  riser: 'The riser',
  vents: 'The vents',
  residue: 'The residue',
  scaleStep: 'The scale step',
  scaleMost: 'The most the scale takes',
  sculptMass: 'The mass of the sculpt',
  boxWall: 'The wall of the box',
  siliconeDensity: 'The density of the silicone',
  siliconeBase: 'The parts of base',
  siliconeCatalyst: 'The parts of catalyst',
  potLife: 'The pot life',
  potLifeAt: 'The temperature of the pot life',
  room: 'The temperature of the room',
  stays: 'What stays on a stick',
  viscosity: 'The viscosity',
  degasPressure: 'The vacuum',
  mixingCup: 'The mixing cup',
  stockBase: 'The base in stock',
  stockCatalyst: 'The catalyst in stock',
  siliconeWaste: 'The waste',
  cupLoss: 'What stays in each cup',
  barrierDry: 'The drying of the barrier coat',
  pigmentShare: 'The pigment',
  sheetShrink: 'The shrink of the data sheet',
  measuredShrink: 'The measured shrink',
  castingTemp: 'The casting temperature',
  coreVolume: 'The volume of the core',
  coreMass: 'The mass of the core',
  armature: 'The volume of the armature',
  texture: 'The texture factor',
  paintCoverage: 'The coverage of the paint',
  paintCoats: 'The coats of paint',
  sealCoverage: 'The coverage of the sealer',
  sealCoats: 'The coats of sealer',
  bondFace: 'The face to bond',
  bondTakes: 'What a face takes',
  openShare: 'The open cells',
  ...OPENING_FIELD_WORDS,
  ...POUR_FIELD_WORDS,
  ...SIZING_FIELD_WORDS,
};

/** What a field holds, where its label is not beside it. */
export function fieldWords(name: FieldName): string {
  const made = MADE_FIELDS.get(name as MadeField);
  return made === undefined ? FIELD_WORDS[name as OwnField] : `The ${lowerFirst(made.label)}`;
}

export const lowerFirst = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
