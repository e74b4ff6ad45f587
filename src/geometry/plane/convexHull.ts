/**
 * Numbers of the points on the convex hull, counter-clockwise, each corner once: by the monotone chain (Andrew 1979, Inf.
 * Process. Lett. 9:216). Points on a side are left out; of points on one line only both ends are left, of equal points one.
 */
export function convexHull(us: Float64Array, vs: Float64Array): number[] {
  const order = Array.from(us, (_, i) => i)
    .sort((i, j) => us[i]! - us[j]! || vs[i]! - vs[j]!)
    .filter((i, k, all) => k === 0 || us[i] !== us[all[k - 1]!] || vs[i] !== vs[all[k - 1]!]);
  if (order.length < 3) return order;
  const lower = halfHull(order, us, vs);
  const upper = halfHull(order.reverse(), us, vs);
  return [...lower, ...upper];
}

/** One chain from end to end, the last point left to the other chain. */
function halfHull(order: readonly number[], us: Float64Array, vs: Float64Array): number[] {
  const chain: number[] = [];
  for (const i of order) {
    while (chain.length > 1 && !isLeftTurn(chain[chain.length - 2]!, chain[chain.length - 1]!, i, us, vs))
      chain.pop();
    chain.push(i);
  }
  chain.pop();
  return chain;
}

const isLeftTurn = (a: number, b: number, c: number, us: Float64Array, vs: Float64Array): boolean =>
  (us[b]! - us[a]!) * (vs[c]! - vs[a]!) > (vs[b]! - vs[a]!) * (us[c]! - us[a]!);
