import type { Along, FileUnit } from '../../plan';

/** "1 inch", and as a button: "inches". */
export const UNIT_NAMES: Record<FileUnit, { one: string; many: string }> = {
  mm: { one: 'a millimeter', many: 'millimeters' },
  cm: { one: 'a centimeter', many: 'centimeters' },
  m: { one: 'a meter', many: 'meters' },
  in: { one: 'an inch', many: 'inches' },
  ft: { one: 'a foot', many: 'feet' },
};

export const ALONG_NAMES: Record<Along, { label: string; word: string }> = {
  tall: { label: 'Taped height', word: 'height' },
  wide: { label: 'Taped width', word: 'width' },
  deep: { label: 'Taped depth', word: 'depth' },
};
