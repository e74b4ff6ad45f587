import type { CommandSpec } from '../command';
import { batch } from './batch';
import { book } from './book';
import { cup } from './cup';
import { displace } from './displace';
import { fill } from './fill';
import { girth } from './girth';
import { mold } from './mold';
import { opening } from './opening';
import { packs } from './packs';
import { run } from './run';
import { sample } from './sample';
import { sheet } from './sheet';
import { size } from './size';
import { units } from './units';

/** Every command: a new one is one file and one line here. */
export const COMMANDS: readonly CommandSpec[] = [
  size,
  fill,
  displace,
  girth,
  mold,
  opening,
  cup,
  batch,
  packs,
  sheet,
  run,
  book,
  units,
  sample,
];
