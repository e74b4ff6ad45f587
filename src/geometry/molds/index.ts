import { BLANKET } from './blanket';
import { BLOCK } from './block';
import type { MoldKey, MoldType } from './moldType';
import { SKIN } from './skin';

/** The mold types, in the order they are shown. A new one is one file, one line here and one in moldWork.ts. */
export const MOLD_TYPES: readonly MoldType[] = [BLOCK, SKIN, BLANKET];

export function moldType(key: MoldKey): MoldType {
  const type = MOLD_TYPES.find((one) => one.key === key);
  if (type === undefined) throw new Error(`moldType: expected one of the list, got ${key}`);
  return type;
}

export {
  MOLD_KEYS,
  type BoxShape,
  type Filling,
  type JacketMeasure,
  type MoldBody,
  type MoldKey,
  type MoldParameter,
  type MoldSettings,
  type MoldShape,
  type MoldType,
  type NamedVolume,
  type UndercutShape,
} from './moldType';
export { moldWork } from './moldWork';
export { searchPull, type PullChoice } from './pullSearch';
export { standSculpt, type BaseChoice, type Sculpt } from './sculpt';
export { settleMold, readPull, type MoldWish } from './settle';
