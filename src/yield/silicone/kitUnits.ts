export interface KitUnits {
  unitKg: number;
  kits: number[];
  need: number;
  /** Some kit is no multiple of the unit and was rounded down. */
  rounded: boolean;
}

/**
 * Kits and need in whole units. The unit is the largest mass that divides every kit (1.1 kg for 1.1 and 5.5), where that
 * gives a table of bearable size: then nothing is rounded, since every total is a multiple of it too. Else it is 0.1 g or
 * 1 g, kits rounded down and the need up, so that a cover is never short.
 */
export function kitUnits(kits: readonly { massKg: number }[], needKg: number): KitUnits {
  const masses = kits.map(({ massKg }) => massKg);
  const reachKg = needKg + Math.max(...masses);
  const common = masses.reduce((one, other) => commonDivisor(one, other));
  const isBearable = (unitKg: number): boolean => reachKg / unitKg <= MOST_UNITS;
  const unitKg = [common, FINE_KG].find(isBearable) ?? COARSE_KG;
  const exact = unitKg === common;
  return {
    unitKg,
    kits: masses.map((massKg) =>
      exact ? Math.round(massKg / unitKg) : Math.floor((massKg / unitKg) * (1 + REPRESENTATION)),
    ),
    need: Math.ceil((needKg / unitKg) * (1 - REPRESENTATION)),
    rounded: !exact,
  };
}

const MOST_UNITS = 3e6;
const FINE_KG = 0.0001;
const COARSE_KG = 0.001;
/** A remainder below a microgram is none: 5.5 holds 1.1 five times, though not in binary. */
const NOTHING_KG = 1e-9;
const REPRESENTATION = 1e-12;

/** Euclid on masses. What does not divide ends at a divisor too small to be borne. */
function commonDivisor(one: number, other: number): number {
  let [large, small] = one > other ? [one, other] : [other, one];
  while (small > NOTHING_KG) {
    const rest = large % small;
    [large, small] = [small, small - rest < NOTHING_KG ? 0 : rest];
  }
  return large;
}
