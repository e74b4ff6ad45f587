import type { FileUnit } from '../plan';

/** "an inch", and as a choice: "inches". */
export const UNIT_NAMES: Record<FileUnit, { one: string; many: string }> = {
  mm: { one: 'a millimeter', many: 'millimeters' },
  cm: { one: 'a centimeter', many: 'centimeters' },
  m: { one: 'a meter', many: 'meters' },
  in: { one: 'an inch', many: 'inches' },
  ft: { one: 'a foot', many: 'feet' },
};
