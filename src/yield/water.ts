/**
 * Density of air-free water at 1 atm in g/cm3, 0..40 C: the formula recommended by the CIPM (Tanaka et al., Metrologia
 * 38 (2001) 301; coefficients from memory, checked against 0.99821 at 20 C and 0.99705 at 25 C). The older polynomial
 * of Kell (1975), tried first, misses both by half of the last digit, being tied to an older temperature scale.
 */
export function waterGPerCm3(tempC: number): number {
  const bend = ((tempC - 3.983035) ** 2 * (tempC + 301.797)) / (522528.9 * (tempC + 69.34881));
  return 0.99997495 * (1 - bend);
}
