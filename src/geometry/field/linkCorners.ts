/** Corners are linked in this many parts, by as many threads or fewer: the order of a fan does not depend on who linked it. */
export const LINK_PARTS = 2;

/**
 * Chains the corners of every vertex: `head[v]` is its first corner + 1 (0 = none), `next[corner]` the one after. Walking a chain gives
 * the triangles around a vertex, and those with the other end of an edge are its neighbors across it.
 */
export function linkCorners(triangles: Int32Array, head: Int32Array, next: Int32Array, part: number): void {
  const count = triangles.length / 3;
  const end = 3 * Math.floor((count * (part + 1)) / LINK_PARTS);
  for (let corner = 3 * Math.floor((count * part) / LINK_PARTS); corner < end; corner++) {
    const v = triangles[corner]!;
    next[corner] = head[v]!;
    head[v] = corner + 1;
  }
}
