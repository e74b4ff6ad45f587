import type { TriangleMesh } from '../../src/geometry';

/** Directed sides that no other side runs back along: 0 for a closed chain. */
export function openSides({ triangles }: TriangleMesh): number {
  const times = new Map<string, number>();
  for (let c = 0; c < triangles.length; c++) {
    const from = triangles[c]!;
    const to = triangles[c % 3 === 2 ? c - 2 : c + 1]!;
    const key = from < to ? `${from} ${to}` : `${to} ${from}`;
    times.set(key, (times.get(key) ?? 0) + (from < to ? 1 : -1));
  }
  return [...times.values()].reduce((sum, n) => sum + Math.abs(n), 0);
}
