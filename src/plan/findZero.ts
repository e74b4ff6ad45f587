/** Doublings of the first guess either way in which a change of sign is looked for. */
const REACH = 12;

/** Agreement at which the search ends, as a share of the answer. */
const CLOSE_ENOUGH = 1e-11;

/**
 * A positive x where f changes its sign, looked for outward from a guess, then closed in by false position in its Illinois form
 * (Dowell and Jarratt 1971, BIT 11:168): for the nearly straight f it is used for that takes a handful of steps.
 * Undefined when f keeps its sign, or touches zero without leaving it.
 */
export function findZero(f: (x: number) => number, guess: number): number | undefined {
  const start = { x: guess, y: f(guess) };
  if (start.y === 0) return guess;
  let [down, up] = [start, start];
  for (let step = 1; step <= REACH; step++) {
    const [lower, higher] = [down.x / 2, up.x * 2].map((x) => ({ x, y: f(x) })) as [Point, Point];
    if (higher.y * up.y <= 0) return closeIn(f, up, higher);
    if (lower.y * down.y <= 0) return closeIn(f, lower, down);
    [down, up] = [lower, higher];
  }
  return undefined;
}

interface Point {
  x: number;
  y: number;
}

function closeIn(f: (x: number) => number, first: Point, second: Point): number | undefined {
  let [a, b] = [first, second];
  for (let round = 0; round < 100; round++) {
    if (a.y === b.y) return undefined;
    const x = b.x - (b.y * (b.x - a.x)) / (b.y - a.y);
    const y = f(x);
    if (!Number.isFinite(y)) return undefined;
    if (y === 0 || Math.abs(x - b.x) <= CLOSE_ENOUGH * x) return x;
    a = y * b.y < 0 ? b : { x: a.x, y: a.y / 2 };
    b = { x, y };
  }
  return undefined;
}
