import { BLANKET_WORK } from './blanket';
import { BLOCK_WORK } from './block';
import type { MoldKey, MoldWork } from './moldType';
import { SKIN_WORK } from './skin';

const WORK: Readonly<Record<MoldKey, MoldWork>> = {
  block: BLOCK_WORK,
  skin: SKIN_WORK,
  blanket: BLANKET_WORK,
};

/** How a type is built. */
export const moldWork = (key: MoldKey): MoldWork => WORK[key];
