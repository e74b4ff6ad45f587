/**
 * Where `isBelow` turns from true to false between low and high, to the last digits. The ends themselves are never asked,
 * so the function may be infinite there.
 */
export function bisect(low: number, high: number, isBelow: (x: number) => boolean): number {
  let [from, to] = [low, high];
  for (let round = 0; round < ROUNDS; round += 1) {
    const middle = (from + to) / 2;
    if (middle === from || middle === to) break;
    if (isBelow(middle)) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}

/** Enough to reach the last digit of a double from any bracket met here. */
const ROUNDS = 120;
