/** The generator of tests/support/lcg.ts, for scripts, which read no TypeScript: numbers in 0..1 that follow from the seed alone. */
export function lcg(seed) {
  let state = seed >>> 0;
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
}
