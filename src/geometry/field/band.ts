import type { Grid } from './grid';

/*
 * The narrow band: for every grid point within `bandMm` of the surface, the nearest triangle. Triangle by triangle, the points in
 * its widened box; a bounding sphere (small triangles) or the distance from its plane (large ones) turns most points away before the exact
 * distance. Written out in one loop: it is the hottest of a build, and numbers that cross a call which is not inlined are boxed.
 *
 * Tried: a tree per point (many times slower at these densities), points in random order (a shuffled file costs about twice).
 */

/**
 * Triangles whose corners lie within this share of a step from their middle count as that middle, and only for the eight grid points
 * around it: the search that follows walks to the nearest one anyway. Every point of the surface still has a seed within
 * sqrt(3)/2 + TINY_SHARE steps, less than one. A million of them cost an eighth of what exact distances would.
 */
const TINY_SHARE = 1 / 8;

/** Triangles over more rows than this go by the plane, not by the sphere. Chosen here. */
const LARGE_ROWS = 36;

/**
 * Lowers `distance` and sets `nearest` (3 * triangle + 1; 0 = none) for the points near the triangles [from, to).
 * `distance` starts at `bandMm` everywhere.
 */
export function markBand(
  grid: Grid,
  positions: Float32Array,
  triangles: Int32Array,
  distance: Float32Array,
  nearest: Int32Array,
  bandMm: number,
  [from, to]: readonly [number, number],
): void {
  const { nx, ny, nz, spacingMm: step, ox, oy, oz } = grid;
  const perMm = 1 / step;
  const tiny2 = (TINY_SHARE * step) ** 2;
  for (let t = 3 * from; t < 3 * to; t += 3) {
    const a = 3 * triangles[t]!;
    const b = 3 * triangles[t + 1]!;
    const c = 3 * triangles[t + 2]!;
    const ax = positions[a]!;
    const ay = positions[a + 1]!;
    const az = positions[a + 2]!;
    const bx = positions[b]!;
    const by = positions[b + 1]!;
    const bz = positions[b + 2]!;
    const cx = positions[c]!;
    const cy = positions[c + 1]!;
    const cz = positions[c + 2]!;
    const gx = (ax + bx + cx) / 3;
    const gy = (ay + by + cy) / 3;
    const gz = (az + bz + cz) / 3;
    const ra = (ax - gx) * (ax - gx) + (ay - gy) * (ay - gy) + (az - gz) * (az - gz);
    const rb = (bx - gx) * (bx - gx) + (by - gy) * (by - gy) + (bz - gz) * (bz - gz);
    const rc = (cx - gx) * (cx - gx) + (cy - gy) * (cy - gy) + (cz - gz) * (cz - gz);
    const radius2 = ra > rb ? (ra > rc ? ra : rc) : rb > rc ? rb : rc;
    if (radius2 <= tiny2) {
      const i = Math.floor((gx - ox) * perMm);
      const j = Math.floor((gy - oy) * perMm);
      const k = Math.floor((gz - oz) * perMm);
      if (k < 0 || k + 1 >= nz) continue;
      const fx = gx - (ox + i * step);
      const fy = gy - (oy + j * step);
      const fz = gz - (oz + k * step);
      for (let corner = 0; corner < 8; corner++) {
        const dx = corner & 1 ? fx - step : fx;
        const dy = corner & 2 ? fy - step : fy;
        const dz = corner & 4 ? fz - step : fz;
        const q = dx * dx + dy * dy + dz * dz;
        const v = ((k + (corner >> 2)) * ny + j + ((corner >> 1) & 1)) * nx + i + (corner & 1);
        const known = distance[v]!;
        if (q >= known * known) continue;
        const d = Math.fround(Math.sqrt(q));
        if (d < known) {
          distance[v] = d;
          nearest[v] = t + 1;
        }
      }
      continue;
    }
    const zLow = az < bz ? (az < cz ? az : cz) : bz < cz ? bz : cz;
    const zHigh = az > bz ? (az > cz ? az : cz) : bz > cz ? bz : cz;
    const yLow = ay < by ? (ay < cy ? ay : cy) : by < cy ? by : cy;
    const yHigh = ay > by ? (ay > cy ? ay : cy) : by > cy ? by : cy;
    const xLow = ax < bx ? (ax < cx ? ax : cx) : bx < cx ? bx : cx;
    const xHigh = ax > bx ? (ax > cx ? ax : cx) : bx > cx ? bx : cx;
    const k0 = Math.max(0, Math.ceil((zLow - bandMm - oz) * perMm));
    const k1 = Math.min(nz - 1, Math.floor((zHigh + bandMm - oz) * perMm));
    const j0 = Math.ceil((yLow - bandMm - oy) * perMm);
    const j1 = Math.floor((yHigh + bandMm - oy) * perMm);
    const i0 = Math.ceil((xLow - bandMm - ox) * perMm);
    const i1 = Math.floor((xHigh + bandMm - ox) * perMm);
    const e0x = bx - ax;
    const e0y = by - ay;
    const e0z = bz - az;
    const e1x = cx - ax;
    const e1y = cy - ay;
    const e1z = cz - az;
    const a00 = e0x * e0x + e0y * e0y + e0z * e0z;
    const a01 = e0x * e1x + e0y * e1y + e0z * e1z;
    const a11 = e1x * e1x + e1y * e1y + e1z * e1z;
    const det = a00 * a11 - a01 * a01;
    if ((i1 - i0) * (j1 - j0) <= LARGE_ROWS) {
      const radius = Math.sqrt(radius2) * 1.000001;
      for (let k = k0; k <= k1; k++) {
        const pz = oz + k * step;
        const dz2 = (pz - gz) * (pz - gz);
        for (let j = j0; j <= j1; j++) {
          const py = oy + j * step;
          const dyz2 = dz2 + (py - gy) * (py - gy);
          for (let i = i0, v = (k * ny + j) * nx + i0; i <= i1; i++, v++) {
            const px = ox + i * step;
            const known = distance[v]!;
            const reach = known + radius;
            if (dyz2 + (px - gx) * (px - gx) >= reach * reach) continue;
            const q = squaredDistance(
              ax - px,
              ay - py,
              az - pz,
              e0x,
              e0y,
              e0z,
              e1x,
              e1y,
              e1z,
              a00,
              a01,
              a11,
              det,
            );
            if (q < known * known) {
              const d = Math.fround(Math.sqrt(q));
              if (d < known) {
                distance[v] = d;
                nearest[v] = t + 1;
              }
            }
          }
        }
      }
      continue;
    }
    let nX = e0y * e1z - e0z * e1y;
    let nY = e0z * e1x - e0x * e1z;
    let nZ = e0x * e1y - e0y * e1x;
    const length = Math.sqrt(nX * nX + nY * nY + nZ * nZ) || 1;
    nX /= length;
    nY /= length;
    nZ /= length;
    for (let k = k0; k <= k1; k++) {
      const pz = oz + k * step;
      for (let j = j0; j <= j1; j++) {
        const py = oy + j * step;
        // Height over the plane of the triangle at i = 0; it changes by nX * step per point.
        const height = nX * (ox - ax) + nY * (py - ay) + nZ * (pz - az);
        let first = i0;
        let last = i1;
        if (nX > 1e-6 || nX < -1e-6) {
          const u = ((-bandMm - height) / nX) * perMm;
          const w = ((bandMm - height) / nX) * perMm;
          first = Math.max(first, Math.ceil(u < w ? u : w));
          last = Math.min(last, Math.floor(u < w ? w : u));
        } else if (height > bandMm || height < -bandMm) continue;
        for (let i = first, v = (k * ny + j) * nx + first; i <= last; i++, v++) {
          const known = distance[v]!;
          const over = height + nX * i * step;
          if (over * over >= known * known) continue;
          const q = squaredDistance(
            ax - (ox + i * step),
            ay - py,
            az - pz,
            e0x,
            e0y,
            e0z,
            e1x,
            e1y,
            e1z,
            a00,
            a01,
            a11,
            det,
          );
          if (q < known * known) {
            const d = Math.fround(Math.sqrt(q));
            if (d < known) {
              distance[v] = d;
              nearest[v] = t + 1;
            }
          }
        }
      }
    }
  }
}

/** Least of a t^2 + 2 b t + c over t in [0, 1]: squared distance from a segment. */
const overSegment = (b: number, c: number, a: number): number =>
  b >= 0 ? c : -b >= a ? a + 2 * b + c : c - (b * b) / a;

/** Squared distance of a point from a triangle; d = first corner minus point (Eberly's region method, from memory). */
function squaredDistance(
  dx: number,
  dy: number,
  dz: number,
  e0x: number,
  e0y: number,
  e0z: number,
  e1x: number,
  e1y: number,
  e1z: number,
  a00: number,
  a01: number,
  a11: number,
  det: number,
): number {
  const b0 = e0x * dx + e0y * dy + e0z * dz;
  const b1 = e1x * dx + e1y * dy + e1z * dz;
  const c = dx * dx + dy * dy + dz * dz;
  const s = a01 * b1 - a11 * b0;
  const t = a01 * b0 - a00 * b1;
  let q: number;
  if (s >= 0 && t >= 0 && s + t <= det && det > 0) {
    const u = s / det;
    const w = t / det;
    q = u * (a00 * u + a01 * w + 2 * b0) + w * (a01 * u + a11 * w + 2 * b1) + c;
  } else {
    q = overSegment(b0, c, a00);
    const q1 = overSegment(b1, c, a11);
    if (q1 < q) q = q1;
    const q2 = overSegment(b1 - b0 + a01 - a00, a00 + 2 * b0 + c, a00 - 2 * a01 + a11);
    if (q2 < q) q = q2;
  }
  return q > 0 ? q : 0;
}

/** Keeps the nearer of the threads' bands, for the points [from, to), in the first thread's arrays. */
export function mergeBands(
  distances: readonly Float32Array[],
  nearests: readonly Int32Array[],
  [from, to]: readonly [number, number],
): void {
  const distance = distances[0]!;
  const nearest = nearests[0]!;
  for (let thread = 1; thread < distances.length; thread++) {
    const theirs = distances[thread]!;
    const named = nearests[thread]!;
    for (let v = from; v < to; v++) {
      const t = named[v]!;
      // Equal distances go to the lower number, so that the count of threads changes nothing.
      if (t > 0 && (theirs[v]! < distance[v]! || (theirs[v] === distance[v] && t < nearest[v]!))) {
        distance[v] = theirs[v]!;
        nearest[v] = t;
      }
    }
  }
}
