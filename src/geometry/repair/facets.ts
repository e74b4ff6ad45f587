import type { TriangleMesh } from '../triangleMesh';
import { OPEN, type EdgePairs } from './edges';

/** Drops triangles that name one vertex twice: they have no area and no edge of their own. */
export function dropCollapsed(mesh: TriangleMesh): { mesh: TriangleMesh; dropped: number } {
  const { triangles } = mesh;
  const isCollapsed = (t: number): boolean =>
    triangles[t] === triangles[t + 1] ||
    triangles[t + 1] === triangles[t + 2] ||
    triangles[t] === triangles[t + 2];
  let dropped = 0;
  for (let t = 0; t < triangles.length; t += 3) if (isCollapsed(t)) dropped++;
  if (dropped === 0) return { mesh, dropped };
  const kept = new Int32Array(triangles.length - 3 * dropped);
  for (let t = 0, q = 0; t < triangles.length; t += 3) {
    if (isCollapsed(t)) continue;
    kept.set(triangles.subarray(t, t + 3), q);
    q += 3;
  }
  return { mesh: { positions: mesh.positions, triangles: kept }, dropped };
}

/**
 * Drops facets that share no edge with any other: alone they bound nothing, and a million of them would make a million loops.
 */
export function dropLoose(mesh: TriangleMesh, { mate }: EdgePairs): { mesh: TriangleMesh; loose: number } {
  const isLoose = (t: number): boolean =>
    mate[3 * t] === OPEN && mate[3 * t + 1] === OPEN && mate[3 * t + 2] === OPEN;
  let loose = 0;
  for (let t = 0; t < mate.length / 3; t++) if (isLoose(t)) loose++;
  if (loose === 0) return { mesh, loose };
  const triangles = mesh.triangles.filter((_, corner) => !isLoose((corner / 3) | 0));
  return { mesh: { positions: mesh.positions, triangles }, loose };
}

/**
 * Makes one facet of several on the same three vertices. Copies of one turning sense become one; a facet and its
 * reverse cancel, since together they bound nothing. A net of two reversed against one leaves one reversed.
 */
export function mergeDuplicates(mesh: TriangleMesh): {
  mesh: TriangleMesh;
  merged: number;
  cancelled: number;
} {
  const { triangles } = mesh;
  const count = triangles.length / 3;
  const order = Int32Array.from({ length: count }, (_, t) => t);
  const keys = sortedKeys(triangles);
  const compare = (a: number, b: number): number =>
    keys[3 * a]! - keys[3 * b]! ||
    keys[3 * a + 1]! - keys[3 * b + 1]! ||
    keys[3 * a + 2]! - keys[3 * b + 2]! ||
    a - b;
  order.sort(compare);
  const keep = new Uint8Array(count).fill(1);
  let merged = 0;
  let cancelled = 0;
  for (let i = 0; i < count;) {
    let end = i + 1;
    while (end < count && sameKey(keys, order[i]!, order[end]!)) end++;
    if (end - i > 1) {
      const group = [...order.subarray(i, end)];
      const left = survivor(triangles, group);
      for (const t of group) if (t !== left) keep[t] = 0;
      if (left === undefined) cancelled += group.length;
      else merged += group.length - 1;
    }
    i = end;
  }
  if (merged + cancelled === 0) return { mesh, merged, cancelled };
  return {
    mesh: { positions: mesh.positions, triangles: triangles.filter((_, c) => keep[(c / 3) | 0] === 1) },
    merged,
    cancelled,
  };
}

function survivor(triangles: Int32Array, group: number[]): number | undefined {
  const straight = group.filter((t) => turnsUpward(triangles, t));
  const reversed = group.filter((t) => !turnsUpward(triangles, t));
  if (straight.length === reversed.length) return undefined;
  return straight.length > reversed.length ? straight[0] : reversed[0];
}

/** Turning sense of a triangle against the ascending order of its vertex numbers. */
function turnsUpward(triangles: Int32Array, t: number): boolean {
  const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
  return (a < b && b < c) || (b < c && c < a) || (c < a && a < b);
}

function sortedKeys(triangles: Int32Array): Int32Array {
  const keys = triangles.slice();
  for (let t = 0; t < keys.length; t += 3) keys.subarray(t, t + 3).sort();
  return keys;
}

const sameKey = (keys: Int32Array, a: number, b: number): boolean =>
  keys[3 * a] === keys[3 * b] && keys[3 * a + 1] === keys[3 * b + 1] && keys[3 * a + 2] === keys[3 * b + 2];
