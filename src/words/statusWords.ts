import type { Status } from '../problem';

/** Word of a status; on screen a shape stands beside it, never color alone. */
export const STATUS_WORDS: Record<Status, string> = {
  fine: 'Fine',
  look: 'Look',
  stop: 'Stop',
  unknown: 'Not checked',
};
