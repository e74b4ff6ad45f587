import type { CommandSpec } from '../command';
import { size } from './size';

/** Every command: a new one is one file and one line here. */
export const COMMANDS: readonly CommandSpec[] = [size];
