import { AT, FOUND, QUERY, searchNearest, testTriangle, type SearchSurface } from './nearest';
import type { Grid } from './grid';

/** How far beyond the foot the other side is looked at, in grid steps. Chosen here. */
const BEYOND = 0.9;

/**
 * Points nearer to the surface than this, in grid steps, have no clear direction to it; their neighbors stand in for them.
 * Chosen here.
 */
const TOO_NEAR = 0.05;

/**
 * Marks where the surface may run through the inside of the body, planes [from, to): at grid points that wind other than 0 or 1, and at
 * inside points beyond whose foot it is inside too. Returns how many. Thin gaps are marked as well: the exact test that follows clears them.
 */
export function markSuspects(
  surface: SearchSurface,
  winding: Int16Array,
  suspect: Uint8Array,
  [from, to]: readonly [number, number],
): number {
  const { grid, positions, triangles, nearest } = surface;
  const { nx, ny, nz, spacingMm: step, ox, oy, oz } = grid;
  let count = 0;
  for (let k = Math.max(1, from); k < Math.min(nz - 1, to); k++) {
    for (let j = 1; j < ny - 1; j++) {
      for (let i = 1, v = (k * ny + j) * nx + 1; i < nx - 1; i++, v++) {
        const wound = winding[v]!;
        if (wound > 1 || wound < 0) {
          suspect[v] = 1;
          count++;
        }
        if (wound <= 0 || nearest[v] === 0) continue;
        QUERY[0] = ox + i * step;
        QUERY[1] = oy + j * step;
        QUERY[2] = oz + k * step;
        testTriangle(positions, triangles, nearest[v]! - 1);
        if (!isInsideBeyond(grid, winding, i, j, k)) continue;
        // The band's triangle is a near one, not always the nearest.
        searchNearest(surface, nearest[v]! - 1, 1);
        if (!isInsideBeyond(grid, winding, i, j, k)) continue;
        suspect[v] = 1;
        count++;
      }
    }
  }
  return count;
}

/** Is the grid point nearest to the spot beyond the foot in FOUND inside? */
function isInsideBeyond(
  { nx, ny, spacingMm }: Grid,
  winding: Int16Array,
  i: number,
  j: number,
  k: number,
): boolean {
  const away = Math.sqrt(FOUND[AT.squared]!);
  if (away < TOO_NEAR * spacingMm) return false;
  const stretch = (1 + (BEYOND * spacingMm) / away) / spacingMm;
  const fi = Math.round(i + FOUND[AT.footX]! * stretch);
  const fj = Math.round(j + FOUND[AT.footY]! * stretch);
  const fk = Math.round(k + FOUND[AT.footZ]! * stretch);
  return winding[(fk * ny + fj) * nx + fi]! > 0;
}
