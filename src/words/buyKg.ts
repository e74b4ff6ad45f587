import { amount } from './sentence';

/** Rounded up, to the place that the whole is shown to: what is bought must be enough. */
export function buyKg(needKg: number): string {
  const places = needKg >= 1 ? 100 : 1000;
  // A whole number of places stays what it is: 0.3 times 1000 is a hair more than 300.
  return `${amount(Math.ceil(Number((needKg * places).toFixed(6))) / places, 9)} kg`;
}
