/**
 * A small seeded generator (multiplier and increment of Numerical Recipes, 32 bit), so that a failed random test can
 * be run again from the seed in its message. Returns numbers in 0..1.
 */
export function lcg(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

export const between = (random: () => number, low: number, high: number): number =>
  low + (high - low) * random();
