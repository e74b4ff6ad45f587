/**
 * Uniform numbers in [-1, 1) from a 32-bit xorshift (Marsaglia 2003, "Xorshift RNGs", shifts 13, 17, 5):
 * integers only, so the same seed gives the same row on every machine. The seed must not be 0.
 */
export function seeded(seed) {
  let state = seed >>> 0;
  if (state === 0) throw new Error('seeded: expected a seed other than 0, got 0');
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 31 - 1;
  };
}
