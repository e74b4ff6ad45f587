/**
 * A closed polygon of pairs with fewer of its points: none of the others is farther than `awayMm` from it (Douglas and Peucker 1973,
 * The Canadian Cartographer 10(2), on the two halves between the first point and the one farthest from it).
 */
export function simplified(outline: Float64Array, awayMm: number): Float64Array {
  const count = outline.length / 2;
  if (count < 4) return outline;
  const kept = new Uint8Array(count + 1);
  const far = farthestFrom(outline, 0, 1, count, 0);
  const open: [number, number][] = [
    [0, far.at],
    [far.at, count],
  ];
  kept[0] = kept[far.at] = 1;
  for (let stretch = open.pop(); stretch !== undefined; stretch = open.pop()) {
    const [from, to] = stretch;
    const { at, mm } = farthestFrom(outline, from, from + 1, to, to % count);
    if (mm <= awayMm) continue;
    kept[at] = 1;
    open.push([from, at], [at, to]);
  }
  const points: number[] = [];
  for (let i = 0; i < count; i++) if (kept[i] === 1) points.push(outline[2 * i]!, outline[2 * i + 1]!);
  return Float64Array.from(points);
}

/** The point of a range farthest from the stretch between points `a` and `b`, which may be one point. */
function farthestFrom(
  outline: Float64Array,
  a: number,
  from: number,
  to: number,
  b: number,
): { at: number; mm: number } {
  const [au, av] = [outline[2 * a]!, outline[2 * a + 1]!];
  const [du, dv] = [outline[2 * b]! - au, outline[2 * b + 1]! - av];
  const squared = du * du + dv * dv;
  const best = { at: from, mm: 0 };
  for (let i = from; i < to; i++) {
    const [u, v] = [outline[2 * i]! - au, outline[2 * i + 1]! - av];
    const share = squared > 0 ? Math.min(1, Math.max(0, (u * du + v * dv) / squared)) : 0;
    const mm = Math.hypot(u - share * du, v - share * dv);
    if (mm > best.mm) Object.assign(best, { at: i, mm });
  }
  return best;
}
