/** The cheapest way to every total that kits can make exactly, in whole units. */
export interface KitTable {
  /** The total in `from`..`to` of least price, the smallest of equals; -1 when none can be made. */
  cheapestFrom: (from: number, to?: number) => number;
  /** The first total from here that can be made at all; -1 when there is none. */
  firstFrom: (from: number) => number;
  /** How many of each kit make that total. */
  countsAt: (total: number, kits: readonly number[]) => number[];
}

/**
 * best[n] = min over the kits of best[n - kit] + price, for totals of exactly n units up to `most`. A purchase never needs
 * to reach further than need + largest kit - 1: it would hold a kit too many. Time and room are most x kits and most.
 */
export function cheapestAtEachTotal(
  kits: readonly number[],
  prices: readonly number[],
  most: number,
): KitTable {
  const price = new Float64Array(most + 1).fill(Infinity);
  const count = new Int32Array(most + 1);
  const last = new Int16Array(most + 1).fill(-1);
  price[0] = 0;
  for (let total = 1; total <= most; total += 1) {
    for (let kit = 0; kit < kits.length; kit += 1) {
      const before = total - kits[kit]!;
      if (before < 0 || price[before] === Infinity) continue;
      const sum = price[before]! + prices[kit]!;
      const compared = compare(sum, price[total]!);
      const fewer = compared === 0 && count[before]! + 1 < count[total]!;
      if (compared >= 0 && !fewer) continue;
      price[total] = sum;
      count[total] = count[before]! + 1;
      last[total] = kit;
    }
  }
  return {
    cheapestFrom: (from, to = most) => cheapestIn(price, from, to),
    firstFrom: (from) => price.findIndex((sum, total) => total >= from && sum < Infinity),
    countsAt: (total, sizes) => countsOf(last, total, sizes),
  };
}

function cheapestIn(price: Float64Array, from: number, to: number): number {
  let best = -1;
  for (let total = from; total <= to; total += 1) {
    if (price[total] === Infinity) continue;
    if (best < 0 || compare(price[total]!, price[best]!) < 0) best = total;
  }
  return best;
}

function countsOf(last: Int16Array, total: number, kits: readonly number[]): number[] {
  const counts = kits.map(() => 0);
  for (let rest = total; rest > 0;) {
    const kit = last[rest]!;
    counts[kit]! += 1;
    rest -= kits[kit]!;
  }
  return counts;
}

/** 3 x 19.99 and 59.97 are one price: what differs by rounding alone does not decide. */
function compare(one: number, other: number): number {
  if (Math.abs(one - other) <= 1e-9 * Math.min(one, other)) return 0;
  return one - other;
}
