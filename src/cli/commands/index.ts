import type { CommandSpec } from '../command';
import { batch } from './batch';
import { sample } from './sample';
import { size } from './size';
import { units } from './units';

/** Every command: a new one is one file and one line here. */
export const COMMANDS: readonly CommandSpec[] = [size, batch, units, sample];
