import type { Vector } from '../geometry';
import type { Drawable } from './drawable';

/** Which way the surface faces at its corner nearest to a place. */
export function nearestNormal(
  { positions: p, normals }: Pick<Drawable, 'positions' | 'normals'>,
  [x, y, z]: Vector,
): Vector {
  let [best, least] = [0, Infinity];
  for (let i = 0; i < p.length; i += 3) {
    const far = (p[i]! - x) ** 2 + (p[i + 1]! - y) ** 2 + (p[i + 2]! - z) ** 2;
    if (far < least) [best, least] = [i, far];
  }
  return [normals[best] ?? 0, normals[best + 1] ?? 0, normals[best + 2] ?? 1];
}
