/** The largest of 1, 2, 5 times a power of ten that is not above `limit` (which must be above 0). */
export function oneTwoFive(limit: number): number {
  const exponent = Math.floor(Math.log10(limit));
  for (const digit of [5, 2, 1]) {
    const step = Number(`${digit}e${exponent}`);
    if (step <= limit) return step;
  }
  return Number(`1e${exponent}`);
}
