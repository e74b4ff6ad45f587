import { AT, FOUND, QUERY, searchNearest, testTriangle } from './nearest';
import type { LevelsField } from './coarsePass';
import { BIN, HALF_DIAGONAL, isNearAny, marginMm, SAMPLED, SUM, SUMS, type Levels } from './levels';
import { binOf } from './columnBin';
import { betweenFronts, findOpposite, frontOf, newFront } from './fronts';
import { planeFraction } from './planeFraction';

/** Rounds of the nearest search for octants, which start from the voxels around them. Chosen here. */
const ROUNDS = 1;

/** A center this close to the surface, in steps, has no direction of its own. Chosen here. */
const ON_SURFACE = 1e-5;

/** The normal of the level surface at the voxel at hand. */
const NORMAL = new Float64Array(3);

/**
 * Second pass over plane k: the plane fractions of every voxel near a level with their first and second difference, and for the columns of
 * the sample also their octants, each with its own exact distance.
 */
export function sumNearLevels(field: LevelsField, levels: Levels, k: number): void {
  // Every plane starts afresh, so that it does not matter which thread took the one before.
  LAST.fill(-1);
  const { grid, slotOf, feet } = field;
  const { nx, ny, spacingMm: step } = grid;
  const { levelsMm, sums } = levels;
  const half = step / 2;
  const margin = marginMm(step);
  for (let j = 1; j < ny - 1; j++) {
    for (let i = 1, v = (k * ny + j) * nx + 1; i < nx - 1; i++, v++) {
      const slot = slotOf[v]! - 1;
      if (slot < 0) continue;
      const signed = feet[4 * slot + 3]!;
      normalAt(field, slot, i, j, k);
      const bin = binOf(field, slot);
      findFronts(field, slot, v, i, j, k);
      for (let l = 0; l < levelsMm.length; l++) {
        const over = signed - levelsMm[l]!;
        const at = SUMS * l;
        if (over >= margin) continue;
        if (over <= -margin) {
          sums[at + SUM.full]!++;
          continue;
        }
        let share = planeFraction(over / step, NORMAL[0]!, NORMAL[1]!, NORMAL[2]!);
        let more = planeFraction((over - half) / step, NORMAL[0]!, NORMAL[1]!, NORMAL[2]!);
        let less = planeFraction((over + half) / step, NORMAL[0]!, NORMAL[1]!, NORMAL[2]!);
        if (BEYOND.isThere) {
          const level = levelsMm[l]!;
          const alone = share;
          share = betweenFronts(share, BEYOND, MIDDLE, level, step);
          more = betweenFronts(more, BEYOND, MIDDLE, level + half, step);
          less = betweenFronts(less, BEYOND, MIDDLE, level - half, step);
          sums[at + SUM.clipped]! += Math.abs(share - alone);
        }
        sums[at + SUM.slope]! += more - less;
        sums[at + SUM.share]! += share;
        sums[at + SUM.bend]! += more + less - 2 * share;
        if (bin >= SAMPLED) continue;
        sums[at + SUM.bins + BIN.width * bin + BIN.share]! += share;
        sums[at + SUM.bins + BIN.width * bin + BIN.bend]! += more + less - 2 * share;
      }
      if (bin < SAMPLED)
        sumOctants(field, levels, slot, v, i, j, k, SUM.bins + BIN.width * bin + BIN.octants);
    }
  }
}

/** The octants of plane k that the sample left out. */
export function sumOtherOctants(field: LevelsField, levels: Levels, k: number): void {
  LAST.fill(-1);
  const { grid, slotOf } = field;
  const { nx, ny } = grid;
  for (let j = 1; j < ny - 1; j++) {
    for (let i = 1, v = (k * ny + j) * nx + 1; i < nx - 1; i++, v++) {
      const slot = slotOf[v]! - 1;
      if (slot < 0 || binOf(field, slot) < SAMPLED) continue;
      findFronts(field, slot, v, i, j, k);
      sumOctants(field, levels, slot, v, i, j, k, SUM.rest);
    }
  }
}

/** The face nearest to the voxel at hand, the one opposite it where there is one, and the point for which they are asked. */
const HERE = newFront();
const BEYOND = newFront();
const MIDDLE = { x: 0, y: 0, z: 0, nx: 0, ny: 0, nz: 0, isInside: false };

function findFronts(field: LevelsField, slot: number, v: number, i: number, j: number, k: number): void {
  const { grid, winding } = field;
  MIDDLE.isInside = winding[v]! > 0;
  frontOf(field, slot, i, j, k, HERE);
  findOpposite(field, HERE, MIDDLE.isInside, v, i, j, k, BEYOND);
  if (!BEYOND.isThere) return;
  MIDDLE.x = grid.ox + i * grid.spacingMm;
  MIDDLE.y = grid.oy + j * grid.spacingMm;
  MIDDLE.z = grid.oz + k * grid.spacingMm;
  MIDDLE.nx = HERE.x;
  MIDDLE.ny = HERE.y;
  MIDDLE.nz = HERE.z;
}

/** Into NORMAL: the unit vector from the surface outward through a voxel; the triangle's own where the voxel's center lies on it. */
function normalAt(field: LevelsField, slot: number, i: number, j: number, k: number): void {
  const { grid, feet, owner } = field;
  const { spacingMm } = grid;
  const signed = feet[4 * slot + 3]!;
  if (signed > ON_SURFACE * spacingMm || signed < -ON_SURFACE * spacingMm) {
    NORMAL[0] = (grid.ox + i * spacingMm - feet[4 * slot]!) / signed;
    NORMAL[1] = (grid.oy + j * spacingMm - feet[4 * slot + 1]!) / signed;
    NORMAL[2] = (grid.oz + k * spacingMm - feet[4 * slot + 2]!) / signed;
  } else triangleNormal(field, owner[slot]!, NORMAL);
}

function triangleNormal({ positions: p, triangles }: LevelsField, t: number, out: Float64Array): void {
  const a = 3 * triangles[t]!;
  const b = 3 * triangles[t + 1]!;
  const c = 3 * triangles[t + 2]!;
  const ux = p[b]! - p[a]!;
  const uy = p[b + 1]! - p[a + 1]!;
  const uz = p[b + 2]! - p[a + 2]!;
  const wx = p[c]! - p[a]!;
  const wy = p[c + 1]! - p[a + 1]!;
  const wz = p[c + 2]! - p[a + 2]!;
  const x = uy * wz - uz * wy;
  const y = uz * wx - ux * wz;
  const z = ux * wy - uy * wx;
  const length = Math.sqrt(x * x + y * y + z * z) || 1;
  out[0] = x / length;
  out[1] = y / length;
  out[2] = z / length;
}

/** Nearest triangles of the last two octants: good starts for the next one. */
const LAST = new Int32Array([-1, -1]);

function sumOctants(
  field: LevelsField,
  levels: Levels,
  slot: number,
  v: number,
  i: number,
  j: number,
  k: number,
  place: number,
): void {
  const { grid, feet, winding, octantWinding } = field;
  const { nx, ny, spacingMm: step } = grid;
  const { levelsMm, withOctants, sums } = levels;
  const half = step / 2;
  const quarter = step / 4;
  const cut = HALF_DIAGONAL * half;
  const reach = HALF_DIAGONAL * step;
  const signed = feet[4 * slot + 3]!;
  if (!isNearAny(levelsMm, withOctants, signed, marginMm(step))) return;
  const x = grid.ox + i * step;
  const y = grid.oy + j * step;
  const z = grid.oz + k * step;
  // An octant's center is `cut` from the voxel's: nearer to the surface than that, it may lie on the other side.
  const isBySurface = signed <= cut && signed >= -cut;
  for (let q = 0; q < 8; q++) {
    const fx = x + (q & 1 ? quarter : -quarter);
    const fy = y + (q & 2 ? quarter : -quarter);
    const fz = z + (q & 4 ? quarter : -quarter);
    let isInside = winding[v]! > 0;
    if (isBySurface) {
      const at =
        ((2 * k + (q & 4 ? 1 : 0)) * 2 * ny + 2 * j + (q & 2 ? 1 : 0)) * 2 * nx + 2 * i + (q & 1 ? 1 : 0);
      isInside = octantWinding![at]! > 0;
    }
    // The coarse foot bounds the distance from above; the voxel's own distance less `cut` from below.
    const dx = fx - feet[4 * slot]!;
    const dy = fy - feet[4 * slot + 1]!;
    const dz = fz - feet[4 * slot + 2]!;
    const most = Math.sqrt(dx * dx + dy * dy + dz * dz);
    let isOpen = false;
    for (let l = 0; l < withOctants; l++) {
      const level = levelsMm[l]!;
      const over = signed - level;
      // Far from this level as a whole voxel: settled already by the coarse pass, or by the first branch below.
      if (over >= reach) continue;
      if (isInside ? -most - level >= cut : over <= -reach || most - level <= -cut) continue;
      if (isInside && over <= -reach) continue;
      isOpen = true;
      break;
    }
    let distance = 0;
    if (isOpen) {
      QUERY[0] = fx;
      QUERY[1] = fy;
      QUERY[2] = fz;
      findOctant(field, slot, v, q);
      distance = Math.sqrt(FOUND[AT.squared]!);
    }
    for (let l = 0; l < withOctants; l++) {
      const level = levelsMm[l]!;
      const over = signed - level;
      const at = SUMS * l + place;
      if (over >= marginMm(step) || over <= -marginMm(step)) continue;
      if (over >= reach) continue;
      if (over <= -reach) {
        sums[at]!++;
        continue;
      }
      if (isInside ? -most - level >= cut : most - level <= -cut) {
        if (!isInside) sums[at]!++;
        continue;
      }
      const e = (isInside ? -distance : distance) - level;
      if (e >= cut) continue;
      if (e <= -cut) {
        sums[at]!++;
        continue;
      }
      const share = octantFraction(field, e / half, isInside ? -distance : distance);
      // The opposite face is one only for the voxel's own side of the surface.
      const isBetween = BEYOND.isThere && isInside === winding[v]! > 0;
      sums[at]! += isBetween ? octantBetween(share, isInside, level, half) : share;
    }
  }
}

/** The normal of the octant at hand. */
const OCTANT = new Float64Array(3);

/** Plane fraction of an octant from the foot in FOUND. */
function octantFraction(field: LevelsField, over: number, signed: number): number {
  if (signed > ON_SURFACE * field.grid.spacingMm || signed < -ON_SURFACE * field.grid.spacingMm) {
    // The foot is relative to the point: the normal looks from the foot to it.
    OCTANT[0] = -FOUND[AT.footX]! / signed;
    OCTANT[1] = -FOUND[AT.footY]! / signed;
    OCTANT[2] = -FOUND[AT.footZ]! / signed;
  } else triangleNormal(field, LAST[0]!, OCTANT);
  return planeFraction(over, OCTANT[0]!, OCTANT[1]!, OCTANT[2]!);
}

/** The same where two fronts meet: an octant may lie on the far side of the middle, where they change places. */
function octantBetween(share: number, isInside: boolean, level: number, edgeMm: number): number {
  MIDDLE.x = QUERY[0]!;
  MIDDLE.y = QUERY[1]!;
  MIDDLE.z = QUERY[2]!;
  MIDDLE.nx = OCTANT[0]!;
  MIDDLE.ny = OCTANT[1]!;
  MIDDLE.nz = OCTANT[2]!;
  MIDDLE.isInside = isInside;
  const isHere = MIDDLE.nx * HERE.x + MIDDLE.ny * HERE.y + MIDDLE.nz * HERE.z > 0;
  return betweenFronts(share, isHere ? BEYOND : HERE, MIDDLE, level, edgeMm);
}

/** Nearest triangle of QUERY, octant q of voxel v: from the nearest triangles of the voxels around it and the last two octants. */
function findOctant(field: LevelsField, slot: number, v: number, q: number): void {
  const { grid, positions, triangles, slotOf, owner, site, nearest } = field;
  const sx = q & 1 ? 1 : -1;
  const sy = q & 2 ? grid.nx : -grid.nx;
  const sz = (q & 4 ? 1 : -1) * grid.nx * grid.ny;
  let t = owner[slot]!;
  let tried = t;
  testTriangle(positions, triangles, t);
  let least = FOUND[AT.squared]!;
  for (let e = 1; e < 8; e++) {
    const w = v + (e & 1 ? sx : 0) + (e & 2 ? sy : 0) + (e & 4 ? sz : 0);
    const s = slotOf[w]!;
    const other = s > 0 ? owner[s - 1]! : site[w]! < 0 ? -1 : nearest[site[w]!]! - 1;
    if (other < 0 || other === tried) continue;
    tried = other;
    testTriangle(positions, triangles, other);
    if (FOUND[AT.squared]! < least) {
      least = FOUND[AT.squared]!;
      t = other;
    }
  }
  for (let back = 0; back < 2; back++) {
    const other = LAST[back]!;
    if (other < 0 || other === t || other === tried) continue;
    testTriangle(positions, triangles, other);
    if (FOUND[AT.squared]! < least) {
      least = FOUND[AT.squared]!;
      t = other;
    }
  }
  LAST[1] = LAST[0]!;
  LAST[0] = searchNearest(field, t, ROUNDS);
}
