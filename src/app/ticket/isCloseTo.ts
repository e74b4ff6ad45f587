/** The same number to what a text carries, twelve digits; nothing is like nothing. */
export const isCloseTo = (one: number | undefined, other: number | undefined): boolean =>
  one === other ||
  (one !== undefined && other !== undefined && Math.abs(one - other) <= 1e-9 * Math.abs(other));
