import { AT, FOUND, QUERY, searchNearest, testTriangle, type SearchSurface } from './nearest';
import { isNearAny, marginMm, SUM, SUMS, type Levels } from './levels';

/** What the level passes read and write; voxels near a level get a slot in compact lists. */
export interface LevelsField extends SearchSurface {
  winding: Int16Array;
  /** Nearest seed of every grid point; -1 beyond reach. */
  site: Int32Array;
  /** Slot + 1 of every grid point near a level; 0 = none. */
  slotOf: Int32Array;
  /** Four numbers a slot: foot x, y, z (mm) and signed distance. */
  feet: Float32Array;
  /** Nearest triangle of a slot, 3 * number. */
  owner: Int32Array;
  /** Where the 26 neighbors of a grid point stand. */
  around: Int32Array;
  /** Winding numbers on the octants' grid, where a level passes close to the surface. */
  octantWinding: Int16Array | undefined;
}

/** Hands out slots; a thread takes them in runs. */
export interface SlotTaker {
  take(): number;
}

/** Rounds of the nearest search for coarse voxels, which nothing narrows down yet. Chosen here. */
const ROUNDS = 3;

/**
 * First pass over plane k: voxels far from every level are only counted, by side and seed distance. For the others the nearest
 * triangle, the foot and the signed distance are found and kept in a slot; the second pass adds their fractions. One loop, as
 * numbers that cross a call which is not inlined are boxed (see nearest.ts).
 */
export function findNearLevels(field: LevelsField, levels: Levels, slots: SlotTaker, k: number): void {
  const { grid, positions, triangles, winding, site, nearest, slotOf, feet, owner, around } = field;
  const { nx, ny, spacingMm: step, ox, oy, oz } = grid;
  const { levelsMm, nearOutside, nearInside, farOutside, farInside, sums } = levels;
  const plane = nx * ny;
  const top = farInside.length - 1;
  const margin = marginMm(step);
  for (let j = 1; j < ny - 1; j++) {
    for (let i = 1, v = (k * ny + j) * nx + 1; i < nx - 1; i++, v++) {
      const s = site[v]!;
      const isInside = winding[v]! > 0;
      let d2 = top;
      if (s >= 0) {
        const sk = (s / plane) | 0;
        const rest = s - sk * plane;
        const sj = (rest / nx) | 0;
        const di = rest - sj * nx - i;
        d2 = di * di + (sj - j) * (sj - j) + (sk - k) * (sk - k);
        if (d2 > top) d2 = top;
      }
      if (isInside ? nearInside[d2] === 0 : nearOutside[d2] === 0) {
        if (isInside) farInside[d2]!++;
        else farOutside[d2]!++;
        continue;
      }
      QUERY[0] = ox + i * step;
      QUERY[1] = oy + j * step;
      QUERY[2] = oz + k * step;
      let t = nearest[s]! - 1;
      testTriangle(positions, triangles, t);
      let least = FOUND[AT.squared]!;
      let isNear = isNearAny(
        levelsMm,
        levelsMm.length,
        isInside ? -Math.sqrt(least) : Math.sqrt(least),
        margin,
      );
      if (isNear) {
        // The seeds of the 26 neighbors: without them the search can stick on the wrong face of a box.
        let tried1 = s;
        let tried2 = -1;
        let tried3 = -1;
        for (let q = 0; q < 26; q++) {
          const e = site[v + around[q]!]!;
          if (e < 0 || e === tried1 || e === tried2 || e === tried3) continue;
          tried3 = tried2;
          tried2 = tried1;
          tried1 = e;
          const other = nearest[e]! - 1;
          testTriangle(positions, triangles, other);
          if (FOUND[AT.squared]! < least) {
            least = FOUND[AT.squared]!;
            t = other;
          }
        }
        t = searchNearest(field, t, ROUNDS);
        least = FOUND[AT.squared]!;
      }
      const signed = isInside ? -Math.sqrt(least) : Math.sqrt(least);
      if (isNear) isNear = isNearAny(levelsMm, levelsMm.length, signed, margin);
      if (!isNear) {
        for (let l = 0; l < levelsMm.length; l++) if (signed <= levelsMm[l]!) sums[SUMS * l + SUM.full]!++;
        continue;
      }
      const slot = slots.take();
      slotOf[v] = slot + 1;
      owner[slot] = t;
      feet[4 * slot] = QUERY[0] + FOUND[AT.footX]!;
      feet[4 * slot + 1] = QUERY[1] + FOUND[AT.footY]!;
      feet[4 * slot + 2] = QUERY[2] + FOUND[AT.footZ]!;
      feet[4 * slot + 3] = signed;
    }
  }
}
