import { BACKUPS } from './backups';
import { CALLS } from './calls';
import { NUMBERS } from './numbers';
import { PARSERS } from './parsers';

/** Every room that is fuzzed: a new one is one line here. */
export const TARGETS = [...PARSERS, BACKUPS, NUMBERS, CALLS];
