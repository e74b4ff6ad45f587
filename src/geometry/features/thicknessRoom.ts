import type { Field } from '../field/buildField';
import type { Grid } from '../field/grid';
import type { SearchSurface } from '../field/nearest';
import type { SurfaceSide } from './thicknessSamples';

/** Where balls are looked for. */
export interface BallRoom {
  search: SearchSurface;
  /** Nearest seed of every grid point; -1 beyond reach. */
  site: Int32Array;
  grid: Grid;
  mostRadiusMm: number;
  /** Balls are looked for around the body, in its gaps. */
  isOutside: boolean;
  /** Is a point (field's frame) on the face where the sculpt was cut off its base? */
  isOnBase: (x: number, y: number, z: number) => boolean;
}

/** Balls that count, by the number of their sample. */
export interface Balls {
  /** Middle, three numbers a ball, mm, in the field's frame. */
  at: Float32Array;
  /** 0: no ball that counts. The largest radius where the ball touches nothing else. */
  radiusMm: Float32Array;
  /** Diameter of the ball at every sample, whether it counts or not: it is at least that thick there. */
  ownMm: Float32Array;
}

/** Surface within this many voxels of the base height lies on the base. Chosen here. */
const ON_BASE_VOXELS = 0.1;

/** Where balls are looked for in a standing field, and how large they can be. */
export function ballRoom(
  field: Field,
  { side, mostMm, baseMm }: { side: SurfaceSide; mostMm?: number | undefined; baseMm?: number | undefined },
): BallRoom {
  const { grid, task, reachMm, surface, voxelMm, options } = field;
  // Outside, a ball must not leave the grid, which ends two steps beyond the outermost level.
  const roomMm = side === 'inside' ? deepestMm(field) : Math.max(0, ...options.levelsMm) + grid.spacingMm;
  const { rows, originMm } = surface.frame;
  return {
    search: { ...task, nearest: task.nearests[0]! },
    site: task.site,
    grid,
    isOutside: side === 'outside',
    mostRadiusMm: Math.min(reachMm, roomMm, mostMm === undefined ? Infinity : mostMm / 2),
    isOnBase: (x, y, z) =>
      baseMm !== undefined &&
      rows[2] * x + rows[5] * y + rows[8] * z + originMm[2] < baseMm + ON_BASE_VOXELS * voxelMm,
  };
}

/** No ball inside is larger: the seed farthest from an inside grid point, and the steps by which both may be off. */
function deepestMm({ grid, task }: Field): number {
  const { nx, ny, nz, spacingMm } = grid;
  const [winding, site] = [task.windings[0]!, task.site];
  const plane = nx * ny;
  let most = 0;
  for (let k = 0, v = 0; k < nz; k++)
    for (let j = 0; j < ny; j++)
      for (let i = 0; i < nx; i++, v++) {
        if (winding[v]! <= 0) continue;
        const s = site[v]!;
        if (s < 0) return Infinity;
        const sk = (s / plane) | 0;
        const sj = ((s - sk * plane) / nx) | 0;
        const si = s - sk * plane - sj * nx;
        most = Math.max(most, (si - i) ** 2 + (sj - j) ** 2 + (sk - k) ** 2);
      }
  return (Math.sqrt(most) + 2) * spacingMm;
}

/** Whether the grid knows of what is around a point, mm in its own frame. */
export function isWithin({ nx, ny, nz, spacingMm, ox, oy, oz }: Grid, at: Float64Array): boolean {
  const i = (at[0]! - ox) / spacingMm;
  const j = (at[1]! - oy) / spacingMm;
  const k = (at[2]! - oz) / spacingMm;
  return i >= 1 && j >= 1 && k >= 1 && i < nx - 2 && j < ny - 2 && k < nz - 2;
}
