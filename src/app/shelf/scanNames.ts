import { SCAN_FORMATS } from '../../geometry';

const TITLES = SCAN_FORMATS.map(({ title }) => title);

/** "STL, OBJ, PLY or 3MF". */
export const SCAN_KINDS = `${TITLES.slice(0, -1).join(', ')} or ${TITLES.at(-1)}`;

/** For a file input. */
export const SCAN_ENDINGS = SCAN_FORMATS.map(({ key }) => `.${key}`).join(',');

export const isScanName = (name: string): boolean =>
  SCAN_FORMATS.some(({ key }) => name.toLowerCase().endsWith(`.${key}`));
