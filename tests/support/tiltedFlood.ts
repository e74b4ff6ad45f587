import type { Vector } from '../../src/geometry/vector';

/*
 * Air that a level shuts in, by voxels that stand upright along any "up": layer by layer from the top, each voxel joined to its six neighbors. A voxel whose
 * part has no way out when the level comes down to it keeps its air.
 */

export interface TiltedFlood {
  trappedMm3: number;
  solidMm3: number;
}

export function floodTilted(
  isInside: (p: Vector) => boolean,
  {
    axes,
    centerMm,
    halfMm,
    voxelMm,
  }: { axes: { u: Vector; v: Vector; up: Vector }; centerMm: Vector; halfMm: number; voxelMm: number },
  isOpen: (p: Vector) => boolean,
): TiltedFlood {
  const across = Math.ceil((2 * halfMm) / voxelMm);
  const parent = new Int32Array(across ** 3).fill(-1);
  const open = new Uint8Array(across ** 3);
  const partOf = (one: number): number => {
    while (parent[one] !== one) one = parent[one] = parent[parent[one]!]!;
    return one;
  };
  const unite = (a: number, b: number): void => {
    const [p, q] = [partOf(a), partOf(b)];
    parent[q] = p;
    open[p]! |= open[q]!;
  };
  let [trapped, solid] = [0, 0];
  for (let k = across - 1; k >= 0; k--) {
    const layer: number[] = [];
    for (let j = 0; j < across; j++)
      for (let i = 0; i < across; i++) {
        const p = [0, 1, 2].map((c) => {
          const at = c as 0 | 1 | 2;
          const along = (n: number): number => (n + 0.5) * voxelMm - halfMm;
          return centerMm[at] + along(i) * axes.u[at] + along(j) * axes.v[at] + along(k) * axes.up[at];
        }) as unknown as Vector;
        if (!isInside(p)) continue;
        const one = (k * across + j) * across + i;
        parent[one] = one;
        if (isOpen(p)) open[one] = 1;
        layer.push(one);
        if (i > 0 && parent[one - 1] !== -1) unite(one, one - 1);
        if (j > 0 && parent[one - across] !== -1) unite(one, one - across);
        if (k + 1 < across && parent[one + across * across] !== -1) unite(one, one + across * across);
      }
    solid += layer.length;
    trapped += layer.filter((one) => open[partOf(one)] === 0).length;
  }
  return { trappedMm3: trapped * voxelMm ** 3, solidMm3: solid * voxelMm ** 3 };
}
