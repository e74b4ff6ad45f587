/** The longest open loop of a surface, the best sign of what is missing: its length, and that as a share of the size. */
export function longestLoop(
  p: Float64Array,
  loops: Iterable<{ vertices: ArrayLike<number> }>,
  sizeMm: number,
): { longestLoopMm: number; longestLoopShare: number } {
  let longestLoopMm = 0;
  for (const { vertices } of loops) {
    let lengthMm = 0;
    for (let i = 0; i < vertices.length; i++) {
      const [a, b] = [3 * vertices[i]!, 3 * vertices[(i + 1) % vertices.length]!];
      lengthMm += Math.hypot(p[a]! - p[b]!, p[a + 1]! - p[b + 1]!, p[a + 2]! - p[b + 2]!);
    }
    longestLoopMm = Math.max(longestLoopMm, lengthMm);
  }
  return { longestLoopMm, longestLoopShare: sizeMm > 0 ? longestLoopMm / sizeMm : 0 };
}
