import type { FieldName } from './fields';
import { POUR_FIELDS } from './pourFields';
import { FIELDS_OF_BATCH } from './wishes';
import type { Words } from './words';

/** The part of a piece of work that something is said of. */
export type Home = 'sculpt' | 'mold' | 'casting';

/** Of every box: where it is kept. What is said of the mold is kept with the mold, and so on. */
export function homeOf(field: FieldName): Home {
  if (OF_SCULPT.includes(field) || field.startsWith('body.')) return 'sculpt';
  return OF_CASTING.includes(field) || field.startsWith('color.') ? 'casting' : 'mold';
}

const OF_SCULPT: readonly string[] = [
  'tape',
  'checkLength',
  'cutHeight',
  'sunkBefore',
  'sunkAfter',
  'sunkStep',
  'overWater',
  'overTemp',
] satisfies FieldName[];

const OF_CASTING: readonly string[] = [...FIELDS_OF_BATCH, ...Object.keys(POUR_FIELDS)];

/** Of every choice: where it is kept. */
export const HOME_OF_CHOICE = {
  up: 'sculpt',
  scaleWay: 'sculpt',
  along: 'sculpt',
  fileUnit: 'sculpt',
  cut: 'sculpt',
  keep: 'sculpt',
  measuring: 'sculpt',
  sizing: 'sculpt',
  molding: 'mold',
  filling: 'mold',
  venting: 'mold',
  foam: 'casting',
  pouring: 'casting',
} as const satisfies Record<Exclude<keyof Words, 'fields' | 'scanId'>, Home>;
