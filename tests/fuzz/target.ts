/**
 * What the fuzz asks of one room of the program. A mutant is made from its random numbers alone, so seed and number make it
 * again; `check` says what came of it.
 */
export interface Target<T> {
  name: string;
  make: (random: () => number) => T;
  check: (mutant: T) => Verdict | Promise<Verdict>;
  /** The mutant as a file to keep. */
  fileOf: (mutant: T) => { ending: string; bytes: Uint8Array };
}

export interface Verdict {
  answer: 'read' | 'refused';
  /** What is wrong: the mutant failed. */
  fault?: string;
  /** Counted and told, and no failure. */
  note?: string;
}

/** The seed of one mutant, for `lcg`: neighbors must not begin alike (multipliers of MurmurHash3's last step, from memory). */
export function seedOf(seed: number, mutant: number): number {
  let h = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(mutant + 1, 0xc2b2ae35);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

export const whole = (random: () => number, below: number): number => Math.floor(below * random());

export const pick = <T>(random: () => number, list: readonly T[]): T => list[whole(random, list.length)]!;
