import type { CommandSpec } from '../command';
import { batch } from './batch';
import { mold } from './mold';
import { opening } from './opening';
import { packs } from './packs';
import { sample } from './sample';
import { sheet } from './sheet';
import { size } from './size';
import { units } from './units';

/** Every command: a new one is one file and one line here. */
export const COMMANDS: readonly CommandSpec[] = [size, mold, opening, batch, packs, sheet, units, sample];
