import { amount } from './sentence';

/** A chance as people say it: "1 in 120", never a percentage. */
export function chanceWords(chance: number): string {
  if (chance < 0.001) return 'under 1 in 1\u202f000';
  if (chance >= 0.6) return 'more likely than not';
  if (chance > 0.4) return 'about 1 in 2';
  return `about 1 in ${chance > 0.1 ? Math.round(1 / chance) : amount(1 / chance, 2)}`;
}
