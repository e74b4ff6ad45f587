import { bad, finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { checkSilicone } from './checkSilicone';
import { cheapestAtEachTotal } from './kitTable';
import type { KitTable } from './kitTable';
import { kitUnits } from './kitUnits';
import type { KitUnits } from './kitUnits';

/** Base and catalyst together. The price is in the shop's own money. */
export interface SiliconeKit {
  massKg: number;
  price?: number;
}

export interface KitCover {
  kits: (SiliconeKit & { count: number })[];
  kitCount: number;
  totalKg: number;
  surplusKg: number;
  /** Left out when a price is not known. */
  price?: number;
}

export interface KitPurchase extends KitCover {
  needKg: number;
  /** What was made small: without prices the surplus, then the number of kits. */
  least: 'price' | 'surplus';
  /** Masses were counted in this; kits that are no multiple of it were rounded down, the need up. */
  unitKg: number;
  roundedKits: boolean;
  /** The cheapest purchase that leaves less over, if there is one. */
  nextCheaperWaste?: KitCover;
  findings: Problem[];
}

/**
 * The cheapest kits that hold at least so much, any number of each: exact, by dynamic programming over the total mass
 * (unbounded covering knapsack; Martello and Toth, Knapsack Problems, 1990, from memory, not verified). Equal prices: the
 * least surplus, then the fewest kits. Errors: INPUT_OUT_OF_BOUNDS (a kit of 0 kg, a price below 0), KITS_NONE.
 */
export function cheapestKits(kits: readonly SiliconeKit[], needKg: number): Outcome<KitPurchase> {
  const sound = checkKits(kits, needKg);
  if (!sound.ok) return sound;
  const unpriced = kits.filter(({ price }) => price === undefined).length;
  const least = unpriced === 0 ? 'price' : 'surplus';
  const units = kitUnits(kits, needKg);
  const findings =
    least === 'price' ? [] : [finding('KITS_UNPRICED', 'unknown', { unpriced, of: kits.length })];
  // Without prices each kit costs the same, so the cheapest of a total is the one of fewest kits.
  const prices = kits.map(({ price }) => (least === 'price' ? (price ?? 0) : 1));
  const table = cheapestAtEachTotal(units.kits, prices, units.need + Math.max(...units.kits) - 1);
  const best = least === 'price' ? table.cheapestFrom(units.need) : table.firstFrom(units.need);
  const chosen = coverOf({ kits, needKg, units, table, total: best, priced: least === 'price' });
  const leaner = least === 'price' ? table.cheapestFrom(units.need, best - 1) : -1;
  return good({
    ...chosen,
    needKg,
    least,
    unitKg: units.unitKg,
    roundedKits: units.rounded,
    ...(leaner < 0
      ? {}
      : { nextCheaperWaste: coverOf({ kits, needKg, units, table, total: leaner, priced: true }) }),
    findings,
  });
}

function coverOf({
  kits,
  needKg,
  units,
  table,
  total,
  priced,
}: {
  kits: readonly SiliconeKit[];
  needKg: number;
  units: KitUnits;
  table: KitTable;
  total: number;
  priced: boolean;
}): KitCover {
  const counts = table.countsAt(total, units.kits);
  const bought = kits
    .map((kit, index) => ({ ...kit, count: counts[index] ?? 0 }))
    .filter(({ count }) => count > 0)
    .sort((one, other) => other.massKg - one.massKg);
  const sum = (of: (kit: (typeof bought)[number]) => number): number =>
    Number(bought.reduce((all, kit) => all + kit.count * of(kit), 0).toPrecision(12));
  const totalKg = sum(({ massKg }) => massKg);
  return {
    kits: bought,
    kitCount: sum(() => 1),
    totalKg,
    surplusKg: Math.max(0, Number((totalKg - needKg).toFixed(9))),
    ...(priced ? { price: sum(({ price }) => price ?? 0) } : {}),
  };
}

function checkKits(kits: readonly SiliconeKit[], needKg: number): Outcome<true> {
  const need = checkSilicone({ needKg, kits: kits.length });
  if (!need.ok) return need;
  if (kits.length === 0) return bad('KITS_NONE', { needKg });
  for (const { massKg, price } of kits) {
    const sound = checkSilicone({ kitKg: massKg }, { kitPrice: price });
    if (!sound.ok) return sound;
  }
  return good(true);
}
