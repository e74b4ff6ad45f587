/** One kit's share of a part: how much goes in, and how much of it is left. */
export interface Box {
  holdsKg: number;
  leftKg: number;
}

/** Kits in one list of one card and one part: more than this are drawn as one box. Chosen here. */
const MOST_BOXES = 12;

/**
 * The fewest kits that hold what is left of a part, full ones first. `sizesKg`: what one kit of each size holds of that part.
 * Without a size, or with very many kits, one box that is full.
 */
export function stockBoxes(leftKg: number, sizesKg: readonly number[]): Box[] {
  const sizes = sizesKg.filter((kg) => kg > 0).sort((one, other) => one - other);
  const largest = sizes.at(-1);
  if (largest === undefined) return leftKg > 0 ? [{ holdsKg: leftKg, leftKg }] : [];
  // A hair beside a whole kit is rounding, not foam.
  const full = Math.floor(leftKg / largest + HAIR);
  if (full > MOST_BOXES) return [{ holdsKg: leftKg, leftKg }];
  const restKg = leftKg - full * largest;
  const boxes = Array.from({ length: full }, () => ({ holdsKg: largest, leftKg: largest }));
  if (restKg <= HAIR * largest) return boxes;
  const holdsKg = sizes.find((kg) => kg >= restKg * (1 - HAIR)) ?? largest;
  return [...boxes, { holdsKg, leftKg: Math.min(restKg, holdsKg) }];
}

const HAIR = 1e-6;
