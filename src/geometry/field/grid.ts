import type { Bounds } from '../triangleMesh';

/** Lattice of points (nx * ny * nz of them, x fastest); point (i, j, k) lies at origin + spacing * (i, j, k). Lengths in mm. */
export interface Grid {
  nx: number;
  ny: number;
  nz: number;
  spacingMm: number;
  ox: number;
  oy: number;
  oz: number;
  /** Planes below this one are not counted: a base plane lies on the faces between it and the one before. */
  firstPlane: number;
}

/** Shares of the spacing that keep voxel faces off the faces of modeled parts. Chosen here, by the boxes of fieldSurface.ts. */
const OFF_ROUND = [0.06, 0.12, 0.18] as const;

/**
 * The grid around `bounds` with `marginMm` all round. With a base plane (z) its planes are laid so that the base runs along voxel
 * faces: then to cut there is to leave planes out, with no error of its own.
 */
export function gridAround(
  bounds: Bounds,
  { spacingMm, marginMm, baseMm }: { spacingMm: number; marginMm: number; baseMm?: number },
): Grid {
  const low = bounds.min.map((v) => v - marginMm) as [number, number, number];
  const count = bounds.max.map((v, k) => Math.ceil((v + marginMm - low[k]!) / spacingMm) + 2);
  const origin = low.map((v, k) => v + (OFF_ROUND[k]! - 0.5) * spacingMm);
  let firstPlane = 0;
  if (baseMm !== undefined && baseMm > low[2]) {
    // One face between two planes lies on the base: origin + (firstPlane - 1/2) * spacing. A base below the grid cuts nothing.
    firstPlane = Math.ceil((baseMm - low[2]) / spacingMm);
    origin[2] = baseMm + (0.5 - firstPlane) * spacingMm;
  }
  const [nx, ny, nz] = count as [number, number, number];
  const [ox, oy, oz] = origin as [number, number, number];
  return { nx, ny, nz, spacingMm, ox, oy, oz, firstPlane };
}

export const cellCount = (grid: Grid): number => grid.nx * grid.ny * grid.nz;

/** The grid of half the spacing whose points are the middles of the eight octants of every voxel. */
export function octantGrid(grid: Grid): Grid {
  const half = grid.spacingMm / 2;
  return {
    nx: 2 * grid.nx,
    ny: 2 * grid.ny,
    nz: 2 * grid.nz,
    spacingMm: half,
    ox: grid.ox - half / 2,
    oy: grid.oy - half / 2,
    oz: grid.oz - half / 2,
    firstPlane: 2 * grid.firstPlane,
  };
}
