import type { Status } from '../problem';

/** Word of a status; on screen a shape stands beside it, never color alone. */
export const STATUS_WORDS: Record<Status, string> = {
  fine: 'Fine',
  look: 'Look',
  stop: 'Stop',
  unknown: 'Not checked',
};

const RANK: readonly Status[] = ['fine', 'unknown', 'look', 'stop'];

/** What is not checked is worse than what is fine, and less bad than what was looked at and found wanting. */
export const isWorse = (one: Status, other: Status): boolean => RANK.indexOf(one) > RANK.indexOf(other);
